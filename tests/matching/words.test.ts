// What is said where a fit does no better than the drawing: a drawing that matches already is not called unmended.
import { expect, test } from 'vitest';
import type { Match } from '../../src/matching/match.ts';
import { nothingKeptWords, unknownWords, verdictWords } from '../../src/matching/words.ts';

const match = (drawnMisfitK: number, unseenMisfitK: number) =>
  ({ verdict: 'no-better', drawnMisfitK, unseenMisfitK, yesterdayMisfitK: 1 }) as Match;

test('a drawing that matches as it is needs no correction', () => {
  expect(verdictWords(match(0.3, 0.35))).toMatch(/^The drawing needs no correction.*within 0\.3 K/);
  expect(nothingKeptWords(match(0.3, 0.35))).toContain('its answers stand');
});

test('a drawing that misses, and a fit that does no better, correct nothing', () => {
  expect(verdictWords(match(1.4, 1.5))).toMatch(/^This record cannot correct the drawing/);
  expect(nothingKeptWords(match(1.4, 1.5))).toContain('does not correct the drawing');
});

test('what is hardly told says so with the range that fits, and is not called as drawn', () => {
  const found = { id: 'mass', value: 1.2, low: 0.5, high: 2.4, learnt: false } as const;
  expect(unknownWords(found)).toBe(
    'Mass of furniture and inner walls: hardly told; 20 % more, likely 50 % less to 140 % more.',
  );
});
