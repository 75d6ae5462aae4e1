import { expect, test } from 'vitest';
import { filmEvaporation } from '../../src/physics/surface-condensation.ts';
import {
  openWaterEvaporation,
  SOIL_WATER,
  soilDrying,
  soilEvaporation,
  UNDISTURBED_WATER,
  wetBedDaily,
} from '../../src/physics/water-surface.ts';

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

test('soil evaporates at the full rate until the readily evaporable water is gone, then ever less to nothing', () => {
  expect(SOIL_WATER).toHaveLength(6);
  for (const { readilyMm, totalMm } of SOIL_WATER) {
    expect(soilDrying(0, readilyMm, totalMm)).toBe(1);
    expect(soilDrying(readilyMm, readilyMm, totalMm)).toBe(1);
    expect(soilDrying((readilyMm + totalMm) / 2, readilyMm, totalMm)).toBeCloseTo(0.5, 12);
    expect(soilDrying(totalMm, readilyMm, totalMm)).toBe(0);
    expect(soilDrying(totalMm + 5, readilyMm, totalMm)).toBe(0);
  }
});

test('a wet bed is a wet surface, a dry bed gives nothing and a bed takes up no dew', () => {
  expect(soilEvaporation(3, 9, 15, 1)).toBe(filmEvaporation(3, 9, 15));
  expect(soilEvaporation(3, 9, 15, 0)).toBe(0);
  expect(soilEvaporation(3, 15, 9, 1)).toBe(0);
});

test('a bare wet bed loses between 1.1 and 1.2 of reference evapotranspiration (FAO-56)', () => {
  expect(wetBedDaily(4)).toBeGreaterThanOrEqual(4.4);
  expect(wetBedDaily(4)).toBeLessThanOrEqual(4.8);
  expect(() => wetBedDaily(-1)).toThrow(/referenceMm is -1/);
});
