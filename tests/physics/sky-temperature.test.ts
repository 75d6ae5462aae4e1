import { expect, test } from 'vitest';
import { STEFAN_BOLTZMANN } from '../../src/physics/constants.ts';
import {
  clearSkyEmissivity,
  skyEmissivity,
  skyTemperatureC,
  skyTemperatureFromLongwaveC,
} from '../../src/physics/sky-temperature.ts';

test('cloud warms the sky and a full low cover brings it near the air, not to it', () => {
  const covers = [0, 0.25, 0.5, 0.75, 1].map((n) => skyTemperatureC(10, 5, 0, 100_000, n));
  for (let i = 1; i < covers.length; i++) expect(covers[i]!).toBeGreaterThan(covers[i - 1]!);
  expect(covers[4]!).toBeLessThan(10);
  expect(covers[4]!).toBeGreaterThan(7);
});

test('thin mountain air makes a colder sky', () => {
  expect(clearSkyEmissivity(0, 0, 80_000)).toBeCloseTo(clearSkyEmissivity(0, 0, 100_000) - 0.024, 10);
});

test('very dry air does not turn the fitted parabola back up', () => {
  expect(clearSkyEmissivity(-80, 6, 100_000)).toBe(clearSkyEmissivity(-38, 6, 100_000));
  expect(clearSkyEmissivity(-38, 6, 100_000)).toBeLessThan(clearSkyEmissivity(-30, 6, 100_000));
});

test('measured long-wave light gives back the temperature of the black body it came from', () => {
  expect(skyTemperatureFromLongwaveC(STEFAN_BOLTZMANN * 263.15 ** 4)).toBeCloseTo(-10, 10);
});

test('no sky is more than black', () => {
  for (let dew = -15; dew <= 30; dew += 5) {
    for (const n of [0, 0.5, 1]) {
      expect(skyEmissivity(dew, 6, 100_000, n)).toBeLessThanOrEqual(1);
    }
  }
});

test('a cloud cover above one is refused', () => {
  expect(() => skyEmissivity(5, 0, 100_000, 1.1)).toThrow(RangeError);
});
