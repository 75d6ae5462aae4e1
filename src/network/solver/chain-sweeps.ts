// The loops over all chains that a step and an hour run: sources gathered, ends swept down to the hubs, ends and modes moved
// on. Each kernel is made once, of the columns it reads, and then called with counts alone: called with its columns as
// arguments it has to look each of them up again, and the year took two fifths longer (docs/fast-loop.md). Method: stepper.ts.

import type { ChainColumns } from './chain-columns.ts';
import type { ChainInteriors } from './chain-interior.ts';
import type { NetworkColumns } from './network-columns.ts';
import { nodeA, nodeB } from './network-index.ts';

/** Heat into the ends from sources and boundaries, and into the modes from heat put inside. */
export function createSourceGathering(
  columns: NetworkColumns,
  chainColumns: ChainColumns,
  interiors: ChainInteriors,
) {
  return function gatherSources(chains: number): void {
    const { first, nodeW, endBoundary, endBoundaryC } = columns;
    const { sourceA, sourceB, mayHeatInside } = chainColumns.byChain;
    for (let c = 0; c < chains; c++) {
      const endA = 2 * c;
      const endB = endA + 1;
      const a = nodeA(first, c);
      const b = nodeB(first, c);
      const atA = endBoundary[endA]! * endBoundaryC[endA]!;
      const atB = nodeW[b]! + endBoundary[endB]! * endBoundaryC[endB]!;
      sourceA[c] = a < b ? nodeW[a]! + atA : 0;
      sourceB[c] = a < b ? atB : atB + atA;
      if (mayHeatInside[c] === 1) interiors.takeHeat(c);
    }
  };
}

/** End temperatures without the hubs, and what they put on the hubs' right-hand side. */
export function createEndSweep(columns: NetworkColumns, chainColumns: ChainColumns) {
  return function sweepEnds(chains: number, hubs: number): void {
    const { sourceA, sourceB, storedA, storedB, responseA, responseAcross, responseB, freeA, freeB } =
      chainColumns.byChain;
    const { hubStorage, hubC, hubW, hubRhs, endHubG: g, endHubOrNone: hubAt } = columns;
    for (let i = 0; i < hubs; i++) hubRhs[i] = hubStorage[i]! * hubC[i]! + hubW[i]!;
    for (let c = 0; c < chains; c++) {
      const a = 4 * c;
      const b = a + 2;
      const heatA = storedA[c]! + sourceA[c]!;
      const heatB = storedB[c]! + sourceB[c]!;
      const over = responseAcross[c]!;
      const endAC = responseA[c]! * heatA + over * heatB;
      const endBC = over * heatA + responseB[c]! * heatB;
      freeA[c] = endAC;
      freeB[c] = endBC;
      hubRhs[hubAt[b]!]! += g[b]! * endBC;
      hubRhs[hubAt[b + 1]!]! += g[b + 1]! * endBC;
      if (hubAt[a]! === hubs) continue;
      hubRhs[hubAt[a]!]! += g[a]! * endAC;
      hubRhs[hubAt[a + 1]!]! += g[a + 1]! * endAC;
    }
  };
}

/** Hubs take the solved temperatures; ends and modes follow them. */
export function createEndMove(
  columns: NetworkColumns,
  chainColumns: ChainColumns,
  interiors: ChainInteriors,
  trialC: Float64Array,
) {
  return function moveOn(chains: number, hubs: number): void {
    const { amplitude, decay, fromA, fromB } = chainColumns.byMode;
    const { responseA, responseAcross, responseB, freeA, freeB } = chainColumns.byChain;
    const { storedA, storedB, storageA, storageB, hasHeatInside } = chainColumns.byChain;
    const { first, nodeC, endSum, endHubG: g, endHubOrNone: hubAt, hubCOrNone: hub } = columns;
    for (let i = 0; i < hubs; i++) hub[i] = trialC[i]!;
    // The row after the last hub stands for none; it holds no temperature and is coupled by 0.
    hub[hubs] = 0;
    for (let c = 0; c < chains; c++) {
      const start = nodeA(first, c);
      const end = nodeB(first, c);
      const endA = 2 * c;
      const endB = endA + 1;
      const a = 2 * endA;
      const b = 2 * endB;
      const pullB = g[b]! * hub[hubAt[b]!]! + g[b + 1]! * hub[hubAt[b + 1]!]!;
      const over = responseAcross[c]!;
      let endAC = freeA[c]! + over * pullB;
      let endBC = freeB[c]! + responseB[c]! * pullB;
      if (hubAt[a]! < hubs) {
        const pullA = g[a]! * hub[hubAt[a]!]! + g[a + 1]! * hub[hubAt[a + 1]!]!;
        endAC += responseA[c]! * pullA;
        endBC += over * pullA;
        endSum[endB]! += endBC;
      }
      nodeC[start] = endAC;
      nodeC[end] = endBC;
      endSum[endA]! += endAC;
      // The hot loop.
      let atA = storageA[c]! * endAC;
      let atB = storageB[c]! * endBC;
      for (let i = start + 1; i < end; i++) {
        const kept = decay[i]!;
        const takesA = fromA[i]!;
        const takesB = fromB[i]!;
        const now = kept * amplitude[i]! + takesA * endAC + takesB * endBC;
        amplitude[i] = now;
        atA += takesA * (kept * now);
        atB += takesB * (kept * now);
      }
      storedA[c] = atA;
      storedB[c] = atB;
      if (hasHeatInside[c] === 1) interiors.addHeat(c);
    }
  };
}
