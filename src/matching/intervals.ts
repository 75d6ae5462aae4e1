// How well each unknown is known: from the slopes, from how far the two ways of keeping days unseen disagree, and from what
// it really costs to go to the ends. And which of them the record cannot tell from each other.

import type { UnknownId } from '../design/as-found.ts';
import type { UnknownValues } from '../model/unknowns.ts';
import type { HouseRecord, MatchJob, MatchResult, MatchRunner } from './house-record.ts';
import { costOf, type Estimate, valuesAt } from './least-squares.ts';

/** Nine in ten of a normal distribution lie within so many standard deviations. */
export const NORMAL_90 = 1.645;
/** Nothing is known worse than this, in standard deviations of the prior. */
export const WIDEST = 1.2;
const TIED = 0.7;

export interface Tie {
  readonly between: readonly [UnknownId, UnknownId];
  /** −1…1 */
  readonly correlation: number;
}

/**
 * Standard deviations of the places, in those of the priors.
 *
 * @param other the same fitted on other days
 * @param fitted hours that `estimate` was fitted on, by target
 */
export async function intervals(
  runner: MatchRunner,
  record: HouseRecord,
  unknowns: readonly UnknownId[],
  estimate: Estimate,
  other: Estimate,
  jobOf: (values: UnknownValues) => MatchJob,
  fitted: readonly Uint8Array[],
): Promise<number[]> {
  const own = unknowns.map((_, i) => Math.sqrt(estimate.covariance[i]![i]!));
  const ends = unknowns.flatMap((_, i) =>
    [-1, 1].map((side) =>
      estimate.places.map((place, k) => place + (side * NORMAL_90 * estimate.covariance[k]![i]!) / own[i]!),
    ),
  );
  const results = await runner.run(ends.map((places) => jobOf(valuesAt(unknowns, places))));
  const cost = (places: readonly number[], readings: MatchResult) =>
    costOf(places, record.targets, fitted, readings, estimate.noise);
  const here = cost(estimate.places, estimate.readings);
  return unknowns.map((_, i) => {
    const rises = [0, 1].map((side) => cost(ends[2 * i + side]!, results[2 * i + side]!) - here);
    const least = Math.max(0.1, Math.min(...rises));
    const flat = Math.min(2, Math.max(1, Math.sqrt(NORMAL_90 ** 2 / least)));
    const apart = Math.abs(estimate.places[i]! - other.places[i]!) / 2;
    return Math.min(WIDEST, Math.max(own[i]! * flat, apart));
  });
}

/** Pairs that fit about as well when both are moved, the closest first. */
export function tiesOf(unknowns: readonly UnknownId[], { covariance }: Estimate): Tie[] {
  const ties: Tie[] = [];
  for (let i = 0; i < unknowns.length; i++) {
    for (let k = 0; k < i; k++) {
      const correlation = covariance[i]![k]! / Math.sqrt(covariance[i]![i]! * covariance[k]![k]!);
      if (Math.abs(correlation) >= TIED) ties.push({ between: [unknowns[k]!, unknowns[i]!], correlation });
    }
  }
  return ties.sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation));
}
