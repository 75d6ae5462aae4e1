// The picture of several versions' weeks, against plain geometry: what is hotter stands higher, a level line lies on
// its tick, marks never run into each other.

import { expect, test } from 'vitest';
import { OVERLAY_HEIGHT, overlaidWeek } from '../../../src/app/versions/overlaid-weeks.ts';

const flat = (mark: string, value: number) => ({ mark, values: new Float64Array(168).fill(value) });

test('a line at 20° lies on the tick of 20, over the whole width, and a hotter one above it', () => {
  const { lines, yTicks, frame } = overlaidWeek([flat('A', 20), flat('B', 30), flat('out', 0)], 0, 640, []);
  const tick = yTicks.find(({ value }) => value === 20)!;
  const points = lines[0]!.points.split(' ').map((point) => point.split(',').map(Number));
  expect(points).toHaveLength(168);
  expect(points[0]![0]).toBeCloseTo(frame.left, 1);
  expect(points.at(-1)![0]).toBeCloseTo(frame.right, 1);
  for (const [, y] of points) expect(y).toBeCloseTo(tick.at, 1);
  expect(lines[1]!.endY).toBeLessThan(lines[0]!.endY);
  expect(lines[2]!.endY).toBeGreaterThan(lines[0]!.endY);
});

test('marks of lines that end together stand apart and inside the picture', () => {
  const marks = ['A', 'B', 'C', 'D', 'out'];
  const { lines, frame } = overlaidWeek(
    [...marks.map((mark) => flat(mark, 20)), flat('low', 19)],
    0,
    360,
    [],
  );
  const heights = lines.map(({ markY }) => markY).sort((a, b) => a - b);
  heights.slice(1).forEach((y, i) => {
    expect(y - heights[i]!).toBeGreaterThanOrEqual(13.9);
  });
  expect(heights[0]!).toBeGreaterThanOrEqual(frame.top);
  expect(heights.at(-1)!).toBeLessThanOrEqual(OVERLAY_HEIGHT);
});

test('seven days are named, the last week of the year too, and a limit out of sight is left out', () => {
  const { days, limits } = overlaidWeek([flat('A', 20), flat('out', 10)], 8592, 640, [16, 26]);
  expect(days.map(({ text }) => text)).toEqual(
    ['25', '26', '27', '28', '29', '30', '31'].map((day) => `${day} Dec`),
  );
  expect(limits.map(({ value }) => value)).toEqual([16]);
});
