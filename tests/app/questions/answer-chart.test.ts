import { expect, test } from 'vitest';
import { DASHES, drawChart, niceScale, tidy } from '../../../src/app/questions/answer-chart.ts';
import { WAYS_TO_BUILD } from '../../../src/questions/building-work.ts';
import type { Chart } from '../../../src/questions/question.ts';
import { madeFigures } from '../../questions/made-figures.ts';

const figures = (tooHotHours: number, sunspaceWarmestC: number | null) =>
  madeFigures({ tooHotHours, sunspaceWarmestC });
const chart: Chart = {
  id: 'glass',
  title: 'Glass',
  x: { label: 'glass', unit: 'm²' },
  y: ['tooHotHours', 'sunspaceWarmestC'],
  curves: [
    {
      id: 'one',
      label: 'one mass',
      points: [
        { x: 0, run: 'a', figures: figures(0, null) },
        { x: 10, run: 'b', figures: figures(200, 40) },
        { x: 20, run: 'c', figures: figures(900, 48) },
      ],
    },
  ],
  marks: [{ id: 'm', kind: 'handbook', x: 12, label: '12 % of the floor', curve: null, source: 'practice' }],
};

test('a curve rises upward in the picture and keeps inside its frame, marks and limit too', () => {
  const { lines, frame, marks, limitY } = drawChart(chart, 'tooHotHours', 262, 'metric');
  const [first, second, third] = lines[0]!.points;
  expect(first!.y).toBeGreaterThan(second!.y);
  expect(second!.y).toBeGreaterThan(third!.y);
  for (const { x, y } of lines[0]!.points) {
    expect(x).toBeGreaterThanOrEqual(frame.left);
    expect(x).toBeLessThanOrEqual(frame.right);
    expect(y).toBeGreaterThanOrEqual(frame.top);
    expect(y).toBeLessThanOrEqual(frame.bottom);
  }
  expect(marks).toHaveLength(1);
  expect(limitY).toBeGreaterThan(third!.y);
  expect(limitY).toBeLessThan(second!.y);
});

test('a point without the figure is left out, and a chart of one value still has a scale', () => {
  expect(drawChart(chart, 'sunspaceWarmestC', null, 'metric').lines[0]!.points).toHaveLength(2);
  const flat = {
    ...chart,
    curves: [{ ...chart.curves[0]!, points: [chart.curves[0]!.points[0]!] }],
    marks: [],
  };
  for (const { x, y } of drawChart(flat, 'tooHotHours', null, 'metric').lines[0]!.points) {
    expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
  }
});

test('scales end on round numbers and say them without needless decimals', () => {
  expect(niceScale(0, 1603, 5).ticks).toEqual([0, 500, 1000, 1500, 2000]);
  expect(niceScale(3, 3, 5).high).toBeGreaterThan(3);
  expect([0.1 + 0.2, 12.34, 1234.5].map(tidy)).toEqual(['0.3', '12.3', '1235']);
});

test('shares of floor and wall stand under the scale at their areas, in both unit systems', () => {
  const shares = [
    { of: 'floor area', short: 'floor', wholeX: 100 },
    { of: 'equator-facing wall', short: 'wall', wholeX: 40 },
  ];
  const shared = { ...chart, x: { ...chart.x, shares } };
  for (const system of ['metric', 'us'] as const) {
    const { shareRows, lines, frame, height } = drawChart(shared, 'tooHotHours', null, system);
    expect(shareRows.map(({ head }) => head)).toEqual(['floor, %', 'wall, %']);
    const at = (row: number, percent: string) =>
      shareRows[row]!.ticks.find(({ text }) => text === percent)!.at;
    // The curve's points lie at 10 and 20 m²: 10 and 20 % of a floor of 100 m²; 20 m² is half of 40 m² of wall.
    expect(at(0, '10')).toBeCloseTo(lines[0]!.points[1]!.x, 9);
    expect(at(0, '20')).toBeCloseTo(lines[0]!.points[2]!.x, 9);
    expect(at(1, '50') ?? at(1, '40') + (at(1, '60') - at(1, '40')) / 2).toBeCloseTo(
      lines[0]!.points[2]!.x,
      9,
    );
    for (const { ticks, y } of shareRows) {
      expect(y).toBeLessThan(height - 8);
      for (const { at: x } of ticks) expect(x).toBeLessThanOrEqual(frame.right);
    }
  }
});

test('in US units the same curve has scales in square feet and Fahrenheit, and marks say so', () => {
  const { xTitle, yTitle, marks, yTicks } = drawChart(chart, 'sunspaceWarmestC', null, 'us');
  expect(xTitle).toBe('glass, ft²');
  expect(yTitle).toBe('sunspace, warmest hour, °F');
  // 12 m² · (1/0.3048)² = 129.17 ft²
  expect(marks[0]!.text).toBe('12 % of the floor: 129 ft²');
  // 48 °C = 118.4 °F is within the scale
  expect(Number(yTicks.at(-1)!.text)).toBeGreaterThanOrEqual(118.4);
});

test('letters of marks close together stand in rows of their own, and six curves have six dashes', () => {
  const marks = [0, 0.1, 0.2, 0.3, 15].map((x, i) => ({ ...chart.marks[0]!, id: `${i}`, x }));
  const drawing = drawChart({ ...chart, marks }, 'tooHotHours', null, 'metric');
  expect(drawing.marks.map(({ row }) => row)).toEqual([0, 1, 2, 3, 0]);
  expect(drawing.marks.map(({ letter }) => letter).join('')).toBe('abcde');
  expect(new Set(DASHES).size).toBeGreaterThanOrEqual(WAYS_TO_BUILD.length);
});
