// The hub system of a step: the condensed matrix and right-hand side that chain ends put on the hubs in; means of the hubs
// over the step, where they end, and holding heat out. Hubs whose conductances never change within a set-up (radiant nodes)
// come first and are eliminated once per set-up (Schur complement); what is left, the air of the zones, changes with every
// trial and is factored then. Diagonally dominant throughout, so without pivoting: LDLᵀ of the steady block, which is
// symmetric, and LU of the other, which one-way air makes unsymmetric.
// A changing hub is stepped by its mean (step-mean.ts), steady ones by backward Euler.
// A held hub is brought to its limit and held there: holdAt().

import { power } from '../../physics/elementary.ts';
import type { NetworkColumns } from './network-columns.ts';
import { endByMean } from './step-mean.ts';

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
  /** take the step: every hub is where it ends */
  moveOn(): void;
}

/** Columns of the hub system with room for `most` hubs; rows of matrices are as long as there are hubs in their block. */
function createHubColumns(most: number) {
  const perHub = () => new Float64Array(most);
  const perPair = () => new Float64Array(most * most);
  return {
    /** the way to its end by the way to its mean; where a held hub ends, NaN for a free one [°C] */
    endByMean: perHub(),
    heldAtC: perHub(),
    /** what holding puts into the equation of the mean [W] */
    holdingW: perHub(),
    /** factors of the steady block */
    steadyLower: perPair(),
    steadyPivot: perHub(),
    /** steady block's response to each changing hub: steady · changing; and to the step's right-hand side */
    steadyResponse: perPair(),
    steadyAlone: perHub(),
    /** changing block with the steady one eliminated, before boundaries and links among the changing */
    condensed: perPair(),
    condensedRhs: perHub(),
    /** factors of the changing block, both triangles in one; its solution; its responses to a watt in each hub, and which of them are known */
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
    for (const array of [...Object.values(columns), network.hubMeanC]) array.fill(0);
    columns.heldAtC.fill(Number.NaN);
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
    const { hubBoundary, hubBoundaryC, hubRhs, hubStorage, hubC } = network;
    for (let i = 0; i < steady; i++) {
      steadyAlone[i] = hubRhs[i]! + hubStorage[i]! * hubC[i]! + hubBoundary[i]! * hubBoundaryC[i]!;
    }
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
    const { solution } = columns;
    const { hubMeanC } = network;
    if (changing === 1) solveOne();
    else if (changing === 2 && isMutual()) solveTwo();
    else factorAny();
    hold();
    for (let i = 0; i < changing; i++) hubMeanC[steady + i] = solution[i]!;
  }

  /** The same as factorAny for a single changing hub. */
  function solveOne(): void {
    const hub = steadyCount;
    const { condensed, condensedRhs, solution, unitResponse, unitKnown, endByMean: ways } = columns;
    const { hubBoundary, hubBoundaryC, hubStorage, hubC, hubLineW, hubLineG } = network;
    const coupled = condensed[0]! + hubBoundary[hub]! + hubLineG[hub]!;
    const way = endByMean(coupled, hubStorage[hub]!);
    const storage = way * hubStorage[hub]!;
    const response = 1 / (coupled + storage);
    const right =
      condensedRhs[0]! + hubLineW[hub]! + hubBoundary[hub]! * hubBoundaryC[hub]! + storage * hubC[hub]!;
    ways[hub] = way;
    solution[0] = right * response;
    unitResponse[0] = response;
    unitKnown[0] = 1;
  }

  /**
   * The same as factorAny for two changing hubs, a house and its sunspace, by the inverse: it runs at every trial, and
   * one division waits less than four. The link between the two is kept out of the difference, however large it is.
   */
  function solveTwo(): void {
    const hubs = hubCount;
    const steady = steadyCount;
    const { condensed, condensedRhs, solution, unitResponse, unitKnown, endByMean: ways } = columns;
    const { hubBoundary, hubBoundaryC, hubLink, hubStorage, hubC, hubLineW, hubLineG } = network;
    const one = steady;
    const two = steady + 1;
    const between = hubLink[one * hubs + two]!;
    const coupledOne = condensed[0]! + hubBoundary[one]! + hubLineG[one]!;
    const coupledTwo = condensed[3]! + hubBoundary[two]! + hubLineG[two]!;
    const wayOne = endByMean(coupledOne + between, hubStorage[one]!);
    const wayTwo = endByMean(coupledTwo + between, hubStorage[two]!);
    const storageOne = wayOne * hubStorage[one]!;
    const storageTwo = wayTwo * hubStorage[two]!;
    ways[one] = wayOne;
    ways[two] = wayTwo;
    const own = coupledOne + storageOne;
    const other = coupledTwo + storageTwo;
    const cross = condensed[2]!;
    const inverse = 1 / (own * other - cross * cross + between * (own + other + 2 * cross));
    const atOne = (other + between) * inverse;
    const atTwo = (own + between) * inverse;
    const over = (between - cross) * inverse;
    const rightOne =
      condensedRhs[0]! + hubLineW[one]! + hubBoundary[one]! * hubBoundaryC[one]! + storageOne * hubC[one]!;
    const rightTwo =
      condensedRhs[1]! + hubLineW[two]! + hubBoundary[two]! * hubBoundaryC[two]! + storageTwo * hubC[two]!;
    solution[0] = atOne * rightOne + over * rightTwo;
    solution[1] = over * rightOne + atTwo * rightTwo;
    unitResponse[0] = atOne;
    unitResponse[1] = over;
    unitResponse[2] = over;
    unitResponse[3] = atTwo;
    unitKnown[0] = 1;
    unitKnown[1] = 1;
  }

  /** Whether two hubs give each other alike, as by all but one-way air. */
  function isMutual(): boolean {
    const hubs = hubCount;
    const { hubLink } = network;
    const one = steadyCount;
    const two = steadyCount + 1;
    return hubLink[one * hubs + two] === hubLink[two * hubs + one];
  }

  /** LU without pivoting: air that passes one way makes the matrix unlike its transpose, but every row stays dominant. */
  function factorAny(): void {
    const hubs = hubCount;
    const steady = steadyCount;
    const size = hubCount - steadyCount;
    const { condensed, condensedRhs, lower, pivot, solution, unitKnown, endByMean: ways } = columns;
    const { hubBoundary, hubBoundaryC, hubLink, hubStorage, hubC, hubLineW, hubLineG } = network;
    for (let i = 0; i < size; i++) {
      const hub = steady + i;
      let diagonal = condensed[i * size + i]! + hubBoundary[hub]! + hubLineG[hub]!;
      for (let j = 0; j < size; j++) diagonal += hubLink[hub * hubs + steady + j]!;
      const way = endByMean(diagonal, hubStorage[hub]!);
      const storage = way * hubStorage[hub]!;
      ways[hub] = way;
      diagonal += storage;
      solution[i] =
        condensedRhs[i]! + hubLineW[hub]! + hubBoundary[hub]! * hubBoundaryC[hub]! + storage * hubC[hub]!;
      for (let j = 0; j < size; j++) {
        let value = i === j ? diagonal : condensed[i * size + j]! - hubLink[hub * hubs + steady + j]!;
        const last = Math.min(i, j);
        for (let k = 0; k < last; k++) value -= lower[i * size + k]! * lower[k * size + j]!;
        lower[i * size + j] = j < i ? value / pivot[j]! : value;
      }
      pivot[i] = lower[i * size + i]!;
      unitKnown[i] = 0;
    }
    solveUpperLower(lower, size, solution, 0);
  }

  function finish(): void {
    const steady = steadyCount;
    const changing = hubCount - steadyCount;
    const { steadyAlone, steadyResponse, solution, endByMean: ways } = columns;
    const { hubMeanC } = network;
    for (let i = 0; i < steady; i++) {
      let value = steadyAlone[i]!;
      for (let m = 0; m < changing; m++) value -= steadyResponse[i * changing + m]! * solution[m]!;
      hubMeanC[i] = value;
      ways[i] = 1;
    }
  }

  function moveOn(): void {
    const hubs = hubCount;
    const { endByMean: ways, heldAtC } = columns;
    const { hubC, hubMeanC } = network;
    for (let i = 0; i < hubs; i++) {
      const start = hubC[i]!;
      const held = heldAtC[i]!;
      hubC[i] = Number.isNaN(held) ? start + ways[i]! * (hubMeanC[i]! - start) : held;
    }
  }

  /** Heat that keeps the held hubs inside their band, by relaxation: exact at once for one held hub. */
  function hold(): void {
    const steady = steadyCount;
    const changing = hubCount - steadyCount;
    const { solution, unitResponse, unitKnown, endByMean: ways, heldAtC, holdingW } = columns;
    const { heldW, holdLowC, holdHighC, hubC } = network;
    for (let i = 0; i < changing; i++) {
      heldW[steady + i] = 0;
      holdingW[steady + i] = 0;
      heldAtC[steady + i] = Number.NaN;
    }
    for (let pass = 0; pass < HOLD_PASSES; pass++) {
      let largest = 0;
      for (let i = 0; i < changing; i++) {
        const hub = steady + i;
        const holding = holdingW[hub]!;
        const start = hubC[hub]!;
        const low = holdLowC[hub]!;
        const high = holdHighC[hub]!;
        if (holding === 0 && start >= low && start <= high) {
          const end = start + ways[hub]! * (solution[i]! - start);
          if (end >= low && end <= high) continue;
        }
        if (unitKnown[i] === 0) findResponse(i);
        holdHub(i);
        const change = holdingW[hub]! - holding;
        if (change === 0) continue;
        for (let j = 0; j < changing; j++) solution[j]! += change * unitResponse[i * changing + j]!;
        largest = Math.max(largest, Math.abs(change));
      }
      if (largest <= HOLD_TOLERANCE_W) return;
    }
  }

  /**
   * Hold the ith changing hub at the limit of its band that it passes, or starts beyond, while the others stay as they are:
   * from when it gets there in the step, at full power if it starts beyond it, by itself from within. What gets there by full
   * power and would then leave the limit by itself is left to do so. Written: watts for the equation of the mean, the heat
   * given, and where the hub ends. One function, by row alone: numbers handed from one to the next are allocations.
   */
  function holdHub(i: number): void {
    const hub = steadyCount + i;
    const { solution, unitResponse, endByMean: ways, heldAtC, holdingW } = columns;
    const { heldW, holdLowC, holdHighC, holdMaxW, holdMinW, holdRamps, hubC, hubStorage } = network;
    const own = unitResponse[i * (hubCount - steadyCount) + i]!;
    // Its mean without holding.
    const free = solution[i]! - holdingW[hub]! * own;
    const start = hubC[hub]!;
    const way = ways[hub]!;
    const freeEnd = start + way * (free - start);
    heldW[hub] = 0;
    holdingW[hub] = 0;
    heldAtC[hub] = Number.NaN;
    const isLow = Math.min(start, freeEnd) < holdLowC[hub]!;
    if (!isLow && !(Math.max(start, freeEnd) > holdHighC[hub]!)) return;
    const limitC = isLow ? holdLowC[hub]! : holdHighC[hub]!;
    const most = isLow ? holdMaxW[hub]! : holdMinW[hub]!;
    const gap = limitC - start;
    const storage = hubStorage[hub]!;
    let mean = limitC;
    let end = limitC;
    if (gap * most > 0) {
      // Its way to the limit as a share of that which full power brings it in the step.
      const share = holdRamps[hub] === 1 ? 1 : gap / (way * (free + own * most - start));
      if (share < 0 || share > 1) {
        heldW[hub] = most;
        holdingW[hub] = most;
        return;
      }
      const lifted = free + own * way * storage * gap;
      const beyond = way * (lifted - limitC);
      if (beyond * gap > 0) {
        mean = lifted;
        end = limitC + beyond;
      }
      mean -= wayBack(gap, way, share);
    } else if (gap !== 0) mean -= wayBack(gap, way, Math.min(1, gap / (way * (free - start))));
    const forMean = (mean - free) / own;
    const power = forMean + storage * (end - start - way * (mean - start));
    if (power * most <= 0) return;
    const isEnough = Math.abs(power) < Math.abs(most);
    heldW[hub] = isEnough ? power : most;
    holdingW[hub] = isEnough ? forMean : most;
    if (isEnough) heldAtC[hub] = end;
  }

  /** Rise of the ith changing hub per watt put into it, with the responses of the others, into `unitResponse` [K/W]. */
  function findResponse(i: number): void {
    const size = hubCount - steadyCount;
    const { lower, unitResponse, unitKnown } = columns;
    for (let j = 0; j < size; j++) unitResponse[i * size + j] = i === j ? 1 : 0;
    solveUpperLower(lower, size, unitResponse, i * size);
    unitKnown[i] = 1;
  }

  return { load, condense, begin, solve, finish, moveOn };
}

/**
 * By how much the mean of a step is short of a limit that a hub reaches within it and then keeps. On its way it follows the
 * power of time whose mean lies where endByMean has it: straight where that is 2, at once where it is 1.
 *
 * @param gap from where it starts to the limit [K]
 * @param way its way to its end by that to its mean, 1…2 [–]
 * @param share of its whole way in the step that the gap is, 0…1
 * @returns [K]
 */
function wayBack(gap: number, way: number, share: number): number {
  return way > 1 ? gap * (1 - 1 / way) * power(share, 1 / (way - 1)) : 0;
}

/** Solve L U x = vector in place, from `offset` on; both in one matrix, L with ones on its diagonal. */
function solveUpperLower(factors: Float64Array, size: number, vector: Float64Array, offset: number): void {
  for (let i = 1; i < size; i++) {
    let value = vector[offset + i]!;
    for (let j = 0; j < i; j++) value -= factors[i * size + j]! * vector[offset + j]!;
    vector[offset + i] = value;
  }
  for (let i = size - 1; i >= 0; i--) {
    let value = vector[offset + i]!;
    for (let j = i + 1; j < size; j++) value -= factors[i * size + j]! * vector[offset + j]!;
    vector[offset + i] = value / factors[i * size + i]!;
  }
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
