// What several unknowns of a step come to when each depends on all: how far each is off in, how much to add to each out, until
// nothing is off. Method: Broyden's, as temperature-search.ts, the inverse Jacobian begun anew at each step as though each
// unknown mended its own and no other, which the lines they are put on nearly make true. Where that has not ended after a few
// moves (hot glass run wet, air at the edge of saturation), Newton's from the best of them: slopes measured by moving one
// unknown at a time, moves halved until they mend. More heat warms, and warmth takes heat, so that this comes to an end.

/** By so much a move is shortened that made things worse. */
const SHORTER = 0.5;
/** Moves of Broyden's before slopes are measured. */
const FREE_MOVES = 8;
/** A slope is measured over at least so much, in the unit of what is off. */
const LEAST_PROBE = 50;
/** A move of Newton's is halved so often at most. */
const MOST_HALVINGS = 5;
/** Moves of a search; one that has not ended then is left where it stands, and never with a slope half measured. */
export const MOST_MOVES = 59;
/** No move of Newton's is longer than so many times what is off most. */
const LONGEST = 20;

/** A slope below this is none. */
const LEAST_PIVOT = 1e-9;

/** What the next call of a search begins with. */
const FREE = 0;
const AT_BASE = 1;
const PROBING = 2;
const MOVED = 3;

export interface JointSearch {
  /** how far each is off, in their own unit; the caller writes it */
  readonly off: Float64Array;
  /** what to add to each */
  readonly move: Float64Array;
  /** at the start of a step: so many unknowns, the first of them at once, the others once widened to them: till then nothing is off in them */
  begin(first: number, all: number): void;
  /** from now on all unknowns; done already if slopes are measured */
  widen(): void;
  /** how many are sought */
  count(): number;
  /** from `off` to `move` */
  next(): void;
}

/** A search with room for `most` unknowns. */
export function createJointSearch(most: number): JointSearch {
  const off = new Float64Array(most);
  const move = new Float64Array(most);
  const lastOff = new Float64Array(most);
  const pull = new Float64Array(most);
  const miss = new Float64Array(most);
  const inverse = new Float64Array(most * most);
  const moved = new Float64Array(most);
  const best = new Float64Array(most);
  const base = new Float64Array(most);
  const slopes = new Float64Array(most * most);
  const newton = new Float64Array(most);
  let count = 0;
  let all = 0;
  let isFirst = true;
  let lastLargest = 0;
  let bestLargest = 0;
  let length = 1;
  /** whether the inverse is more than so much of each; until then it is not written */
  let hasLearnt = false;
  let stage = FREE;
  let left = MOST_MOVES;
  let probed = 0;
  let probe = 0;
  let halvings = 0;

  function begin(first: number, unknowns: number): void {
    count = first;
    all = unknowns;
    isFirst = true;
    stage = FREE;
    left = MOST_MOVES;
    bestLargest = Number.POSITIVE_INFINITY;
  }

  /** Where nothing was off nothing was moved or learnt. */
  function widen(): void {
    for (let i = count; i < all; i++) {
      off[i] = 0;
      move[i] = 0;
      lastOff[i] = 0;
      moved[i] = 0;
      best[i] = 0;
      for (let j = 0; hasLearnt && j <= i; j++) {
        inverse[i * most + j] = i === j ? length : 0;
        inverse[j * most + i] = i === j ? length : 0;
      }
    }
    count = all;
  }

  function next(): void {
    let largest = 0;
    for (let i = 0; i < count; i++) largest = Math.max(largest, Math.abs(off[i]!));
    if (isFirst) for (let i = 0; i < count; i++) moved[i] = 0;
    if (stage === FREE) moveFreely(largest);
    else measure(largest);
    for (let i = 0; i < count; i++) moved[i]! += move[i]!;
    left--;
  }

  function moveFreely(largest: number): void {
    if (largest < bestLargest) {
      bestLargest = largest;
      for (let i = 0; i < count; i++) best[i] = moved[i]!;
    }
    if (left === MOST_MOVES - FREE_MOVES) {
      stage = AT_BASE;
      widen();
      if (largest <= bestLargest) measure(largest);
      else for (let i = 0; i < count; i++) move[i] = best[i]! - moved[i]!;
      return;
    }
    const n = count;
    // What has made things worse is forgotten, and the next moves are shorter: at the edge of saturation what holds on one
    // side does not on the other.
    if (isFirst) restart(1);
    else if (largest > lastLargest) restart(length * SHORTER);
    else learn();
    isFirst = false;
    lastLargest = largest;
    for (let i = 0; i < n; i++) {
      let sum = length * off[i]!;
      if (hasLearnt) {
        sum = 0;
        for (let j = 0; j < n; j++) sum += inverse[i * most + j]! * off[j]!;
      }
      move[i] = Math.max(-largest, Math.min(largest, sum));
      lastOff[i] = off[i]!;
    }
  }

  function measure(largest: number): void {
    const n = count;
    for (let i = 0; i < n; i++) move[i] = 0;
    if (stage === MOVED && largest >= lastLargest && halvings < MOST_HALVINGS) {
      halvings++;
      for (let i = 0; i < n; i++) {
        newton[i]! *= SHORTER;
        move[i] = -newton[i]!;
      }
      return;
    }
    if (stage === PROBING) {
      for (let i = 0; i < n; i++) slopes[i * n + probed] = (off[i]! - base[i]!) / probe;
      move[probed] = -probe;
      probed++;
    } else {
      if (left <= n) return;
      lastLargest = largest;
      stage = PROBING;
      probed = 0;
      for (let i = 0; i < n; i++) base[i] = off[i]!;
    }
    // What is not off at all, a dry pane, is taken to mend itself alone.
    for (; probed < n && base[probed] === 0; probed++) {
      for (let i = 0; i < n; i++) slopes[i * n + probed] = i === probed ? -1 : 0;
    }
    if (probed < n) {
      probe = Math.sign(base[probed]!) * Math.max(LEAST_PROBE, SHORTER * Math.abs(base[probed]!));
      move[probed] = probe;
      return;
    }
    for (let i = 0; i < n; i++) newton[i] = -base[i]!;
    solveLinear(slopes, newton, n);
    for (let i = 0; i < n; i++) {
      newton[i] = Math.max(-LONGEST * lastLargest, Math.min(LONGEST * lastLargest, newton[i]!));
      move[i]! += newton[i]!;
    }
    halvings = 0;
    stage = MOVED;
  }

  /** As though each mended so much of itself and nothing of the others. */
  function restart(share: number): void {
    length = share;
    hasLearnt = false;
  }

  /** The last move and what was left of what was off, into the inverse; what is off falls by the move where it is right. */
  function learn(): void {
    const n = count;
    if (!hasLearnt) {
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) inverse[i * most + j] = i === j ? length : 0;
      }
      hasLearnt = true;
    }
    let along = 0;
    for (let i = 0; i < n; i++) {
      let mended = 0;
      let pulled = 0;
      for (let j = 0; j < n; j++) {
        mended += inverse[i * most + j]! * (lastOff[j]! - off[j]!);
        pulled += inverse[j * most + i]! * move[j]!;
      }
      miss[i] = move[i]! - mended;
      pull[i] = pulled;
    }
    for (let j = 0; j < n; j++) along += pull[j]! * (lastOff[j]! - off[j]!);
    if (Math.abs(along) < 1e-9) return;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) inverse[i * most + j]! += (miss[i]! * pull[j]!) / along;
    }
  }

  return { off, move, begin, widen, count: () => count, next };
}

/** Gaussian elimination in place, by the largest pivot; an unknown that nothing depends on stays 0. */
function solveLinear(matrix: Float64Array, rhs: Float64Array, size: number): void {
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.abs(matrix[i * size + k]!) > Math.abs(matrix[pivot * size + k]!)) pivot = i;
    }
    for (let j = 0; pivot !== k && j < size; j++) {
      const kept = matrix[k * size + j]!;
      matrix[k * size + j] = matrix[pivot * size + j]!;
      matrix[pivot * size + j] = kept;
    }
    const kept = rhs[k]!;
    rhs[k] = rhs[pivot]!;
    rhs[pivot] = kept;
    const divisor = matrix[k * size + k]!;
    for (let i = k + 1; Math.abs(divisor) > LEAST_PIVOT && i < size; i++) {
      const factor = matrix[i * size + k]! / divisor;
      for (let j = k; j < size; j++) matrix[i * size + j]! -= factor * matrix[k * size + j]!;
      rhs[i]! -= factor * rhs[k]!;
    }
  }
  for (let i = size - 1; i >= 0; i--) {
    const divisor = matrix[i * size + i]!;
    let value = rhs[i]!;
    for (let j = i + 1; j < size; j++) value -= matrix[i * size + j]! * rhs[j]!;
    rhs[i] = Math.abs(divisor) > LEAST_PIVOT ? value / divisor : 0;
  }
}
