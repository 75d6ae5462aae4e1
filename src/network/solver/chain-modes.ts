// The inside of a chain as modes: capacities and links between its two ends in; what each mode stores and conducts, and its
// shape over the nodes, out. A mode keeps a share of itself and takes in some of each end's temperature, whatever the
// others do, so that a step over a wall is a row of independent sums instead of two sweeps that wait node for node.
//
// Method: with C the storage over some time and K the conduction of the inside, ends held, M = C + K. Shapes S with SᵀMS = 1
// and SᵀCS = diag(storageShare) turn C dT/dt = −K T + ends into one line a mode, whatever the step. They are the
// eigenvectors of L⁻¹CL⁻ᵀ, M = LLᵀ: symmetric, with eigenvalues between 0 and 1 even where nodes hold no heat.
// Source: Golub and Van Loan, Matrix Computations, 4th ed.: 8.5 (cyclic Jacobi), 8.7 (symmetric-definite pairs); numbers
// of sections from memory. Error: round-off, tests/network/solver/chain-modes.test.ts.

import { square } from '../../physics/elementary.ts';

export interface ChainModes {
  /** share of each mode's storage in its storage and conduction, 0…1; 0 where there is no capacity for it */
  readonly storageShare: Float64Array;
  /** node · nodes + mode: temperature of a node by the amount of a mode */
  readonly shapes: Float64Array;
}

const MOST_SWEEPS = 60;
/** Off-diagonal size, squared, at which the matrix counts as diagonal; its diagonal is at most 1. */
const DIAGONAL = 1e-30;

/**
 * Modes of the inside of a chain.
 *
 * @param storage of the inner nodes over some time [W/K]; 0 or more
 * @param links from end a to the first, between neighbours, from the last to end b [W/K]; one more than nodes, above 0
 * @returns as many modes as inner nodes
 */
export function chainModes(storage: ArrayLike<number>, links: ArrayLike<number>): ChainModes {
  const nodes = storage.length;
  const shapes = initialShapes(storage, links);
  const matrix = new Float64Array(nodes * nodes);
  for (let i = 0; i < nodes; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let n = 0; n <= j; n++) sum += shapes[n * nodes + i]! * storage[n]! * shapes[n * nodes + j]!;
      matrix[i * nodes + j] = sum;
      matrix[j * nodes + i] = sum;
    }
  }
  for (let sweep = 0; sweep < MOST_SWEEPS && offDiagonal(matrix, nodes) > DIAGONAL; sweep++) {
    for (let p = 0; p < nodes - 1; p++) {
      for (let q = p + 1; q < nodes; q++) rotate(matrix, shapes, nodes, p, q);
    }
  }
  const storageShare = new Float64Array(nodes);
  for (let k = 0; k < nodes; k++) storageShare[k] = Math.max(0, matrix[k * nodes + k]!);
  return { storageShare, shapes };
}

/** L⁻ᵀ: shapes to begin with, for which SᵀMS = 1. L has a diagonal and one row below it. */
function initialShapes(storage: ArrayLike<number>, links: ArrayLike<number>): Float64Array {
  const nodes = storage.length;
  const shapes = new Float64Array(nodes * nodes);
  let below = 0;
  for (let k = 0; k < nodes; k++) {
    const pivot = Math.sqrt(storage[k]! + links[k]! + links[k + 1]! - below * below);
    // The column before, one row of L further: its answer to a unit in node k.
    for (let n = 0; n < k; n++) shapes[n * nodes + k] = (-below * shapes[n * nodes + k - 1]!) / pivot;
    shapes[k * nodes + k] = 1 / pivot;
    below = -links[k + 1]! / pivot;
  }
  return shapes;
}

function offDiagonal(matrix: Float64Array, nodes: number): number {
  let sum = 0;
  for (let i = 1; i < nodes; i++) for (let j = 0; j < i; j++) sum += square(matrix[i * nodes + j]!);
  return sum;
}

/** One rotation in the plane of modes p and q, after which nothing couples them; shapes rotate with them. */
function rotate(matrix: Float64Array, shapes: Float64Array, nodes: number, p: number, q: number): void {
  const coupling = matrix[p * nodes + q]!;
  if (coupling === 0) return;
  const half = (matrix[q * nodes + q]! - matrix[p * nodes + p]!) / (2 * coupling);
  const tangent = (half < 0 ? -1 : 1) / (Math.abs(half) + Math.sqrt(half * half + 1));
  const cosine = 1 / Math.sqrt(tangent * tangent + 1);
  const sine = tangent * cosine;
  for (let n = 0; n < nodes; n++) {
    const shapeP = shapes[n * nodes + p]!;
    const shapeQ = shapes[n * nodes + q]!;
    shapes[n * nodes + p] = cosine * shapeP - sine * shapeQ;
    shapes[n * nodes + q] = sine * shapeP + cosine * shapeQ;
    if (n === p || n === q) continue;
    const rowP = matrix[n * nodes + p]!;
    const rowQ = matrix[n * nodes + q]!;
    matrix[n * nodes + p] = cosine * rowP - sine * rowQ;
    matrix[n * nodes + q] = sine * rowP + cosine * rowQ;
    matrix[p * nodes + n] = matrix[n * nodes + p]!;
    matrix[q * nodes + n] = matrix[n * nodes + q]!;
  }
  matrix[p * nodes + p]! -= tangent * coupling;
  matrix[q * nodes + q]! += tangent * coupling;
  matrix[p * nodes + q] = 0;
  matrix[q * nodes + p] = 0;
}
