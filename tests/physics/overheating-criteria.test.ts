import { expect, test } from 'vitest';
import {
  judgeTm52,
  passesTm59Night,
  tm52Excess,
  tm52Limit,
  tm59NightHours,
} from '../../src/physics/overheating-criteria.ts';

const always = new Float64Array(8760).fill(1);
const means = new Float64Array(365).fill(20);
const yearAt = (tempC: number) => new Float64Array(8760).fill(tempC);

test('a mild year fails nothing and a hot one fails all three', () => {
  const mild = judgeTm52(yearAt(24), means, always, 52);
  expect(mild.failed).toEqual([]);
  expect(mild.overheats).toBe(false);
  expect(mild.worstExcessK).toBe(0);
  const hot = judgeTm52(yearAt(34), means, always, 52);
  expect(hot.failed).toEqual([1, 2, 3]);
  expect(hot.overheats).toBe(true);
  expect(hot.hourShare).toBe(1);
  expect(hot.worstDayWeight).toBe(24 * 6);
  expect(hot.occupiedHours).toBe(153 * 24);
});

test('a long mild excess of 1 K fails the share and the day, a spike of 5 K only the peak', () => {
  const long = judgeTm52(yearAt(tm52Limit(20) + 1), means, always, 52);
  expect(long.failed).toEqual([1, 2]);
  const spike = yearAt(20);
  spike[24 * 180 + 15] = tm52Limit(20) + 5;
  expect(judgeTm52(spike, means, always, 52).failed).toEqual([3]);
});

test('heat in January counts in the south and heat in July in the north, never the other way round', () => {
  const [january, july] = [yearAt(20), yearAt(20)];
  january.fill(35, 0, 24 * 31);
  july.fill(35, 24 * 181, 24 * 212);
  expect(judgeTm52(january, means, always, -36).overheats).toBe(true);
  expect(judgeTm52(january, means, always, 36).overheats).toBe(false);
  expect(judgeTm52(july, means, always, 36).overheats).toBe(true);
  expect(judgeTm52(july, means, always, -36).overheats).toBe(false);
});

test('the seasons are May to September and November to March, with no day outside', () => {
  const only = (day: number) => {
    const year = yearAt(20);
    year.fill(35, 24 * day, 24 * (day + 1));
    return year;
  };
  const hours = (day: number, latitude: number) => judgeTm52(only(day), means, always, latitude).hoursOver;
  expect([119, 120, 272, 273].map((day) => hours(day, 52))).toEqual([0, 24, 24, 0]);
  expect([303, 304, 364, 0, 89, 90].map((day) => hours(day, -36))).toEqual([0, 24, 24, 24, 24, 0]);
});

test('hours when nobody is there do not count', () => {
  const verdict = judgeTm52(yearAt(34), means, new Float64Array(8760), 52);
  expect(verdict.occupiedHours).toBe(0);
  expect(verdict.hourShare).toBe(0);
  expect(verdict.overheats).toBe(false);
});

test('the excess is rounded to whole kelvin', () => {
  expect([0.4, 0.5, 1.4, 1.5, 4.4].map((excess) => tm52Excess(25 + excess, 25))).toEqual([0, 1, 1, 2, 4]);
});

test('night hours run from 22 to 7 o’clock only', () => {
  const byDay = yearAt(20);
  for (let day = 0; day < 365; day++) byDay.fill(30, 24 * day + 7, 24 * day + 22);
  expect(tm59NightHours(byDay)).toBe(0);
  const oneNight = yearAt(20);
  oneNight.fill(30, 22, 24 + 7);
  expect(tm59NightHours(oneNight)).toBe(9);
  expect(passesTm59Night(0)).toBe(true);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => judgeTm52(new Float64Array(100), means, always, 52)).toThrow(/operativeC.length is 100/);
  expect(() => passesTm59Night(-1)).toThrow(/warmNightHours is -1/);
});
