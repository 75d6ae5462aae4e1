import { expect, test } from 'vitest';
import { relativeAirMass } from '../../src/physics/air-mass.ts';
import { extraterrestrialNormal } from '../../src/physics/extraterrestrial.ts';

test('sunshine outside the atmosphere is 3.3 to 3.5 % stronger than the mean in January, weaker in July', () => {
  expect(extraterrestrialNormal(3) / 1366.1).toBeCloseTo(1.035, 3);
  expect(extraterrestrialNormal(185) / 1366.1).toBeCloseTo(0.9666, 3);
});

test('over a year it averages the solar constant', () => {
  let sum = 0;
  for (let day = 1; day <= 365; day++) sum += extraterrestrialNormal(day);
  expect(sum / 365 / 1366.1).toBeCloseTo(1.0001, 3);
});

test('air mass is one overhead, two at 60° from it and about 38 at the horizon', () => {
  // Kasten and Young 1989, table: 1.0 at 0°, 1.9939 at 60°, 37.92 at 90° apparent zenith.
  expect(relativeAirMass(0)).toBeCloseTo(1, 3);
  expect(relativeAirMass(60)).toBeCloseTo(1.994, 3);
  expect(relativeAirMass(90)).toBeCloseTo(37.92, 1);
});

test('a day outside the year and a sun below the horizon are refused', () => {
  expect(() => extraterrestrialNormal(0)).toThrow(RangeError);
  expect(() => relativeAirMass(90.01)).toThrow(RangeError);
});
