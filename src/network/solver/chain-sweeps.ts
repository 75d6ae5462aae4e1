// The loops over all chains that a step and an hour run: sources gathered, ends swept down to the hubs, ends and modes moved
// on. Each kernel is made once, of the columns it reads, and then called with counts alone: called with its columns as
// arguments it has to look each of them up again, and the year took two fifths longer (docs/bench.md). Method: stepper.ts.

import type { ChainColumns } from './chain-columns.ts';
import type { ChainInteriors } from './chain-interior.ts';
import type { NetworkColumns } from './network-columns.ts';
import { endA, endB, nodeA, nodeB, slotOf } from './network-index.ts';

/** Heat into the ends from sources and boundaries, and into the modes from heat put inside. */
export function createSourceGathering(
  columns: NetworkColumns,
  chainColumns: ChainColumns,
  interiors: ChainInteriors,
) {
  const { first: first_, nodeW: nodeW_, endBoundary: endBoundary_, endBoundaryC: endBoundaryC_ } = columns;
  const { sourceA: sourceA_, sourceB: sourceB_, mayHeatInside: mayHeatInside_ } = chainColumns.byChain;
  return function gatherSources(chains: number): void {
    const first = first_;
    const nodeW = nodeW_;
    const endBoundary = endBoundary_;
    const endBoundaryC = endBoundaryC_;
    const sourceA = sourceA_;
    const sourceB = sourceB_;
    const mayHeatInside = mayHeatInside_;
    for (let c = 0; c < chains; c++) {
      const a = nodeA(first, c);
      const b = nodeB(first, c);
      const atA = endBoundary[endA(c)]! * endBoundaryC[endA(c)]!;
      const atB = nodeW[b]! + endBoundary[endB(c)]! * endBoundaryC[endB(c)]!;
      sourceA[c] = a < b ? nodeW[a]! + atA : 0;
      sourceB[c] = a < b ? atB : atB + atA;
      if (mayHeatInside[c] === 1) interiors.takeHeat(c);
    }
  };
}

/** End temperatures without the hubs, and what they put on the hubs' right-hand side. */
export function createEndSweep(columns: NetworkColumns, chainColumns: ChainColumns) {
  const {
    sourceA: sourceA_,
    sourceB: sourceB_,
    storedA: storedA_,
    storedB: storedB_,
    responseA: responseA_,
    responseAcross: responseAcross_,
    responseB: responseB_,
    freeA: freeA_,
    freeB: freeB_,
  } = chainColumns.byChain;
  const {
    hubStorage: hubStorage_,
    hubC: hubC_,
    hubW: hubW_,
    hubRhs: hubRhs_,
    endHubG: g_,
    endHubOrNone: hubAt_,
  } = columns;
  return function sweepEnds(chains: number, hubs: number): void {
    const sourceA = sourceA_;
    const sourceB = sourceB_;
    const storedA = storedA_;
    const storedB = storedB_;
    const responseA = responseA_;
    const responseAcross = responseAcross_;
    const responseB = responseB_;
    const freeA = freeA_;
    const freeB = freeB_;
    const hubStorage = hubStorage_;
    const hubC = hubC_;
    const hubW = hubW_;
    const hubRhs = hubRhs_;
    const g = g_;
    const hubAt = hubAt_;
    for (let i = 0; i < hubs; i++) hubRhs[i] = hubStorage[i]! * hubC[i]! + hubW[i]!;
    for (let c = 0; c < chains; c++) {
      const a = slotOf(endA(c), 0);
      const b = slotOf(endB(c), 0);
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
  const { amplitude: amplitude_, decay: decay_, fromA: fromA_, fromB: fromB_ } = chainColumns.byMode;
  const {
    responseA: responseA_,
    responseAcross: responseAcross_,
    responseB: responseB_,
    freeA: freeA_,
    freeB: freeB_,
  } = chainColumns.byChain;
  const {
    storedA: storedA_,
    storedB: storedB_,
    storageA: storageA_,
    storageB: storageB_,
    hasHeatInside: hasHeatInside_,
  } = chainColumns.byChain;
  const {
    first: first_,
    nodeC: nodeC_,
    endSum: endSum_,
    endHubG: g_,
    endHubOrNone: hubAt_,
    hubCOrNone: hub_,
  } = columns;
  return function moveOn(chains: number, hubs: number): void {
    const amplitude = amplitude_;
    const decay = decay_;
    const fromA = fromA_;
    const fromB = fromB_;
    const responseA = responseA_;
    const responseAcross = responseAcross_;
    const responseB = responseB_;
    const freeA = freeA_;
    const freeB = freeB_;
    const storedA = storedA_;
    const storedB = storedB_;
    const storageA = storageA_;
    const storageB = storageB_;
    const hasHeatInside = hasHeatInside_;
    const first = first_;
    const nodeC = nodeC_;
    const endSum = endSum_;
    const g = g_;
    const hubAt = hubAt_;
    const hub = hub_;
    for (let i = 0; i < hubs; i++) hub[i] = trialC[i]!;
    // The row after the last hub stands for none; it holds no temperature and is coupled by 0.
    hub[hubs] = 0;
    for (let c = 0; c < chains; c++) {
      const start = nodeA(first, c);
      const end = nodeB(first, c);
      const a = slotOf(endA(c), 0);
      const b = slotOf(endB(c), 0);
      const pullB = g[b]! * hub[hubAt[b]!]! + g[b + 1]! * hub[hubAt[b + 1]!]!;
      const over = responseAcross[c]!;
      let endAC = freeA[c]! + over * pullB;
      let endBC = freeB[c]! + responseB[c]! * pullB;
      if (hubAt[a]! < hubs) {
        const pullA = g[a]! * hub[hubAt[a]!]! + g[a + 1]! * hub[hubAt[a + 1]!]!;
        endAC += responseA[c]! * pullA;
        endBC += over * pullA;
        endSum[endB(c)]! += endBC;
      }
      nodeC[start] = endAC;
      nodeC[end] = endBC;
      endSum[endA(c)]! += endAC;
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
