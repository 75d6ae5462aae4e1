import { expect, test } from 'vitest';
import { EARTH_WORK, earthWorkDays, TYRE_PRACTICE, tyresInWall, tyreWork } from '../../src/physics/labour.ts';

test('a wall of 8 by 2.2 m takes ten tyres along and ten courses', () => {
  expect(tyresInWall(8, 2.2, 0.22)).toBe(100);
  expect(tyresInWall(8.1, 2.2, 0.22)).toBe(110);
  expect(tyresInWall(0, 2.2, 0.22)).toBe(0);
});

test('practice values lie inside their ranges', () => {
  expect(TYRE_PRACTICE.tyresPerDay).toBeGreaterThanOrEqual(TYRE_PRACTICE.tyresPerDayRange[0]);
  expect(TYRE_PRACTICE.tyresPerDay).toBeLessThanOrEqual(TYRE_PRACTICE.tyresPerDayRange[1]);
  expect(TYRE_PRACTICE.courseHeightM).toBeGreaterThanOrEqual(TYRE_PRACTICE.courseHeightRangeM[0]);
  expect(TYRE_PRACTICE.courseHeightM).toBeLessThanOrEqual(TYRE_PRACTICE.courseHeightRangeM[1]);
});

test('faster workers need fewer days for the same earth', () => {
  const [slow, fast] = [tyreWork(1200, 6), tyreWork(1200, 10)];
  expect(fast.workerDays).toBeLessThan(slow.workerDays);
  expect(fast.earthKg).toBe(slow.earthKg);
});

test('every kind of earth work has a range, and a shorter day makes more days', () => {
  expect(EARTH_WORK).toHaveLength(5);
  for (const work of EARTH_WORK) {
    const [low, high] = earthWorkDays(10, work, 8);
    expect(low).toBeLessThan(high);
    expect(earthWorkDays(10, work, 4)[0]).toBeCloseTo(2 * low, 9);
  }
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => tyreWork(100, 0)).toThrow(/tyresPerDay is 0/);
  expect(() => tyresInWall(8, 2, 1)).toThrow(/courseHeightM is 1/);
});
