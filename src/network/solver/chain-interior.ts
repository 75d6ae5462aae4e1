// What stands between the ends of every chain, as modes (chain-modes.ts, mode-steps.ts): nodes and links of the chains in;
// what couples each end to the interior and to the other end, what the interior holds for them, and the temperatures in it,
// out. The stepper moves the modes on; all the rest of their keeping is here. Modes stand in the rows of the inner nodes.

import type { ChainColumns } from './chain-columns.ts';
import { chainModes } from './chain-modes.ts';
import { paceHeat, paceModes, REFERENCE_S, shareLeft } from './mode-steps.ts';
import type { NetworkColumns } from './network-columns.ts';
import { nodeA, nodeB } from './network-index.ts';
import type { PaceStore } from './pace-store.ts';
import { endByMean } from './step-mean.ts';

export type ChainInteriors = ReturnType<typeof createChainInteriors>;

/** Interiors of a network's chains; load() before use. A closure over the columns for the reason chain-sweeps.ts gives. */
export function createChainInteriors(network: NetworkColumns, columns: ChainColumns, paces: PaceStore) {
  let chainCount = 0;
  let stepS = 0;
  /** amplitudes in the scale of shapes, when a period began */
  const before = new Float64Array(network.nodeJ.length);

  /** Interiors of so many chains, from the network's capacities, links and temperatures. */
  function load(chains: number, seconds: number): void {
    const { first } = network;
    const { byMode, byChain } = columns;
    chainCount = chains;
    stepS = seconds;
    const { storageA, storageB, heatedA, heatedB, hasHeatInside, delayA, delayAcross, delayB } = byChain;
    const ends = [
      storageA,
      storageB,
      heatedA,
      heatedB,
      delayA,
      delayAcross,
      delayB,
      byChain.riseA,
      byChain.riseB,
    ];
    for (const array of [...ends, hasHeatInside, byMode.heatInside]) array.fill(0);
    columns.shapes = Array.from({ length: chains }, () => new Float64Array(1));
    paces.forget();
    for (let c = 0; c < chains; c++) {
      // Both ends of a chain of one node are that node; what it holds is written down at b.
      byChain.endByMeanA[c] = nodeA(first, c) < nodeB(first, c) ? 1 : 0;
      byChain.endByMeanB[c] = 1;
      byChain.meanA[c] = network.nodeC[nodeA(first, c)]!;
      byChain.meanB[c] = network.nodeC[nodeB(first, c)]!;
      findModes(c);
      storeEnds(c);
    }
  }

  /**
   * The same temperatures, to be stepped by another length.
   *
   * @param isFitted whether ends have been fitted to the length so far, which is then worth keeping
   * @returns whether they are to the new one
   */
  function setStep(seconds: number, isFitted: boolean): boolean {
    const { first } = network;
    const { amplitude, scale } = columns.byMode;
    const { meanA, meanB, riseA, riseB } = columns.byChain;
    if (isFitted) paces.keep(stepS, chainCount);
    // The middle of a shorter step lies nearer to its end, where the line has come further.
    const further = (1 - seconds / stepS) / 2;
    stepS = seconds;
    const isKnown = paces.has(seconds);
    for (let c = 0; c < chainCount; c++) {
      const start = nodeA(first, c) + 1;
      const b = nodeB(first, c);
      meanA[c]! += further * riseA[c]!;
      meanB[c]! += further * riseB[c]!;
      if (isKnown) paces.takeEnds(seconds, c);
      // A single mode's links change every hour, and nobody has kept up with them.
      if (isKnown && b - start > 1) paces.takeModes(seconds, c);
      else if (b - start > 0) {
        for (let i = start; i < b; i++) amplitude[i]! /= scale[i]!;
        paceModes(network, columns, c, seconds);
        for (let i = start; i < b; i++) amplitude[i]! *= scale[i]!;
      }
      storeEnds(c);
    }
    return isKnown;
  }

  /** After links of a chain changed: the same temperatures in other modes. */
  function refresh(c: number): void {
    settle(c);
    findModes(c);
    // Ends with nothing between them but a link hold what they held.
    const inner = nodeB(network.first, c) - nodeA(network.first, c) - 1;
    if (inner > 0) storeEnds(c);
    if (inner > 1) paces.forget();
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
    const { amplitude, storageShare, shapeA, shapeB, scale } = columns.byMode;
    const node = nodeA(first, c) + 1;
    const stored = nodeJ[node]! / REFERENCE_S;
    const toA = link[node - 1]!;
    const toB = link[node]!;
    const all = stored + toA + toB;
    const root = Math.sqrt(all);
    columns.shapes[c]![0] = 1 / root;
    storageShare[node] = stored / all;
    shapeA[node] = toA / root;
    shapeB[node] = toB / root;
    paceModes(network, columns, c, stepS);
    amplitude[node] = scale[node]! * root * nodeC[node]!;
  }

  function findSeveralModes(c: number): void {
    const { first, nodeJ, nodeC, link } = network;
    const { amplitude, storageShare, shapeA, shapeB, scale } = columns.byMode;
    const { modeLoad } = columns;
    const a = nodeA(first, c);
    const b = nodeB(first, c);
    const inner = b - a - 1;
    const toA = link[a]!;
    const toB = link[b - 1]!;
    const storage = nodeJ.subarray(a + 1, b).map((joule) => joule / REFERENCE_S);
    const links = link.subarray(a, b);
    const modes = chainModes(storage, links);
    const shape = modes.shapes;
    columns.shapes[c] = shape;
    for (let k = 0; k < inner; k++) {
      const i = a + 1 + k;
      storageShare[i] = modes.storageShare[k]!;
      shapeA[i] = toA * shape[k]!;
      shapeB[i] = toB * shape[(inner - 1) * inner + k]!;
      // Shapes are orthonormal in storage and conduction together, so amplitudes are SᵀM T; M has three entries a row.
      const own = (storage[k]! + links[k]! + links[k + 1]!) * nodeC[i]!;
      const previous = k > 0 ? links[k]! * nodeC[i - 1]! : 0;
      const next = k < inner - 1 ? links[k + 1]! * nodeC[i + 1]! : 0;
      modeLoad[i] = own - previous - next;
    }
    toModes(shape, a + 1, inner, modeLoad, amplitude);
    paceModes(network, columns, c, stepS);
    for (let i = a + 1; i < b; i++) amplitude[i]! *= scale[i]!;
  }

  /** What a chain's ends will get in the next step from what they and the interior hold, and from heat put inside. */
  function storeEnds(c: number): void {
    const { first, nodeC } = network;
    const { byMode, byChain } = columns;
    const { amplitude, fromA, fromB } = byMode;
    const a = nodeA(first, c);
    const b = nodeB(first, c);
    const { meanA, meanB, delayA, delayAcross, delayB } = byChain;
    let atA = byChain.storageA[c]! * nodeC[a]! + byChain.heatedA[c]!;
    let atB = byChain.storageB[c]! * nodeC[b]! + byChain.heatedB[c]!;
    atA += delayA[c]! * meanA[c]! + delayAcross[c]! * meanB[c]!;
    atB += delayB[c]! * meanB[c]! + delayAcross[c]! * meanA[c]!;
    for (let i = a + 1; i < b; i++) {
      atA += fromA[i]! * amplitude[i]!;
      atB += fromB[i]! * amplitude[i]!;
    }
    byChain.storedA[c] = atA;
    byChain.storedB[c] = atB;
  }

  /** How ends with a heat capacity go through a step of this length, from what couples them, storage left out [W/K]. */
  function fitEnds(c: number, coupledA: number, coupledB: number): void {
    const { first, nodeJ, nodeC } = network;
    const { storageA, storageB, endByMeanA, endByMeanB, storedA, storedB } = columns.byChain;
    const a = nodeA(first, c);
    const b = nodeB(first, c);
    if (a < b && nodeJ[a]! > 0) {
      const way = endByMean(coupledA, nodeJ[a]! / stepS);
      const storage = (way * nodeJ[a]!) / stepS;
      storedA[c]! += (storage - storageA[c]!) * nodeC[a]!;
      storageA[c] = storage;
      endByMeanA[c] = way;
    }
    if (nodeJ[b]! > 0) {
      const way = endByMean(a < b ? coupledB : coupledA + coupledB, nodeJ[b]! / stepS);
      const storage = (way * nodeJ[b]!) / stepS;
      storedB[c]! += (storage - storageB[c]!) * nodeC[b]!;
      storageB[c] = storage;
      endByMeanB[c] = way;
    }
  }

  /** Temperatures between the ends of a chain, from its modes, into nodeC. */
  function settle(c: number): void {
    const { first, nodeC } = network;
    const { amplitude, scale } = columns.byMode;
    const shape = columns.shapes[c]!;
    const start = nodeA(first, c) + 1;
    const inner = nodeB(first, c) - start;
    for (let n = 0; n < inner; n++) {
      let sum = 0;
      for (let k = 0; k < inner; k++) {
        sum += (shape[n * inner + k]! * amplitude[start + k]!) / scale[start + k]!;
      }
      nodeC[start + n] = sum;
    }
  }

  /** Heat put into the nodes between a chain's ends, as what it adds to each mode and at once to the ends. */
  function takeHeat(c: number): void {
    const { first, nodeW } = network;
    const start = nodeA(first, c) + 1;
    toModes(columns.shapes[c]!, start, nodeB(first, c) - start, nodeW, columns.byMode.heatInside);
    paceHeat(network, columns, c);
    storeEnds(c);
  }

  /** The step of a chain's modes once more, with what heat inside adds to them. */
  function addHeat(c: number): void {
    const { amplitude, heatInside } = columns.byMode;
    const b = nodeB(network.first, c);
    for (let i = nodeA(network.first, c) + 1; i < b; i++) amplitude[i]! += heatInside[i]!;
    storeEnds(c);
  }

  /** Remember how much there is of each mode. */
  function beginPeriod(): void {
    const { amplitude, scale } = columns.byMode;
    for (let i = 0; i < before.length; i++) before[i] = amplitude[i]! / (scale[i]! || 1);
  }

  /** After a period of so many seconds: each mode where the same ends, period after period, would leave it. */
  function endPeriod(seconds: number): void {
    const { first } = network;
    const { amplitude, scale, storageShare } = columns.byMode;
    for (let c = 0; c < chainCount; c++) {
      const b = nodeB(first, c);
      for (let i = nodeA(first, c) + 1; i < b; i++) {
        const moved = amplitude[i]! / scale[i]! - before[i]!;
        amplitude[i] = scale[i]! * (before[i]! + moved / (1 - shareLeft(storageShare[i]!, seconds)));
      }
      storeEnds(c);
    }
  }

  return { load, setStep, refresh, fitEnds, settle, takeHeat, addHeat, beginPeriod, endPeriod };
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
