// The plain way, beside the stepper: the same description assembled into one dense matrix with ml-matrix, stepped by
// backward Euler, factored anew whenever anything changes.
import { LuDecomposition, Matrix } from 'ml-matrix';
import type { LinearNetwork } from '../../src/network/solver/linear-network.ts';

export interface DenseSolver {
  /** chain nodes in order, then hubs [°C] */
  temperatures: number[];
  step(input: {
    nodeW: ArrayLike<number>;
    hubW: ArrayLike<number>;
    endC: ArrayLike<number>;
    hubC: ArrayLike<number>;
  }): void;
}

export function denseSolver(network: LinearNetwork, stepS: number, initialC: number): DenseSolver {
  const nodes = network.chains.reduce((sum, chain) => sum + chain.capacity.length, 0);
  const size = nodes + network.hubs.length;
  const matrix = Matrix.zeros(size, size);
  const capacity = new Array<number>(size).fill(0);
  const boundary: { node: number; conductance: number; end: number }[] = [];
  const add = (i: number, j: number, g: number) => {
    matrix.set(i, i, matrix.get(i, i) + g);
    matrix.set(j, j, matrix.get(j, j) + g);
    matrix.set(i, j, matrix.get(i, j) - g);
    matrix.set(j, i, matrix.get(j, i) - g);
  };
  let first = 0;
  network.chains.forEach((chain, c) => {
    const last = first + chain.capacity.length - 1;
    chain.capacity.forEach((value, i) => {
      capacity[first + i] = value;
    });
    for (const [i, g] of chain.link.entries()) add(first + i, first + i + 1, g);
    [chain.a, chain.b].forEach((end, side) => {
      const node = side === 0 ? first : last;
      for (const { hub, conductance } of end.hubs) add(node, nodes + hub, conductance);
      boundary.push({ node, conductance: end.boundary, end: 2 * c + side });
    });
    first = last + 1;
  });
  for (const { from, to, conductance } of network.hubLinks) add(nodes + from, nodes + to, conductance);
  network.hubs.forEach((hub, h) => {
    capacity[nodes + h] = hub.capacity;
  });
  for (const { node, conductance } of boundary) matrix.set(node, node, matrix.get(node, node) + conductance);
  network.hubs.forEach((hub, h) => {
    matrix.set(nodes + h, nodes + h, matrix.get(nodes + h, nodes + h) + hub.boundary);
  });
  for (let i = 0; i < size; i++) matrix.set(i, i, matrix.get(i, i) + capacity[i]! / stepS);
  const factored = new LuDecomposition(matrix);
  const solver: DenseSolver = {
    temperatures: new Array<number>(size).fill(initialC),
    step({ nodeW, hubW, endC, hubC }) {
      const rhs = solver.temperatures.map(
        (t, i) => (capacity[i]! / stepS) * t + (i < nodes ? nodeW[i]! : hubW[i - nodes]!),
      );
      for (const { node, conductance, end } of boundary) rhs[node]! += conductance * endC[end]!;
      network.hubs.forEach((hub, h) => {
        rhs[nodes + h]! += hub.boundary * hubC[h]!;
      });
      solver.temperatures = factored.solve(Matrix.columnVector(rhs)).to1DArray();
    },
  };
  return solver;
}
