// How well each unknown is known: from the slopes, from what stays as drawn and may be off, from what loggers have in common,
// from how far the two ways of keeping days unseen disagree, and from what it really costs to go to the ends. And which of
// them the record cannot tell from each other.

import type { UnknownId } from '../design/as-found.ts';
import type { UnknownValues } from '../model/unknowns.ts';
import type { HouseRecord, MatchJob, MatchResult, MatchRunner } from './house-record.ts';
import { costOf, type Estimate, residualOf, valuesAt } from './least-squares.ts';
import { among, whitened } from './noise.ts';

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
  const alike = alikeness(record, estimate, fitted);
  return unknowns.map((_, i) => {
    const rises = [0, 1].map((side) => cost(ends[2 * i + side]!, results[2 * i + side]!) - here);
    const least = Math.max(0.1, Math.min(...rises));
    const flat = Math.min(2, Math.max(1, Math.sqrt(NORMAL_90 ** 2 / least)));
    const apart = Math.abs(estimate.places[i]! - other.places[i]!) / 2;
    const spread = Math.hypot(own[i]! * flat * alike, Math.sqrt(estimate.considered[i]![i]!));
    return Math.min(WIDEST, Math.max(spread, apart));
  });
}

/**
 * By what the errors of unknowns grow since loggers of neighbouring rooms are off together, so that n of them are not n
 * proofs: √(1 + (n − 1) r), with r the mean correlation of what is left of each two (design effect: L. Kish, Survey
 * Sampling, 1965; from memory). 1 for loggers whose errors are their own.
 */
function alikeness({ targets }: HouseRecord, estimate: Estimate, fitted: readonly Uint8Array[]): number {
  const left = targets.flatMap((target, t) =>
    target.kind === 'temperature'
      ? [
          whitened(
            among(residualOf(target, estimate.readings[t]!, estimate.own[t]!), fitted[t]!),
            estimate.noise[t]!,
          ),
        ]
      : [],
  );
  const pairs = left.flatMap((a, i) => left.slice(0, i).map((b) => correlation(a, b)));
  if (pairs.length === 0) return 1;
  const mean = pairs.reduce((sum, one) => sum + one, 0) / pairs.length;
  return Math.sqrt(1 + (left.length - 1) * Math.max(0, mean));
}

/** Of two columns about nought, in hours that both have; 0 for none. */
function correlation(a: Float64Array, b: Float64Array): number {
  let [aa, bb, ab] = [0, 0, 0];
  for (let hour = 0; hour < a.length; hour++) {
    if (Number.isNaN(a[hour]! + b[hour]!)) continue;
    aa += a[hour]! ** 2;
    bb += b[hour]! ** 2;
    ab += a[hour]! * b[hour]!;
  }
  return aa * bb === 0 ? 0 : ab / Math.sqrt(aa * bb);
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
