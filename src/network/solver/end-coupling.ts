// The two ends of every chain, coupled to their boundaries, to the interior and through it to each other, and to the hubs
// they touch: conductances in; end temperatures per watt, and what the ends put on the hub system, out. Anew each hour,
// when films have changed. Method: stepper.ts.

import type { ChainColumns } from './chain-columns.ts';
import type { ChainInteriors } from './chain-interior.ts';
import type { NetworkColumns } from './network-columns.ts';

/** Couples the ends of so many chains to so many hubs, after endBoundary, endHubG or the interiors changed. */
export function createEndCoupling(
  network: NetworkColumns,
  { byChain }: ChainColumns,
  interiors: ChainInteriors,
) {
  /** @param isNewStep whether ends with a heat capacity are to be fitted to a step of another length */
  function coupleEnds(chains: number, hubs: number, isNewStep: boolean): void {
    const { first, endBoundary, endHubG: g, endHubOrNone: hubAt, hubMatrix } = network;
    const { storageA, storageB, interiorA, interiorB, across } = byChain;
    const { responseA, responseAcross, responseB } = byChain;
    for (let i = 0; i < hubs * hubs; i++) hubMatrix[i] = 0;
    for (let c = 0; c < chains; c++) {
      const endA = 2 * c;
      const endB = endA + 1;
      const a = 2 * endA;
      const b = 2 * endB;
      const over = across[c]!;
      const coupledA = endBoundary[endA]! + interiorA[c]! + g[a]! + g[a + 1]!;
      const coupledB = endBoundary[endB]! + interiorB[c]! + g[b]! + g[b + 1]!;
      if (isNewStep) interiors.fitEnds(c, coupledA, coupledB);
      const totalA = coupledA + storageA[c]!;
      const totalB = coupledB + storageB[c]!;
      // A massless end held by nothing leaves nothing to divide by; the floors keep it finite.
      if (first[c]! + 1 === first[c + 1]!) {
        const both = 1 / Math.max(1e-12, totalA + totalB);
        responseA[c] = both;
        responseAcross[c] = both;
        responseB[c] = both;
      } else {
        const inverseDeterminant = 1 / Math.max(1e-24, totalA * totalB - over * over);
        responseA[c] = totalB * inverseDeterminant;
        responseAcross[c] = over * inverseDeterminant;
        responseB[c] = totalA * inverseDeterminant;
      }
      addEnd(hubs, b, responseB[c]!);
      if (hubAt[a]! === hubs) continue;
      addEnd(hubs, a, responseA[c]!);
      for (let s = a; s < b; s++) {
        for (let t = b; t < b + 2; t++) couple(hubs, s, t, responseAcross[c]!);
      }
    }
  }

  /** An end's own couplings on the hub system: +g on the diagonal, −g·k·g among its hubs. */
  function addEnd(hubs: number, slot: number, k: number): void {
    const { endHubG: g, endHubOrNone: hubAt, hubMatrix } = network;
    const g0 = g[slot]!;
    const g1 = g[slot + 1]!;
    const h0 = hubAt[slot]!;
    const h1 = hubAt[slot + 1]!;
    if (h0 < hubs) hubMatrix[h0 * hubs + h0]! += g0 - g0 * k * g0;
    if (h1 < hubs) hubMatrix[h1 * hubs + h1]! += g1 - g1 * k * g1;
    couple(hubs, slot, slot + 1, k);
  }

  /** −g·k·g between the hubs of two slots, both ways. */
  function couple(hubs: number, slot: number, other: number, k: number): void {
    const { endHubG: g, endHubOrNone: hubAt, hubMatrix } = network;
    const from = hubAt[slot]!;
    const to = hubAt[other]!;
    if (from === hubs || to === hubs) return;
    const value = g[slot]! * k * g[other]!;
    hubMatrix[from * hubs + to]! -= value;
    hubMatrix[to * hubs + from]! -= value;
  }

  return coupleEnds;
}
