// Source: CIBSE TM52 (2013; limit and criteria read in the institution's journal) and TM59 (2017; from memory, high
// confidence). Days and hours are worked by hand.
import { expect, test } from 'vitest';
import {
  judgeTm52,
  passesTm59Night,
  TM52_LIMITS,
  TM59_NIGHT,
  tm52DailyWeight,
  tm52Limit,
  tm59NightHours,
} from '../../src/physics/overheating-criteria.ts';
import { check } from './ledger.ts';

test('upper limit at running means of 15 and 20 °C', () => {
  for (const [mean, reference] of [
    [15, 26.75],
    [20, 28.4],
  ] as const) {
    check({
      source: 'CIBSE TM52',
      case: `running mean ${mean} °C`,
      quantity: 'upper limit',
      reference,
      ours: tm52Limit(mean),
      allowed: 1e-9,
      unit: '°C',
      mark: 'computed',
    });
  }
});

test('three hours at 1 K and two at 2 K weigh 7 and fail criterion 2 alone', () => {
  const weight = tm52DailyWeight([0, 1, 1, 1, 2, 2, -3]);
  check({
    source: 'CIBSE TM52',
    case: '3 h at 1 K, 2 h at 2 K',
    quantity: 'daily weight',
    reference: 7,
    ours: weight,
    allowed: 0,
    unit: 'K·h',
    mark: 'computed',
  });
  expect(weight).toBeGreaterThan(TM52_LIMITS.dailyWeight);
  const operative = new Float64Array(8760).fill(20);
  const start = 24 * 200 + 12;
  [1, 1, 1, 2, 2].forEach((excess, i) => {
    operative[start + i] = tm52Limit(20) + excess;
  });
  const verdict = judgeTm52(operative, new Float64Array(365).fill(20), new Float64Array(8760).fill(1), 52);
  expect(verdict.failed).toEqual([2]);
  expect(verdict.worstDayWeight).toBe(7);
  expect(verdict.overheats).toBe(false);
});

test('TM59: a bedroom has 3285 night hours, 32 above 26 °C pass and 33 fail', () => {
  const always = tm59NightHours(new Float64Array(8760).fill(26.1));
  check({
    source: 'CIBSE TM59',
    case: 'bedroom, always above 26 °C',
    quantity: 'night hours',
    reference: 3285,
    ours: always,
    allowed: 0,
    unit: 'h',
    mark: 'memory',
  });
  expect(TM59_NIGHT.nightHours).toBe(9 * 365);
  expect(passesTm59Night(32)).toBe(true);
  expect(passesTm59Night(33)).toBe(false);
});
