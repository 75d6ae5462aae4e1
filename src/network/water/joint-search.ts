// What several unknowns of a step come to when each depends on all: how far each is off in, how much to add to each out, until
// nothing is off. Method: Broyden's, as temperature-search.ts, the inverse Jacobian begun anew at each step as though each
// unknown mended its own and no other, which the lines they are put on nearly make true.

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

  function begin(unknowns: number): void {
    count = unknowns;
    isFirst = true;
  }

  function next(): void {
    const n = count;
    if (isFirst) {
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) inverse[i * n + j] = i === j ? 1 : 0;
      }
    } else learn();
    isFirst = false;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += inverse[i * n + j]! * off[j]!;
      move[i] = sum;
      lastOff[i] = off[i]!;
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
