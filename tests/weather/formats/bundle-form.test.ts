import { expect, test } from 'vitest';
import { readBundle, writeBundle } from '../../../src/weather/formats/bundle-form.ts';
import { describeFault } from '../../../src/weather/read-result.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';
import { climateText, fileYear, yearOf } from '../weather-files.ts';

const sum = (column: Float64Array) => column.reduce((a, b) => a + b, 0);
const columnsOf = (year: TypicalYear) =>
  Object.entries(year).filter((entry): entry is [string, Float64Array] => entry[1] instanceof Float64Array);

test('a TMY3 year comes back exactly', async () => {
  const year = await fileYear('725650TYA.CSV');
  const back = yearOf(readBundle(writeBundle(year)));
  for (const [name, column] of columnsOf(year)) {
    const other = back[name as keyof TypicalYear] as Float64Array;
    expect(Math.max(...column.map((value, hour) => Math.abs(value - other[hour]!)))).toBeLessThan(1e-9);
  }
  const facts = ({ site, id, source, credit, monthYears, sunMinute, notes }: TypicalYear) => {
    return { site, id, source, credit, monthYears, sunMinute, notes };
  };
  expect(facts(back)).toEqual(facts(year));
});

test('a PVGIS year comes back within half a step, its sums within 0.01 %', async () => {
  const year = await fileYear('tmy_45.000_8.000_2005_2023.csv');
  const back = yearOf(readBundle(writeBundle(year)));
  expect(back.sunMinute).toBe(year.sunMinute);
  for (const name of [
    'globalHorizontal',
    'beamNormal',
    'diffuseHorizontal',
    'pressurePa',
    'skyLongwave',
  ] as const) {
    expect(Math.abs(sum(back[name]!) / sum(year[name]!) - 1)).toBeLessThan(1e-4);
  }
  expect(Math.abs(sum(back.dryBulbC) - sum(year.dryBulbC)) / 8760).toBeLessThan(0.002);
  expect(
    Math.max(...back.dryBulbC.map((value, hour) => Math.abs(value - year.dryBulbC[hour]!))),
  ).toBeLessThan(0.0501);
});

test('what was written is what is read and written again', () => {
  const text = climateText('denver');
  expect(writeBundle(yearOf(readBundle(text)))).toBe(text);
});

test('a damaged day is named by its line', () => {
  const lines = climateText('denver').split('\n');
  const first = lines.findIndex((line) => line.startsWith('column: '));
  const faults = (changed: string[]) => {
    const result = readBundle(changed.join('\n'));
    return result.ok ? [] : result.faults.map(describeFault);
  };
  expect(faults(lines.with(first + 3, '1 2 3'))[0]).toContain(`line ${first + 4}, column "dryBulbC"`);
  expect(faults(lines.filter((line) => !line.startsWith('latitude')))[0]).toContain('latitude');
  expect(faults(lines.with(first, 'column: dryBulbC 0'))[0]).toContain('column: name step');
  expect(faults(lines.slice(0, first + 366))[0]).toContain('expected this column');
});
