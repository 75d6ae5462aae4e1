// What changes may do at best on top of others, told before any of it is run: twice what each did alone, or all that is left
// where half is gone already. So a change that cannot be the best, or cannot be worth a word, needs no run; and where all of
// them together could add next to nothing, none does. In: what was run. Out: hopes, which of them are worth a run, and
// whether enough is done.

import type { Figures } from './figures.ts';
import type { Lever, Pulled } from './lever.ts';
import { burden, lightestFirst, type Weighed, type WeighedChange, type Weights, weighs } from './weights.ts';
import type { PulledLevers } from './what-helps.ts';

/**
 * A change does on top of others at most this many times what it did alone. House rule: changes that work on the same hours
 * take them from each other, and few help each other.
 */
const AT_BEST = 2;
/**
 * Where others have left no more than this share of some hours, a change that took off any may take off all. House rule: hours
 * far beyond a limit stay beyond it until others have brought them near; better walls alone took 70 of 2066 hot hours off a
 * house in Tucson, and under a better roof all 756 that it left.
 */
const NEAR_SHARE = 0.5;
/** So many are run before it is seen which may still be better. */
const RUN_TOGETHER = 4;

/** A change on top of others, with figures it cannot better. */
export interface Hope extends WeighedChange {
  readonly lever: Lever;
  readonly figures: Weighed;
  /** of it and those it stands on [days of one person] */
  readonly days: number;
}

/** Figures that a change may lessen. */
type Lessened = Exclude<keyof Weighed, 'tooHotLimitHours'>;

/** The figures that a change cannot better on top of others. */
export function hopedFigures(id: string, left: Figures, { drawn, pulled }: PulledLevers): Weighed {
  const alone = pulled.find(({ lever }) => lever.id === id)?.figures;
  const least = (key: Lessened) => {
    const [from, to] = [drawn[key], alone?.[key] ?? null];
    if (from === null || to === null) return 0;
    const now = left[key] ?? 0;
    if (key !== 'heatingKWh' && to < from && now <= NEAR_SHARE * from) return 0;
    return Math.max(0, now - AT_BEST * Math.max(0, from - to));
  };
  // Mould comes and goes with a few damp weeks: whatever dries a house may be rid of it.
  const dries =
    alone === undefined ||
    alone.worstMouldIndex < drawn.worstMouldIndex ||
    alone.humidHours < drawn.humidHours;
  return {
    tooHotHours: least('tooHotHours'),
    tooHotLimitHours: left.tooHotLimitHours,
    humidHours: least('humidHours'),
    shortHours: left.shortHours === null && alone?.shortHours === null ? null : least('shortHours'),
    underheatedHours: least('underheatedHours'),
    worstMouldIndex: dries ? 0 : left.worstMouldIndex,
    heatingKWh: least('heatingKWh'),
  };
}

/**
 * The hopes to be run next, the best first; none when no other can be better than the best that was run.
 *
 * @param isRun whether a lever has been run on top
 * @param best of those run, where one is worth a word
 * @param isToldAt whether a change that weighs as little would be worth a word
 */
export function worthARun(
  hopes: readonly Hope[],
  isRun: (lever: Lever) => boolean,
  best: Pulled | null,
  isToldAt: (change: WeighedChange) => boolean,
  weights: Weights,
): readonly Lever[] {
  const hopeful = hopes.filter(
    (hope) => isToldAt(hope) && (best === null || weighs(hope, weights) < weighs(best, weights)),
  );
  const next = lightestFirst(hopeful, weights)
    .map(({ lever }) => lever)
    .filter((lever) => !isRun(lever))
    .slice(0, RUN_TOGETHER);
  // A milder form is judged beside the change it is milder than.
  const harder = hopes
    .map(({ lever }) => lever)
    .filter(({ id }) => next.some(({ milderThan }) => milderThan === id));
  return [...new Set([...next, ...harder])].filter((lever) => !isRun(lever));
}

/**
 * Whether all that is left could not make the steps taken do less than a share of the whole.
 *
 * @param steps taken, one on top of the other
 * @param left steps that may still follow
 */
export function isEnoughWhateverFollows(
  steps: readonly Pulled[],
  hopes: readonly Hope[],
  drawn: Figures,
  { share, left, weights }: { readonly share: number; readonly left: number; readonly weights: Weights },
): boolean {
  const before = burden(drawn, 0, weights);
  const won = (change: WeighedChange) => before - weighs(change, weights);
  const last = steps.at(-1)!;
  const most = won(allAtOnce(last, hopes, left));
  return won(last) >= share * most && steps.slice(0, -1).every((step) => won(step) < share * won(last));
}

/** All hopes fulfilled together, with the work of those that spare most. */
function allAtOnce(last: Pulled, hopes: readonly Hope[], left: number): WeighedChange {
  const { figures, days = 0 } = last;
  const least = (key: Lessened) => {
    const now = figures[key] ?? 0;
    return Math.max(0, now - hopes.reduce((sum, hope) => sum + now - (hope.figures[key] ?? 0), 0));
  };
  const spared = hopes
    .map((hope) => Math.min(0, hope.days - days))
    .sort((one, other) => one - other)
    .slice(0, left)
    .reduce((sum, each) => sum + each, 0);
  return {
    figures: {
      tooHotHours: least('tooHotHours'),
      tooHotLimitHours: figures.tooHotLimitHours,
      humidHours: least('humidHours'),
      shortHours: figures.shortHours === null ? null : least('shortHours'),
      underheatedHours: least('underheatedHours'),
      worstMouldIndex: least('worstMouldIndex'),
      heatingKWh: least('heatingKWh'),
    },
    days: days + spared,
  };
}
