// The pure parts of the charts: weeks, monthly bars, the vent diary, each from small data made here.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barField } from '../../../src/app/charts/month-bars.ts';
import { ventDiary, ventSentence } from '../../../src/app/charts/vent-diary.ts';
import type { OpeningYear, Year } from '../../../src/network/year.ts';
import { weekAround } from '../../../src/outcomes/extremes.ts';

test('a week has its hour in the middle day and never leaves the year', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 8759 }), (hour) => {
      const from = weekAround(hour);
      expect(from % 24).toBe(0);
      expect(from).toBeGreaterThanOrEqual(0);
      expect(from + 168).toBeLessThanOrEqual(8760);
      expect(hour).toBeGreaterThanOrEqual(from);
      expect(hour).toBeLessThan(from + 168);
    }),
  );
});

test('bars stack without gaps, gains up and losses down, to the height of their sums', () => {
  const rows = [
    { zone: 'house', cause: 'sun', months: Array(12).fill(40), year: 480 },
    { zone: 'house', cause: 'heating', months: Array(12).fill(10), year: 120 },
    { zone: 'house', cause: 'glass', months: Array(12).fill(-30), year: -360 },
  ];
  const { bars, zeroY, ticks } = barField(rows, 600, 200);
  const perUnit = (ticks[0]!.y - ticks.at(-1)!.y) / (ticks.at(-1)!.value - ticks[0]!.value);
  const july = bars.filter(({ month }) => month === 6);
  expect(july).toHaveLength(3);
  expect(Math.min(...july.map(({ y }) => y))).toBeCloseTo(zeroY - 50 * perUnit, 6);
  expect(Math.max(...july.map(({ y, height }) => y + height))).toBeCloseTo(zeroY + 30 * perUnit, 6);
  expect(bars.every(({ x, width }) => x >= 0 && x + width <= 600)).toBe(true);
});

function opening(
  id: string,
  kind: string,
  movesOnDay: readonly [number, number][],
  neglectedHours = 0,
): OpeningYear {
  const movesByDay = new Float64Array(365);
  for (const [day, moves] of movesOnDay) movesByDay[day] = moves;
  const moves = movesByDay.reduce((a, b) => a + b, 0);
  return {
    id,
    kind,
    open: new Float64Array(8760),
    flow: new Float64Array(8760),
    moves,
    movesByDay,
    neglectedHours,
    airings: 0,
    heatedOpenHours: 0,
    heatedOpenJ: 0,
  };
}

test('the vent diary counts what people move, names the busiest month and what was left undone', () => {
  const year = {
    openings: [
      opening('house cracks', 'cracks', []),
      opening('open side', 'door', []),
      opening(
        'house windows',
        'vent',
        [
          [0, 2],
          [200, 6],
          [201, 25],
        ],
        300,
      ),
    ],
  } as unknown as Year;
  const rows = ventDiary(year);
  expect(rows.map(({ label }) => label)).toEqual(['house windows']);
  expect(rows[0]).toMatchObject({ moves: 33, busiestDay: { day: 201, moves: 25 } });
  expect(rows[0]!.movesByMonth[6]).toBe(31);
  expect(ventSentence(rows)).toBe(
    'Somebody or something moves a vent or a door 33 times a year; in July 1.0 times a day. In 300 hours a vent should have been moved and was not.',
  );
  expect(ventSentence([])).toBe('There is nothing to open.');
});
