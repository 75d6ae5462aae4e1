// What a step of any length makes of the modes of a chain's interior: storage and coupling of each mode in; the share it
// keeps, what it takes of each end and gives back, and what the interior as a whole is to the ends, out.
// Method: a mode y follows κ dy/dt = −(1 − κ) y + f over REFERENCE_S, f from the ends. The ends are known by their mean over
// the step and taken as a line in it, which rises as from the mean of the step before to that of this one; for that line the
// mode's own mean and its end are exact. Amplitudes are scaled so that what a mode takes of an end's mean is what it gives
// back to it.
// Error: against ISO 13786, tests/published/wall-cutting.test.ts.

import { exp, expm1 } from '../../physics/elementary.ts';
import type { ChainColumns } from './chain-columns.ts';
import type { NetworkColumns } from './network-columns.ts';
import { nodeA, nodeB } from './network-index.ts';

/** Modes are found for a step of this length, and paced for any other [s]. */
export const REFERENCE_S = 900;
/** A mode loses at least this share over REFERENCE_S; slower ones cannot be told from ones that never change [–]. */
const SLOWEST = 1e-13;
/** A mode without heat capacity is one of very little [–]. */
const LEAST_STORAGE = 1e-15;
/** Below this the differences of an exponential are taken from its series. */
const SERIES = 1e-3;
/** Longer steps are means of many days, and no line joins one to the next [s]. */
const LONGEST_RISE_S = 3600;

/** Conduction and storage of a mode as shares of their sum, neither of them 0. */
const storageOf = (share: number) => Math.max(LEAST_STORAGE, share);
const conductionOf = (share: number) => Math.max(SLOWEST, 1 - storageOf(share));

/**
 * Share of a mode that so many seconds leave, with its ends held, 0…1.
 *
 * @param storageShare of the mode's storage in the sum of storage and conduction over REFERENCE_S, 0…1
 */
export function shareLeft(storageShare: number, seconds: number): number {
  return exp((-conductionOf(storageShare) / storageOf(storageShare)) * (seconds / REFERENCE_S));
}

/** Pace a chain's modes for a step; their amplitudes stay as they were, in the scale they had. */
export function paceModes(
  network: NetworkColumns,
  columns: ChainColumns,
  chain: number,
  stepS: number,
): void {
  const { first } = network;
  const { decay, fromA, fromB, riseFromA, riseFromB, scale, storageShare, shapeA, shapeB } = columns.byMode;
  const { interiorA, interiorB, across, delayA, delayAcross, delayB } = columns.byChain;
  const rises = stepS <= LONGEST_RISE_S;
  const b = nodeB(first, chain);
  let backA = 0;
  let backB = 0;
  let over = 0;
  let lateA = 0;
  let late = 0;
  let lateB = 0;
  for (let i = nodeA(first, chain) + 1; i < b; i++) {
    const conduction = conductionOf(storageShare[i]!);
    const x = (conduction / storageOf(storageShare[i]!)) * (stepS / REFERENCE_S);
    const lost = -expm1(-x);
    // Of what a step starts with, the mean over the step, and what of the ends' share is missing from it.
    const mean = lost / x;
    const missing = x < SERIES ? x / 2 - (x * x) / 6 : 1 - mean;
    const size = Math.sqrt((mean * lost) / conduction);
    const a = size * shapeA[i]!;
    const bb = size * shapeB[i]!;
    decay[i] = 1 - lost;
    scale[i] = Math.sqrt((mean * conduction) / lost);
    fromA[i] = a;
    fromB[i] = bb;
    // What a mode gives back once interior and ends are one degree warm. Ends and interior coupled by the sum of that, not
    // by the link less what comes through, leave steady heat neither made nor lost by round-off.
    const steady = (a + bb) / (1 - decay[i]!);
    backA += a * steady;
    backB += bb * steady;
    over += (shapeA[i]! * shapeB[i]! * missing) / conduction;
    const rise = rises ? riseOf(x, lost) / conduction : 0;
    riseFromA[i] = scale[i]! * rise * shapeA[i]!;
    riseFromB[i] = scale[i]! * rise * shapeB[i]!;
    lateA += (shapeA[i]! * shapeA[i]! * rise) / x;
    late += (shapeA[i]! * shapeB[i]! * rise) / x;
    lateB += (shapeB[i]! * shapeB[i]! * rise) / x;
  }
  delayA[chain] = lateA;
  delayAcross[chain] = late;
  delayB[chain] = lateB;
  interiorA[chain] = over + backA + lateA;
  interiorB[chain] = over + backB + lateB;
  across[chain] = over - late;
}

/** What a mode's end gains, by its rest, of a line through the step whose mean is 0 and which rises by one: 0 to ½. */
function riseOf(x: number, lost: number): number {
  return x < SERIES ? (x * x) / 12 : 0.5 - 1 / x + (0.5 + 1 / x) * (1 - lost);
}

/** Heat put into a chain's modes, given as shapes have it in `heatInside`: what it adds to modes and ends in a step. */
export function paceHeat(network: NetworkColumns, columns: ChainColumns, chain: number): void {
  const { first } = network;
  const { heatInside, decay, scale, storageShare, shapeA, shapeB } = columns.byMode;
  const { heatedA, heatedB, hasHeatInside } = columns.byChain;
  const b = nodeB(first, chain);
  hasHeatInside[chain] = 0;
  heatedA[chain] = 0;
  heatedB[chain] = 0;
  for (let i = nodeA(first, chain) + 1; i < b; i++) {
    const heat = heatInside[i]!;
    if (heat === 0) continue;
    const conduction = conductionOf(storageShare[i]!);
    const ends = (1 - decay[i]!) / conduction;
    const missing = 1 - scale[i]! * scale[i]! * ends;
    hasHeatInside[chain] = 1;
    heatedA[chain]! += (shapeA[i]! * heat * missing) / conduction;
    heatedB[chain]! += (shapeB[i]! * heat * missing) / conduction;
    heatInside[i] = heat * scale[i]! * ends;
  }
}
