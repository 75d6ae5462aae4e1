import { expect, test } from 'vitest';
import { typedDegrees, typedPlace } from '../../../src/app/parts/degrees-text.ts';

test('latitude and longitude are taken as people write them', () => {
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
    expect(typedDegrees(text, 'latitude'), text).toBeCloseTo(-39.5, 9);
  expect(typedDegrees("71°12' W", 'longitude')).toBeCloseTo(-71.2, 9);
  expect(typedDegrees('12 E', 'longitude')).toBe(12);
  for (const text of ['', 'S', '91', '-39.5 S', '39.5 W', "10°75'", '1 2 3 4', 'north pole'])
    expect(typedDegrees(text, 'latitude'), text).toBeNull();
  expect(typedDegrees('181 W', 'longitude')).toBeNull();
});

test('a place is latitude and longitude in one text', () => {
  for (const text of [
    '39.7 N, 105 W',
    '39.7, -105',
    '39.7 -105',
    '39.7° N 105° W',
    "39°42' N, 105° W",
    '39.7,-105',
  ]) {
    const place = typedPlace(text);
    expect(place, text).not.toBeNull();
    expect([place!.latitudeDeg, place!.longitudeDeg], text).toEqual([
      expect.closeTo(39.7, 9),
      expect.closeTo(-105, 9),
    ]);
  }
  for (const text of ['39.7', 'Denver', '39.7 N', '105 W, 39.7 N', '39.7, -105, 3'])
    expect(typedPlace(text), text).toBeNull();
});
