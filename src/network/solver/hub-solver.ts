// The hub system of a step: the stepper's condensed matrix and right-hand side in, hub temperatures and holding
// heat out. Hubs whose conductances never change within a set-up (radiant nodes) come first and are eliminated
// once per set-up (Schur complement); what is left, the air of the zones, is factored at every trial.
// Symmetric and diagonally dominant throughout, so LDLᵀ without pivoting.

export interface HubSolver {
  /** so many hubs from now on, the first of them steady: their links and boundaries change only before refresh() */
  load(hubs: number, steady: number): void;
  /** hubs · hubs, symmetric: what chain ends put on the hubs [W/K]; filled by the stepper, then refresh() */
  readonly base: Float64Array;
  /** eliminate the steady hubs anew */
  refresh(): void;
  /** take the step's right-hand side */
  begin(): void;
  /** solve the moving hubs with conductances as they stand, held ones within their bands */
  solve(): void;
  /** the steady hubs from the moving ones of the last solve */
  finish(): void;
  /** hub temperatures: moving ones after solve(), all after finish() [°C] */
  readonly hubC: Float64Array;
  readonly heldW: Float64Array;
}

/** Arrays for at least the hubs that will be loaded; rows of matrices are as long as there are hubs. */
export interface HubInputs {
  /** the step's right-hand side without boundary terms [W] */
  readonly fixedRhs: Float64Array;
  /** storage of each hub over the step [W/K] */
  readonly storage: Float64Array;
  readonly boundary: Float64Array;
  readonly boundaryC: Float64Array;
  /** hubs · hubs, symmetric */
  readonly link: Float64Array;
  readonly holdLowC: Float64Array;
  readonly holdHighC: Float64Array;
  readonly holdMaxW: Float64Array;
  readonly holdMinW: Float64Array;
}

const HOLD_PASSES = 60;
const HOLD_TOLERANCE_W = 1e-9;

/** A solver with room for `most` hubs; load() before use. */
export function hubSolver(most: number, inputs: HubInputs): HubSolver {
  let hubs = 0;
  let steady = 0;
  let moving = 0;
  const perHub = () => new Float64Array(most);
  const perPair = () => new Float64Array(most * most);
  const kept = {
    base: perPair(),
    hubC: perHub(),
    heldW: perHub(),
    /** factors of the steady block */
    steadyLower: perPair(),
    steadyPivot: perHub(),
    /** steady block's answer to each moving hub: steady · moving; and to the step's right-hand side */
    carried: perPair(),
    alone: perHub(),
    /** moving block with the steady one eliminated, before boundaries and links among the moving */
    condensed: perPair(),
    condensedRhs: perHub(),
    /** factors of the moving block; its answer; its answers to a watt in each hub, and which of them are known */
    lower: perPair(),
    pivot: perHub(),
    answer: perHub(),
    unit: perPair(),
    unitReady: perHub(),
  };

  function load(count: number, first: number): void {
    hubs = count;
    steady = first;
    moving = count - first;
    for (const array of Object.values(kept)) array.fill(0);
  }

  function refresh(): void {
    const { base, steadyLower, steadyPivot, carried, alone, condensed } = kept;
    const { storage, boundary, link } = inputs;
    const all = hubs;
    const first = steady;
    const rest = moving;
    for (let i = 0; i < first; i++) {
      let diagonal = base[i * all + i]! + storage[i]! + boundary[i]!;
      for (let j = 0; j < all; j++) diagonal += link[i * all + j]!;
      for (let j = 0; j < i; j++) {
        let value = base[i * all + j]! - link[i * all + j]!;
        for (let k = 0; k < j; k++)
          value -= steadyLower[i * first + k]! * steadyLower[j * first + k]! * steadyPivot[k]!;
        value /= steadyPivot[j]!;
        steadyLower[i * first + j] = value;
        diagonal -= value * value * steadyPivot[j]!;
      }
      steadyPivot[i] = diagonal;
    }
    for (let m = 0; m < rest; m++) {
      for (let i = 0; i < first; i++) alone[i] = base[i * all + first + m]! - link[i * all + first + m]!;
      solveFactored(steadyLower, steadyPivot, first, alone, 0);
      for (let i = 0; i < first; i++) carried[i * rest + m] = alone[i]!;
    }
    for (let m = 0; m < rest; m++) {
      for (let n = 0; n < rest; n++) {
        let value = base[(first + m) * all + first + n]!;
        if (m === n) {
          value += storage[first + m]!;
          // Links to steady hubs do not change with the trials; links among the moving are added in solve().
          for (let i = 0; i < first; i++) value += link[(first + m) * all + i]!;
        }
        for (let i = 0; i < first; i++) {
          value -= (base[i * all + first + m]! - link[i * all + first + m]!) * carried[i * rest + n]!;
        }
        condensed[m * rest + n] = value;
      }
    }
  }

  function begin(): void {
    const { carried, alone, condensedRhs, steadyLower, steadyPivot } = kept;
    const { boundary, boundaryC, fixedRhs } = inputs;
    const first = steady;
    const rest = moving;
    for (let i = 0; i < first; i++) alone[i] = fixedRhs[i]! + boundary[i]! * boundaryC[i]!;
    for (let m = 0; m < rest; m++) {
      let value = fixedRhs[first + m]!;
      for (let i = 0; i < first; i++) value -= carried[i * rest + m]! * alone[i]!;
      condensedRhs[m] = value;
    }
    solveFactored(steadyLower, steadyPivot, first, alone, 0);
  }

  function solve(): void {
    if (moving === 2) solveTwo();
    else factorAny();
    hold();
    const { hubC, answer } = kept;
    const first = steady;
    const rest = moving;
    for (let i = 0; i < rest; i++) hubC[first + i] = answer[i]!;
  }

  /**
   * The same as factorAny for two moving hubs, a house and its sunspace, by the inverse: it runs at every trial, and
   * one division waits less than four. The link between the two is kept out of the difference, however large it is.
   */
  function solveTwo(): void {
    const { condensed, condensedRhs, answer, unit, unitReady } = kept;
    const { boundary, boundaryC, link } = inputs;
    const one = steady;
    const two = steady + 1;
    const between = link[one * hubs + two]!;
    const own = condensed[0]! + boundary[one]!;
    const other = condensed[3]! + boundary[two]!;
    const cross = condensed[2]!;
    const inverse = 1 / (own * other - cross * cross + between * (own + other + 2 * cross));
    const atOne = (other + between) * inverse;
    const atTwo = (own + between) * inverse;
    const over = (between - cross) * inverse;
    const rightOne = condensedRhs[0]! + boundary[one]! * boundaryC[one]!;
    const rightTwo = condensedRhs[1]! + boundary[two]! * boundaryC[two]!;
    answer[0] = atOne * rightOne + over * rightTwo;
    answer[1] = over * rightOne + atTwo * rightTwo;
    unit[0] = atOne;
    unit[1] = over;
    unit[2] = over;
    unit[3] = atTwo;
    unitReady[0] = 1;
    unitReady[1] = 1;
  }

  function factorAny(): void {
    const { condensed, condensedRhs, lower, pivot, answer, unitReady } = kept;
    const { boundary, boundaryC, link } = inputs;
    for (let i = 0; i < moving; i++) {
      const hub = steady + i;
      answer[i] = condensedRhs[i]! + boundary[hub]! * boundaryC[hub]!;
      let diagonal = condensed[i * moving + i]! + boundary[hub]!;
      for (let j = 0; j < moving; j++) diagonal += link[hub * hubs + steady + j]!;
      for (let j = 0; j < i; j++) {
        let value = condensed[i * moving + j]! - link[hub * hubs + steady + j]!;
        for (let k = 0; k < j; k++) value -= lower[i * moving + k]! * lower[j * moving + k]! * pivot[k]!;
        value /= pivot[j]!;
        lower[i * moving + j] = value;
        diagonal -= value * value * pivot[j]!;
      }
      pivot[i] = diagonal;
      unitReady[i] = 0;
    }
    solveFactored(lower, pivot, moving, answer, 0);
  }

  function finish(): void {
    const { hubC, alone, carried, answer } = kept;
    const first = steady;
    const rest = moving;
    for (let i = 0; i < first; i++) {
      let value = alone[i]!;
      for (let m = 0; m < rest; m++) value -= carried[i * rest + m]! * answer[m]!;
      hubC[i] = value;
    }
  }

  /** Heat that keeps the held hubs inside their band, by relaxation: exact at once for one held hub. */
  function hold(): void {
    const { heldW, answer, unit } = kept;
    const { holdLowC, holdHighC, holdMaxW, holdMinW } = inputs;
    const first = steady;
    const rest = moving;
    for (let i = 0; i < rest; i++) heldW[first + i] = 0;
    for (let pass = 0; pass < HOLD_PASSES; pass++) {
      let largest = 0;
      for (let i = 0; i < rest; i++) {
        const hub = first + i;
        const free = answer[i]!;
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
        for (let j = 0; j < rest; j++) answer[j]! += change * unit[i * rest + j]!;
        largest = Math.max(largest, Math.abs(change));
      }
      if (largest <= HOLD_TOLERANCE_W) return;
    }
  }

  /** Rise of a hub per watt put into it, with the answers of the others kept in `unit` [K/W]. */
  function ownResponse(i: number): number {
    const { lower, pivot, unit, unitReady } = kept;
    if (unitReady[i] === 0) {
      for (let j = 0; j < moving; j++) unit[i * moving + j] = i === j ? 1 : 0;
      solveFactored(lower, pivot, moving, unit, i * moving);
      unitReady[i] = 1;
    }
    return unit[i * moving + i]!;
  }

  return { load, base: kept.base, refresh, begin, solve, finish, hubC: kept.hubC, heldW: kept.heldW };
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
