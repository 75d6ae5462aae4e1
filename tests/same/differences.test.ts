import { expect, test } from 'vitest';
import { differencesOf } from './differences.ts';

test('the last bit of one number in a column is seen', () => {
  const year = { zones: [{ id: 'house', airC: Float64Array.of(20, 21, 22) }], books: { heat: 1e-13 } };
  const same = { zones: [{ id: 'house', airC: Float64Array.of(20, 21, 22) }], books: { heat: 1e-13 } };
  expect(differencesOf(year, same)).toEqual({ compared: 5, differences: [] });
  same.zones[0]!.airC[1]! += 4e-15;
  expect(differencesOf(year, same).differences).toEqual([
    'zones.0.airC from row 1, by up to 3.55e-15 (1.8e-13 % of its range)',
  ]);
});

test('a column that is gone, a zero of the other sign and a number that is none are differences', () => {
  expect(differencesOf({ a: Float64Array.of(1) }, {}).differences).toHaveLength(1);
  expect(differencesOf({ a: 0 }, { a: -0 }).differences).toHaveLength(1);
  expect(differencesOf({ a: Number.NaN }, { a: Number.NaN }).differences).toEqual([]);
});
