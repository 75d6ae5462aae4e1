// Runs what would help most: every lever pulled alone; then, as an adviser would, the best first, and on top of it the next
// among those that alone did something against what is left. Best is what weighs least (what-helps.ts, weights.ts). In: a
// design and a runner. Out: the figures of each lever with the work it asks for, and the steps with what stands after each.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { ACCEPTABLE_DAMP_HOURS } from '../outcomes/acceptable-hours.ts';
import { changeBetween } from '../quantities/change.ts';
import { type Figures, figuresOf } from './figures.ts';
import { type Hope, hopedFigures, isEnoughWhateverFollows, worthARun } from './hopes.ts';
import { type Lever, leverWords, type Pulled } from './lever.ts';
import { leversOf } from './levers.ts';
import type { RunJob } from './run-job.ts';
import type { Runner } from './runner.ts';
import {
  burden,
  burdenBesideHours,
  coldHours,
  USUAL_WEIGHTS,
  type WeighedChange,
  type Weights,
  weighs,
} from './weights.ts';
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
  const running = runner.run(jobs);
  // Counted while the years run.
  for (const lever of leversOf(design)) workOf([lever], design);
  const results = await running;
  const figures = new Map(results.map(({ id, outcome }) => [id, figuresOf(outcome)]));
  return { drawn: known ?? figures.get(DRAWN)!, pulled: pulledAlone(design, figures)! };
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
  const alone = pulledAlone(design, known);
  if (drawn === undefined || alone === null)
    return wants([
      jobOf([], design, words),
      ...leversOf(design).map((lever) => jobOf([lever], design, words)),
    ]);
  const pulled: PulledLevers = { drawn, pulled: alone };
  const steps: Pulled[] = [];
  let tried = alone;
  let before: Pick<Pulled, 'figures' | 'days'> = { figures: drawn, days: 0 };
  while (steps.length < MOST_STEPS) {
    const best = bestStep(tried, before, weights);
    if (best === null) break;
    steps.push(best);
    before = best;
    const left = MOST_STEPS - steps.length;
    if (left === 0) break;
    const taken = steps.map(({ lever }) => lever);
    const hopes = hopesOnTop(taken, best.figures, pulled, design);
    if (isEnoughWhateverFollows(steps, hopes, drawn, { share: ENOUGH_SHARE, left, weights })) break;
    const isRun = (lever: Lever) => known.has(idOf([...taken, lever]));
    tried = pulledOf(taken, hopes, known);
    const isTold = isToldAfter(best, weights);
    const next = worthARun(hopes, isRun, bestStep(tried, best, weights), isTold, weights);
    if (next.length > 0) return wants(next.map((lever) => jobOf([...taken, lever], design, words)));
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
      milder: { lever: mild.lever, figures, days: workOf(mild.all, design) },
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
  const best = bestOf(calm ? tried.filter(({ figures }) => isCalm(figures)) : tried, weights);
  return best !== null && isToldAfter(before, weights)(best) ? best : null;
}

/** Whether a change is worth a word after what stands before it. */
function isToldAfter(before: Pick<Pulled, 'figures' | 'days'>, weights: Weights) {
  const sum = isCalm(before.figures) ? burdenBesideHours : burden;
  const of = ({ figures, days = 0 }: WeighedChange) => sum(figures, days, weights);
  const now = of(before);
  const least = leastWon(now);
  return (change: WeighedChange) => now - of(change) >= least;
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

/** By design, of its levers by their ids: counted once, since every round asks for all of it [days of one person]. */
const works = new WeakMap<Design, Map<string, number>>();

/** Work of levers pulled on top of each other [days of one person]. */
function workOf(levers: readonly Lever[], design: Design): number {
  const known = works.get(design) ?? new Map<string, number>();
  works.set(design, known);
  const id = idOf(levers);
  const days = known.get(id) ?? changeBetween(design, madeWith(levers, design)).days;
  known.set(id, days);
  return days;
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

/** Levers that may do something on top of others, each with what it may do at best. */
function hopesOnTop(
  taken: readonly Lever[],
  left: Figures,
  pulled: PulledLevers,
  design: Design,
): readonly Hope[] {
  return leversLeft(taken, design)
    .filter(({ id }) => isPromising(id, left, pulled))
    .map((lever) => ({
      lever,
      figures: hopedFigures(lever.id, left, pulled),
      days: workOf([...taken, lever], design),
    }));
}

/** Those of the hopes that have been run. */
function pulledOf(
  taken: readonly Lever[],
  hopes: readonly Hope[],
  known: ReadonlyMap<string, Figures>,
): readonly Pulled[] {
  return hopes.flatMap(({ lever, days }): Pulled[] => {
    const figures = known.get(idOf([...taken, lever]));
    return figures === undefined ? [] : [{ lever, figures, days }];
  });
}

/** Levers alone, with their figures and work; null while one is not in. */
function pulledAlone(design: Design, known: ReadonlyMap<string, Figures>): readonly Pulled[] | null {
  const all = leversOf(design).map((lever): Pulled | null => {
    const figures = known.get(idOf([lever]));
    return figures === undefined ? null : { lever, figures, days: workOf([lever], design) };
  });
  return all.some((entry) => entry === null) ? null : (all as Pulled[]);
}
