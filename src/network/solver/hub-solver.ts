// The hub system of a step: the condensed matrix and right-hand side that chain ends put on the hubs in; hub temperatures
// and holding heat out. Hubs whose conductances never change within a set-up (radiant nodes) come first and are eliminated
// once per set-up (Schur complement); what is left, the air of the zones, changes with every trial and is factored then.
// Symmetric and diagonally dominant throughout, so LDLᵀ without pivoting.

import type { NetworkColumns } from './network-columns.ts';

const HOLD_PASSES = 60;
const HOLD_TOLERANCE_W = 1e-9;

export interface HubSolver {
  /** so many hubs from now on, the first of them steady: their links and boundaries change only before condense() */
  load(hubs: number, steady: number): void;
  /** eliminate the steady hubs anew, after hubMatrix, links or boundaries of steady hubs changed */
  condense(): void;
  /** take the step's right-hand side */
  begin(): void;
  /** solve the changing hubs with conductances as they stand, held ones within their bands */
  solve(): void;
  /** the steady hubs from the changing ones of the last solve */
  finish(): void;
  /** hub temperatures: changing ones after solve(), all after finish() [°C] */
  readonly trialC: Float64Array;
}

/** Columns of the hub system with room for `most` hubs; rows of matrices are as long as there are hubs in their block. */
function createHubColumns(most: number) {
  const perHub = () => new Float64Array(most);
  const perPair = () => new Float64Array(most * most);
  return {
    /** temperatures: of changing hubs after solve(), of all after finish() [°C] */
    trialC: perHub(),
    /** factors of the steady block */
    steadyLower: perPair(),
    steadyPivot: perHub(),
    /** steady block's response to each changing hub: steady · changing; and to the step's right-hand side */
    steadyResponse: perPair(),
    steadyAlone: perHub(),
    /** changing block with the steady one eliminated, before boundaries and links among the changing */
    condensed: perPair(),
    condensedRhs: perHub(),
    /** factors of the changing block; its solution; its responses to a watt in each hub, and which of them are known */
    lower: perPair(),
    pivot: perHub(),
    solution: perHub(),
    unitResponse: perPair(),
    unitKnown: perHub(),
  };
}

/** Solver of a network's hubs; load() before use. A closure over the columns for the reason chain-sweeps.ts gives. */
export function createHubSolver(network: NetworkColumns, most: number): HubSolver {
  const columns = createHubColumns(most);
  let hubCount = 0;
  let steadyCount = 0;

  function load(hubs: number, steady: number): void {
    hubCount = hubs;
    steadyCount = steady;
    for (const array of Object.values(columns)) array.fill(0);
  }

  function condense(): void {
    const hubs = hubCount;
    const steady = steadyCount;
    const changing = hubs - steady;
    const { steadyLower, steadyPivot, steadyResponse, steadyAlone, condensed } = columns;
    const { hubMatrix, hubStorage, hubBoundary, hubLink } = network;
    for (let i = 0; i < steady; i++) {
      let diagonal = hubMatrix[i * hubs + i]! + hubStorage[i]! + hubBoundary[i]!;
      for (let j = 0; j < hubs; j++) diagonal += hubLink[i * hubs + j]!;
      for (let j = 0; j < i; j++) {
        let value = hubMatrix[i * hubs + j]! - hubLink[i * hubs + j]!;
        for (let k = 0; k < j; k++)
          value -= steadyLower[i * steady + k]! * steadyLower[j * steady + k]! * steadyPivot[k]!;
        value /= steadyPivot[j]!;
        steadyLower[i * steady + j] = value;
        diagonal -= value * value * steadyPivot[j]!;
      }
      steadyPivot[i] = diagonal;
    }
    for (let m = 0; m < changing; m++) {
      for (let i = 0; i < steady; i++) {
        const at = i * hubs + steady + m;
        steadyAlone[i] = hubMatrix[at]! - hubLink[at]!;
      }
      solveFactored(steadyLower, steadyPivot, steady, steadyAlone, 0);
      for (let i = 0; i < steady; i++) steadyResponse[i * changing + m] = steadyAlone[i]!;
    }
    for (let m = 0; m < changing; m++) {
      for (let n = 0; n < changing; n++) {
        let value = hubMatrix[(steady + m) * hubs + steady + n]!;
        if (m === n) {
          value += hubStorage[steady + m]!;
          // Links to steady hubs do not change with the trials; links among the changing are added in solve().
          for (let i = 0; i < steady; i++) value += hubLink[(steady + m) * hubs + i]!;
        }
        for (let i = 0; i < steady; i++) {
          const at = i * hubs + steady + m;
          value -= (hubMatrix[at]! - hubLink[at]!) * steadyResponse[i * changing + n]!;
        }
        condensed[m * changing + n] = value;
      }
    }
  }

  function begin(): void {
    const steady = steadyCount;
    const changing = hubCount - steadyCount;
    const { steadyResponse, steadyAlone, condensedRhs, steadyLower, steadyPivot } = columns;
    const { hubBoundary, hubBoundaryC, hubRhs } = network;
    for (let i = 0; i < steady; i++) steadyAlone[i] = hubRhs[i]! + hubBoundary[i]! * hubBoundaryC[i]!;
    for (let m = 0; m < changing; m++) {
      let value = hubRhs[steady + m]!;
      for (let i = 0; i < steady; i++) value -= steadyResponse[i * changing + m]! * steadyAlone[i]!;
      condensedRhs[m] = value;
    }
    solveFactored(steadyLower, steadyPivot, steady, steadyAlone, 0);
  }

  function solve(): void {
    const steady = steadyCount;
    const changing = hubCount - steadyCount;
    const { trialC, solution } = columns;
    if (changing === 2) solveTwo();
    else factorAny();
    hold();
    for (let i = 0; i < changing; i++) trialC[steady + i] = solution[i]!;
  }

  /**
   * The same as factorAny for two changing hubs, a house and its sunspace, by the inverse: it runs at every trial, and
   * one division waits less than four. The link between the two is kept out of the difference, however large it is.
   */
  function solveTwo(): void {
    const hubs = hubCount;
    const steady = steadyCount;
    const { condensed, condensedRhs, solution, unitResponse, unitKnown } = columns;
    const { hubBoundary, hubBoundaryC, hubLink } = network;
    const one = steady;
    const two = steady + 1;
    const between = hubLink[one * hubs + two]!;
    const own = condensed[0]! + hubBoundary[one]!;
    const other = condensed[3]! + hubBoundary[two]!;
    const cross = condensed[2]!;
    const inverse = 1 / (own * other - cross * cross + between * (own + other + 2 * cross));
    const atOne = (other + between) * inverse;
    const atTwo = (own + between) * inverse;
    const over = (between - cross) * inverse;
    const rightOne = condensedRhs[0]! + hubBoundary[one]! * hubBoundaryC[one]!;
    const rightTwo = condensedRhs[1]! + hubBoundary[two]! * hubBoundaryC[two]!;
    solution[0] = atOne * rightOne + over * rightTwo;
    solution[1] = over * rightOne + atTwo * rightTwo;
    unitResponse[0] = atOne;
    unitResponse[1] = over;
    unitResponse[2] = over;
    unitResponse[3] = atTwo;
    unitKnown[0] = 1;
    unitKnown[1] = 1;
  }

  function factorAny(): void {
    const hubs = hubCount;
    const steady = steadyCount;
    const size = hubCount - steadyCount;
    const { condensed, condensedRhs, lower, pivot, solution, unitKnown } = columns;
    const { hubBoundary, hubBoundaryC, hubLink } = network;
    for (let i = 0; i < size; i++) {
      const hub = steady + i;
      solution[i] = condensedRhs[i]! + hubBoundary[hub]! * hubBoundaryC[hub]!;
      let diagonal = condensed[i * size + i]! + hubBoundary[hub]!;
      for (let j = 0; j < size; j++) diagonal += hubLink[hub * hubs + steady + j]!;
      for (let j = 0; j < i; j++) {
        let value = condensed[i * size + j]! - hubLink[hub * hubs + steady + j]!;
        for (let k = 0; k < j; k++) value -= lower[i * size + k]! * lower[j * size + k]! * pivot[k]!;
        value /= pivot[j]!;
        lower[i * size + j] = value;
        diagonal -= value * value * pivot[j]!;
      }
      pivot[i] = diagonal;
      unitKnown[i] = 0;
    }
    solveFactored(lower, pivot, size, solution, 0);
  }

  function finish(): void {
    const steady = steadyCount;
    const changing = hubCount - steadyCount;
    const { trialC, steadyAlone, steadyResponse, solution } = columns;
    for (let i = 0; i < steady; i++) {
      let value = steadyAlone[i]!;
      for (let m = 0; m < changing; m++) value -= steadyResponse[i * changing + m]! * solution[m]!;
      trialC[i] = value;
    }
  }

  /** Heat that keeps the held hubs inside their band, by relaxation: exact at once for one held hub. */
  function hold(): void {
    const steady = steadyCount;
    const changing = hubCount - steadyCount;
    const { solution, unitResponse } = columns;
    const { heldW, holdLowC, holdHighC, holdMaxW, holdMinW } = network;
    for (let i = 0; i < changing; i++) heldW[steady + i] = 0;
    for (let pass = 0; pass < HOLD_PASSES; pass++) {
      let largest = 0;
      for (let i = 0; i < changing; i++) {
        const hub = steady + i;
        const free = solution[i]!;
        const held = heldW[hub]!;
        const low = holdLowC[hub]!;
        const high = holdHighC[hub]!;
        if (held === 0 && free >= low && free <= high) continue;
        const own = ownResponse(i);
        const toLow = held + (low - free) / own;
        const toHigh = held + (high - free) / own;
        const wanted =
          toLow > 0 ? Math.min(toLow, holdMaxW[hub]!) : toHigh < 0 ? Math.max(toHigh, holdMinW[hub]!) : 0;
        const change = wanted - held;
        if (change === 0) continue;
        heldW[hub] = wanted;
        for (let j = 0; j < changing; j++) solution[j]! += change * unitResponse[i * changing + j]!;
        largest = Math.max(largest, Math.abs(change));
      }
      if (largest <= HOLD_TOLERANCE_W) return;
    }
  }

  /** Rise of a hub per watt put into it, with the responses of the others kept in `unitResponse` [K/W]. */
  function ownResponse(i: number): number {
    const size = hubCount - steadyCount;
    const { lower, pivot, unitResponse, unitKnown } = columns;
    if (unitKnown[i] === 0) {
      for (let j = 0; j < size; j++) unitResponse[i * size + j] = i === j ? 1 : 0;
      solveFactored(lower, pivot, size, unitResponse, i * size);
      unitKnown[i] = 1;
    }
    return unitResponse[i * size + i]!;
  }

  return { load, condense, begin, solve, finish, trialC: columns.trialC };
}

/** Solve L D Lᵀ x = vector in place, from `offset` on. */
function solveFactored(
  lower: Float64Array,
  pivot: Float64Array,
  size: number,
  vector: Float64Array,
  offset: number,
): void {
  for (let i = 1; i < size; i++) {
    let value = vector[offset + i]!;
    for (let j = 0; j < i; j++) value -= lower[i * size + j]! * vector[offset + j]!;
    vector[offset + i] = value;
  }
  for (let i = size - 1; i >= 0; i--) {
    let value = vector[offset + i]! / pivot[i]!;
    for (let j = i + 1; j < size; j++) value -= lower[j * size + i]! * vector[offset + j]!;
    vector[offset + i] = value;
  }
}
