// The exact way, as a check on the stepper: the same description assembled into one dense matrix and moved on by its
// matrix exponential, from the eigenvectors that ml-matrix finds, with inputs that stand still. Shares no code with it.
import { EigenvalueDecomposition, Matrix, solve } from 'ml-matrix';
import type { LinearNetwork } from '../../../src/network/solver/linear-network.ts';

export interface Inputs {
  readonly nodeW: ArrayLike<number>;
  readonly hubW: ArrayLike<number>;
  readonly endC: ArrayLike<number>;
  readonly hubC: ArrayLike<number>;
}

/** A node without heat capacity is one that follows within a thousandth of a second [J/K]. */
const NEXT_TO_NONE = 1e-3;

/**
 * Temperatures of chain nodes in order, then hubs, after so many seconds [°C].
 *
 * @param from the same at the start
 */
export function exactTemperatures(
  network: LinearNetwork,
  from: readonly number[],
  inputs: Inputs,
  seconds: number,
): number[] {
  const nodes = network.chains.reduce((sum, chain) => sum + chain.capacity.length, 0);
  const size = nodes + network.hubs.length;
  const conduction = Matrix.zeros(size, size);
  const heat = Array.from({ length: size }, (_, i) =>
    i < nodes ? inputs.nodeW[i]! : inputs.hubW[i - nodes]!,
  );
  const hold = (i: number, g: number, outsideC: number) => {
    conduction.set(i, i, conduction.get(i, i) + g);
    heat[i]! += g * outsideC;
  };
  const link = (i: number, j: number, g: number) => {
    for (const [row, column, sign] of [
      [i, i, 1],
      [j, j, 1],
      [i, j, -1],
      [j, i, -1],
    ] as const)
      conduction.set(row, column, conduction.get(row, column) + sign * g);
  };
  let first = 0;
  network.chains.forEach((chain, c) => {
    const last = first + chain.capacity.length - 1;
    for (const [i, g] of chain.link.entries()) link(first + i, first + i + 1, g);
    [chain.a, chain.b].forEach((end, side) => {
      const node = side === 0 ? first : last;
      for (const { hub, conductance } of end.hubs) link(node, nodes + hub, conductance);
      hold(node, end.boundary, inputs.endC[2 * c + side]!);
    });
    first = last + 1;
  });
  for (const { from: one, to, conductance } of network.hubLinks) link(nodes + one, nodes + to, conductance);
  network.hubs.forEach(({ boundary }, h) => {
    hold(nodes + h, boundary, inputs.hubC[h]!);
  });
  const roots = [
    ...network.chains.flatMap(({ capacity }) => capacity),
    ...network.hubs.map((h) => h.capacity),
  ].map((joule) => Math.sqrt(Math.max(NEXT_TO_NONE, joule)));
  const rest = solve(conduction, Matrix.columnVector(heat)).to1DArray();
  const scaled = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) scaled.set(i, j, conduction.get(i, j) / (roots[i]! * roots[j]!));
  const { eigenvectorMatrix, realEigenvalues } = new EigenvalueDecomposition(scaled, {
    assumeSymmetric: true,
  });
  const away = Matrix.columnVector(from.map((tempC, i) => (tempC - rest[i]!) * roots[i]!));
  const modes = eigenvectorMatrix
    .transpose()
    .mmul(away)
    .to1DArray()
    .map((amount, k) => amount * Math.exp(-realEigenvalues[k]! * seconds));
  const left = eigenvectorMatrix.mmul(Matrix.columnVector(modes)).to1DArray();
  return left.map((value, i) => rest[i]! + value / roots[i]!);
}
