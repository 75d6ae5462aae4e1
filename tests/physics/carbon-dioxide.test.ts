import { expect, test } from 'vitest';
import {
  ADULT_SKIN_M2,
  airflowForExcess,
  carbonDioxideAfter,
  carbonDioxideRelease,
  EXCESS_LIMITS_PPM,
  HOME_ACTIVITIES,
  steadyCarbonDioxide,
} from '../../src/physics/carbon-dioxide.ts';

test('an adult at light work releases 18 to 20 L/h, asleep about 11 (handbook figures from memory, medium confidence)', () => {
  const light = carbonDioxideRelease(HOME_ACTIVITIES.lightWork, ADULT_SKIN_M2);
  expect(light).toBeGreaterThan(18);
  expect(light).toBeLessThan(20);
  const asleep = carbonDioxideRelease(HOME_ACTIVITIES.asleep, ADULT_SKIN_M2);
  expect(asleep).toBeGreaterThan(10);
  expect(asleep).toBeLessThan(13);
});

test('release is proportional to activity and body', () => {
  expect(carbonDioxideRelease(2.4, 1.8)).toBeCloseTo(2 * carbonDioxideRelease(1.2, 1.8), 9);
  expect(carbonDioxideRelease(1.2, 0.9)).toBeCloseTo(carbonDioxideRelease(1.2, 1.8) / 2, 9);
});

test('the airflow for an excess keeps that excess', () => {
  const airflow = airflowForExcess(37, EXCESS_LIMITS_PPM.II);
  expect(steadyCarbonDioxide(425, 37, airflow) - 425).toBeCloseTo(800, 9);
});

test('a room starts where it was and ends at its steady state', () => {
  expect(carbonDioxideAfter(600, 1400, 0.5, 0)).toBe(600);
  expect(carbonDioxideAfter(600, 1400, 0.5, 100)).toBeCloseTo(1400, 9);
  expect(carbonDioxideAfter(600, 1400, 0, 5)).toBe(600);
  expect(carbonDioxideAfter(600, 1400, 0.5, 2)).toBeCloseTo(1400 - 800 / Math.E, 9);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => steadyCarbonDioxide(425, 37, 0)).toThrow(/airflowM3H is 0/);
  expect(() => carbonDioxideRelease(0, 1.8)).toThrow(/activityMet is 0/);
});
