import { expect, test } from 'vitest';
import { ImpossibleYear, requirePossible } from '../../src/outcomes/impossible-year.ts';
import { madeYear, madeZone } from './made-year.ts';

const yearAt = (airC: number | ((hour: number) => number)) =>
  madeYear({ zones: [madeZone('house', { airC })], panes: [], openings: [] });

test('rooms as hot as closed glass and as cold as the pole pass', () => {
  for (const airC of [-80, 20, 140]) requirePossible(yearAt(airC));
});

test('a single hour beyond what can be is refused, with room, temperature and what to look at', () => {
  const hot = yearAt((hour) => (hour === 5000 ? 916.13 : 20));
  expect(() => requirePossible(hot)).toThrow(ImpossibleYear);
  expect(() => requirePossible(hot)).toThrow(/air of the house would reach 916 °C; allowed: -90 to 150 °C/);
  expect(() => requirePossible(yearAt(-95))).toThrow(/would reach -95 °C/);
  expect(() => requirePossible(yearAt((hour) => (hour === 1 ? Number.NaN : 0)))).toThrow(/no number/);
});
