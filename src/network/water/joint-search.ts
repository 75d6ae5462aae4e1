// What several unknowns of a step come to when each depends on all: how far each is off in, how much to add to each out, until
// nothing is off. Method: Broyden's, as temperature-search.ts, the inverse Jacobian begun anew at each step as though each
// unknown mended its own and no other, which the lines they are put on nearly make true.

/** By so much a move is shortened that made things worse. */
const SHORTER = 0.5;

export interface JointSearch {
  /** how far each is off, in their own unit; the caller writes it */
  readonly off: Float64Array;
  /** what to add to each */
  readonly move: Float64Array;
  /** so many unknowns, at the start of a step */
  begin(count: number): void;
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
  let count = 0;
  let isFirst = true;
  let lastLargest = 0;
  let length = 1;

  function begin(unknowns: number): void {
    count = unknowns;
    isFirst = true;
  }

  function next(): void {
    const n = count;
    let largest = 0;
    for (let i = 0; i < n; i++) largest = Math.max(largest, Math.abs(off[i]!));
    // What has made things worse is forgotten, and the next moves are shorter: at the edge of saturation what holds on one
    // side does not on the other.
    if (isFirst) restart(1);
    else if (largest > lastLargest) restart(length * SHORTER);
    else learn();
    isFirst = false;
    lastLargest = largest;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += inverse[i * n + j]! * off[j]!;
      move[i] = Math.max(-largest, Math.min(largest, sum));
      lastOff[i] = off[i]!;
    }
  }

  /** As though each mended so much of itself and nothing of the others. */
  function restart(share: number): void {
    const n = count;
    length = share;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) inverse[i * n + j] = i === j ? share : 0;
    }
  }

  /** The last move and what was left of what was off, into the inverse; what is off falls by the move where it is right. */
  function learn(): void {
    const n = count;
    let along = 0;
    for (let i = 0; i < n; i++) {
      let mended = 0;
      let pulled = 0;
      for (let j = 0; j < n; j++) {
        mended += inverse[i * n + j]! * (lastOff[j]! - off[j]!);
        pulled += inverse[j * n + i]! * move[j]!;
      }
      miss[i] = move[i]! - mended;
      pull[i] = pulled;
    }
    for (let j = 0; j < n; j++) along += pull[j]! * (lastOff[j]! - off[j]!);
    if (Math.abs(along) < 1e-9) return;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) inverse[i * n + j]! += (miss[i]! * pull[j]!) / along;
    }
  }

  return { off, move, begin, next };
}
