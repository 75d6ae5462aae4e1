// Modes as paced for a step length, kept while another length is stepped: hours of one, two and four steps follow each
// other all year, and taking a pace up again costs a copy where finding it costs an exponential for each mode.

import type { ChainColumns } from './chain-columns.ts';
import type { NetworkColumns } from './network-columns.ts';
import { nodeA, nodeB } from './network-index.ts';

export type PaceStore = ReturnType<typeof createPaceStore>;

/** Lengths kept: one, two and four steps an hour. */
const KEPT = 3;

/** A store for the modes and chains of these columns. */
export function createPaceStore(network: NetworkColumns, columns: ChainColumns) {
  const { amplitude, decay, fromA, fromB, riseFromA, riseFromB, scale } = columns.byMode;
  const { delayA, delayAcross, delayB } = columns.byChain;
  const { interiorA, interiorB, across, storageA, storageB, endByMeanA, endByMeanB } = columns.byChain;
  const like = (column: Float64Array) => new Float64Array(column.length);
  const paces = Array.from({ length: KEPT }, () => ({
    stepS: 0,
    decay: like(decay),
    fromA: like(fromA),
    fromB: like(fromB),
    riseFromA: like(riseFromA),
    riseFromB: like(riseFromB),
    scale: like(scale),
    interiorA: like(interiorA),
    interiorB: like(interiorB),
    across: like(across),
    delayA: like(delayA),
    delayAcross: like(delayAcross),
    delayB: like(delayB),
    storageA: like(storageA),
    storageB: like(storageB),
    endByMeanA: like(endByMeanA),
    endByMeanB: like(endByMeanB),
  }));
  let next = 0;

  function indexOf(stepS: number): number {
    for (let i = 0; i < KEPT; i++) if (paces[i]!.stepS === stepS) return i;
    return -1;
  }

  function forget(): void {
    for (const pace of paces) pace.stepS = 0;
  }

  /** Keep the modes of so many chains as they are paced now. */
  function keep(stepS: number, chains: number): void {
    if (indexOf(stepS) >= 0) return;
    const pace = paces[next]!;
    next = (next + 1) % KEPT;
    pace.stepS = stepS;
    const nodes = network.first[chains]!;
    pace.decay.set(decay.subarray(0, nodes));
    pace.fromA.set(fromA.subarray(0, nodes));
    pace.fromB.set(fromB.subarray(0, nodes));
    pace.riseFromA.set(riseFromA.subarray(0, nodes));
    pace.riseFromB.set(riseFromB.subarray(0, nodes));
    pace.scale.set(scale.subarray(0, nodes));
    pace.interiorA.set(interiorA.subarray(0, chains));
    pace.interiorB.set(interiorB.subarray(0, chains));
    pace.across.set(across.subarray(0, chains));
    pace.delayA.set(delayA.subarray(0, chains));
    pace.delayAcross.set(delayAcross.subarray(0, chains));
    pace.delayB.set(delayB.subarray(0, chains));
    pace.storageA.set(storageA.subarray(0, chains));
    pace.storageB.set(storageB.subarray(0, chains));
    pace.endByMeanA.set(endByMeanA.subarray(0, chains));
    pace.endByMeanB.set(endByMeanB.subarray(0, chains));
  }

  /** Take a chain's modes up again as they were paced for a known length, the same amount of each in another scale. */
  function takeModes(stepS: number, chain: number): void {
    const pace = paces[indexOf(stepS)]!;
    const b = nodeB(network.first, chain);
    for (let i = nodeA(network.first, chain) + 1; i < b; i++) {
      amplitude[i]! *= pace.scale[i]! / scale[i]!;
      decay[i] = pace.decay[i]!;
      fromA[i] = pace.fromA[i]!;
      fromB[i] = pace.fromB[i]!;
      riseFromA[i] = pace.riseFromA[i]!;
      riseFromB[i] = pace.riseFromB[i]!;
      scale[i] = pace.scale[i]!;
    }
    interiorA[chain] = pace.interiorA[chain]!;
    interiorB[chain] = pace.interiorB[chain]!;
    across[chain] = pace.across[chain]!;
    delayA[chain] = pace.delayA[chain]!;
    delayAcross[chain] = pace.delayAcross[chain]!;
    delayB[chain] = pace.delayB[chain]!;
  }

  /** Take a chain's ends up again as they were fitted to a known length. */
  function takeEnds(stepS: number, chain: number): void {
    const pace = paces[indexOf(stepS)]!;
    storageA[chain] = pace.storageA[chain]!;
    storageB[chain] = pace.storageB[chain]!;
    endByMeanA[chain] = pace.endByMeanA[chain]!;
    endByMeanB[chain] = pace.endByMeanB[chain]!;
  }

  return { forget, has: (stepS: number) => indexOf(stepS) >= 0, keep, takeModes, takeEnds };
}
