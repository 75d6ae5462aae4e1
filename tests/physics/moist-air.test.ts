import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  dewPointFromVapourPressure,
  humidityRatio,
  relativeHumidity,
  saturationPressure,
  saturationPressureHeld,
  vapourPressureFromRatio,
} from '../../src/physics/moist-air.ts';

/** What the docstring of saturationPressure states. */
const SATURATION_PRESSURE_MAX_REL_ERROR = 0.0032;

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Saturation pressure [Pa] by IAPWS-IF97 region 4, equation 30. */
function if97(tempK: number): number {
  const n = [
    0, 1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
    -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
  ] as const;
  const theta = tempK + n[9] / (tempK - n[10]);
  const a = theta ** 2 + n[1] * theta + n[2];
  const b = n[3] * theta ** 2 + n[4] * theta + n[5];
  const c = n[6] * theta ** 2 + n[7] * theta + n[8];
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4;
}

test('the yardstick itself gives the verification values of IAPWS-IF97', () => {
  // IAPWS R7-97(2012), table 35.
  expect(if97(300)).toBeCloseTo(3536.58941, 4);
  expect(if97(500) / 2638897.76).toBeCloseTo(1, 8);
});

test('saturation pressure stays within its stated error from 0 to 60 °C, and reaches nearly all of it', () => {
  let worst = 0;
  for (let tempC = 0; tempC <= 60; tempC += 0.5) {
    worst = Math.max(worst, Math.abs(saturationPressure(tempC) / if97(tempC + 273.15) - 1));
  }
  expect(worst).toBeLessThanOrEqual(SATURATION_PRESSURE_MAX_REL_ERROR);
  expect(worst).toBeGreaterThan(0.9 * SATURATION_PRESSURE_MAX_REL_ERROR);
});

test('what loops read is the formula within its stated error, and stands still beyond what that was fitted for', () => {
  for (let tempC = -45; tempC <= 60; tempC += 0.0137) {
    expect(Math.abs(saturationPressureHeld(tempC) / saturationPressure(tempC) - 1)).toBeLessThan(2e-8);
  }
  expect(saturationPressureHeld(75)).toBe(saturationPressureHeld(60));
  expect(saturationPressureHeld(-80)).toBe(saturationPressureHeld(-45));
  expect(saturationPressureHeld(Number.NaN)).toBeNaN();
});

test('dew point undoes saturation and vapour pressure undoes humidity ratio', () => {
  fc.assert(
    fc.property(real(-60, 60), real(60_000, 105_000), (tempC, pressure) => {
      const vapour = saturationPressure(tempC);
      expect(dewPointFromVapourPressure(vapour)).toBeCloseTo(tempC, 9);
      expect(relativeHumidity(vapour, tempC)).toBeCloseTo(1, 12);
      expect(vapourPressureFromRatio(humidityRatio(vapour, pressure), pressure)).toBeCloseTo(vapour, 7);
    }),
  );
});

test('a bug cannot pass in a vapour pressure of all the air or a temperature beyond boiling', () => {
  expect(() => humidityRatio(100_000, 101_325)).toThrow(/vapourPressure is 100000 Pa/);
  expect(() => saturationPressure(150)).toThrow(RangeError);
  expect(() => dewPointFromVapourPressure(0)).toThrow(RangeError);
});
