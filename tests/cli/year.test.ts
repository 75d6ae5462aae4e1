import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { bundledClimate } from '../../src/cli/bundled-climates.ts';
import { outcomeTable } from '../../src/cli/outcome-table.ts';
import { yearCommand } from '../../src/cli/year.ts';
import { runYear } from '../../src/daystone.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { FuelOutcome } from '../../src/outcomes/fuel.ts';
import type { Outcome } from '../../src/outcomes/outcome.ts';
import type { PriceList } from '../../src/quantities/prices.ts';
import { faultsOf, outputOf } from './run-command.ts';

const WOOD: FuelOutcome = {
  fuel: 'wood',
  fuelKWh: 0,
  lostKWh: 0,
  kg: 1000,
  litres: null,
  therms: null,
  stackedM3: 0,
  cords: 0.8,
  loads: 200,
  loadsOnBusiestDay: 5,
  daysWithFire: 90,
};

async function outcomeOf(...words: string[]): Promise<Outcome> {
  return JSON.parse(await outputOf(yearCommand, ...words, '--json')) as Outcome;
}

/** The cheapest of the examples, with its hours in a file: a command runs eight years, for it says how sure its figures are. */
const folder = mkdtempSync(join(tmpdir(), 'daystone-'));
const hours = join(folder, 'hours.csv');
const modest = outcomeOf('modest', '--hourly', hours);
afterAll(() => rmSync(folder, { recursive: true }));

describe('a year of a design', () => {
  it('tells its fuel in money where there is a price for it', async () => {
    const outcome = await modest;
    const fuel = { ...WOOD, fuelKWh: 4000, stackedM3: 3 };
    const wood = { 'fuel wood': { amount: 95, per: 'stere' } } as const;
    const told = (prices: PriceList['prices']) =>
      outcomeTable({ ...outcome, fuel }, false, [], { currency: 'EUR', wage: null, prices });
    expect(told(wood)).toContain('Fuel in money: EUR 285 a year, by your price\n');
    expect(told({ adobe: { amount: 9, per: 'm³' } })).toContain(
      'Fuel in money: no price for it among yours\n',
    );
    expect(told({})).not.toContain('money');
  });

  for (const { id, design } of EXAMPLES) {
    it(`of the example ${id} closes its books`, async () => {
      const read = (await bundledClimate(design.climate))!;
      if (!read.ok) throw new Error(`the climate of ${id} does not read`);
      const { outcome } = runYear(design, read.year);
      expect(outcome.design).toBe(design.name);
      expect(Math.abs(outcome.books.heatResidual)).toBeLessThan(1e-9);
      expect(Math.abs(outcome.books.waterResidual)).toBeLessThan(1e-9);
      expect(outcome.zones.house.mouldIndexMax).toBeLessThanOrEqual(6);
      expect('sunspace' in outcome.zones).toBe(design.sunspace.join !== 'none');
      expect(outcome.findings.length).toBeGreaterThan(3);
      // A house may lack its sunspace.
      const said = JSON.stringify(outcome);
      expect(said).not.toMatch(/null|NaN/);
      if (id === 'modest') expect({ ...(await modest), howSure: undefined }).toEqual(JSON.parse(said));
    });
  }

  it('takes another climate by its id, north or south', async () => {
    const outcome = await outcomeOf('modest', '--climate', 'southern-chile');
    expect(outcome.site.latitudeDeg).toBeLessThan(0);
    expect(outcome.equatorGlass.incidentKWh).toBeGreaterThan(1000);
  });

  it('takes a weather file in the place of the design’s climate', async () => {
    const bundled = join(import.meta.dirname, '../../climates/denver.txt');
    expect(await outcomeOf('modest', '--weather', bundled)).toEqual(await modest);
  });

  it('prints a table with the headline figures and the findings', async () => {
    const table = await outputOf(yearCommand, 'leaning');
    expect(table).toMatch(/\n {2,}house +sunspace\n/);
    expect(table).toMatch(/hours too hot \(EN 16798-1, category II\) +\d+ +\d+/);
    expect(table).toMatch(/\nDANGER: /);
    for (const line of table.split('\n')) expect(line.length).toBeLessThan(100);
  });

  it('writes 8760 hours that agree with the outcome', async () => {
    const outcome = await modest;
    const lines = readFileSync(hours, 'utf8').trimEnd().split('\n');
    expect(lines).toHaveLength(8761);
    const column = lines[0]!.split(',').indexOf('houseOperativeC');
    const operative = lines.slice(1).map((line) => Number(line.split(',')[column]));
    expect(Math.max(...operative)).toBeCloseTo(outcome.zones.house.maxOperativeC, 2);
    const heating = lines[0]!.split(',').indexOf('houseHeatingW');
    const energy = lines.slice(1).reduce((sum, line) => sum + Number(line.split(',')[heating]), 0) / 1000;
    expect(energy).toBeCloseTo(outcome.heating.energyKWh, 0);
  });

  it('names what is wrong and what is allowed', async () => {
    expect((await faultsOf(yearCommand, 'modest', '--climate', 'mars'))[0]).toMatch(
      /^--climate: mars; allowed: denver, /,
    );
    expect((await faultsOf(yearCommand, 'modest', '--climate', 'denver', '--weather', 'x.csv'))[0]).toContain(
      'both given',
    );
    expect((await faultsOf(yearCommand, 'modest', '--weather', 'gone.csv'))[0]).toContain(
      'gone.csv: no such file',
    );
    expect((await faultsOf(yearCommand, 'modest', '--hourly', '/nowhere/x.csv'))[0]).toContain('--hourly');
    expect((await faultsOf(yearCommand, 'modest', '--jsno'))[0]).toContain('unknown flag --jsno');
  });
});
