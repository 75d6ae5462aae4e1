// How what nears a rest exponentially goes through a step: step over time constant in; where its mean lies between its
// start and its end, out. With it a node is stepped by its mean: the mean balances the heat of the step, and the end
// follows from start and mean, so that no heat is made or lost.
// Source: the exponential itself; as a place between start and end it is the weight of an exponentially fitted θ-method.

import { expm1 } from '../../physics/elementary.ts';

/** Below this the exponential's series is the nearer. */
const FEW = 1e-4;

/**
 * Where the mean of a step lies between its start and its end.
 *
 * @param x step by time constant [–]; 0 or more
 * @returns ½ for a slow one to 1 for one that is there at once; 1/(1 − exp(−x)) − 1/x within 0.02
 */
function meanPosition(x: number): number {
  return 0.5 + 0.5 / Math.sqrt(1 + 36 / (x * x));
}

/**
 * The way from start to end, by the way from start to mean.
 *
 * @param conductance all that couples the node [W/K]; 0 or more
 * @param storage its heat capacity over the step [W/K]; 0 or more, without it the end is the mean
 * @returns 1 to 2 [–]
 */
export function endByMean(conductance: number, storage: number): number {
  return storage > 0 ? 1 / meanPosition(conductance / storage) : 1;
}

/**
 * endByMean by the exponential itself, for what is to be left as it leaves it.
 *
 * @param conductance all that couples the node; 0 or more
 * @param storage its capacity over the step, in the same unit; above 0
 * @returns 1 to 2 [–]
 */
export function endByExactMean(conductance: number, storage: number): number {
  const x = conductance / storage;
  if (x < FEW) return 2 - x / 3;
  const gone = -expm1(-x);
  return gone / (1 - gone / x);
}
