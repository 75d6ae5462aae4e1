// `as-found` from files to verdict: weather and loggers as tables of different forms, of a house that differs from its
// drawing by known numbers; and what is wrong with the flags. The files are made up.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { asFoundCommand } from '../../src/cli/as-found.ts';
import { TWIN_CASES } from '../matching/twin-cases.ts';
import { twinOf } from '../matching/twin-records.ts';
import { bundledYear } from '../weather/bundled-climates.ts';
import { faultsOf, outputOf } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'daystone-as-found-'));
const [weather, room, stray, diary, heat] = [
  'weather.csv',
  'front-room.csv',
  'letter.txt',
  'diary.csv',
  'heat.csv',
].map((name) => join(folder, name)) as [string, string, string, string, string];
const HOUR = 3_600_000;

beforeAll(() => {
  const { record } = twinOf(
    TWIN_CASES['winter, stove, its heat written down, shut, air']![0],
    bundledYear('denver'),
    7,
  );
  const { year, firstRow, startMs, hours } = record.weather;
  const wall = (ms: number) =>
    new Date(ms + year.site.utcOffsetH * HOUR).toISOString().slice(0, 16).replace('T', ' ');
  const rows = Array.from({ length: hours }, (_, hour) => {
    const row = (firstRow + hour) % 8760;
    const cells = [
      year.dryBulbC,
      year.dewPointC,
      year.windSpeed,
      year.globalHorizontal,
      year.diffuseHorizontal,
    ];
    return [wall(startMs + hour * HOUR), ...cells.map((column) => column[row]!.toFixed(1))].join(',');
  });
  const head =
    'Time,Air temperature [°C],Dew point [°C],Wind speed [m/s],Global radiation [W/m²],Diffuse radiation [W/m²]';
  writeFileSync(weather, [head, ...rows].join('\n'));
  const { measured } = record.targets[0]!;
  const logged = Array.from(measured, (airC, hour) => {
    const [date, clock] = wall(record.startMs + (hour + 0.5) * HOUR).split(' ') as [string, string];
    return `${date.split('-').reverse().join('.')};${clock};${airC.toFixed(1).replace('.', ',')}`;
  });
  writeFileSync(room, ['Datum;Uhrzeit;Temperatur [°C]', ...logged].join('\r\n'));
  writeFileSync(diary, 'from,until,what\n2021-03-01 07:00,07:20,windows\n2021-01-20 07:00,07:20,roof hatch');
  const given = record.series.flatMap((one) => (one.kind === 'heat' ? [Array.from(one.values)] : []))[0]!;
  const metered = given.map((watt, hour) => {
    const [date, clock] = wall(record.startMs + hour * HOUR).split(' ') as [string, string];
    return `${date} ${clock};${(watt / 1000).toFixed(3).replace('.', ',')}`;
  });
  writeFileSync(heat, ['Zeit;Leistung [kW]', ...metered].join('\n'));
  writeFileSync(stray, 'Dear neighbour,\nthe house is too cold.');
});
afterAll(() => rmSync(folder, { recursive: true }));

test('a record becomes a verdict, numbers with intervals, words, and hours', async () => {
  const hourly = join(folder, 'hours.csv');
  const words = [
    'modest',
    '--weather',
    weather,
    '--logger',
    `house=${room}`,
    '--shut',
    '2021-01-15..2021-01-28',
    '--diary',
    diary,
    '--heat',
    heat,
  ];
  const answer = JSON.parse(
    await outputOf(asFoundCommand, ...words, '--workers', '1', '--hourly', hourly, '--json'),
  );
  expect(answer.unseenMisfitK).toBeLessThan(answer.drawnMisfitK);
  expect(answer.windows).toBe('shut');
  expect(answer.period.from).toBe('2021-01-15 00:00');
  for (const { low, value, high, learnt } of answer.unknowns)
    if (learnt) expect(low <= value && value <= high).toBe(true);
  expect(answer.unknowns.length).toBeGreaterThan(3);
  const ids = answer.unknowns.map(({ id }: { id: string }) => id);
  expect(ids).toContain('fires');
  expect(ids).not.toContain('stove');
  expect(answer.words.held.join(' ')).toContain('what was burnt is written down');
  expect(answer.words.draughts).toContain('leaks and the wind at the house in one');
  expect(answer.notes.join(' ')).toMatch(/kWh to the house, from 2021-01-15 to 2021-01-28/);
  expect(answer.words.verdict).toMatch(/unseen|not seen/);
  expect(answer.notes.join(' ')).toContain('standard time');
  expect(answer.notes.join(' ')).toMatch(/Of the diary 1 of 2 lines are of other days.*roof hatch.*not used/);
  expect(readFileSync(hourly, 'utf8').split('\n').length).toBe(24 * 14 + 2);
});

test('the page for the people of the house is one page, and warns of what can hurt', async () => {
  const page = await outputOf(asFoundCommand, '--protocol');
  expect(page.split('\n').length).toBeLessThan(45);
  for (const danger of ['carbon monoxide', 'mould', 'radon', 'freeze']) expect(page).toContain(danger);
});

describe('what is wrong with it is said', () => {
  test.each([
    ['no design', ['--weather', weather], 'DESIGN'],
    ['no weather', ['modest', '--logger', `house=${room}`], '--weather'],
    ['no logger', ['modest', '--weather', weather], '--logger'],
    ['a room the design has not', ['modest', '--weather', weather, '--logger', `cellar=${room}`], 'cellar'],
    ['a letter for a logger', ['modest', '--weather', weather, '--logger', `house=${stray}`], 'column names'],
    [
      'a file that is not there',
      ['modest', '--weather', join(folder, 'none.csv'), '--logger', `house=${room}`],
      'none.csv',
    ],
    [
      'dates that are none',
      ['modest', '--weather', weather, '--logger', `house=${room}`, '--shut', 'May'],
      '--shut: May',
    ],
    [
      'days nobody measured',
      ['modest', '--weather', weather, '--logger', `house=${room}`, '--from', '2021-01-27'],
      'at least 5',
    ],
    [
      'a letter for a diary',
      ['modest', '--weather', weather, '--logger', `house=${room}`, '--diary', stray],
      'from, until and what',
    ],
    [
      'a letter for a table of heat',
      ['modest', '--weather', weather, '--logger', `house=${room}`, '--heat', stray],
      'rows of times and amounts',
    ],
    [
      'a clock nobody knows',
      ['modest', '--weather', weather, '--logger', `house=${room}`, '--clock', 'Mars'],
      'Mars',
    ],
  ])('%s', async (_, words, said) => {
    expect((await faultsOf(asFoundCommand, ...words)).join('\n')).toContain(said);
  });
});
