// The one door: what it hands out, and that neither of its two old traps is left.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { EXAMPLES, readWeather, runYear } from '../src/daystone.ts';

const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
const read = await readWeather(
  readFileSync(join(import.meta.dirname, '../climates', `${design.climate}.txt`)),
);
if (!read.ok) throw new Error('the climate of the example does not read');
const typicalYear = read.year;

test('a design and a typical year give model, climate, year and an outcome with its findings', () => {
  const { model, climate, year, figures, outcome } = runYear(design, typicalYear);
  expect(model.zones.map(({ id }) => id)).toEqual(year.zones.map(({ id }) => id));
  expect(climate.year).toBe(typicalYear);
  expect(outcome.findings.length).toBeGreaterThan(0);
  expect({ ...outcome, findings: undefined }).toEqual({ ...figures, findings: undefined });
});

test('a design that asks for a hotter year gets one', () => {
  const hotter = runYear(
    { ...design, hotter: { winterK: 2, summerK: 2, waveDays: 0, waveK: 0 } },
    typicalYear,
  );
  expect(hotter.climate.year.dryBulbC[0]! - typicalYear.dryBulbC[0]!).toBeCloseTo(2, 6);
  expect(hotter.outcome.heating.energyKWh).toBeLessThan(
    runYear(design, typicalYear).outcome.heating.energyKWh,
  );
});

test('sentences come in the units asked for', () => {
  const texts = (units: 'metric' | 'us') => runYear(design, typicalYear, { units }).outcome.findings;
  expect(JSON.stringify(texts('us'))).toContain('°F');
  expect(JSON.stringify(texts('metric'))).not.toContain('°F');
});
