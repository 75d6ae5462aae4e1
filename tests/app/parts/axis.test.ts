import { expect, test } from 'vitest';
import { axisTicks, roundStep } from '../../../src/app/parts/axis.ts';

test('steps of an axis are 1, 2 or 5 times a power of ten', () => {
  expect([0.011, 0.3, 1, 1.2, 4.9, 51].map(roundStep)).toEqual([0.02, 0.5, 1, 2, 5, 100]);
});

test('an axis begins at or below its range and ends at or above it', () => {
  expect(axisTicks(-3, 42, 5)).toEqual([-10, 0, 10, 20, 30, 40, 50]);
  expect(axisTicks(0, 100, 5)).toEqual([0, 20, 40, 60, 80, 100]);
  expect(axisTicks(7, 7, 5)).toHaveLength(2);
});
