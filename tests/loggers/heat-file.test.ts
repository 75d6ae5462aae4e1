// Heat and wood as people write them down: amounts in words and under names with a unit, tables of power, and what is wrong said
// with its line. The tables are made up; a pound is 0.45359237 kg (NIST SP 811).
import { describe, expect, test } from 'vitest';
import { readDiary } from '../../src/loggers/diary-file.ts';
import { amountIn, amountUnder } from '../../src/loggers/heat-amount.ts';
import { heatColumn, readHeat } from '../../src/loggers/heat-file.ts';

const choices = { utcOffsetH: -7, clock: 'standard' } as const;
const moment = (day: number, hour: number, minute: number) => Date.UTC(2026, 0, day, hour + 7, minute);
const amountsOf = (...lines: readonly string[]) => {
  const read = readHeat(lines.join('\n'), choices);
  if (!read.ok) throw new Error(read.faults.join());
  return read.diary.lines.map(({ fromMs, untilMs, amount }) => [
    (fromMs - moment(13, 0, 0)) / 3_600_000,
    (untilMs - fromMs) / 3_600_000,
    amount!.unit,
    amount!.value,
  ]);
};

test.each([
  ['stove, 8 kg', 'kg', 8],
  ['2,5 kg Buche', 'kg', 2.5],
  ['10 lb of pine', 'kg', 4.5359237],
  ['electric heater 1500 W', 'kW', 1.5],
  ['meter 12.5 kWh', 'kWh', 12.5],
  ['0 kg', 'kg', 0],
])('“%s”', (text, unit, value) => {
  expect(amountIn(text)).toMatchObject({ unit, isCounted: false });
  expect(amountIn(text)!.value).toBeCloseTo(value, 9);
});

test('logs are counted, a bare number has the unit of its column, and other words tell of no heat', () => {
  expect(amountIn('6 logs')).toMatchObject({ unit: 'kg', isCounted: true });
  expect(amountUnder('wood [kg]', '7.5')).toMatchObject({ unit: 'kg', value: 7.5 });
  expect(amountUnder('heat kW', '800 W')!.value).toBeCloseTo(0.8, 12);
  for (const text of ['stove', 'kitchen windows', '5 weeks', '3 kittens', '-4 kg'])
    expect(amountIn(text)).toBe(null);
});

test('loads of wood are put on at their moment, power lasts until the next row and not over a gap', () => {
  expect(amountsOf('time,wood [kg]', '2026-01-13 06:30,4', '2026-01-13 18:00,6.5')).toEqual([
    [6.5, 0, 'kg', 4],
    [18, 0, 'kg', 6.5],
  ]);
  expect(
    amountsOf(
      'Time;Heat meter (kW)',
      '13.01.2026 00:00;3,5',
      '13.01.2026 00:30;2',
      '13.01.2026 01:00;0',
      '13.01.2026 09:00;1',
    ),
  ).toEqual([
    [0, 0.5, 'kW', 3.5],
    [0.5, 0.5, 'kW', 2],
    [1, 1.25, 'kW', 0],
    [9, 0.5, 'kW', 1],
  ]);
});

test('a column of heat is none of sun, warmth or damp', () => {
  expect(heatColumn(['Time', 'Global radiation [W/m²]', 'Temperature [°C]'])).toBe(-1);
  expect(heatColumn(['Time', 'Wind', 'Power [W]'])).toBe(2);
});

describe('what is wrong is said with its line', () => {
  test.each([
    [
      'no column of heat',
      ['time,temperature', '2026-01-13 07:00,20', '2026-01-13 08:00,20'],
      /kW, kWh, kg or logs/,
    ],
    [
      'a word for a number',
      ['time,wood [kg],no', '2026-01-13 07:00,plenty,1', '2026-01-13 08:00,3,2'],
      /line 2.*plenty.*0 or more/,
    ],
    ['below nought', ['time,wood [kg]', '2026-01-13 07:00,-3', '2026-01-13 08:00,3'], /line 2.*-3/],
    [
      'no number at all',
      ['time,wood [kg],no', '2026-01-13 07:00,,1', '2026-01-13 08:00,,2'],
      /at least one row/,
    ],
  ])('%s', (_, lines, said) => {
    const read = readHeat(lines.join('\n'), choices);
    expect(read.ok ? '' : read.faults.join(' ')).toMatch(said);
  });
});

describe('fires in a diary', () => {
  const read = (...lines: readonly string[]) => readDiary(lines.join('\n'), choices);

  test('an amount stands in a column of its own or in the words, and needs no end where it is wood', () => {
    const result = read(
      'from,until,what,amount',
      '2026-01-13 17:30,22:00,stove,8 kg',
      '2026-01-14 07:00,,stove,5 logs',
      '2026-01-14 07:05,07:20,kitchen windows,',
    );
    if (!result.ok) throw new Error(result.faults.join());
    expect(result.diary.lines.map(({ fromMs, untilMs, amount }) => [fromMs, untilMs, amount?.unit])).toEqual([
      [moment(13, 17, 30), moment(13, 22, 0), 'kg'],
      [moment(14, 7, 0), moment(14, 7, 0), 'kg'],
      [moment(14, 7, 5), moment(14, 7, 20), undefined],
    ]);
  });

  test('power without an end, and an amount that is none, are refused', () => {
    const said = (line: string) => {
      const result = read('from,until,what,amount', line);
      return result.ok ? '' : result.faults.join();
    };
    expect(said('2026-01-13 17:30,,heater,2 kW')).toMatch(/until when/);
    expect(said('2026-01-13 17:30,22:00,stove,a lot')).toMatch(/line 2.*a lot.*kg, logs/);
  });
});
