// Runs what would help most: every lever pulled alone; then, as an adviser would, the best first, and on top of it the next
// among those that alone did something against what is left. Best is what weighs least (what-helps.ts, weights.ts). In: a
// design and a runner. Out: the figures of each lever with the work it asks for, and the steps with what stands after each.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { ACCEPTABLE_DAMP_HOURS } from '../outcomes/acceptable-hours.ts';
import { changeBetween } from '../quantities/change.ts';
import { type Figures, figuresOf } from './figures.ts';
import { type Lever, leverWords, type Pulled } from './lever.ts';
import { leversOf } from './levers.ts';
import type { RunJob } from './run-job.ts';
import type { Runner } from './runner.ts';
import { burden, burdenBesideHours, coldHours, USUAL_WEIGHTS, type Weights, weighs } from './weights.ts';
import { bestOf, type Help, isCalm, leastWon, type PulledLevers } from './what-helps.ts';
import { METRIC_WORDS, type Words } from './words.ts';

/** Steps told; more is a list nobody keeps. */
const MOST_STEPS = 3;
/** Steps that do this share of what all of them do are enough. House rule. */
const ENOUGH_SHARE = 0.9;
const DRAWN = 'as drawn';
/** What a lever has to take off the hours too hot, too damp or too cold, or off the heat, alone, to be tried on top of others. House rules. */
const PROMISING_HOURS = 20;
const PROMISING_KWH = 300;
const PROMISING_SHARE = 0.03;

/**
 * Pull every lever of a design alone; all are judged by what the design as drawn counts as too hot.
 *
 * @param known the figures of the design as drawn, where it has been run already
 */
export async function pullLevers(
  drawnDesign: Design,
  runner: Runner,
  known?: Figures,
): Promise<PulledLevers> {
  const design = withChoiceKept(drawnDesign);
  const jobs = [
    ...(known === undefined ? [jobOf([], design, METRIC_WORDS)] : []),
    ...leversOf(design).map((lever) => jobOf([lever], design, METRIC_WORDS)),
  ];
  const results = await runner.run(jobs);
  const figures = new Map(results.map(({ id, outcome }) => [id, figuresOf(outcome)]));
  return { drawn: known ?? figures.get(DRAWN)!, pulled: pulledOnTop([], leversOf(design), design, figures)! };
}

/** The steps that help most, one on top of the other. */
export async function helpFor(
  drawnDesign: Design,
  { drawn, pulled }: PulledLevers,
  runner: Runner,
  weights: Weights = USUAL_WEIGHTS,
): Promise<Help> {
  const design = withChoiceKept(drawnDesign);
  const known = new Map<string, Figures>([[DRAWN, drawn]]);
  for (const { lever, figures } of pulled) known.set(idOf([lever]), figures);
  for (;;) {
    const found = helpSoFar(design, known, weights, METRIC_WORDS);
    if (found.help !== null) return found.help;
    for (const { id, outcome } of await runner.run(found.wanted)) known.set(id, figuresOf(outcome));
  }
}

export interface HelpSoFar {
  /** null while runs are wanted */
  readonly help: Help | null;
  readonly wanted: readonly RunJob[];
}

/**
 * The steps as far as runs are in, and which are wanted next.
 *
 * @param design with its choice of what is too hot kept
 * @param known figures by the id of their run
 */
export function helpSoFar(
  design: Design,
  known: ReadonlyMap<string, Figures>,
  weights: Weights,
  words: Words,
): HelpSoFar {
  const wants = (wanted: readonly RunJob[]): HelpSoFar => ({
    help: null,
    wanted: wanted.filter(({ id }) => !known.has(id)),
  });
  const drawn = known.get(DRAWN);
  const single = leversOf(design);
  const alone = pulledOnTop([], single, design, known);
  if (drawn === undefined || alone === null)
    return wants([jobOf([], design, words), ...single.map((lever) => jobOf([lever], design, words))]);
  const steps: Pulled[] = [];
  let tried = alone;
  let before: Pick<Pulled, 'figures' | 'days'> = { figures: drawn, days: 0 };
  while (steps.length < MOST_STEPS) {
    const best = bestStep(tried, before, weights);
    if (best === null) break;
    steps.push(best);
    before = best;
    if (steps.length === MOST_STEPS) break;
    const taken = steps.map(({ lever }) => lever);
    const { figures } = best;
    const left = leversLeft(taken, design).filter(({ id }) =>
      isPromising(id, figures, { drawn, pulled: alone }),
    );
    const next = pulledOnTop(taken, left, design, known);
    if (next === null) return wants(left.map((lever) => jobOf([...taken, lever], design, words)));
    tried = next;
  }
  const told = enoughOf(steps, drawn, weights);
  const mild = milderOf(told, design);
  if (mild === null) return { help: { drawn, pulled: alone, steps: told, weights }, wanted: [] };
  const figures = known.get(idOf(mild.all));
  if (figures === undefined) return wants([jobOf(mild.all, design, words)]);
  return {
    help: {
      drawn,
      pulled: alone,
      steps: told,
      milder: { lever: mild.lever, figures, days: changeBetween(design, madeWith(mild.all, design)).days },
      weights,
    },
    wanted: [],
  };
}

/** The best lever on top of what stands, where it is worth a word; a calm house is weighed by mould, heat and work alone. */
function bestStep(
  tried: readonly Pulled[],
  before: Pick<Pulled, 'figures' | 'days'>,
  weights: Weights,
): Pulled | null {
  const calm = isCalm(before.figures);
  const sum = calm ? burdenBesideHours : burden;
  const of = ({ figures, days = 0 }: Pick<Pulled, 'figures' | 'days'>) => sum(figures, days, weights);
  const best = bestOf(calm ? tried.filter(({ figures }) => isCalm(figures)) : tried, weights);
  if (best === null) return null;
  return of(before) - of(best) >= leastWon(of(before)) ? best : null;
}

/** The steps as far as they are worth the work: one that does nearly all of it stands alone. */
function enoughOf(steps: readonly Pulled[], drawn: Figures, weights: Weights): readonly Pulled[] {
  const before = burden(drawn, 0, weights);
  const won = (step: Pulled) => before - weighs(step, weights);
  const all = steps.length === 0 ? 0 : won(steps.at(-1)!);
  const enough = steps.findIndex((step) => won(step) >= ENOUGH_SHARE * all);
  return steps.slice(0, enough + 1);
}

/** All steps again with one of them in its milder form, where there is one. */
function milderOf(
  steps: readonly Pulled[],
  design: Design,
): { readonly lever: Lever; readonly all: readonly Lever[] } | null {
  const ids = steps.map(({ lever }) => lever.id);
  const lever = leversOf(design).find(
    ({ milderThan: harder }) => harder !== undefined && ids.includes(harder),
  );
  if (lever === undefined) return null;
  return {
    lever,
    all: steps.map((step) => (step.lever.id === lever.milderThan ? lever : step.lever)),
  };
}

function idOf(levers: readonly Lever[]): string {
  return levers.length === 0 ? DRAWN : levers.map(({ id }) => id).join(' + ');
}

function madeWith(levers: readonly Lever[], design: Design): Design {
  return levers.reduce((at, { apply }) => apply(at), design);
}

function jobOf(levers: readonly Lever[], design: Design, words: Words): RunJob {
  const label = levers.map((lever) => leverWords(lever, words)).join('; ');
  return { id: idOf(levers), label: label || DRAWN, design: madeWith(levers, design), at: {} };
}

/** Levers left when some are pulled. */
function leversLeft(taken: readonly Lever[], design: Design): readonly Lever[] {
  const ids = new Set(taken.map(({ id }) => id));
  return leversOf(madeWith(taken, design)).filter(({ id }) => !ids.has(id));
}

/** Whether a lever may do something against what is left: alone it did, or alone it was not there to be pulled. */
function isPromising(id: string, left: Figures, { drawn, pulled }: PulledLevers): boolean {
  const alone = pulled.find(({ lever }) => lever.id === id)?.figures;
  if (alone === undefined) return true;
  const wins = (before: number, after: number, least: number) =>
    before - after >= Math.max(least, PROMISING_SHARE * before);
  const helps = (key: 'tooHotHours' | 'humidHours' | 'heatingKWh', allowed: number, least: number) =>
    left[key] > allowed && wins(drawn[key], alone[key], least);
  const cold = coldHours(left);
  return (
    (cold.hours > cold.allowed && wins(coldHours(drawn).hours, coldHours(alone).hours, PROMISING_HOURS)) ||
    helps('tooHotHours', left.tooHotLimitHours, PROMISING_HOURS) ||
    helps('humidHours', ACCEPTABLE_DAMP_HOURS, PROMISING_HOURS) ||
    helps('heatingKWh', 0, PROMISING_KWH)
  );
}

/** Levers on top of others, with their figures and the work of all; null while one is not in. */
function pulledOnTop(
  taken: readonly Lever[],
  left: readonly Lever[],
  design: Design,
  known: ReadonlyMap<string, Figures>,
): readonly Pulled[] | null {
  const at = madeWith(taken, design);
  const all = left.map((lever): Pulled | null => {
    const figures = known.get(idOf([...taken, lever]));
    return figures === undefined
      ? null
      : { lever, figures, days: changeBetween(design, lever.apply(at)).days };
  });
  return all.some((entry) => entry === null) ? null : (all as Pulled[]);
}
