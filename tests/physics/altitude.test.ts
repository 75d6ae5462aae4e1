import { expect, test } from 'vitest';
import { standardPressure } from '../../src/physics/altitude.ts';
import { windAtHeight } from '../../src/physics/wind-profile.ts';

test('pressure falls to 84.6 kPa at 1500 m and agrees with the FAO-56 formula within 0.6 %', () => {
  // US Standard Atmosphere 1976: 84.556 kPa at 1500 m. FAO-56 equation 7: 101.3((293 − 0.0065 z)/293)^5.26.
  expect(standardPressure(1500)).toBeCloseTo(84_556, -1);
  for (const z of [0, 500, 1609, 2500]) {
    const fao = 101_300 * ((293 - 0.0065 * z) / 293) ** 5.26;
    expect(Math.abs(standardPressure(z) / fao - 1)).toBeLessThan(0.006);
  }
});

test('over open land at 10 m the wind is what the station measured', () => {
  expect(windAtHeight(4, 10, 'open')).toBeCloseTo(4, 12);
});

test('houses and height: less wind low down and among buildings', () => {
  expect(windAtHeight(4, 3, 'open')).toBeLessThan(4);
  expect(windAtHeight(4, 3, 'suburb')).toBeLessThan(windAtHeight(4, 3, 'open'));
  expect(windAtHeight(4, 3, 'city')).toBeLessThan(windAtHeight(4, 3, 'suburb'));
  // ASHRAE Fundamentals: suburb at 10 m gives about 0.72 of the station's wind.
  expect(windAtHeight(1, 10, 'suburb')).toBeCloseTo(0.717, 3);
});
