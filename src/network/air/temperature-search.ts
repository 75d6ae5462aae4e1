// The air temperatures of a step, when flows depend on them: trial temperatures in, the network's answers to them
// back in, better trials out, until both agree.
// Method: Broyden's, with the inverse Jacobian kept from step to step, since it changes little; after a few trials
// without agreement, secant by zone between the trials known to be too low and too high. More warmth means more air
// and less warmth to follow, so the residual between answer and trial falls by at least as much as the trial rises.
// Source: C. G. Broyden, A class of methods for solving nonlinear simultaneous equations, Math. Comp. 19 (1965).

import type { EngineCapacity } from '../layout/engine-capacity.ts';

/** Trial and answer agree [K]; of 0.001 to 0.03 no year is nearer its fine steps. */
const TOLERANCE_K = 1e-2;
/** No air of a house is colder or warmer [°C]: a move that overshoots so far stops there, where every flow has a meaning. */
const COLDEST_C = -90;
const WARMEST_C = 150;
/** Trials of a step before the search falls back on brackets. */
const FREE_TRIALS = 6;

export interface TemperatureSearch {
  /** so many zones from now on, with nothing known of them */
  load(zones: number): void;
  /** before the first trial of a step */
  begin(): void;
  /** whether the answers agree with the trial temperatures; if not, write the next trial */
  converged(): boolean;
}

/** A search over these trial temperatures and the network's answers to them [°C]; load() before use. */
export function createTemperatureSearch(
  capacity: EngineCapacity,
  trialC: Float64Array,
  answerC: Float64Array,
): TemperatureSearch {
  let zones = 0;
  let trials = 0;
  const perZone = () => new Float64Array(capacity.zones);
  const kept = {
    trialC,
    answerC,
    lastTrial: perZone(),
    lastResidual: perZone(),
    residual: perZone(),
    low: perZone(),
    high: perZone(),
    /** trial by residual, zone · zones + zone: minus one on the diagonal until more is known */
    inverse: new Float64Array(capacity.zones * capacity.zones),
    proposed: perZone(),
    pull: perZone(),
  };

  function load(count: number): void {
    zones = count;
    resetInverse();
  }

  function resetInverse(): void {
    const { inverse } = kept;
    inverse.fill(0);
    for (let z = 0; z < zones; z++) inverse[z * zones + z] = -1;
  }

  function begin(): void {
    trials = 0;
  }

  function converged(): boolean {
    const { trialC, answerC, lastTrial, lastResidual, residual, low, high, inverse, proposed } = kept;
    const count = zones;
    let largest = 0;
    for (let z = 0; z < count; z++) {
      residual[z] = answerC[z]! - trialC[z]!;
      largest = Math.max(largest, Math.abs(residual[z]!));
    }
    if (largest <= TOLERANCE_K) return true;
    for (let z = 0; z < count; z++) {
      if (trials === 0) {
        low[z] = Number.NEGATIVE_INFINITY;
        high[z] = Number.POSITIVE_INFINITY;
      }
      // The other zones move too: an end that has come to lie on the wrong side holds no longer.
      if (residual[z]! > 0) {
        low[z] = trialC[z]!;
        if (high[z]! <= low[z]!) high[z] = Number.POSITIVE_INFINITY;
      } else {
        high[z] = trialC[z]!;
        if (low[z]! >= high[z]!) low[z] = Number.NEGATIVE_INFINITY;
      }
    }
    if (trials > 0) updateInverse();
    if (trials === FREE_TRIALS) resetInverse();
    for (let z = 0; z < count; z++) {
      const trial = trialC[z]!;
      let move = 0;
      for (let y = 0; y < count; y++) move -= inverse[z * count + y]! * residual[y]!;
      lastTrial[z] = trial;
      const next = trial + Math.max(-largest, Math.min(largest, move));
      proposed[z] = Math.max(COLDEST_C, Math.min(WARMEST_C, next));
    }
    for (let z = 0; z < count; z++) {
      const middle = (low[z]! + high[z]!) / 2;
      const isInside = proposed[z]! > low[z]! && proposed[z]! < high[z]!;
      const isFree = trials < FREE_TRIALS || !Number.isFinite(middle);
      trialC[z] = isFree || isInside ? proposed[z]! : middle;
      lastResidual[z] = residual[z]!;
    }
    trials++;
    return false;
  }

  /** The last move and what it did to the residual, into the inverse Jacobian. */
  function updateInverse(): void {
    const { trialC, lastTrial, lastResidual, residual, inverse, proposed, pull } = kept;
    const count = zones;
    let along = 0;
    for (let z = 0; z < count; z++) {
      let moved = 0;
      let pulled = 0;
      for (let y = 0; y < count; y++) {
        moved += inverse[z * count + y]! * (residual[y]! - lastResidual[y]!);
        pulled += inverse[y * count + z]! * (trialC[y]! - lastTrial[y]!);
      }
      pull[z] = pulled;
      proposed[z] = trialC[z]! - lastTrial[z]! - moved;
    }
    for (let z = 0; z < count; z++) along += pull[z]! * (residual[z]! - lastResidual[z]!);
    if (Math.abs(along) < 1e-12) return;
    for (let z = 0; z < count; z++) {
      for (let y = 0; y < count; y++) inverse[z * count + y]! += (proposed[z]! * pull[y]!) / along;
    }
  }

  return { load, begin, converged };
}
