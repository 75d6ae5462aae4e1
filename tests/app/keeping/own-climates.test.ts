import { expect, test } from 'vitest';
import { isOwnClimate, ownKey } from '../../../src/app/keeping/own-climates.ts';
import { readWeatherText } from '../../../src/weather/reader.ts';
import { climateText } from '../../weather/weather-files.ts';

const read = readWeatherText(climateText('denver'));
if (!read.ok) throw new Error('the bundled climate does not read');
const { year } = read;

test('the same hours have the same key, other hours of the same name another', () => {
  const again = { ...year, dryBulbC: Float64Array.from(year.dryBulbC) };
  expect(ownKey(again)).toBe(ownKey(year));
  again.dryBulbC[4000]! += 0.1;
  expect(ownKey(again)).not.toBe(ownKey(year));
  expect(ownKey({ ...year, windSpeed: year.windSpeed.map((speed) => speed * 2) })).not.toBe(ownKey(year));
});

test('a key is told from a bundled climate’s id and fits into a design', () => {
  const key = ownKey({ ...year, id: 'x'.repeat(300) });
  expect(isOwnClimate(key)).toBe(true);
  expect(key.length).toBeLessThanOrEqual(120);
  expect(isOwnClimate('denver')).toBe(false);
});
