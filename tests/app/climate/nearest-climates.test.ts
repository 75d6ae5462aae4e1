import { expect, test } from 'vitest';
import { BUNDLED_CLIMATES, characterIn } from '../../../src/app/climate/bundled-climates.ts';
import { nearestClimates } from '../../../src/app/climate/nearest-climates.ts';
import { distanceKm } from '../../../src/places/earth.ts';

const greatCircleKm = (latA: number, lonA: number, latB: number, lonB: number) =>
  distanceKm(at(latA, lonA), at(latB, lonB));
const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });

test('the distance is that of the great circle', () => {
  // The worked example of E. Williams' aviation formulary, Los Angeles to New York: 0.623585 radians; from memory, high
  // confidence. On a sphere of 6371 km.
  const km = greatCircleKm(33 + 57 / 60, -(118 + 24 / 60), 40 + 38 / 60, -(73 + 47 / 60));
  expect(km).toBeCloseTo(0.623585 * 6371, 0);
  // A quarter of a meridian.
  expect(greatCircleKm(0, 20, 90, 0)).toBeCloseTo((Math.PI / 2) * 6371, 6);
  expect(greatCircleKm(10, 179, 10, -179)).toBeLessThan(220);
});

test('the nearest climate comes first, on either side of the globe', () => {
  expect(nearestClimates(at(40, -105))[0]!.climate.id).toBe('denver');
  expect(nearestClimates(at(-41, -72))[0]!.climate.id).toBe('southern-chile');
  const far = nearestClimates(at(54, -6)).map(({ distanceKm }) => distanceKm);
  expect(far).toEqual(far.toSorted((a, b) => a - b));
});

test('the character of every climate is told in US units too', () => {
  const [denver] = BUNDLED_CLIMATES;
  expect(characterIn('metric', denver!)).toBe(denver!.character);
  expect(characterIn('us', denver!)).toContain('5,600 °F-days');
  for (const climate of BUNDLED_CLIMATES)
    expect(characterIn('us', climate)).not.toMatch(/\d (degree-days|m\b|°C)|NaN/);
});
