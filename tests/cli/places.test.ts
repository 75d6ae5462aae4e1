// `places` and `--place`: what is printed, and what is refused with one line.
import { expect, test } from 'vitest';
import { answerLine } from '../../src/cli/batch-line.ts';
import { climateCommand } from '../../src/cli/climate.ts';
import { placesCommand } from '../../src/cli/places.ts';
import { yearCommand } from '../../src/cli/year.ts';
import { readWeatherText } from '../../src/weather/reader.ts';
import { faultsOf, outputOf } from './run-command.ts';

test('one line a place: name, region, country, latitude, longitude, elevation', async () => {
  const lines = (await outputOf(placesCommand, 'Santa Fe, New Mexico', '--most', '2')).split('\n');
  expect(lines).toHaveLength(2);
  expect(lines[0]).toMatch(
    /^Santa Fe {2,}New Mexico {2,}United States {2,}35\.\d\d {2,}-10[56]\.\d\d {2,}2\d\d\d$/,
  );
  const [first] = JSON.parse(await outputOf(placesCommand, 'Thimphu', '--json'));
  expect(first).toMatchObject({ name: 'Thimphu', country: 'Bhutan', countryCode: 'BT' });
  expect(Object.keys(first).slice(0, 7)).toEqual([
    'name',
    'region',
    'country',
    'countryCode',
    'latitudeDeg',
    'longitudeDeg',
    'elevationM',
  ]);
});

test('a southern latitude is no flag', async () => {
  const [place] = JSON.parse(await outputOf(placesCommand, '-33.9, 18.4', '--json'));
  expect(place).toMatchObject({ latitudeDeg: -33.9, longitudeDeg: 18.4, country: 'South Africa' });
});

test('the normals of a place are a file that --weather takes', async () => {
  const text = await outputOf(
    placesCommand,
    'Bergamo',
    '--normals',
    '--exposure',
    'sheltered',
    '--elevation',
    '300',
  );
  const read = readWeatherText(text);
  expect(read).toMatchObject({
    ok: true,
    year: { site: { elevationM: 300, name: 'Bergamo, Lombardy, Italy' } },
  });
  expect(read.ok && read.year.credit).toContain('Deutscher Wetterdienst');
});

test('the climate of a place says what it rests on', async () => {
  const text = await outputOf(climateCommand, '--place', 'Leh, India');
  for (const words of ['not measured there', 'stations that weigh most', 'Wind is not known', 'GeoNames'])
    expect(text).toContain(words);
});

test('a line of a batch runs in the year of a place', async () => {
  const line = await answerLine('{"id":1,"design":"modest","place":"Taos, New Mexico"}', 1);
  expect(JSON.parse(line)).toMatchObject({ id: 1, site: { name: 'Taos, New Mexico, United States' } });
});

test.each([
  ['no such place', placesCommand, ['Xqzzyk'], 'Xqzzyk'],
  ['a latitude beyond the pole', placesCommand, ['95, 10'], '−90 to 90'],
  ['a number of places', placesCommand, ['Bath', '--most', '0'], '1 to 100'],
  ['a height without normals', placesCommand, ['Bath', '--elevation', '5'], '--normals'],
  [
    'another exposure',
    climateCommand,
    ['--place', 'Bath', '--exposure', 'windy'],
    'sheltered, open, ridge, coast',
  ],
  ['a height above the mountains', climateCommand, ['--place', 'Bath', '--elevation', '9000'], '6000'],
  ['two climates', yearCommand, ['modest', '--place', 'Bath', '--climate', 'denver'], 'one of them'],
  ['an exposure of no place', yearCommand, ['modest', '--exposure', 'open'], '--place'],
  ['a place that is none', yearCommand, ['modest', '--place', 'Xqzzyk'], 'Xqzzyk'],
  ['nothing to show', climateCommand, [], 'allowed'],
] as const)('%s is refused in one line', async (_, command, words, told) => {
  const faults = await faultsOf(command, ...words);
  expect(faults).toHaveLength(1);
  expect(faults[0]).toContain(told);
});

test('a line of a batch with both a place and a climate is answered with what is allowed', async () => {
  const line = await answerLine('{"id":7,"design":"modest","place":"Bath","climate":"denver"}', 1);
  expect(JSON.parse(line)).toMatchObject({ id: 7, error: expect.stringContaining('no climate beside it') });
});
