import { expect, test } from 'vitest';
import { fillGaps, gapsOf } from '../../../src/weather/assembly/gap-filling.ts';

const { NaN: hole } = Number;

test('a hole of three hours is filled along a straight line, one of four is left and reported', () => {
  const column = Float64Array.from([0, hole, hole, hole, 8, hole, hole, hole, hole, 1]);
  const { filled, tooLong } = fillGaps(column);
  expect([...column.subarray(0, 5)]).toEqual([0, 2, 4, 6, 8]);
  expect(filled).toBe(3);
  expect(tooLong).toEqual([{ start: 5, hours: 4 }]);
  expect(column.subarray(5, 9).every(Number.isNaN)).toBe(true);
});

test('a hole over the end of the year is one hole', () => {
  const column = Float64Array.from([hole, 3, 3, 3, 3, 0, hole]);
  expect(gapsOf(column)).toEqual([{ start: 6, hours: 2 }]);
  fillGaps(column);
  expect([column[6], column[0]]).toEqual([1, 2]);
});

test('a column of nothing but holes is one hole', () => {
  expect(gapsOf(new Float64Array(5).fill(hole))).toEqual([{ start: 0, hours: 5 }]);
  expect(fillGaps(new Float64Array(5).fill(hole)).filled).toBe(0);
});

test('a whole column has no holes', () => {
  expect(gapsOf(new Float64Array(5))).toEqual([]);
});
