import { expect, test } from 'vitest';
import { openWaterEvaporation, UNDISTURBED_WATER } from '../../src/physics/water-surface.ts';

test('open water neither loses nor gains in air at its own vapour pressure, and gains in damper air', () => {
  expect(openWaterEvaporation(2000, 2000, 0.3, 1)).toBe(0);
  expect(openWaterEvaporation(2000, 2500, 0.3, 1)).toBeLessThan(0);
});

test('an undisturbed pond loses half of what a busy pool does, and moving air takes more', () => {
  expect(openWaterEvaporation(2983, 1790, 0.1, UNDISTURBED_WATER)).toBeCloseTo(
    openWaterEvaporation(2983, 1790, 0.1, 1) / 2,
    12,
  );
  expect(openWaterEvaporation(2983, 1790, 0.5, 1)).toBeGreaterThan(openWaterEvaporation(2983, 1790, 0, 1));
});
