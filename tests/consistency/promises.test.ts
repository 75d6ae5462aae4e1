// What an answer promises of a changed house is what that house gives when it is drawn and run. Every question, the three
// examples, each in a climate of its own; `npm run consistent` runs all of them in six climates and leaves nothing out.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Basis, Question, Runs } from '../../src/questions/question.ts';
import { questionById } from '../../src/questions/registry.ts';
import type { RunJob } from '../../src/questions/run-job.ts';
import type { Unknown } from '../../src/questions/what-nobody-knows.ts';
import { answerFor, brokenPromises } from './promises.ts';

const CLIMATES = ['denver', 'belfast', 'southern-chile'];
const HOUSES = EXAMPLES.map(({ id, design }, i) => ({ id, design: { ...design, climate: CLIMATES[i]! } }));
/** Proposals of one answer that are run anew. */
const MOST = 2;

/** The question, with part of the plan of those that run most, in doubt over some of what nobody knows. */
function question(id: string): Question {
  const whole = {
    ...questionById(id)!,
    doubt: (basis: Basis, runs: Runs) => {
      const doubt = questionById(id)!.doubt?.(basis, runs) ?? null;
      return (
        doubt && {
          ...doubt,
          over: (unknown: Unknown['id']) => IN_DOUBT.includes(unknown) && (doubt.over?.(unknown) ?? true),
        }
      );
    },
  };
  const isKept = KEPT[id];
  if (isKept === undefined) return whole;
  return {
    ...whole,
    plan: (basis) => whole.plan(basis).filter(isKept),
    refine: (basis, runs) => (whole.refine?.(basis, runs) ?? []).filter(isKept),
  };
}

/** A year that is another, and a house that is. */
const IN_DOUBT: readonly Unknown['id'][] = ['hot-year', 'leaky'];
const WAYS = [undefined, 'any', 'adobe', 'adobe, thin'];
const INPUTS = [undefined, 'sunspace.join', 'vents.habit', 'glass.tiltDeg', 'sunspace.doorRule'];
const KEPT: Readonly<Record<string, (job: RunJob) => boolean>> = {
  'how-much-glass': ({ at }) => at.mass === 'drawn',
  'how-much-mass': ({ at }) => [at.way, at.thicknessOf].every((way) => WAYS.includes(way as string)),
  'what-matters-most': ({ at }) => INPUTS.includes(at.path as string),
};

const [LEANING, CLOSED, MODEST] = HOUSES as [(typeof HOUSES)[0], (typeof HOUSES)[0], (typeof HOUSES)[0]];
const ASKED = (
  [
    ['open-or-closed', LEANING],
    ['open-or-closed', MODEST],
    ['upright-or-leaning', CLOSED],
    ['hotter-year', CLOSED],
    ['who-opens-the-vents', MODEST],
    ['how-much-glass', MODEST],
    ['how-much-mass', CLOSED],
    ['what-matters-most', CLOSED],
    ['glass-and-mass-map', MODEST],
  ] as const
).map(([id, house]) => [id, house.id, house.design] as const);

/** Asked once by all tests, in doubt over everything. */
const openOrClosed = answerFor(questionById('open-or-closed')!, MODEST.design);

test.each(ASKED)('%s of the %s house keeps its promises', async (id, _, design) => {
  const answer = await (id === 'open-or-closed' && design === MODEST.design
    ? openOrClosed
    : answerFor(question(id), design, { samples: 2, mapSide: 5 }));
  expect(answer.proposals.length).toBeGreaterThan(2);
  expect(brokenPromises(answer, MOST)).toEqual([]);
});

test('a figure that is a little off is found, in a proposal, a table and a sentence', async () => {
  const answer = await openOrClosed;
  const off = { ...answer.proposals[0]!.figures, humidHours: answer.proposals[0]!.figures.humidHours + 1 };
  const proposals = [{ ...answer.proposals[0]!, figures: off }];
  expect(brokenPromises({ ...answer, proposals }).join()).toContain('humidHours is promised as');
  const [table] = answer.tables;
  const rows = table!.rows.map(([label, , ...rest]) => [label!, 1, ...rest]);
  expect(brokenPromises({ ...answer, proposals: [], tables: [{ ...table!, rows }] })).toHaveLength(5);
  const finding = { ...answer.finding!, text: `${answer.finding!.text} It gives 123456 hours.` };
  expect(brokenPromises({ ...answer, proposals: [], finding })).toHaveLength(1);
});
