import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bracketOf, nextPlaces } from '../../src/questions/bracket.ts';

test('the bracket is where trials first turn, however often they turn after', () => {
  const trials = [4, 0, 3, 1, 2].map((x) => ({ x, passes: x !== 2 && x !== 4 }));
  expect(bracketOf(trials)).toEqual({ passesAtStart: true, before: 1, after: 2 });
});

test('without a turn there is nothing to run next', () => {
  const bracket = bracketOf([
    { x: 0, passes: false },
    { x: 9, passes: false },
  ]);
  expect(bracket).toEqual({ passesAtStart: false, before: 9, after: null });
  expect(nextPlaces(bracket, 3, 1)).toEqual([]);
});

test('no trials are refused', () => {
  expect(() => bracketOf([])).toThrow('trials has 0 entries');
});

test('for any turn the search ends within its resolution, on the right side, in few rounds', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      fc.integer({ min: 1, max: 7 }),
      fc.integer({ min: 2, max: 200 }),
      (turn, places, parts) => {
        const resolution = 1 / parts;
        const trials = [0, 1].map((x) => ({ x, passes: x <= turn }));
        let rounds = 0;
        for (;;) {
          const next = nextPlaces(bracketOf(trials), places, resolution);
          if (next.length === 0) break;
          expect(next.length).toBeLessThanOrEqual(places);
          trials.push(...next.map((x) => ({ x, passes: x <= turn })));
          rounds++;
        }
        const { before, after } = bracketOf(trials);
        expect(before).toBeLessThanOrEqual(turn);
        expect(after).toBeGreaterThan(turn);
        expect(after! - before).toBeLessThanOrEqual(resolution * 1.000001);
        expect(rounds).toBeLessThanOrEqual(Math.ceil(Math.log(parts) / Math.log(places + 1)) + 1);
      },
    ),
  );
});
