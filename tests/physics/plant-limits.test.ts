import { expect, test } from 'vitest';
import { PLANT_LIMITS, plantRisks } from '../../src/physics/plant-limits.ts';

test('every limit lies inside the range it was taken from', () => {
  expect(PLANT_LIMITS).toHaveLength(7);
  for (const { limit, range } of PLANT_LIMITS) {
    expect(limit).toBeGreaterThanOrEqual(range[0]);
    expect(limit).toBeLessThanOrEqual(range[1]);
  }
});

test('a good day harms nothing, and each kind of trouble shows its gravest form only', () => {
  expect(plantRisks(22, 0.8)).toEqual([]);
  expect(plantRisks(-2, 0.8)).toEqual(['frost']);
  expect(plantRisks(8, 0.8)).toEqual(['chilling']);
  expect(plantRisks(35, 0.8)).toEqual(['heat at fruit set']);
  expect(plantRisks(42, 3)).toEqual(['leaf scorch', 'dry air']);
  expect(plantRisks(12, 0.1)).toEqual(['grey mould']);
  expect(plantRisks(20, 0.3)).toEqual(['damp air']);
  expect(() => plantRisks(Number.NaN, 0.8)).toThrow(/airTempC is NaN/);
});
