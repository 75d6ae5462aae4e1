// Coordinates as people type them; the same place in every form.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coordinatesIn } from '../../src/places/coordinates.ts';

test.each([
  ['46.2, 7.4', 46.2, 7.4],
  ['46.2 7.4', 46.2, 7.4],
  ['46,2; 7,4', 46.2, 7.4],
  ['46.2 N 7.4 E', 46.2, 7.4],
  ['7.4E, 46.2N', 46.2, 7.4],
  ['N46.2 E7.4', 46.2, 7.4],
  ['46°12′N 7°24′E', 46.2, 7.4],
  ['46° 12\' 0" N, 7° 24\' 0" O', 46.2, 7.4],
  ['-33.9, 18.4', -33.9, 18.4],
  ['−33.9, 18.4', -33.9, 18.4],
  ['33.9S 18.4E', -33.9, 18.4],
  ['S 33.9 W 70.5', -33.9, -70.5],
])('%s', (text, latitudeDeg, longitudeDeg) => {
  expect(coordinatesIn(text)).toEqual({ latitudeDeg, longitudeDeg });
});

test.each(['95, 10', '10, 190', '10 N 20 S', '12 E 13 W'])('%s is refused with what is allowed', (text) => {
  expect(coordinatesIn(text)).toMatchObject({ fault: expect.stringContaining('allowed') });
});

test.each(['', 'Paris', '46.2', '1, 2, 3', 'Area 51', '12 Bridge Street', '٣١'])(
  '%s is no pair of coordinates',
  (text) => {
    expect(coordinatesIn(text)).toBeNull();
  },
);

test('every pair of numbers is read as it was written', () => {
  const degrees = (most: number) => fc.integer({ min: -most * 1000, max: most * 1000 });
  fc.assert(
    fc.property(degrees(90), degrees(180), (lat, lon) => {
      expect(coordinatesIn(`${lat / 1000}, ${lon / 1000}`)).toEqual({
        latitudeDeg: lat / 1000 + 0,
        longitudeDeg: lon / 1000 + 0,
      });
    }),
  );
});
