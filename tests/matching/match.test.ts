// A match of a house to its record: least squares against the closed form, a twin whose truth comes back, and what must
// show when something is wrong. Many draws of every case: `npm run twins`.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBundle } from '../../src/daystone.ts';
import type { UnknownId } from '../../src/design/as-found.ts';
import type { MatchRunner, Target } from '../../src/matching/house-record.ts';
import { leastSquares } from '../../src/matching/least-squares.ts';
import { type Match, matchHouse } from '../../src/matching/match.ts';
import { noiseOf, whitened } from '../../src/matching/noise.ts';
import { heatLossWords, heldWords, tieWords, unknownWords, verdictWords } from '../../src/matching/words.ts';
import { modelWith, valueAt } from '../../src/model/unknowns.ts';
import { autoregressive, randomNumbers } from '../../src/weather/synthetic/random-numbers.ts';
import { smallHouse } from '../network/small-house.ts';
import { TWIN_CASES } from './twin-cases.ts';
import { plainMatchRunner, twinOf } from './twin-records.ts';

const read = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
if (!read.ok) throw new Error('the climate does not read');
const typical = read.year;
const matchOf = (name: string, seed: number): Promise<Match> => {
  const [made, windows] = TWIN_CASES[name]!;
  const { record } = twinOf(made, typical, seed);
  return matchHouse(record, plainMatchRunner(record), { windows });
};

describe('least squares', () => {
  // Readings linear in the places of two unknowns; the answer is that of the normal equations with priors, by hand:
  // (XᵀX/σ² + 1) z = Xᵀy/σ² for columns at right angles, each for itself.
  const hours = 240;
  const wave = (turns: number) =>
    Float64Array.from(
      { length: hours },
      (_, hour) => Math.sqrt(2) * Math.sin((2 * Math.PI * turns * hour) / hours),
    );
  const [first, second] = [wave(17), wave(31)];
  const random = randomNumbers(1);
  const measured = first.map((value, hour) => 20 + 0.8 * value - 1.5 * second[hour]! + 0.4 * random.normal());
  const target: Target = { name: 'house', zone: 'house', kind: 'temperature', radiantShare: 0, measured };
  const ids: readonly UnknownId[] = ['stove', 'opensAbove'];
  const runner: MatchRunner = {
    run: async (jobs) =>
      jobs.map(({ values }) => {
        const [a, b] = [(values.stove ?? 0) / 1.5, (values.opensAbove ?? 0) / 2];
        return [first.map((value, hour) => 20 + a * value + b * second[hour]!)];
      }),
  };

  test('places and their spread are those of the normal equations', async () => {
    const fitted = [new Uint8Array(hours).fill(1)];
    const estimate = await leastSquares(runner, {
      unknowns: ids,
      targets: [target],
      fitted,
      jobOf: (values) => ({ values }),
    });
    const { sd } = estimate.noise[0]!;
    expect(sd).toBeCloseTo(0.4, 1);
    [first, second].forEach((column, i) => {
      const product = column.reduce((sum, value, hour) => sum + value * (measured[hour]! - 20), 0);
      const weight = hours / sd ** 2;
      // What little lasts from hour to hour by chance, and offset and mean, are worth the tolerance.
      expect(estimate.places[i]).toBeCloseTo(product / sd ** 2 / (weight + 1), 1);
      expect(Math.sqrt(estimate.covariance[i]![i]!) / Math.sqrt(1 / (weight + 1))).toBeCloseTo(1, 0);
    });
  });

  test('drift with jitter on it is told from a short drift, and taken out', () => {
    const rate = 0.85;
    const drift = autoregressive(randomNumbers(2), 5000, rate);
    const jitter = randomNumbers(3);
    const noise = noiseOf(
      'temperature',
      drift.map((value) => value + 0.4 * jitter.normal()),
    );
    expect(Math.abs(noise.lasting - rate)).toBeLessThan(0.04);
    const white = whitened(drift, noiseOf('temperature', drift));
    expect(Math.abs(noiseOf('temperature', white).lasting)).toBeLessThan(0.06);
  });
});

test('every unknown changes the model, and at the drawing’s value nothing', () => {
  const model = smallHouse();
  const ids: readonly UnknownId[] = [
    'airtightness',
    'sun',
    'insulation',
    'gains',
    'stove',
    'opensAbove',
    'ventArea',
    'moisture',
    'ground',
    'wind',
    'mass',
  ];
  for (const id of ids) {
    expect(modelWith(model, { [id]: valueAt(id, 0) })).toEqual(model);
    expect(modelWith(model, { [id]: valueAt(id, 1) })).not.toEqual(model);
  }
});

describe('a winter fortnight, unheated, windows shut', async () => {
  const match = await matchOf('winter, no heating, shut, air', 100);

  test('matches on days it had not seen, and beats the drawing and yesterday', () => {
    // Noise of the loggers is 0.3 K of drift and 0.1 K of jitter, 0.32 K in all; 1.3 times that is allowed.
    expect(match.unseenMisfitK).toBeLessThan(1.3 * 0.32 + 0.1);
    expect(match.unseenMisfitK).toBeLessThan(match.yesterdayMisfitK);
    expect(match.unseenMisfitK).toBeLessThan(match.drawnMisfitK / 2);
    expect(match.verdict).toBe('matches');
  });

  test('says the ground was not learnt, ties draughts to wind, and speaks in plain words', () => {
    expect(match.held.map(({ id }) => id)).toContain('ground');
    expect(match.ties.some(({ between }) => between.includes('wind'))).toBe(true);
    const said = [
      verdictWords(match),
      heatLossWords(match)!,
      ...match.unknowns.map((found) => unknownWords(found)),
      ...match.held.map(heldWords),
      ...match.ties.map(tieWords),
    ];
    for (const sentence of said) expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(said.join(' ')).not.toMatch(/NaN|undefined|null/);
  });
});

test('a search ended early is judged by what was found, says so, and is wider for it', async () => {
  const [made, windows] = TWIN_CASES['winter, no heating, shut, air']!;
  const { record } = twinOf(made, typical, 100);
  const rounds: number[] = [];
  const match = await matchHouse(record, plainMatchRunner(record), {
    windows,
    onRound: () => rounds.push(1),
    isEnough: () => rounds.length > 3,
  });
  expect(match.runs).toBeLessThan(70);
  expect(match.notes.join(' ')).toContain('ended early');
  expect(match.verdict).not.toBe('no-better');
});

test('a logger whose clock is an hour late is caught, not fitted away', async () => {
  const match = await matchOf('wrong: logger’s clock an hour late', 101);
  expect(match.clockOffH).toBe(-1);
  expect(match.notes.join(' ')).toContain('clock');
});

test('a stove that nobody told of shows as evenings warmer than computed', async () => {
  const match = await matchOf('wrong: a stove untold', 102);
  expect(match.patterns[0]?.with).toBe('hour');
  expect(match.patterns[0]?.words).toMatch(/from (18|20) to/);
});
