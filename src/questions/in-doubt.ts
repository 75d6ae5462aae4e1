// An answer in doubt: the houses among which it chooses, run over what nobody can know, and what then is said of it: how far
// its figures may lie from those told, and whether the advice still holds. Jobs out, then runs in and a sentence out.

import { changeOf, rangeInWords, rangeOf } from './how-sure.ts';
import type { Basis, Doubt, DoubtedHouse, Run, Runs, Sentence } from './question.ts';
import type { RunJob } from './run-job.ts';
import { type Unknown, unknownsOf } from './what-nobody-knows.ts';
import { countInWords, hoursInWords } from './words.ts';

const AS_DRAWN = 'as drawn';

function idOf(unknown: string, house: string): string {
  return `in doubt, ${unknown}: ${house}`;
}

function unknownsTried({ design, isMade }: Basis, { over = () => true }: Doubt): readonly Unknown[] {
  return unknownsOf(design, isMade).filter(({ id }) => over(id));
}

/** The runs wanted: every house as it is, and over each unknown. */
export function doubtJobs(basis: Basis, doubt: Doubt): readonly RunJob[] {
  const unknowns = unknownsTried(basis, doubt);
  return doubt.houses.flatMap(({ id, words, design, figures }) => [
    ...(figures === undefined
      ? [{ id: idOf(AS_DRAWN, id), label: words, design, at: { doubt: AS_DRAWN, of: id } }]
      : []),
    ...unknowns.map(
      (unknown): RunJob => ({
        id: idOf(unknown.id, id),
        label: `${words}, ${unknown.when(basis.words)}`,
        design: unknown.apply(design),
        at: { doubt: unknown.id, of: id },
        ...changeOf(unknown),
      }),
    ),
  ]);
}

/** What is said of it. */
export function doubtInWords(basis: Basis, doubt: Doubt, runs: Runs): Sentence {
  const { words } = basis;
  const unknowns = unknownsTried(basis, doubt);
  const figuresIn = (unknown: string) => (house: string) => {
    const known = doubt.houses.find(({ id }) => id === house)!.figures;
    return unknown === AS_DRAWN && known !== undefined ? known : runOf(runs, idOf(unknown, house)).figures;
  };
  const adviceIn = (unknown: string) => doubt.advice(figuresIn(unknown));
  const told = doubt.houses[0]!;
  const sure = {
    drawn: figuresIn(AS_DRAWN)(told.id),
    turned: unknowns.map((unknown) => ({
      unknown,
      design: unknown.apply(told.design),
      figures: figuresIn(unknown.id)(told.id),
    })),
  };
  const hot = rangeOf('tooHotHours', sure);
  const damp = rangeOf('humidHours', sure);
  const heat = rangeOf('heatingKWh', sure);
  const usual = adviceIn(AS_DRAWN);
  const turns = unknowns.filter(({ id }) => adviceIn(id) !== usual);
  const range =
    `How sure? ${doubt.subject} is too hot for ${hoursInWords(hot.drawn)}: ${rangeInWords(hot, countInWords, words)}. ` +
    `Damp: ${countInWords(damp.drawn)}; ${rangeInWords(damp, countInWords, words)}. ` +
    `Heat: ${words.energy(heat.drawn)}; ${rangeInWords(heat, words.energy, words)}.`;
  const holds =
    turns.length === 0
      ? `The advice holds in all ${unknowns.length} trials.`
      : `The advice turns in ${turns.length} of ${unknowns.length} trials. ${turnsInWords(turns, adviceIn, basis)}`;
  return {
    text: `${range} ${holds}`,
    figures: {
      trials: unknowns.length,
      turnedTrials: turns.length,
      hoursLeast: hot.least,
      hoursMost: hot.most,
      humidLeast: damp.least,
      humidMost: damp.most,
      heatingLeastKWh: heat.least,
      heatingMostKWh: heat.most,
      hours: hot.drawn,
      humidHours: damp.drawn,
      heatingKWh: heat.drawn,
    },
  };
}

/** One sentence for each other advice, with the trials that give it. */
function turnsInWords(
  turns: readonly Unknown[],
  adviceIn: (unknown: string) => string,
  { words }: Basis,
): string {
  const byAdvice = new Map<string, string[]>();
  for (const { id, when } of turns) {
    const advice = adviceIn(id);
    byAdvice.set(advice, [...new Set([...(byAdvice.get(advice) ?? []), when(words)])]);
  }
  return [...byAdvice]
    .map(([advice, when]) => {
      const cause = when.join(', or ');
      return `${cause.charAt(0).toUpperCase()}${cause.slice(1)}, ${advice}.`;
    })
    .join(' ');
}

/** A run of the plan as a house in doubt. */
export function houseOfRun(id: string, { job, figures }: Run): DoubtedHouse {
  return { id, words: job.label, design: job.design, figures };
}

function runOf(runs: Runs, id: string): Run {
  const run = runs.get(id);
  if (run === undefined) throw new RangeError(`run '${id}' is not in; allowed: one that was planned`);
  return run;
}
