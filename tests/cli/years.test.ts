// Actual years: named as such beside the normals of their place, and several of them run as a set; and the spread of a made
// year over its draws.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { climateCommand } from '../../src/cli/climate.ts';
import { yearsCommand } from '../../src/cli/years.ts';
import { EXAMPLES, runYear } from '../../src/daystone.ts';
import { drawnOf, howSureOf, howSureSentences, rangeOf } from '../../src/questions/how-sure.ts';
import { createPlainRunner } from '../../src/questions/runner.ts';
import { METRIC_WORDS } from '../../src/questions/words.ts';
import { actualYearOf } from '../../src/weather/actual-year.ts';
import { preparedOnce } from '../../src/weather/prepared/prepared-climate.ts';
import { bundledYear } from '../weather/bundled-climates.ts';
import { madeFrom } from '../weather/synthetic/made-from-real.ts';
import { climateText } from '../weather/weather-files.ts';
import { faultsOf, outputOf } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'daystone-years-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Denver's hours stamped with one calendar year, and warmed. */
function stamped(year: number, warmerK: number): string {
  const text = climateText('denver')
    .replace(/^month years: .*$/m, `month years: ${new Array(12).fill(year).join(' ')}`)
    .replace(/(column: dryBulbC 0\.1\n)((?:[^c].*\n)+)/, (_, head: string, rows: string) => {
      const warmer = (n: string) => String(Number(n) + 10 * warmerK);
      return head + rows.replace(/(\d+×)?(-?\d+)/g, (_cell, times = '', n: string) => times + warmer(n));
    });
  const file = join(folder, `denver-${year}.txt`);
  writeFileSync(file, text);
  return file;
}
const [usual, hot] = [stamped(2015, 0), stamped(2018, 3)];

test('a file of one calendar year is named as such, hotter or colder by what it was made so', async () => {
  const kelvin = async (file: string) => {
    const words = await outputOf(climateCommand, file);
    expect(words).toContain('an actual year');
    const [, size, side] = /it is ([\d.]+) K (hotter|colder)/.exec(words) ?? [];
    return Number(size ?? 0) * (side === 'colder' ? -1 : 1);
  };
  expect((await kelvin(hot)) - (await kelvin(usual))).toBeCloseTo(3, 0);
  expect(actualYearOf(bundledYear('denver'))).toBeNull();
});

test('several actual years run as a set, each by its year, with how many stay within', async () => {
  const { years, within } = JSON.parse(await outputOf(yearsCommand, 'modest', usual, hot, '--json'));
  expect(years.map((line: { year: string }) => line.year)).toEqual(['2015', '2018']);
  expect(years[1].tooHotHours).toBeGreaterThan(years[0].tooHotHours);
  expect(years[1].heatingKWh).toBeLessThan(years[0].heatingKWh);
  const counted = years.filter(
    (line: { tooHotHours: number; allowedHours: number }) => line.tooHotHours <= line.allowedHours,
  );
  expect(within).toBe(counted.length);
  const faults = await faultsOf(yearsCommand, 'modest', usual, join(folder, 'gone.csv'));
  expect(faults).toEqual([expect.stringContaining('gone.csv: no such file')]);
});

test('a made year shows its spread over draws, the same each time, a real one none', async () => {
  const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
  const real = bundledYear('denver');
  const made = preparedOnce(madeFrom(real));
  const sure = await howSureOf(design, createPlainRunner(made), true);
  const drawn = drawnOf(sure);
  expect(drawn).toHaveLength(5);
  expect(drawn[0]!.heatingKWh).toBe(runYear(design, made).figures.heating.energyKWh);
  expect(new Set(drawn.map(({ heatingKWh }) => heatingKWh)).size).toBe(5);
  const [again] = await createPlainRunner(made).run([
    { id: 'again', label: 'again', design, at: {}, change: { draw: 4 } },
  ]);
  expect(again!.outcome.heating.energyKWh).toBe(drawn[4]!.heatingKWh);
  expect(howSureSentences(sure, METRIC_WORDS).at(-1)).toContain('Drawn 5 times from the same normals');
  expect(rangeOf('heatingKWh', sure).most).toBeGreaterThanOrEqual(
    Math.max(...drawn.map(({ heatingKWh }) => heatingKWh)),
  );
  expect(drawnOf({ ...sure, turned: sure.turned.filter(({ unknown }) => !unknown.change) })).toEqual([]);
});
