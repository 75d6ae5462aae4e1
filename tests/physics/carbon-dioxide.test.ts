import { expect, test } from 'vitest';
import { carbonDioxideRelease } from '../../src/physics/carbon-dioxide.ts';

test('an adult at light work releases 18 to 20 L/h, asleep about 11 (handbook figures from memory, medium confidence)', () => {
  // ASHRAE 55: 1.2 met light work, 0.7 met asleep; ASHRAE Fundamentals: 1.8 m² of skin.
  const light = carbonDioxideRelease(1.2, 1.8);
  expect(light).toBeGreaterThan(18);
  expect(light).toBeLessThan(20);
  const asleep = carbonDioxideRelease(0.7, 1.8);
  expect(asleep).toBeGreaterThan(10);
  expect(asleep).toBeLessThan(13);
});

test('release is proportional to activity and body', () => {
  expect(carbonDioxideRelease(2.4, 1.8)).toBeCloseTo(2 * carbonDioxideRelease(1.2, 1.8), 9);
  expect(carbonDioxideRelease(1.2, 0.9)).toBeCloseTo(carbonDioxideRelease(1.2, 1.8) / 2, 9);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => carbonDioxideRelease(0, 1.8)).toThrow(/activityMet is 0/);
});
