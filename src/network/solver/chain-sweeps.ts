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
    const { hubW, hubRhs, endHubG: g, endHubOrNone: hubAt } = columns;
    for (let i = 0; i < hubs; i++) hubRhs[i] = hubW[i]!;
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

/** More heat into end b of a chain that is swept already [W], until the next sources: onto both its ends and their hubs. */
export function createHeatInStep(columns: NetworkColumns, chainColumns: ChainColumns) {
  return function addHeatInStep(c: number, watt: number): void {
    const { sourceB, responseB, responseAcross, freeA, freeB } = chainColumns.byChain;
    const { hubRhs, endHubG: g, endHubOrNone: hubAt } = columns;
    const a = 4 * c;
    const b = a + 2;
    const riseA = responseAcross[c]! * watt;
    const riseB = responseB[c]! * watt;
    sourceB[c]! += watt;
    freeA[c]! += riseA;
    freeB[c]! += riseB;
    hubRhs[hubAt[b]!]! += g[b]! * riseB;
    hubRhs[hubAt[b + 1]!]! += g[b + 1]! * riseB;
    hubRhs[hubAt[a]!]! += g[a]! * riseA;
    hubRhs[hubAt[a + 1]!]! += g[a + 1]! * riseA;
  };
}

/** Ends and modes follow the hubs' means of the step. */
export function createEndMove(
  columns: NetworkColumns,
  chainColumns: ChainColumns,
  interiors: ChainInteriors,
) {
  return function moveOn(chains: number, hubs: number): void {
    const { amplitude, decay, fromA, fromB, riseFromA, riseFromB } = chainColumns.byMode;
    const { responseA, responseAcross, responseB, freeA, freeB } = chainColumns.byChain;
    const { storedA, storedB, storageA, storageB, hasHeatInside } = chainColumns.byChain;
    const { endByMeanA, endByMeanB, heatedA, heatedB } = chainColumns.byChain;
    const { meanA, meanB, riseA, riseB, delayA, delayAcross, delayB } = chainColumns.byChain;
    const { first, nodeC, endSum, endHubG: g, endHubOrNone: hubAt, hubMeanC: hub } = columns;
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
      const startA = nodeC[start]!;
      const nowA = startA + endByMeanA[c]! * (endAC - startA);
      nodeC[start] = nowA;
      const startB = nodeC[end]!;
      const nowB = startB + endByMeanB[c]! * (endBC - startB);
      nodeC[end] = nowB;
      endSum[endA]! += endAC;
      // The hot loop.
      const upA = endAC - meanA[c]!;
      const upB = endBC - meanB[c]!;
      riseA[c] = upA;
      riseB[c] = upB;
      meanA[c] = endAC;
      meanB[c] = endBC;
      let atA = storageA[c]! * nowA + heatedA[c]! + delayA[c]! * endAC + delayAcross[c]! * endBC;
      let atB = storageB[c]! * nowB + heatedB[c]! + delayB[c]! * endBC + delayAcross[c]! * endAC;
      for (let i = start + 1; i < end; i++) {
        const takesA = fromA[i]!;
        const takesB = fromB[i]!;
        const rise = riseFromA[i]! * upA + riseFromB[i]! * upB;
        const now = decay[i]! * amplitude[i]! + takesA * endAC + takesB * endBC + rise;
        amplitude[i] = now;
        atA += takesA * now;
        atB += takesB * now;
      }
      storedA[c] = atA;
      storedB[c] = atB;
      if (hasHeatInside[c] === 1) interiors.addHeat(c);
    }
  };
}

/** Means of the step at ends b of some chains, once the hubs are solved. */
export function createInnerMeans(columns: NetworkColumns, chainColumns: ChainColumns) {
  return function readInnerMeans(chains: Int32Array, count: number, into: Float64Array): void {
    const { responseB, responseAcross, freeB } = chainColumns.byChain;
    const { endHubG: g, endHubOrNone: hubAt, hubMeanC: hub } = columns;
    for (let i = 0; i < count; i++) {
      const c = chains[i]!;
      const a = 4 * c;
      const b = a + 2;
      const pullA = g[a]! * hub[hubAt[a]!]! + g[a + 1]! * hub[hubAt[a + 1]!]!;
      const pullB = g[b]! * hub[hubAt[b]!]! + g[b + 1]! * hub[hubAt[b + 1]!]!;
      into[i] = freeB[c]! + responseB[c]! * pullB + responseAcross[c]! * pullA;
    }
  };
}
