// What stands between the ends of every chain, as modes (chain-modes.ts): nodes and links of the chains in; what couples
// each end to the interior and to the other end, what the interior holds for them, and the temperatures in it, out. The
// stepper moves the modes on; all the rest of their keeping is here. Modes stand in the rows of the inner nodes.

import type { ChainColumns } from './chain-columns.ts';
import { chainModes } from './chain-modes.ts';
import type { NetworkColumns } from './network-columns.ts';
import { nodeA, nodeB } from './network-index.ts';

/** A mode loses at least this share in a step; slower ones cannot be told from 1 [–]. */
const SLOWEST = 1e-13;

export type ChainInteriors = ReturnType<typeof createChainInteriors>;

/** Interiors of a network's chains; load() before use. A closure over the columns for the reason chain-sweeps.ts gives. */
export function createChainInteriors(network: NetworkColumns, columns: ChainColumns) {
  /** Interiors of so many chains, from the network's capacities, links and temperatures. */
  function load(chains: number, stepS: number): void {
    const { first, nodeJ } = network;
    const { byMode, byChain } = columns;
    columns.perStep = 1 / stepS;
    for (const array of [byChain.storageA, byChain.hasHeatInside, byMode.heatInside]) array.fill(0);
    columns.shapes = Array.from({ length: chains }, () => new Float64Array(1));
    for (let c = 0; c < chains; c++) {
      const a = nodeA(first, c);
      const b = nodeB(first, c);
      // Both ends of a chain of one node are that node; what it holds is written down at b.
      if (a < b) byChain.storageA[c] = nodeJ[a]! * columns.perStep;
      byChain.storageB[c] = nodeJ[b]! * columns.perStep;
      findModes(c);
      storeEnds(c);
    }
  }

  /** After links of a chain changed: the same temperatures in other modes. */
  function refresh(c: number): void {
    settle(c);
    findModes(c);
    // Ends with nothing between them but a link hold what they held.
    if (nodeB(network.first, c) - nodeA(network.first, c) > 1) storeEnds(c);
  }

  /** Modes of a chain's interior and how much of each there is, from its links and the temperatures in nodeC. */
  function findModes(c: number): void {
    const { first, link } = network;
    const a = nodeA(first, c);
    const b = nodeB(first, c);
    const inner = b - a - 1;
    if (inner > 1) findSeveralModes(c);
    else if (inner === 1) findOneMode(c);
    else {
      // One end, or two with nothing but a link between them.
      const { interiorA, interiorB, across } = columns.byChain;
      const over = inner === 0 ? link[a]! : 0;
      interiorA[c] = over;
      interiorB[c] = over;
      across[c] = over;
    }
  }

  /** A single inner node is its own mode: the middle sheet of three, whose links change every hour. */
  function findOneMode(c: number): void {
    const { first, nodeJ, nodeC, link } = network;
    const { amplitude, decay, fromA, fromB } = columns.byMode;
    const { interiorA, interiorB, across } = columns.byChain;
    const node = nodeA(first, c) + 1;
    const stored = nodeJ[node]! * columns.perStep;
    const toA = link[node - 1]!;
    const toB = link[node]!;
    const all = stored + toA + toB;
    const root = Math.sqrt(all);
    columns.shapes[c]![0] = 1 / root;
    amplitude[node] = root * nodeC[node]!;
    decay[node] = stored / all;
    fromA[node] = toA / root;
    fromB[node] = toB / root;
    interiorA[c] = (toA * (stored + toB)) / all;
    interiorB[c] = (toB * (stored + toA)) / all;
    across[c] = (toA * toB) / all;
  }

  function findSeveralModes(c: number): void {
    const { first, nodeJ, nodeC, link } = network;
    const { amplitude, decay, fromA, fromB } = columns.byMode;
    const { interiorA, interiorB, across } = columns.byChain;
    const { modeLoad } = columns;
    const a = nodeA(first, c);
    const b = nodeB(first, c);
    const inner = b - a - 1;
    const toA = link[a]!;
    const toB = link[b - 1]!;
    const storage = nodeJ.subarray(a + 1, b).map((joule) => joule * columns.perStep);
    const links = link.subarray(a, b);
    const modes = chainModes(storage, links);
    const shape = modes.shapes;
    columns.shapes[c] = shape;
    let backA = 0;
    let backB = 0;
    let over = 0;
    for (let k = 0; k < inner; k++) {
      const i = a + 1 + k;
      const ownA = toA * shape[k]!;
      const ownB = toB * shape[(inner - 1) * inner + k]!;
      decay[i] = modes.decay[k]!;
      fromA[i] = ownA;
      fromB[i] = ownB;
      // What a mode gives back once interior and ends are one degree warm. Ends and interior coupled by the sum of that, not
      // by the link less what comes through, leave steady heat neither made nor lost by round-off.
      const steady = (modes.decay[k]! * (ownA + ownB)) / Math.max(SLOWEST, 1 - modes.decay[k]!);
      backA += ownA * steady;
      backB += ownB * steady;
      over += ownA * ownB;
      // Shapes are orthonormal in storage and conduction together, so amplitudes are SᵀM T; M has three entries a row.
      const own = (storage[k]! + links[k]! + links[k + 1]!) * nodeC[i]!;
      const before = k > 0 ? links[k]! * nodeC[i - 1]! : 0;
      const after = k < inner - 1 ? links[k + 1]! * nodeC[i + 1]! : 0;
      modeLoad[i] = own - before - after;
    }
    toModes(shape, a + 1, inner, modeLoad, amplitude);
    interiorA[c] = over + backA;
    interiorB[c] = over + backB;
    across[c] = over;
  }

  /** What a chain's ends will get in the next step from what they and the interior hold, and from heat put inside. */
  function storeEnds(c: number): void {
    const { first, nodeC } = network;
    const { byMode, byChain } = columns;
    const { amplitude, decay, fromA, fromB, heatInside } = byMode;
    const a = nodeA(first, c);
    const b = nodeB(first, c);
    let atA = byChain.storageA[c]! * nodeC[a]!;
    let atB = byChain.storageB[c]! * nodeC[b]!;
    for (let i = a + 1; i < b; i++) {
      const kept = decay[i]! * amplitude[i]! + heatInside[i]!;
      atA += fromA[i]! * kept;
      atB += fromB[i]! * kept;
    }
    byChain.storedA[c] = atA;
    byChain.storedB[c] = atB;
  }

  /** Temperatures between the ends of a chain, from its modes, into nodeC. */
  function settle(c: number): void {
    const { first, nodeC } = network;
    const { amplitude } = columns.byMode;
    const shape = columns.shapes[c]!;
    const start = nodeA(first, c) + 1;
    const inner = nodeB(first, c) - start;
    for (let n = 0; n < inner; n++) {
      let sum = 0;
      for (let k = 0; k < inner; k++) sum += shape[n * inner + k]! * amplitude[start + k]!;
      nodeC[start + n] = sum;
    }
  }

  /** Heat put into the nodes between a chain's ends, as what it adds to each mode. */
  function takeHeat(c: number): void {
    const { first, nodeW } = network;
    const { heatInside } = columns.byMode;
    const { hasHeatInside } = columns.byChain;
    const start = nodeA(first, c) + 1;
    const b = nodeB(first, c);
    toModes(columns.shapes[c]!, start, b - start, nodeW, heatInside);
    hasHeatInside[c] = 0;
    for (let i = start; i < b; i++) if (heatInside[i] !== 0) hasHeatInside[c] = 1;
    storeEnds(c);
  }

  /** The step of a chain's modes once more, with what heat inside adds to them. */
  function addHeat(c: number): void {
    const { amplitude, heatInside } = columns.byMode;
    const b = nodeB(network.first, c);
    for (let i = nodeA(network.first, c) + 1; i < b; i++) amplitude[i]! += heatInside[i]!;
    storeEnds(c);
  }

  return { load, refresh, settle, takeHeat, addHeat };
}

/** What stands at the inner nodes of a chain, which begin at `start`, by its modes. */
function toModes(
  shape: Float64Array,
  start: number,
  inner: number,
  nodes: Float64Array,
  modes: Float64Array,
): void {
  for (let k = 0; k < inner; k++) {
    let sum = 0;
    for (let n = 0; n < inner; n++) sum += shape[n * inner + k]! * nodes[start + n]!;
    modes[start + k] = sum;
  }
}
