// What helps most? Every single change an adviser would try first, run alone and ranked by what the house then weighs
// (weights.ts); then the best with the next best on top of it. A single change is told before three, and the first that is
// told is the first of the table.

import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { FIGURE_NAMES, type Figures } from './figures.ts';
import { houseOfRun } from './in-doubt.ts';
import { leverWords, type Pulled } from './levers.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence, Table } from './question.ts';
import { runAt } from './run-table.ts';
import { burden, weightsInWords } from './weights.ts';
import { bestOf, type Help, type HelpSoFar, helpSoFar, isCalm, weighs } from './what-helps.ts';
import { capitalised, countInWords, hoursInWords } from './words.ts';

const DRAWN = 'as drawn';
/** Single changes among which the best is sought again in doubt. */
const MOST_DOUBTED = 3;
const KEYS = ['tooHotHours', 'humidHours', 'worstMouldIndex', 'heatingKWh'] as const;

export const whatHelpsMost: Question = {
  id: 'what-helps',
  title: 'What helps most?',
  asks: 'Which single change helps this house most, and what does the next one add?',
  plan: (basis) => soFar(basis, new Map()).wanted,
  refine: (basis, runs) => soFar(basis, runs).wanted,
  doubt: (basis, runs) => {
    const { help } = soFar(basis, runs);
    if (help === null || help.steps.length === 0) return null;
    const rivals = byWeight(help, basis).slice(0, MOST_DOUBTED);
    const first = help.steps[0]!;
    const wordsOf = ({ lever }: Pulled) => leverWords(lever, basis.words);
    return {
      houses: [first, ...rivals.filter(({ lever }) => lever.id !== first.lever.id)].map(({ lever }) =>
        houseOfRun(lever.id, runAt(runs, lever.id)),
      ),
      advice: (figuresOf) => {
        const best = bestOf(
          rivals.map((entry) => ({ ...entry, figures: figuresOf(entry.lever.id) })),
          basis.weights,
        );
        return best === null ? wordsOf(first) : `first ${wordsOf(best)}`;
      },
      subject: 'With that first change the house',
    };
  },
  answer,
};

function soFar(basis: Basis, runs: Runs): HelpSoFar {
  const known = new Map<string, Figures>([...runs].map(([id, { figures }]) => [id, figures]));
  return helpSoFar(withChoiceKept(basis.design), known, basis.weights, basis.words);
}

/** Single changes, the one that weighs least first; milder forms stand where their figures put them. */
function byWeight({ pulled }: Pick<Help, 'pulled'>, { weights }: Basis): readonly Pulled[] {
  return [...pulled].sort((one, other) => weighs(one, weights) - weighs(other, weights));
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { help } = soFar(basis, runs);
  return {
    finding: complete && help !== null ? finding(help, basis) : null,
    charts: [],
    tables: help === null ? [] : [aloneTable(help, basis), ...stepsTable(help, basis)],
    map: null,
    notes: [
      weightsInWords(basis.weights),
      'Days of work are common practice, no source: they tell a day from a month. What a change costs in money we do not know.',
      'A step is told where it takes away a tenth of what the house weighs, and 40 hours or more; where one does nine tenths of what three do, it stands alone. House rules.',
    ],
    proposal: proposalOf(help, basis, runs),
  };
}

function proposalOf(help: Help | null, { words }: Basis, runs: Runs): AnswerBody['proposal'] {
  const first = help?.steps[0];
  if (first === undefined) return null;
  const run = runs.get(first.lever.id) as Run;
  return { text: `Draw it: ${leverWords(first.lever, words)}`, design: run.job.design };
}

/** Rows of changes with their figures, work and weight. */
function rowsTable(
  id: string,
  title: string,
  rows: readonly {
    readonly run: string;
    readonly label: string;
    readonly of: Pick<Pulled, 'figures' | 'days'>;
  }[],
  { weights }: Basis,
): Table {
  return {
    id,
    title,
    columns: [
      { label: 'change', unit: '', digits: 0 },
      ...KEYS.map((key) => FIGURE_NAMES[key]),
      { label: 'work', unit: 'days', digits: 0 },
      { label: 'weighs', unit: 'h', digits: 0 },
    ],
    rowRuns: rows.map(({ run }) => run),
    rows: rows.map(({ label, of: { figures, days = 0 } }) => [
      label,
      ...KEYS.map((key) => figures[key]),
      days,
      burden(figures, days, weights),
    ]),
  };
}

function aloneTable(help: Help, basis: Basis): Table {
  return rowsTable(
    'alone',
    'Each change alone, the one that weighs least first',
    [
      { run: DRAWN, label: DRAWN, of: { figures: help.drawn } },
      ...byWeight(help, basis).map((entry) => ({
        run: entry.lever.id,
        label: leverWords(entry.lever, basis.words),
        of: entry,
      })),
    ],
    basis,
  );
}

function stepsTable({ steps, milder }: Help, basis: Basis): Table[] {
  if (steps.length < 2) return [];
  const ids = steps.map(({ lever }) => lever.id);
  const rows = steps.map((step, i) => ({
    run: ids.slice(0, i + 1).join(' + '),
    label: `${i === 0 ? '' : 'and '}${leverWords(step.lever, basis.words)}`,
    of: step,
  }));
  const mild =
    milder === undefined
      ? []
      : [
          {
            run: ids.map((id) => (id === milder.lever.milderThan ? milder.lever.id : id)).join(' + '),
            label: `the same, but ${leverWords(milder.lever, basis.words)}`,
            of: { figures: milder.figures, days: steps.at(-1)!.days ?? 0 },
          },
        ];
  return [rowsTable('steps', 'One on top of the other', [...rows, ...mild], basis)];
}

function finding(help: Help, basis: Basis): Sentence {
  const { words } = basis;
  const { drawn, steps } = help;
  const told = ({ tooHotHours, humidHours, worstMouldIndex, heatingKWh }: Figures) =>
    `${hoursInWords(tooHotHours)} too hot, ${countInWords(humidHours)} too damp, a mould index of ${worstMouldIndex.toFixed(1)} and ${words.energy(heatingKWh)} of heat`;
  const figures = {
    drawnHours: drawn.tooHotHours,
    drawnHumidHours: drawn.humidHours,
    drawnMouldIndex: drawn.worstMouldIndex,
    drawnHeatingKWh: drawn.heatingKWh,
    drawnWeighs: burden(drawn, 0, basis.weights),
    ...Object.fromEntries(
      steps.flatMap(({ lever, figures: then }, i) => [
        [`step${i + 1}`, lever.id],
        [`step${i + 1}Hours`, then.tooHotHours],
        [`step${i + 1}HumidHours`, then.humidHours],
        [`step${i + 1}MouldIndex`, then.worstMouldIndex],
        [`step${i + 1}HeatingKWh`, then.heatingKWh],
      ]),
    ),
  };
  if (steps.length === 0)
    return {
      figures,
      text: isCalm(drawn)
        ? `Nothing asks for a change: as drawn it has ${told(drawn)}. No single change that we tried is worth its work.`
        : `No single change that we tried helps much: as drawn it has ${told(drawn)}. Change several together.`,
    };
  const [first, ...more] = steps as [Pulled, ...Pulled[]];
  return {
    figures,
    text:
      `${capitalised(leverWords(first.lever, words))}. That alone gives ${told(first.figures)}. As drawn it is ${told(drawn)}.` +
      more
        .map(
          ({ lever, figures: then }, i) =>
            ` ${i === 0 ? 'Next' : 'Third'}, ${leverWords(lever, words)}: then it is ${told(then)}.`,
        )
        .join(''),
  };
}
