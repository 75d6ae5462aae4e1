// Where things stand in the solver's flat columns. A chain's nodes lie side by side; its two ends, a and b, stand beside
// each other in columns by end; the hubs that an end couples to, at most two, in columns by slot; matrices are by row.
// The loops that run every step write the same arithmetic out (end 2c, slot 2·end): with calls in them a year took a
// twentieth longer, since a call across modules is looked up anew in every round.

/** Row of end a, and of end b, in columns by end. */
export const endA = (chain: number): number => 2 * chain;
export const endB = (chain: number): number => 2 * chain + 1;

/** The chain of an end, and whether the end is its a. */
export const chainOf = (end: number): number => end >> 1;
export const isEndA = (end: number): boolean => end % 2 === 0;

/** Row of an end's nth hub, 0 or 1, in columns by slot. */
export const slotOf = (end: number, n: number): number => 2 * end + n;

/** Node of a chain's end a, and of end b; `first` holds the first node of each chain, and at last the number of nodes. */
export const nodeA = (first: Int32Array, chain: number): number => first[chain]!;
export const nodeB = (first: Int32Array, chain: number): number => first[chain + 1]! - 1;

/** Node of an end. */
export const nodeOfEnd = (first: Int32Array, end: number): number =>
  isEndA(end) ? nodeA(first, chainOf(end)) : nodeB(first, chainOf(end));

/** Entry of a square matrix by row. */
export const entry = (row: number, column: number, size: number): number => row * size + column;
