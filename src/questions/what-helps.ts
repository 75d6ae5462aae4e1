// What helps most, once it is run (help-runs.ts): the figures of each lever, and the steps with what stands after each; how it
// is weighed, and what of it is worth a word.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { ACCEPTABLE_DAMP_HOURS, NEARLY_ACCEPTABLE } from '../outcomes/acceptable-hours.ts';
import type { Figures } from './figures.ts';
import type { Pulled } from './lever.ts';
import { leversOf } from './levers.ts';
import {
  burden,
  burdenBesideHours,
  coldHours,
  lightestFirst,
  USUAL_WEIGHTS,
  type Weighed,
  type Weights,
  weighs,
} from './weights.ts';

export interface PulledLevers {
  readonly drawn: Figures;
  readonly pulled: readonly Pulled[];
}

export interface Help extends PulledLevers {
  /** each on top of those before it, with the figures then */
  readonly steps: readonly Pulled[];
  /** a milder lever, with the figures of all steps when it stands in for the one it is milder than */
  readonly milder?: Pulled;
  /** by which the steps were chosen; the usual where absent */
  readonly weights?: Weights;
}

/** A step is worth a word when it takes away a tenth of what weighs, and no less than these hours. House rules. */
const LEAST_HOURS = 40;
const LEAST_SHARE = 0.1;

/** Whether neither heat, damp nor cold is worth a change. */
export function isCalm(of: Omit<Weighed, 'worstMouldIndex' | 'heatingKWh'>): boolean {
  return (
    of.tooHotHours <= NEARLY_ACCEPTABLE * of.tooHotLimitHours &&
    of.humidHours <= NEARLY_ACCEPTABLE * ACCEPTABLE_DAMP_HOURS &&
    !isCold(of)
  );
}

/** Whether cold is worth a change. */
export function isCold(of: Parameters<typeof coldHours>[0]): boolean {
  const { hours, allowed } = coldHours(of);
  return hours > NEARLY_ACCEPTABLE * allowed;
}

/** Whether no change can be worth a word: a calm house in which nothing else weighs as much as the least that is told. */
export function hasNothingToWin(drawn: Figures, weights: Weights): boolean {
  return isCalm(drawn) && burdenBesideHours(drawn, 0, weights) < LEAST_HOURS;
}

/** What a change has to take off what weighs so much, to be worth a word; both [hours], above 0. */
export function leastWon(before: number): number {
  return Math.max(Math.min(LEAST_HOURS, before), LEAST_SHARE * before, Number.MIN_VALUE);
}

/** Other levers that are worth a word alone, the one that weighs least first. */
export function otherWays({ drawn, pulled, steps, weights = USUAL_WEIGHTS }: Help): readonly Pulled[] {
  const before = burden(drawn, 0, weights);
  const taken = new Set(steps.map(({ lever }) => lever.id));
  const others = pulled
    .filter(({ lever }) => !taken.has(lever.id) && lever.milderThan === undefined)
    .filter((entry) => before > 0 && before - weighs(entry, weights) >= leastWon(before));
  return lightestFirst(others, weights);
}

/** The lever that weighs least. No milder form of another unless it weighs less than that other. */
export function bestOf(pulled: readonly Pulled[], weights: Weights = USUAL_WEIGHTS): Pulled | null {
  const of = (id: string) => pulled.find(({ lever }) => lever.id === id);
  const fair = pulled.filter((entry) => {
    const { milderThan } = entry.lever;
    const harder = milderThan === undefined ? undefined : of(milderThan);
    return harder === undefined ? milderThan === undefined : weighs(entry, weights) < weighs(harder, weights);
  });
  return fair.reduce<Pulled | null>(
    (best, entry) => (best === null || weighs(entry, weights) < weighs(best, weights) ? entry : best),
    null,
  );
}

/** What a `Help` says without the levers' own code, to be kept as text. */
export interface PlainHelp {
  readonly drawn: Figures;
  readonly pulled: readonly PlainPulled[];
  readonly steps: readonly PlainPulled[];
}

interface PlainPulled {
  readonly id: string;
  readonly figures: Figures;
  readonly days?: number;
}

/** As plain data; the milder form, which no act tells, is left out. */
export function plainHelp({ drawn, pulled, steps }: Help): PlainHelp {
  const plain = ({ lever, figures, days = 0 }: Pulled): PlainPulled => ({ id: lever.id, figures, days });
  return { drawn, pulled: pulled.map(plain), steps: steps.map(plain) };
}

/** The same with the levers of its design; throws RangeError for a lever the design has not. */
export function helpOfPlain(drawnDesign: Design, { drawn, pulled, steps }: PlainHelp): Help {
  const design = withChoiceKept(drawnDesign);
  const withLever = ({ id, figures, days = 0 }: PlainPulled, at: Design): Pulled => {
    const lever = leversOf(at).find((entry) => entry.id === id);
    if (lever === undefined) throw new RangeError(`lever is '${id}'; allowed: one of the design`);
    return { lever, figures, days };
  };
  let at = design;
  const told = steps.map((step) => {
    const found = withLever(step, at);
    at = found.lever.apply(at);
    return found;
  });
  return { drawn, pulled: pulled.map((entry) => withLever(entry, design)), steps: told };
}
