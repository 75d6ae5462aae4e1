// The two pictures of a climate, held to what can be seen from the numbers by eye, and one kept as a drawing (regression:
// a change of the picture should be looked at; nothing outside says where a pixel belongs).
import { expect, test } from 'vitest';
import { bandField, sunField } from '../../../src/app/climate/glance-shapes.ts';
import { glanceWords } from '../../../src/app/climate/glance-words.ts';
import { SHIFTS, shiftOf } from '../../../src/app/climate/hotter-shifts.ts';
import { summariseClimate } from '../../../src/weather/prepared/climate-summary.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { readWeatherText } from '../../../src/weather/reader.ts';
import { climateText } from '../../weather/weather-files.ts';

const months = Array.from({ length: 12 }, (_, m) => ({
  high: 10 + m,
  low: m,
  highest: 20 + m,
  lowest: -10 + m,
}));

test('the band runs along the highs and back along the lows', () => {
  const { band, ticks, whiskers } = bandField(months, 120, 50);
  // From −10 to 31 the round axis goes in tens from −10 to 40: one pixel a degree.
  expect(ticks.map(({ value, y }) => [value, y])).toEqual([
    [-10, 50],
    [0, 40],
    [10, 30],
    [20, 20],
    [30, 10],
    [40, 0],
  ]);
  expect(band).toBe(
    'M5 30 L15 29 L25 28 L35 27 L45 26 L55 25 L65 24 L75 23 L85 22 L95 21 L105 20 L115 19 ' +
      'L115 29 L105 30 L95 31 L85 32 L75 33 L65 34 L55 35 L45 36 L35 37 L25 38 L15 39 L5 40 Z',
  );
  expect(whiskers[0]).toEqual({ x: 5, top: 20, bottom: 50 });
  expect(whiskers).toHaveLength(12);
});

test('bars of the planes stand side by side on the line, as tall as their sun', () => {
  const { bars, ticks } = sunField([Array(12).fill(50), Array(12).fill(100)], 120, 100);
  expect(bars).toHaveLength(24);
  expect(ticks.at(-1)!.value).toBe(100);
  for (const { plane, y, height } of bars) {
    expect(height).toBe(plane === 0 ? 50 : 100);
    expect(y + height).toBe(100);
  }
  const [first] = bars;
  const beside = bars.find(({ plane, month }) => plane === 1 && month === 0)!;
  expect(beside.x).toBeCloseTo(first!.x + first!.width, 9);
  expect(bars.every(({ x, width }) => x >= 0 && x + width <= 120)).toBe(true);
});

test('a dark or an even year does not break the axes', () => {
  const even = Array(12).fill({ high: 5, low: 5, highest: 5, lowest: 5 });
  expect(bandField(even, 100, 50).band).not.toContain('NaN');
  expect(sunField([Array(12).fill(0)], 100, 50).bars.every(({ height }) => height === 0)).toBe(true);
});

test('the sentences name the months and figures of the climate, in both unit systems', () => {
  const read = readWeatherText(climateText('denver'));
  if (!read.ok) throw new Error('the bundled climate does not read');
  const summary = summariseClimate(prepareClimate(read.year));
  const metric = glanceWords(summary, 'metric');
  expect(metric.warmth).toMatch(
    /^February is the coldest month, −0\.1.°C on the mean, and June the warmest, 23\.1.°C;/,
  );
  expect(metric.sun).toMatch(/April is the cloudiest month\.$/);
  const us = glanceWords(summary, 'us');
  expect(us.warmth).toContain('°F·d');
  expect(us.warmth + us.sun).not.toMatch(/°C|kWh\/m²|NaN/);
});

test('the shifts offered are found again from their numbers', () => {
  for (const shift of SHIFTS) expect(shiftOf(shift)?.id).toBe(shift.id);
  expect(shiftOf({ winterK: 0.5, summerK: 3 })).toBe(undefined);
});
