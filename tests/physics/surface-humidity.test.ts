import fc from 'fast-check';
import { expect, test } from 'vitest';
import { saturationPressure } from '../../src/physics/moist-air.ts';
import {
  checkMonths,
  MOULD_SURFACE_HUMIDITY,
  neededFactor,
  plainFactor,
  surfaceTemperature,
  vapourDensity,
} from '../../src/physics/surface-humidity.ts';

const temp = fc.double({ min: -40, max: 60, noNaN: true });

test('the mass of vapour in air is that of an ideal gas of 18.015 g/mol', () => {
  fc.assert(
    fc.property(temp, fc.double({ min: 1, max: 5000, noNaN: true }), (t, pressure) => {
      // Molar gas constant 8.314462618 J/(mol·K), CODATA 2018; the constants of the run agree with it to 3e-5.
      const ideal = (18.01528 * pressure) / (8.314462618 * (t + 273.15));
      expect(vapourDensity(pressure, t) / ideal).toBeCloseTo(1, 4);
    }),
  );
});

test('a detail that has just the factor it needs is just at the limit', () => {
  const vapour = 0.6 * saturationPressure(20);
  const factor = neededFactor(20, -5, vapour, MOULD_SURFACE_HUMIDITY);
  expect(vapour / saturationPressure(surfaceTemperature(factor, 20, -5))).toBeCloseTo(0.8, 9);
});

test('a better factor means a drier surface in winter', () => {
  const vapour = 0.5 * saturationPressure(20);
  const humidities = [0.5, 0.7, 0.9, 1].map(
    (f) => vapour / saturationPressure(surfaceTemperature(f, 20, -5)),
  );
  expect(humidities).toEqual([...humidities].sort((a, b) => b - a));
  expect(humidities.at(-1)).toBeCloseTo(0.5, 12);
});

test('an uninsulated surface has less of a factor than an insulated one', () => {
  expect(plainFactor(2, 0.25)).toBeLessThan(plainFactor(0.2, 0.25));
});

test('no factor is asked for when it is as warm outside as inside', () => {
  expect(neededFactor(20, 20, 1500, 0.8)).toBe(0);
  expect(neededFactor(20, 25, 1500, 0.8)).toBe(0);
});

test('a room damper than its own air allows asks for more than insulation can give', () => {
  expect(neededFactor(20, 5, 0.9 * saturationPressure(20), 0.8)).toBeGreaterThan(1);
});

test('the critical month is the one that asks most, and not always the coldest', () => {
  const check = checkMonths(
    [
      { tempInC: 20, tempOutC: -5, vapourPressurePa: 900 },
      { tempInC: 20, tempOutC: 5, vapourPressurePa: 1500 },
      { tempInC: 22, tempOutC: 18, vapourPressurePa: 1500 },
    ],
    0.8,
  );
  expect(check.neededFactors).toHaveLength(3);
  expect(check.criticalMonth).toBe(1);
  expect(check.criticalFactor).toBe(neededFactor(20, 5, 1500, 0.8));
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => plainFactor(-1, 0.25)).toThrow(/uValue is -1/);
  expect(() => neededFactor(20, 0, 1500, 80)).toThrow(/limitHumidity is 80/);
  expect(() => checkMonths([], 0.8)).toThrow(/months.length is 0/);
});
