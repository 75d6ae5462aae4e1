import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as fao from '../../src/physics/evapotranspiration.ts';

test('the hours of a day add up to the day', () => {
  for (const [latitude, day] of [
    [52, 172],
    [16.22, 274],
    [-43, 15],
    [0, 80],
    [70, 172],
  ] as const) {
    let sum = 0;
    for (let hour = 0; hour < 24; hour++) sum += fao.extraterrestrialHourly(latitude, day, hour + 0.5, 0, 0);
    expect(sum / fao.extraterrestrialDaily(latitude, day)).toBeCloseTo(1, 2);
  }
});

test('both hemispheres see the same sun half a year apart, but for the distance', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 66, noNaN: true }),
      fc.integer({ min: 1, max: 365 }),
      (latitude, day) => {
        expect(fao.daylightHours(latitude, day) + fao.daylightHours(-latitude, day)).toBeCloseTo(24, 9);
      },
    ),
  );
});

test('polar night has no radiation and polar day 24 hours of light', () => {
  expect(fao.extraterrestrialDaily(80, 355)).toBeCloseTo(0, 12);
  expect(fao.daylightHours(80, 172)).toBeCloseTo(24, 12);
  expect(fao.extraterrestrialHourly(80, 355, 12.5, 0, 0)).toBe(0);
});

test('a clock ahead of the sun moves the hour: west of its meridian noon comes later', () => {
  const before = fao.extraterrestrialHourly(40, 100, 11.5, -10, 0);
  const after = fao.extraterrestrialHourly(40, 100, 12.5, -10, 0);
  expect(after).toBeGreaterThan(before);
});

test('pressure falls with height and dry, windy, sunny air evaporates more', () => {
  expect(fao.pressureKPa(2500)).toBeLessThan(fao.pressureKPa(0));
  const weather = { tempC: 20, windSpeed: 2, deficit: 1, available: 10, gamma: 0.066 };
  const base = fao.referenceDaily(weather);
  expect(fao.referenceDaily({ ...weather, deficit: 1.5 })).toBeGreaterThan(base);
  expect(fao.referenceDaily({ ...weather, available: 12 })).toBeGreaterThan(base);
  expect(fao.referenceDaily({ ...weather, windSpeed: 3 })).toBeGreaterThan(base);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => fao.solarFromSunshine(15, 12, 30)).toThrow(/sunshineHours is 15/);
  expect(() => fao.dailyVapourKPa(20, 10, 84, 0.6)).toThrow(/maxHumidity is 84/);
  expect(() => fao.sunsetAngle(91, 100)).toThrow(/latitudeDeg is 91/);
});
