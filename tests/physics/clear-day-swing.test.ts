import { expect, test } from 'vitest';
import { COMFORT_SWING_K, capacityForSwing, clearDaySwing } from '../../src/physics/clear-day-swing.ts';

test('twice the mass halves the swing and no sun makes none', () => {
  expect(clearDaySwing(15000, 4000)).toBeCloseTo(clearDaySwing(15000, 2000) / 2, 12);
  expect(clearDaySwing(0, 2000)).toBe(0);
});

test('the capacity for a swing gives that swing', () => {
  expect(clearDaySwing(18000, capacityForSwing(18000, COMFORT_SWING_K))).toBeCloseTo(COMFORT_SWING_K, 12);
});

test('a room without capacity is refused', () => {
  expect(() => clearDaySwing(15000, 0)).toThrow(/capacityWhPerK is 0/);
});
