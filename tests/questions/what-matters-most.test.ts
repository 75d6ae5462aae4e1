import { expect, test } from 'vitest';
import { valueAt } from '../../src/design/design-path.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { LIMITS } from '../../src/design/limits.ts';
import { ask } from '../../src/questions/ask.ts';
import { figuresOf } from '../../src/questions/figures.ts';
import type { Run } from '../../src/questions/question.ts';
import { withGlassAsArea } from '../../src/questions/variation.ts';
import { effectsOf, ranked, whatMattersMost } from '../../src/questions/what-matters-most.ts';
import { type Formula, madeBasis, madeResult, madeRunner } from './made-runner.ts';

const MODEST = withGlassAsArea(EXAMPLES[2]!.design);

/** Weights by which made-up hours follow single inputs. */
const WEIGHTS: readonly (readonly [string, number])[] = [
  ['vents.opensAboveC', 300],
  ['air.ach50', -40],
  ['envelope.roofResistance', 25],
  ['people.count', 10],
];
const linear: Formula = (design) => ({
  overheatedHours: WEIGHTS.reduce(
    (sum, [path, weight]) => sum + weight * (valueAt(design, path) as number),
    5000,
  ),
});

function spanOf(path: string): number {
  const { plausible } = LIMITS.find((limit) => limit.path === path)!;
  const values = [...plausible, valueAt(MODEST, path) as number];
  return Math.max(...values) - Math.min(...values);
}

test('the ranking is that of one-at-a-time differences', async () => {
  const basis = madeBasis(MODEST);
  const runner = madeRunner(linear);
  const answer = await ask(whatMattersMost, basis, runner);
  const expected = WEIGHTS.map(([path, weight]) => [path, Math.abs(weight) * spanOf(path)] as const).sort(
    (one, other) => other[1] - one[1],
  );
  const runs = new Map<string, Run>(
    runner.ran.map((job) => {
      const result = madeResult(job, linear);
      return [job.id, { job, result, figures: figuresOf(result.outcome) }];
    }),
  );
  const found = ranked(effectsOf(basis, runs), 'tooHotHours').slice(0, 4);
  expect(found.map(({ input }) => input.path)).toEqual(expected.map(([path]) => path));
  found.forEach(({ span }, i) => {
    expect(span.tooHotHours).toBeCloseTo(expected[i]![1], 6);
  });
  expect(answer.finding!.figures.hottestInput).toBe(expected[0]![0]);
  const [table] = answer.tables;
  expect(table!.rows[0]!.at(-1)).toBeCloseTo(expected[0]![1], 6);
});

test('what moves no hour too hot is not named for it', async () => {
  const told = async (formula: Formula) =>
    (await ask(whatMattersMost, madeBasis(MODEST), madeRunner(formula))).finding!.text;
  expect(await told(() => ({ overheatedHours: 40 }))).toMatch(/^Nothing that we moved changes the hours/);
  const one: Formula = ({ vents }) => ({ overheatedHours: 1000 - 10 * vents.opensAboveC });
  expect(await told(one)).toContain('Nothing else moves them.');
  expect(await told(() => ({ overheatedHours: 0 }))).toContain(
    'For back-up heat it is nothing, for damp nothing.',
  );
  // Names are those of a sentence, and a range with one end is one figure.
  expect(await told(one)).toMatch(/^The temperature above which vents open moves the hours too hot most: by/);
  expect(await told(() => ({ overheatedHours: 0 }))).toMatch(/expect 0 hours too hot, and 1000 kWh of heat/);
});

test('every input of the table has its runs, and the spread as many samples as asked', async () => {
  const runner = madeRunner(linear);
  const answer = await ask(whatMattersMost, madeBasis(MODEST, { samples: 100 }), runner);
  expect(runner.ran.filter(({ at }) => at.sample !== undefined)).toHaveLength(100);
  const moved = new Set(runner.ran.map(({ at }) => at.path).filter((path) => path !== undefined));
  expect(answer.tables[0]!.rows).toHaveLength(moved.size);
  expect(moved.size).toBeGreaterThan(35);
});

test('the range in the sentence holds eight of ten samples', async () => {
  const runner = madeRunner(linear);
  const answer = await ask(whatMattersMost, madeBasis(MODEST), runner);
  const { hoursLow, hoursHigh } = answer.finding!.figures as Record<string, number>;
  const samples = runner.ran.filter(({ at }) => at.sample !== undefined);
  const within = samples.filter(({ design }) => {
    const { overheatedHours } = linear(design, samples[0]!);
    return overheatedHours >= hoursLow! && overheatedHours <= hoursHigh!;
  });
  // 64 samples cut at interpolated tenths: 51 or 52 lie inside.
  expect(Math.abs(within.length - 51.2)).toBeLessThan(1.5);
});
