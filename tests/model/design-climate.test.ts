// A design in a hotter year: the climate it runs in is named, added to once, and the same wherever a run is made.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { withHotter } from '../../src/design/hotter.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { climateOfDesign, yearOfDesign } from '../../src/model/design-climate.ts';
import { createJobRunner } from '../../src/questions/run-job.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../src/weather/typical-year.ts';
import { fileYear } from '../weather/weather-files.ts';

const { design } = EXAMPLES[2]!;
const HOTTER = { winterK: 1, summerK: 3, waveDays: 10, waveK: 5 };
const hot = withHotter(design, HOTTER);
const real = fileYear('723170TYA.CSV');
const mean = (column: Float64Array) => column.reduce((sum, value) => sum + value, 0) / HOURS;

test('without the block the climate is the site’s own', async () => {
  const climate = prepareClimate(await real);
  expect(climateOfDesign(design, climate)).toBe(climate);
  expect(climateOfDesign(withHotter(design, { ...HOTTER, winterK: 0, summerK: 0, waveK: 0 }), climate)).toBe(
    climate,
  );
});

test('the shift and the wave arrive in the hours, once, and in one name', async () => {
  const year = await real;
  const climate = prepareClimate(year);
  const made = climateOfDesign(hot, climate);
  expect(climateOfDesign(hot, climate)).toBe(made);
  expect(climateOfDesign(hot, made).year).toBe(made.year);
  expect(yearOfDesign(hot, made.year)).toBe(made.year);
  // A cosine between 1 and 3 K has the mean 2 K; the wave adds 5 K over 10 days less its two slopes of 2.5 days.
  expect(mean(made.year.dryBulbC) - mean(year.dryBulbC)).toBeCloseTo(2 + (5 * 7.5) / 365, 1);
  expect(made.year.site.name).toMatch(
    /^.*, hotter \(\+1\.\d K to \+[23]\.\d K by month; heat wave of 10 days, \+5 K, from \d+ \w+\)$/,
  );
  expect(made.year.source.match(/changed:/g)).toHaveLength(1);
});

test('in the south summer is at the turn of the year', async () => {
  const year = await real;
  const south: TypicalYear = { ...year, site: { ...year.site, latitudeDeg: -36 } };
  const { dryBulbC } = yearOfDesign(hot, south);
  const january = mean(dryBulbC.subarray(0, 744)) - mean(south.dryBulbC.subarray(0, 744));
  const july = mean(dryBulbC.subarray(4344, 5088)) - mean(south.dryBulbC.subarray(4344, 5088));
  expect(january).toBeGreaterThan(july);
});

test('a question’s runs stand in the design’s own hotter year, and its own changes come on top', async () => {
  const run = createJobRunner(prepareClimate(await real));
  const job = { id: 'a', label: 'a', at: {} };
  const plain = run({ ...job, design }).outcome;
  const hotter = run({ ...job, design: hot }).outcome;
  const hottest = run({ ...job, design: hot, change: { shiftK: Array(12).fill(2) } }).outcome;
  expect(hotter.site.name).toContain('hotter');
  expect(hotter.heating.energyKWh).toBeLessThan(plain.heating.energyKWh);
  expect(hottest.zones.house.maxOperativeC).toBeGreaterThan(hotter.zones.house.maxOperativeC);
  expect(run({ ...job, design }).outcome).toEqual(plain);
});

test('the block is checked like every other number, and designs without it still open', () => {
  expect(parseDesign(JSON.parse(JSON.stringify(design)))).toEqual({ ok: true, design });
  expect(parseDesign(JSON.parse(JSON.stringify(hot)))).toEqual({ ok: true, design: hot });
  const faultsOf = (hotter: unknown) => {
    const result = parseDesign({ ...design, hotter });
    return result.ok ? [] : result.faults.map(({ path, allowed }) => `${path}: ${allowed}`);
  };
  expect(faultsOf({ ...HOTTER, summerK: 30 })).toEqual(['hotter.summerK: a number from -3 to 8']);
  expect(faultsOf({ ...HOTTER, waveDays: 10.5 })).toEqual(['hotter.waveDays: a whole number from 3 to 30']);
  expect(faultsOf({ ...HOTTER, more: 1 })).toEqual(['hotter.more: no such key']);
});
