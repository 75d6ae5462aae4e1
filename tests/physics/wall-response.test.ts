import { expect, test } from 'vitest';
import { dailyDepth, penetrationDepth, usefulThickness } from '../../src/physics/wall-response.ts';

const CONCRETE = { conductivity: 1.75, density: 2300, specificHeat: 1000 };
const DAY = 86_400;

test('a wave four times as slow reaches twice as deep', () => {
  expect(penetrationDepth(CONCRETE, 4 * DAY)).toBeCloseTo(2 * penetrationDepth(CONCRETE, DAY), 12);
  expect(dailyDepth(CONCRETE)).toBe(penetrationDepth(CONCRETE, DAY));
  expect(usefulThickness(CONCRETE)).toBeGreaterThan(dailyDepth(CONCRETE));
});

test('what has no mass lets a wave through at any depth, and is refused where a depth is asked for', () => {
  expect(dailyDepth({ ...CONCRETE, density: 0 })).toBe(Number.POSITIVE_INFINITY);
  expect(() => penetrationDepth({ ...CONCRETE, density: 0 }, DAY)).toThrow(RangeError);
});
