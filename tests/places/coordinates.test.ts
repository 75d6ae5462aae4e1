// Coordinates as people type them; the same place in every form.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coordinatesIn, degreesIn } from '../../src/places/coordinates.ts';

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
  ['39.7, -105', 39.7, -105],
  ['39.7 -105', 39.7, -105],
  ['39.7,-105', 39.7, -105],
  ["39°42' N, 105° W", 39.7, -105],
  ['39.7 north, 105 west', 39.7, -105],
])('%s', (text, latitudeDeg, longitudeDeg) => {
  expect(coordinatesIn(text)).toEqual({ latitudeDeg, longitudeDeg });
});

test.each(['95, 10', '10, 190', '10 N 20 S', '12 E 13 W'])('%s is refused with what is allowed', (text) => {
  expect(coordinatesIn(text)).toMatchObject({ fault: expect.stringContaining('allowed') });
});

test.each([
  '',
  'Paris',
  '46.2',
  '1, 2, 3',
  'Area 51',
  '12 Bridge Street',
  '٣١',
  '39.7 N',
  '39.7, -105, 3',
  '-39.7 N, 105 W',
  "10°75' N, 5° E",
])('%s is no pair of coordinates', (text) => {
  expect(coordinatesIn(text)).toBeNull();
});

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

test('one angle is taken as people write it', () => {
  for (const text of [
    '39.5° S',
    '39.5 s',
    '-39.5',
    '−39.5',
    'S 39.5',
    "39°30' S",
    '39° 30′ 0″ south',
    '39,5° S',
  ])
    expect(degreesIn(text, 'latitude'), text).toBeCloseTo(-39.5, 9);
  expect(degreesIn("71°12' W", 'longitude')).toBeCloseTo(-71.2, 9);
  expect(degreesIn('12 E', 'longitude')).toBe(12);
  for (const text of ['', 'S', '91', '-39.5 S', '39.5 W', "10°75'", '1 2 3 4', 'north pole'])
    expect(degreesIn(text, 'latitude'), text).toBeNull();
  expect(degreesIn('181 W', 'longitude')).toBeNull();
});
