import { expect, test } from 'vitest';
import { PLANT_LIMITS } from '../../src/physics/plant-limits.ts';

test('every limit lies inside the range it was taken from', () => {
  expect(PLANT_LIMITS).toHaveLength(7);
  for (const { limit, range } of PLANT_LIMITS) {
    expect(limit).toBeGreaterThanOrEqual(range[0]);
    expect(limit).toBeLessThanOrEqual(range[1]);
  }
});
