// Loggers' files without a line of names, in invented forms: what can be told beyond doubt is taken and said, what cannot is
// refused by naming what is missing.
import { describe, expect, test } from 'vitest';
import { readLogger } from '../../src/loggers/logger-file.ts';

const stamp = (i: number) =>
  new Date(Date.UTC(2026, 0, 13) + i * 600_000).toISOString().slice(0, 16).replace('T', ' ');
const german = (i: number) => {
  const [date, clock] = stamp(i).split(' ') as [string, string];
  return [date.split('-').reverse().join('.'), clock] as const;
};
const airC = (i: number) => 20 + (i % 7) / 10;
const percent = (i: number) => 48 + (i % 5);
const file = (row: (i: number) => string) => Array.from({ length: 300 }, (_, i) => row(i)).join('\r\n');
const read = (row: (i: number) => string) => readLogger(file(row), { utcOffsetH: -7 });

describe('taken, and said', () => {
  test.each<[string, (i: number) => string, string[]]>([
    ['a time and a number', (i) => `${stamp(i)},${airC(i).toFixed(1)}`, ['temperature']],
    [
      'temperature and humidity',
      (i) => `${stamp(i)},${airC(i).toFixed(1)},${percent(i)}`,
      ['temperature', 'humidity'],
    ],
    [
      'running numbers, date and clock apart, decimal commas',
      (i) => `${i + 1};${german(i).join(';')};${airC(i).toFixed(1).replace('.', ',')};${percent(i)},0;`,
      ['temperature', 'humidity'],
    ],
    [
      'units in the cells, humidity first',
      (i) => `${stamp(i)}\t${percent(i)} %\t${(32 + 1.8 * airC(i)).toFixed(1)} °F`,
      ['humidity', 'temperature'],
    ],
    ['seconds since 1970', (i) => `${1_768_262_400 + 600 * i},${airC(i).toFixed(2)}`, ['temperature']],
  ])('%s', (_, row, kinds) => {
    const result = read(row);
    if (!result.ok) throw new Error(result.faults.join('\n'));
    const { columns, notes, stepMin } = result.file;
    expect(stepMin).toBe(10);
    expect(columns.map(({ kind }) => kind)).toEqual(kinds);
    expect(columns.map(({ readings }) => readings)).toEqual(kinds.map(() => 300));
    const temperature = columns.find(({ kind }) => kind === 'temperature')!.values[10]!;
    expect(temperature).toBeGreaterThan(20);
    expect(temperature).toBeLessThan(20.7);
    expect(notes.join(' ')).toContain('no line of names');
    expect(notes.join(' ')).toContain('temperature in °');
  });

  test('a fault still names its own line', () => {
    const result = read((i) => `${i === 150 ? '2026-02-30 00:00' : stamp(i)},${airC(i).toFixed(1)}`);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.faults[0]).toMatch(/^line 151, column "time": found "2026-02-30 00:00"/);
  });
});

describe('refused, and what is missing is said', () => {
  test.each<[string, (i: number) => string, RegExp]>([
    [
      '°F or %',
      (i) => `${stamp(i)},${(32 + 1.8 * airC(i)).toFixed(1)}`,
      /whether column 2, 68 to 69\.1, is °F or %/,
    ],
    [
      'a dry room or two rooms',
      (i) => `${stamp(i)},${airC(i).toFixed(1)},${(airC(i) + 3).toFixed(1)}`,
      /two temperatures/,
    ],
    ['whole numbers between commas', (i) => `${stamp(i)},${20 + (i % 2)},${i % 10}`, /decimal commas/],
    ['three numbers', (i) => `${stamp(i)};${airC(i)};${percent(i)};3.1`, /one or two columns .* here are 3/],
    ['no clock', (i) => `${stamp(i).slice(0, 10)},${airC(i).toFixed(1)}`, /a time of day is needed/],
    ['pressure', (i) => `${stamp(i)},${1000 + airC(i)}`, /neither a room’s temperature nor its humidity/],
  ])('%s', (_, row, said) => {
    const result = read(row);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.faults[0]).toContain('a line of names above the first row');
    expect(result.faults[0]).toMatch(said);
  });
});
