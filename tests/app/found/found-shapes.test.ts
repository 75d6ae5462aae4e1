// The picture of a match, and where a logger likely hung.
import { expect, test } from 'vitest';
import { foundShapes } from '../../../src/app/found/found-shapes.ts';
import { likelyPlace, placesIn } from '../../../src/app/found/places.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';

const hours = 24 * 6;
const period = { startMs: Date.UTC(2026, 0, 12), hours };
const measured = Float64Array.from({ length: hours }, (_, hour) => 18 + 3 * Math.sin(hour / 4));
measured.fill(Number.NaN, 40, 50);
const unseen = Uint8Array.from({ length: hours }, (_, hour) => (hour >= 96 ? 1 : 0));
const columns = { period, utcOffsetH: 0, measured, drawn: null, found: null, unseen };

test('a dot a reading, a hole where there is none, and a band over the days kept unseen', () => {
  const shapes = foundShapes(columns, 700, 240);
  expect(shapes.dots.match(/M/g)).toHaveLength(hours - 10);
  expect(shapes.drawn).toBe('');
  // Yesterday's line begins on the second day and is cut by yesterday's hole.
  expect(shapes.yesterday.match(/M/g)).toHaveLength(2);
  expect(shapes.unseen).toHaveLength(1);
  const [[from, to]] = shapes.unseen as [[number, number]];
  expect((to - from) / (shapes.plot.right - shapes.plot.left)).toBeCloseTo(2 / 6, 6);
  expect(shapes.days.map(({ day }) => day.date)).toEqual([12, 13, 14, 15, 16, 17].map((day) => `${day} Jan`));
});

test('dates are named as far apart as they have room, and nothing turns inside out while the page is laid out', () => {
  expect(foundShapes(columns, 200, 240).days.filter(({ isNamed }) => isNamed)).toHaveLength(2);
  for (const [from, to] of foundShapes(columns, 3, 240).unseen) expect(to).toBeGreaterThan(from);
});

test('a logger’s place by its names: rooms of a divided house, the sunspace, outdoors', () => {
  const [closed, divided] = ['closed', 'divided'].map((id) => EXAMPLES.find((one) => one.id === id)!.design);
  expect(placesIn(closed!).map(({ zone }) => zone)).toEqual(['house', 'sunspace']);
  expect(likelyPlace(closed!, 'log 12.csv', 'T')).toBe('house');
  expect(likelyPlace(closed!, 'winter garden.csv', 'T')).toBe('sunspace');
  expect(likelyPlace(closed!, 'outside.csv', 'Temp')).toBe('outdoors');
  const rooms = placesIn(divided!);
  expect(rooms.length).toBeGreaterThan(2);
  for (const { zone, words } of rooms.filter(({ zone }) => zone !== 'sunspace'))
    expect(likelyPlace(divided!, `${words.toUpperCase()} jan.csv`, 'Temperature')).toBe(zone);
});
