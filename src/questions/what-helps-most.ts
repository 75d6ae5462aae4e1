// What helps most? Every single change an adviser would try first, run alone and ranked by what the house then weighs
// (weights.ts); then the best with the next best on top of it. A single change is told before three, and the first that is
// told is the first of the table.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { changeCost } from '../quantities/change.ts';
import { hasPrices } from '../quantities/prices.ts';
import {
  costInWords,
  DAYS_SAY,
  daysInWords,
  MONEY_SAYS,
  moneyInWords,
  NO_MONEY_SAYS,
} from '../quantities/words.ts';
import { type Costed, inOrder, ORDER_WORDS, takenOffFor } from './change-order.ts';
import { FIGURE_NAMES, type Figures } from './figures.ts';
import { type HelpSoFar, helpSoFar } from './help-runs.ts';
import { houseOfRun } from './in-doubt.ts';
import { leverWords, type Pulled } from './lever.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence, Table } from './question.ts';
import { runAt } from './run-table.ts';
import { burden, coldHours, lightestFirst, weightsInWords } from './weights.ts';
import { bestOf, type Help, isCalm, isCold } from './what-helps.ts';
import { capitalised, countInWords, hoursInWords } from './words.ts';

const DRAWN = 'as drawn';
/** Single changes among which the best is sought again in doubt. */
const MOST_DOUBTED = 3;
/** Of a currency's unit, so many, in which what money does is told. */
const MONEY_OF_RATE = 100;
const KEYS = ['tooHotHours', 'humidHours', 'worstMouldIndex', 'heatingKWh'] as const;
const COLD_KEYS = ['tooHotHours', 'humidHours', 'shortHours', 'worstMouldIndex', 'heatingKWh'] as const;

export const whatHelpsMost: Question = {
  id: 'what-helps',
  title: 'What helps most?',
  asks: 'Which single change helps this house most, and what does the next one add?',
  plan: (basis) => soFar(basis, new Map()).wanted,
  refine: (basis, runs) => soFar(basis, runs).wanted,
  doubt: (basis, runs) => {
    const { help } = soFar(basis, runs);
    if (help === null || help.steps.length === 0) return null;
    const rivals = lightestFirst(help.pulled, basis.weights).slice(0, MOST_DOUBTED);
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

/** A change with what it asks for, as it was run. */
type CostedPulled = Pulled & Costed;

function costed(entry: Pulled, made: Design, basis: Basis): CostedPulled {
  const cost = changeCost(basis.design, made, basis.prices);
  return { ...entry, days: entry.days ?? 0, money: cost?.total ?? null };
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { help } = soFar(basis, runs);
  return {
    finding: complete && help !== null ? finding(help, basis, runs) : null,
    charts: [],
    tables: help === null ? [] : [aloneTable(help, basis, runs), ...stepsTable(help, basis, runs)],
    map: null,
    notes: [
      weightsInWords(basis.weights),
      DAYS_SAY,
      hasPrices(basis.prices) ? MONEY_SAYS : NO_MONEY_SAYS,
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

interface Row {
  readonly run: string;
  readonly label: string;
  readonly of: Costed & Pick<Pulled, 'figures'>;
}

/** Rows of changes with their figures, work, money where prices stand, and weight. */
function rowsTable(
  id: string,
  title: string,
  rows: readonly Row[],
  { weights, prices, order }: Basis,
  drawn: Figures,
): Table {
  const isPriced = hasPrices(prices);
  const keys = [drawn, ...rows.map(({ of }) => of.figures)].some(isCold) ? coldKeys(drawn) : KEYS;
  const rate = order === 'weight' ? null : { by: order, per: order === 'days' ? 1 : MONEY_OF_RATE };
  const rateOf = ({ run, of }: Row) => {
    const off = rate === null || run === DRAWN ? null : takenOffFor(drawn, of, rate.by, weights);
    return off === null || !Number.isFinite(off) ? null : off * rate!.per;
  };
  return {
    id,
    title,
    columns: [
      { label: 'change', unit: '', digits: 0 },
      ...keys.map((key) => FIGURE_NAMES[key]),
      { label: 'work', unit: 'days', digits: 1 },
      ...(isPriced ? [{ label: 'cost', unit: prices.currency, digits: 0 }] : []),
      { label: 'weighs', unit: 'h', digits: 0 },
      ...(rate === null
        ? []
        : [
            {
              label:
                rate.by === 'days'
                  ? 'taken off a day of work'
                  : `taken off for ${moneyInWords(MONEY_OF_RATE, prices.currency)}`,
              unit: 'h',
              digits: 0,
            },
          ]),
    ],
    rowRuns: rows.map(({ run }) => run),
    rows: rows.map((row) => [
      row.label,
      ...keys.map((key) => row.of.figures[key]),
      row.of.days,
      ...(isPriced ? [row.of.money] : []),
      burden(row.of.figures, row.of.days, weights),
      ...(rate === null ? [] : [rateOf(row)]),
    ]),
  };
}

/** With cold among them, by what it is counted. */
function coldKeys({ shortHours }: Figures) {
  return COLD_KEYS.map((key) => (key === 'shortHours' && shortHours === null ? 'underheatedHours' : key));
}

function aloneTable(help: Help, basis: Basis, runs: Runs): Table {
  const { drawn } = help;
  const all = help.pulled.map((entry) => costed(entry, runAt(runs, entry.lever.id).job.design, basis));
  const first = help.steps[0]?.lever.id;
  const table = rowsTable(
    'alone',
    `Each change alone, ${ORDER_WORDS[basis.order]}`,
    [
      { run: DRAWN, label: DRAWN, of: { figures: drawn, days: 0, money: 0 } },
      ...inOrder(all, drawn, basis.order, basis.weights).map((entry) => ({
        run: entry.lever.id,
        label: leverWords(entry.lever, basis.words),
        of: entry,
      })),
    ],
    basis,
    drawn,
  );
  return { ...table, ...(first !== undefined && { advised: first }) };
}

function stepsTable({ drawn, steps, milder }: Help, basis: Basis, runs: Runs): Table[] {
  if (steps.length < 2) return [];
  const ids = steps.map(({ lever }) => lever.id);
  const rowOf = (run: string, label: string, entry: Pulled): Row => ({
    run,
    label,
    of: costed(entry, runAt(runs, run).job.design, basis),
  });
  const rows = steps.map((step, i) =>
    rowOf(
      ids.slice(0, i + 1).join(' + '),
      `${i === 0 ? '' : 'and '}${leverWords(step.lever, basis.words)}`,
      step,
    ),
  );
  const mild =
    milder === undefined
      ? []
      : [
          rowOf(
            ids.map((id) => (id === milder.lever.milderThan ? milder.lever.id : id)).join(' + '),
            `the same, but ${leverWords(milder.lever, basis.words)}`,
            milder,
          ),
        ];
  return [rowsTable('steps', 'One on top of the other', [...rows, ...mild], basis, drawn)];
}

function finding(help: Help, basis: Basis, runs: Runs): Sentence {
  const { words, prices } = basis;
  const { drawn, steps } = help;
  const cold = [drawn, ...steps.map(({ figures }) => figures)].some(isCold);
  const told = ({ tooHotHours, humidHours, worstMouldIndex, heatingKWh, ...rest }: Figures) =>
    `${hoursInWords(tooHotHours)} too hot, ${countInWords(humidHours)} too damp, ${cold ? `${countInWords(coldHours(rest).hours)} too cold, ` : ''}a mould index of ${worstMouldIndex.toFixed(1)} and ${words.energy(heatingKWh)} of heat`;
  // Each step from the one before it.
  const ids = steps.map(({ lever }) => lever.id);
  const made = steps.map((_, i) => runAt(runs, ids.slice(0, i + 1).join(' + ')).job.design);
  const asked = steps.map(({ days = 0 }, i) => ({
    days: days - (steps[i - 1]?.days ?? 0),
    cost: changeCost(made[i - 1] ?? basis.design, made[i]!, prices),
  }));
  const asksFor = (i: number) => {
    const { days, cost } = asked[i]!;
    return `${capitalised(daysInWords(days))}${cost === null ? '' : `; in money, ${costInWords(cost, prices)}`}.`;
  };
  const figures = {
    drawnHours: drawn.tooHotHours,
    drawnHumidHours: drawn.humidHours,
    drawnColdHours: coldHours(drawn).hours,
    drawnMouldIndex: drawn.worstMouldIndex,
    drawnHeatingKWh: drawn.heatingKWh,
    drawnWeighs: burden(drawn, 0, basis.weights),
    ...Object.fromEntries(
      steps.flatMap(({ lever, figures: then }, i) => [
        [`step${i + 1}`, lever.id],
        [`step${i + 1}Days`, asked[i]!.days],
        [`step${i + 1}Cost`, asked[i]!.cost?.total ?? null],
        [`step${i + 1}Hours`, then.tooHotHours],
        [`step${i + 1}HumidHours`, then.humidHours],
        [`step${i + 1}ColdHours`, coldHours(then).hours],
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
  const hotter =
    first.figures.tooHotHours > Math.max(drawn.tooHotHours, first.figures.tooHotLimitHours)
      ? ` By itself it makes the rooms hotter than is allowed${more.length > 0 ? ', so do the next with it' : ': ask too how much glass they carry'}.`
      : '';
  return {
    figures,
    text:
      `${capitalised(leverWords(first.lever, words))}. That alone gives ${told(first.figures)}. As drawn it is ${told(drawn)}. ${asksFor(0)}${hotter}` +
      more
        .map(
          ({ lever, figures: then }, i) =>
            ` ${i === 0 ? 'Next' : 'Third'}, ${leverWords(lever, words)}: then it is ${told(then)}. ${asksFor(i + 1)}`,
        )
        .join(''),
  };
}
