import * as fc from 'fast-check';
import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import { chainModes } from '../../../src/network/solver/chain-modes.ts';

/** Insides of chains: some nodes hold nothing, some links are a thousand times others. */
const insides = fc.integer({ min: 1, max: 14 }).chain((nodes) =>
  fc.record({
    storage: fc.array(fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 5000, noNaN: true })), {
      minLength: nodes,
      maxLength: nodes,
    }),
    links: fc.array(fc.double({ min: 0.1, max: 500, noNaN: true }), {
      minLength: nodes + 1,
      maxLength: nodes + 1,
    }),
  }),
);

/** Storage and conduction of an inside whose ends are held [W/K]. */
function matrixOf(storage: readonly number[], links: readonly number[]): Matrix {
  const nodes = storage.length;
  const matrix = Matrix.zeros(nodes, nodes);
  for (let n = 0; n < nodes; n++) {
    matrix.set(n, n, storage[n]! + links[n]! + links[n + 1]!);
    if (n === 0) continue;
    matrix.set(n, n - 1, -links[n]!);
    matrix.set(n - 1, n, -links[n]!);
  }
  return matrix;
}

/** Round-off by the condition of storage and conduction: nodes · 2e-16 · (1000 W/K over 0.1 W/K across the nodes). */
const ROUND_OFF = 1e-10;

function largestOff(matrix: Matrix, target: Matrix): number {
  return Matrix.abs(Matrix.sub(matrix, target)).max();
}

test('modes are orthonormal in storage and conduction, and in storage alone keep what they say', () => {
  fc.assert(
    fc.property(insides, ({ storage, links }) => {
      const nodes = storage.length;
      const { storageShare, shapes } = chainModes(storage, links);
      const S = Matrix.from1DArray(nodes, nodes, [...shapes]);
      const both = S.transpose().mmul(matrixOf(storage, links)).mmul(S);
      const held = S.transpose().mmul(Matrix.diag(storage)).mmul(S);
      expect(largestOff(both, Matrix.eye(nodes))).toBeLessThan(ROUND_OFF);
      expect(largestOff(held, Matrix.diag([...storageShare]))).toBeLessThan(ROUND_OFF);
    }),
    { numRuns: 300 },
  );
});

test("what the modes keep are the eigenvalues of a step, by the matrix library's own decomposition", () => {
  fc.assert(
    fc.property(insides, ({ storage, links }) => {
      const { storageShare } = chainModes(storage, links);
      const root = Matrix.diag(storage.map(Math.sqrt));
      const step = root.mmul(inverse(matrixOf(storage, links))).mmul(root);
      const eigenvalues = new EigenvalueDecomposition(step, { assumeSymmetric: true }).realEigenvalues;
      const rising = [...storageShare].sort((a, b) => a - b);
      eigenvalues
        .sort((a, b) => a - b)
        .forEach((value, k) => {
          expect(rising[k]!).toBeCloseTo(value, 11);
        });
    }),
    { numRuns: 300 },
  );
});

test('a slab of equal cells has the modes of its closed form', () => {
  // Conduction of n equal nodes between held ends: eigenvalues 2 − 2 cos(kπ/(n + 1)); any text on finite differences.
  const nodes = 9;
  const { storageShare } = chainModes(new Array(nodes).fill(3), new Array(nodes + 1).fill(2));
  const expected = Array.from(
    { length: nodes },
    (_, k) => 3 / (3 + 2 * (2 - 2 * Math.cos(((k + 1) * Math.PI) / (nodes + 1)))),
  );
  const falling = [...storageShare].sort((a, b) => b - a);
  expected.forEach((value, k) => {
    expect(falling[k]!).toBeCloseTo(value, 13);
  });
});
