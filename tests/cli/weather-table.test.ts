// A table of unknown origin given on the command line: what its columns and its clock are, said by flags.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { climateCommand } from '../../src/cli/climate.ts';
import { yearCommand } from '../../src/cli/year.ts';
import { madeTable, two } from '../weather/table/made-table.ts';
import { faultsOf, outputOf } from './run-command.ts';

let folder: string;
let file: string;

/** Headers that say nothing or the wrong thing; the air is 50 °F all year, the sun of a June day all year. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'daystone-'));
  file = join(folder, 'logger.csv');
  const text = madeTable(
    'stamp;inside;T1;light',
    (_, at) => [
      `2021-${two(at.month)}-${two(at.day)} ${two(at.hour)}:00`,
      21,
      50,
      Math.max(0, Math.round(700 * Math.sin(((at.hour - 5.5) / 13) * Math.PI))),
    ],
    ';',
  );
  writeFileSync(file, text);
});
afterAll(() => rmSync(folder, { recursive: true }));

const PLACE = [
  '--latitude',
  '40',
  '--longitude',
  '-105',
  '--elevation',
  '1600',
  '--site-name',
  'Logger hill',
];
const COLUMNS = ['--column', 'time=stamp', '--column', 'temperature=T1:F', '--column', 'global=light:W/m2'];

it('reads what the flags say', async () => {
  const words = [file, ...PLACE, ...COLUMNS, '--stamp', 'end', '--clock', 'local', '--json'];
  const climate = JSON.parse(await outputOf(climateCommand, ...words));
  expect(climate.site.name).toBe('Logger hill');
  expect(climate.year.meanC).toBeCloseTo(10, 9);
  const notes = climate.notes.join(' ');
  expect(notes).toContain('"T1" as air temperature in °F');
  expect(notes).toContain('Not used: "inside".');
  expect(notes).toContain('A stamp is taken as the end of what it covers, in local standard time');
});

it('leaves a column out', async () => {
  const words = [file, ...PLACE, ...COLUMNS, '--column', '-=light'];
  expect((await faultsOf(climateCommand, ...words))[0]).toContain('light');
  const without = [...COLUMNS.slice(0, 4), '--column', '-=light'];
  expect((await faultsOf(climateCommand, file, ...PLACE, ...without))[0]).toContain('global radiation');
});

it('names each refused value with what is allowed', async () => {
  const faults = await faultsOf(
    climateCommand,
    file,
    ...PLACE,
    ...['--column', 'warmth=T1', '--column', 'global=light:mph', '--stamp', 'middle', '--clock', 'summer'],
  );
  expect(faults).toHaveLength(4);
  expect(faults[0]).toMatch(/^--column: warmth; allowed: one of temperature, time, date/);
  expect(faults[1]).toMatch(/^--column: mph; allowed: one of W\/m², Wh\/m²/);
  expect(faults[2]).toBe('--stamp: middle; allowed: start, end, instant');
  expect(faults[3]).toBe('--clock: summer; allowed: local, utc');
  expect((await faultsOf(climateCommand, file, ...PLACE, '--column', 'time=when'))[0]).toContain(
    'found "when"; expected one of stamp, inside, T1, light',
  );
});

it('is refused beside a climate that is no table, and without a file', async () => {
  expect((await faultsOf(climateCommand, 'denver', '--stamp', 'end'))[0]).toBe(
    '--stamp: given beside a bundled climate; allowed: beside a weather file',
  );
  expect((await faultsOf(yearCommand, 'modest', '--column', 'time=stamp'))[0]).toBe(
    '--column: given beside a bundled climate; allowed: beside a weather file',
  );
});
