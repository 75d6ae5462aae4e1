// What holds for every question: its runs, its partial answers, its closing sentence.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { LIMITS } from '../../src/design/limits.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { ownCriterion } from '../../src/design/too-hot-criterion.ts';
import { ask } from '../../src/questions/ask.ts';
import type { Answer } from '../../src/questions/question.ts';
import { QUESTIONS, questionById } from '../../src/questions/registry.ts';
import { varied, withGlassAsArea } from '../../src/questions/variation.ts';
import { madeBasis, madeRunner, plausible } from './made-runner.ts';

test('twelve questions, each with its own id, a title and a sentence that asks', () => {
  expect(QUESTIONS.map(({ id }) => id)).toEqual([
    'how-much-glass',
    'how-much-mass',
    'upright-or-leaning',
    'open-or-closed',
    'who-opens-the-vents',
    'do-without',
    'how-big-a-stove',
    'what-helps',
    'which-room',
    'what-matters-most',
    'hotter-year',
    'glass-and-mass-map',
  ]);
  for (const { id, title, asks } of QUESTIONS) {
    expect(questionById(id)?.title).toBe(title);
    expect(asks).toMatch(/^[A-Z].+\?$/);
  }
  expect(questionById('how-much-gold')).toBeUndefined();
});

/** Numbers anywhere in an answer that are none, or endless. */
function wrongNumbersIn(value: unknown, found: number[] = []): number[] {
  if (typeof value === 'number' && !Number.isFinite(value)) found.push(value);
  if (typeof value === 'object' && value !== null) {
    for (const part of Object.values(value)) wrongNumbersIn(part, found);
  }
  return found;
}

describe.each(QUESTIONS.map((question) => [question.id, question] as const))('%s', (_, question) => {
  test.each(EXAMPLES.map(({ id, design }) => [id, design] as const))(
    'answers for %s in one passage with figures, all of them numbers',
    async (_id, design) => {
      const runner = madeRunner(plausible);
      const answer = await ask(question, madeBasis(design), runner);
      expect(answer.complete).toBe(true);
      expect(answer.finding?.text).toMatch(/^[A-Z].*\d.*\.$/s);
      expect(answer.finding?.text).not.toMatch(/NaN|undefined|null|Infinity/);
      expect(Object.keys(answer.finding?.figures ?? {}).length).toBeGreaterThan(2);
      expect(wrongNumbersIn(answer)).toEqual([]);
      expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
      expect(new Set(runner.ran.map(({ id }) => id)).size).toBe(runner.ran.length);
      for (const job of runner.ran) expect(parseDesign(job.design)).toEqual({ ok: true, design: job.design });
      if (answer.proposal !== null) expect(parseDesign(answer.proposal.design).ok).toBe(true);
    },
  );

  test('counts hours above the temperature of the limit, whatever the design counts by', async () => {
    const runner = madeRunner(plausible);
    await ask(question, madeBasis(undefined, { criterion: ownCriterion(28, 87) }), runner);
    const counted = runner.ran.map(({ design: { comfort } }) => `${comfort.criterion} ${comfort.overheatC}`);
    expect(new Set(counted)).toEqual(new Set(['fixed 28']));
  });

  test('has an answer at every moment, without a closing sentence until all runs are in', async () => {
    const seen: Answer[] = [];
    let wanted = 0;
    await ask(question, madeBasis(undefined, { mapSide: 5 }), madeRunner(plausible), {
      onProgress: (progress) => {
        expect(progress.done).toBeLessThanOrEqual(progress.wanted);
        wanted = progress.wanted;
        seen.push(progress.soFar());
      },
    });
    expect(seen).toHaveLength(wanted);
    for (const answer of seen) expect([answer.complete, answer.finding]).toEqual([false, null]);
  });
});

test('any design that can be drawn has an answer to every question, zero glass and zero mass among them', async () => {
  const design = fc
    .tuple(
      fc.constantFrom(...EXAMPLES.map((example) => example.design)),
      fc.array(fc.tuple(fc.constantFrom(...LIMITS), fc.constantFrom(0, 0.5, 1)), { maxLength: 8 }),
      fc.constantFrom('none', 'open', 'closed'),
      fc.boolean(),
    )
    .map(([drawn, changes, join, isBare]) =>
      varied(withGlassAsArea(drawn), {
        ...Object.fromEntries(
          changes.map(([{ path, min, max }, place]) => [path, min + (max - min) * place]),
        ),
        'sunspace.join': join,
        ...(isBare ? { 'glass.value': 0, 'mass.areaM2': 0, 'vents.houseM2': 0, 'vents.sunspaceM2': 0 } : {}),
      }),
    );
  await fc.assert(
    fc.asyncProperty(design, fc.constantFrom(...QUESTIONS), async (drawn, question) => {
      const answer = await ask(question, madeBasis(drawn, { mapSide: 5 }), madeRunner(plausible));
      expect(answer.finding?.text ?? '').toMatch(/^[A-Z].*\.$/s);
      expect(answer.finding?.text).not.toMatch(/NaN|undefined|Infinity/);
      expect(wrongNumbersIn(answer)).toEqual([]);
    }),
    { numRuns: 150 },
  );
});

test('a question that never stops asking for runs is stopped', async () => {
  const question = questionById('hotter-year')!;
  let round = 0;
  const endless = {
    ...question,
    refine: () => [{ ...question.plan(madeBasis())[0]!, id: `again ${++round}` }],
  };
  await expect(ask(endless, madeBasis(), madeRunner(plausible))).rejects.toThrow('does not come to an end');
});
