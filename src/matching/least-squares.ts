// Bounded least squares with priors: places of unknowns, in standard deviations of their priors, at which runs come nearest
// to what was measured. Gauss–Newton with slopes by differences; the runs of a round go to the runner together. Each
// logger's own constant error, and how late its clock is, are two more unknowns that need no run. Covariance at the end
// from the same equations.

import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { UnknownId } from '../design/as-found.ts';
import { type UnknownValues, valueAt } from '../model/unknowns.ts';
import type { MatchJob, MatchResult, MatchRunner, Target } from './house-record.ts';
import { among, huberCost, huberWeight, type Noise, noiseOf, whitened } from './noise.ts';

/** What a logger gets wrong by itself. */
export interface OwnError {
  /** reads so much too much [K or %] */
  readonly offset: number;
  /** its stamps are so late against the weather's [h] */
  readonly lateH: number;
}

export const NO_ERROR: OwnError = { offset: 0, lateH: 0 };

export interface Estimate {
  /** by unknown, in standard deviations of its prior */
  readonly places: readonly number[];
  readonly own: readonly OwnError[];
  readonly noise: readonly Noise[];
  /** by target and hour */
  readonly readings: MatchResult;
  /** of the places, in units of the priors; rows and columns as the unknowns */
  readonly covariance: readonly (readonly number[])[];
  /** to be added to it for what was not fitted but may be off */
  readonly considered: readonly (readonly number[])[];
  /** by unknown and by what was not fitted: by how much it comes out less for each standard deviation the other is more */
  readonly blamed: readonly (readonly number[])[];
  /** less is likelier: −2 log of the posterior, with the noise at its best, but for a constant */
  readonly unlikeliness: number;
}

export interface LeastSquaresOptions {
  readonly unknowns: readonly UnknownId[];
  /** that stay as drawn, and may be off by their priors all the same: the unknowns would take the blame */
  readonly considered?: readonly UnknownId[];
  readonly targets: readonly Target[];
  /** 1 for hours that are fitted, by target */
  readonly fitted: readonly Uint8Array[];
  readonly jobOf: (values: UnknownValues) => MatchJob;
  readonly start?: readonly number[];
  readonly rounds?: number;
  /** of them so many in which each hour counts for itself */
  readonly roughRounds?: number;
  readonly onRound?: (readings: MatchResult) => void;
  /** asked before each round: true ends the search */
  readonly isEnough?: () => boolean;
}

const ROUNDS = 10;
const SLOPE_STEP = 0.25;
/** No unknown leaves this many standard deviations of its prior. */
const FARTHEST = 3.5;
/** Done when no unknown moves by more than this. */
const SETTLED = 0.03;
/** Prior standard deviation of a logger's constant error. */
const OFFSET_SD = { temperature: 0.3, humidity: 3 } as const;
/** Of how late its stamps are [h]. */
const LATE_SD = 0.5;
/** Tried side by side each round: the diagonal of the equations raised by so much, which shortens and turns a step (Levenberg, Marquardt). */
const DAMPINGS = [0, 0.1, 1, 10] as const;
/** Rounds in which each hour counts for itself, to come near; what lasts from hour to hour is taken out after them. */
const ROUGH_ROUNDS = 4;

/** Find them. */
export async function leastSquares(
  runner: MatchRunner,
  {
    unknowns,
    considered = [],
    targets,
    fitted,
    jobOf,
    start,
    rounds = ROUNDS,
    roughRounds = ROUGH_ROUNDS,
    onRound,
    isEnough = () => false,
  }: LeastSquaresOptions,
): Promise<Estimate> {
  const runWith =
    (ids: readonly UnknownId[]) =>
    (all: readonly (readonly number[])[]): Promise<readonly MatchResult[]> =>
      runner.run(all.map((places) => jobOf(valuesAt(ids, places))));
  const run = runWith(unknowns);
  let places = [...(start ?? unknowns.map(() => 0))];
  let [readings] = (await run([places])) as [MatchResult];
  const none = targets.map(() => NO_ERROR);
  const roughly = (noise: readonly Noise[], round: number) =>
    round < roughRounds ? noise.map(({ sd }) => ({ sd, lasting: 0, fresh: sd })) : noise;
  let noise = roughly(noiseAt(targets, fitted, readings, none), 0);
  let own = ownErrors(targets, fitted, readings, noise);
  for (let round = 0; round < rounds && unknowns.length > 0 && !isEnough(); round++) {
    onRound?.(readings);
    const slopes = await slopesAt(places, readings, run);
    const equations = normalEquations({ targets, fitted, readings, slopes, places, own, noise });
    const tries = DAMPINGS.map((damping) => {
      const step = stepOf(equations, damping);
      return places.map((place, i) => bounded(place + step[i]!));
    });
    const results = await run(tries);
    const costs = results.map((result, i) => costOf(tries[i]!, targets, fitted, result, noise));
    const best = costs.indexOf(Math.min(...costs));
    if (costs[best]! >= costOf(places, targets, fitted, readings, noise)) {
      if (round >= roughRounds) break;
      round = roughRounds - 1;
      noise = noiseAt(targets, fitted, readings, own);
      continue;
    }
    const moved = Math.max(...places.map((place, i) => Math.abs(tries[best]![i]! - place)));
    places = tries[best]!;
    readings = results[best]!;
    own = ownErrors(targets, fitted, readings, noise);
    if (moved < SETTLED && round >= roughRounds) break;
    if (moved < SETTLED) round = roughRounds - 1;
    noise = roughly(noiseAt(targets, fitted, readings, own), round + 1);
  }
  onRound?.(readings);
  const all = [...places, ...considered.map(() => 0)];
  const slopes = await slopesAt(all, readings, runWith([...unknowns, ...considered]));
  noise = noiseAt(targets, fitted, readings, own);
  const equations = normalEquations({ targets, fitted, readings, slopes, places: all, own, noise });
  const spread = spreadOf(equations, unknowns.length);
  const hours = fitted.map((counts) => counts.reduce((sum, one) => sum + one, 0));
  const unlikeliness =
    costOf(places, targets, fitted, readings, noise) +
    noise.reduce((sum, { fresh }, t) => sum + 2 * hours[t]! * Math.log(fresh), 0);
  return { places, own, noise, readings, ...spread, unlikeliness };
}

/** Slopes by target and unknown, for each standard deviation of the prior; away from a bound that is near. */
async function slopesAt(
  places: readonly number[],
  readings: MatchResult,
  run: (all: readonly (readonly number[])[]) => Promise<readonly MatchResult[]>,
): Promise<Float64Array[][]> {
  const steps = places.map((place) => (place + SLOPE_STEP > FARTHEST ? -SLOPE_STEP : SLOPE_STEP));
  const moved = await run(steps.map((step, i) => places.map((place, k) => (k === i ? place + step : place))));
  return readings.map((reading, t) =>
    steps.map((step, i) => moved[i]![t]!.map((value, hour) => (value - reading[hour]!) / step)),
  );
}

interface Equations {
  readonly targets: readonly Target[];
  readonly fitted: readonly Uint8Array[];
  readonly readings: MatchResult;
  /** by target and unknown */
  readonly slopes: readonly (readonly Float64Array[])[];
  readonly places: readonly number[];
  readonly own: readonly OwnError[];
  readonly noise: readonly Noise[];
}

/** Normal equations: places first, then the own errors of each logger. */
interface NormalEquations {
  readonly matrix: Matrix;
  readonly right: Float64Array;
  /** how many of them are places */
  readonly count: number;
}

function normalEquations({
  targets,
  fitted,
  readings,
  slopes,
  places,
  own,
  noise,
}: Equations): NormalEquations {
  const count = places.length;
  const size = count + 2 * targets.length;
  const matrix = Matrix.eye(size, size);
  const right = new Float64Array(size);
  places.forEach((place, i) => {
    right[i] = -place;
  });
  targets.forEach((target, t) => {
    const sd = OFFSET_SD[target.kind];
    right[count + 2 * t] = -own[t]!.offset / sd;
    right[count + 2 * t + 1] = -own[t]!.lateH / LATE_SD;
    const white = (column: Float64Array) => whitened(among(column, fitted[t]!), noise[t]!);
    const residual = white(residualOf(target, readings[t]!, own[t]!));
    const all = [...slopes[t]!, ...ownColumns(target, readings[t]!)].map(white);
    const at = [...slopes[t]!.keys(), count + 2 * t, count + 2 * t + 1];
    for (let hour = 0; hour < residual.length; hour++) {
      const left = residual[hour]!;
      if (Number.isNaN(left)) continue;
      const weight = huberWeight(left);
      for (let i = 0; i < all.length; i++) {
        const own = weight * all[i]![hour]!;
        right[at[i]!]! += own * left;
        for (let k = 0; k <= i; k++) {
          const value = matrix.get(at[i]!, at[k]!) + own * all[k]![hour]!;
          matrix.set(at[i]!, at[k]!, value);
          matrix.set(at[k]!, at[i]!, value);
        }
      }
    }
  });
  return { matrix, right, count };
}

/** The step they ask for, by place, with their diagonal raised. */
function stepOf({ matrix, right, count }: NormalEquations, damping: number): number[] {
  const raised = matrix.clone();
  for (let i = 0; i < right.length; i++) raised.set(i, i, matrix.get(i, i) * (1 + damping));
  const step = new CholeskyDecomposition(raised).solve(Matrix.columnVector([...right])).to1DArray();
  return step.slice(0, count);
}

/**
 * Covariance of the first places, as if the others were right; and what it grows by since those may be off by a standard
 * deviation of their priors (consider covariance: S. F. Schmidt, 1966; from memory).
 */
function spreadOf(
  { matrix, count }: NormalEquations,
  fitted: number,
): Pick<Estimate, 'covariance' | 'considered' | 'blamed'> {
  const [own, others] = [
    [...Array(matrix.rows).keys()].filter((i) => i < fitted || i >= count),
    [...Array(matrix.rows).keys()].filter((i) => i >= fitted && i < count),
  ];
  const solver = new CholeskyDecomposition(matrix.selection(own, own));
  const part = (full: Matrix) => full.to2DArray().slice(0, fitted);
  const square = (full: Matrix) => part(full).map((row) => row.slice(0, fitted));
  const covariance = square(solver.solve(Matrix.eye(own.length, own.length)));
  if (others.length === 0)
    return {
      covariance,
      considered: covariance.map((row) => row.map(() => 0)),
      blamed: covariance.map(() => []),
    };
  const moved = solver.solve(matrix.selection(own, others));
  return { covariance, considered: square(moved.mmul(moved.transpose())), blamed: part(moved) };
}

/** What a logger's own errors add to its reading, for a standard deviation of each. */
function ownColumns({ kind }: Target, reading: Float64Array): [Float64Array, Float64Array] {
  return [new Float64Array(reading.length).fill(OFFSET_SD[kind]), lateSlope(reading).map((v) => LATE_SD * v)];
}

/** What an hour's lateness adds to a reading. */
function lateSlope(reading: Float64Array): Float64Array {
  const last = reading.length - 1;
  return reading.map((_, hour) => (reading[Math.max(0, hour - 1)]! - reading[Math.min(last, hour + 1)]!) / 2);
}

/** What a logger would read, its own errors included. */
export function readBy(reading: Float64Array, { offset, lateH }: OwnError): Float64Array {
  const slope = lateSlope(reading);
  return reading.map((value, hour) => value + offset + lateH * slope[hour]!);
}

/** Measured less computed less the logger's own errors, by hour. */
export function residualOf({ measured }: Target, reading: Float64Array, own: OwnError): Float64Array {
  const read = readBy(reading, own);
  return measured.map((value, hour) => value - read[hour]!);
}

/** Errors of each logger, drawn towards none by their priors; of the hours that are fitted. */
export function ownErrors(
  targets: readonly Target[],
  fitted: readonly Uint8Array[],
  readings: MatchResult,
  noise: readonly Noise[],
): OwnError[] {
  return targets.map((target, t) => {
    const only = (column: Float64Array) => whitened(among(column, fitted[t]!), noise[t]!);
    const residual = only(residualOf(target, readings[t]!, NO_ERROR));
    const [ones, later] = ownColumns(target, readings[t]!).map(only) as [Float64Array, Float64Array];
    let [aa, ab, bb, a, b] = [1, 0, 1, 0, 0];
    for (let hour = 0; hour < residual.length; hour++) {
      if (Number.isNaN(residual[hour]!)) continue;
      const weight = huberWeight(residual[hour]!);
      aa += weight * ones[hour]! ** 2;
      ab += weight * ones[hour]! * later[hour]!;
      bb += weight * later[hour]! ** 2;
      a += weight * ones[hour]! * residual[hour]!;
      b += weight * later[hour]! * residual[hour]!;
    }
    const determinant = aa * bb - ab * ab;
    return {
      offset: (OFFSET_SD[target.kind] * (bb * a - ab * b)) / determinant,
      lateH: (LATE_SD * (aa * b - ab * a)) / determinant,
    };
  });
}

function noiseAt(
  targets: readonly Target[],
  fitted: readonly Uint8Array[],
  readings: MatchResult,
  own: readonly OwnError[],
): Noise[] {
  return targets.map((target, t) =>
    noiseOf(target.kind, among(residualOf(target, readings[t]!, own[t]!), fitted[t]!)),
  );
}

/** Squares of whitened residuals of the hours fitted, with each logger's error at its best, and of places. */
export function costOf(
  places: readonly number[],
  targets: readonly Target[],
  fitted: readonly Uint8Array[],
  readings: MatchResult,
  noise: readonly Noise[],
): number {
  const own = ownErrors(targets, fitted, readings, noise);
  const prior = places.reduce((sum, place) => sum + place * place, 0);
  return targets.reduce((sum, target, t) => {
    const white = whitened(among(residualOf(target, readings[t]!, own[t]!), fitted[t]!), noise[t]!);
    const data = white.reduce((total, value) => (Number.isNaN(value) ? total : total + huberCost(value)), 0);
    return sum + data + (own[t]!.offset / OFFSET_SD[target.kind]) ** 2 + (own[t]!.lateH / LATE_SD) ** 2;
  }, prior);
}

/** Unknowns at their places, in standard deviations of the prior from the drawing: factors, or shifts [K]. */
export function valuesAt(unknowns: readonly UnknownId[], places: readonly number[]): UnknownValues {
  return Object.fromEntries(unknowns.map((id, i) => [id, valueAt(id, places[i]!)]));
}

/** A place held within the farthest. */
export function bounded(place: number): number {
  return Math.min(FARTHEST, Math.max(-FARTHEST, place));
}
