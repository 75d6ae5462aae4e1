// What stands between the ends of every chain, as modes (chain-modes.ts): nodes and links of the chains in; what ties each
// end to its inside and to the other end, what the inside holds for them, and the temperatures in it, out. The stepper
// moves the modes on; all the rest of their keeping is here. Chains are numbered as the stepper's, modes by the places
// of the inner nodes.

import { chainModes } from './chain-modes.ts';

/** A mode loses at least this share in a step; slower ones cannot be told from 1 [–]. */
const SLOWEST = 1e-13;

/** The stepper's own arrays, read here but for nodeC between the ends. */
export interface ChainArrays {
  /** first node of each chain */
  readonly first: Int32Array;
  /** heat capacity [J/K], conductance to the next node [W/K], heat put in [W], temperature [°C] */
  readonly nodeJ: Float64Array;
  readonly link: Float64Array;
  readonly nodeW: Float64Array;
  readonly nodeC: Float64Array;
}

/** Insides with room for so many nodes and chains; load() before use. */
export function createChainInsides(
  capacity: { nodes: number; chains: number },
  { first, nodeJ, link, nodeW, nodeC }: ChainArrays,
) {
  const perNode = () => new Float64Array(capacity.nodes);
  const byMode = {
    /** how much there is of it, the share a step keeps, what it takes of each end's temperature, of heat put inside */
    amount: perNode(),
    keeps: perNode(),
    fromA: perNode(),
    fromB: perNode(),
    fed: perNode(),
  };
  const perChain = () => new Float64Array(capacity.chains);
  const byChain = {
    /** heat capacity of each end over the step, what ties it to the inside less what comes back, to the other end [W/K] */
    storageA: perChain(),
    storageB: perChain(),
    insideA: perChain(),
    insideB: perChain(),
    across: perChain(),
    /** what each end gets in the next step of what it and the inside hold, and of heat put inside [W] */
    heldA: perChain(),
    heldB: perChain(),
    /** 1 while heat is put inside */
    isFed: perChain(),
  };
  /** of each chain: inner node · inner nodes + mode */
  let shapes: Float64Array[] = [];
  let perStep = 0;
  /** what storage and links of a chain make of its inner nodes' temperatures, on the way to its modes [W] */
  const pull = perNode();

  /** Chains as `first` has them, from their capacities, links and temperatures. */
  function load(chains: number, stepS: number): void {
    perStep = 1 / stepS;
    for (const array of Object.values(byChain)) array.fill(0);
    byMode.fed.fill(0);
    shapes = Array.from({ length: chains }, () => new Float64Array(1));
    for (let c = 0; c < chains; c++) {
      const start = first[c]!;
      const end = first[c + 1]! - 1;
      // Both ends of a chain of one node are that node; what it holds is written down at b.
      if (start < end) byChain.storageA[c] = nodeJ[start]! * perStep;
      byChain.storageB[c] = nodeJ[end]! * perStep;
      takeIn(c);
      hold(c);
    }
  }

  /** After links of a chain changed: the same temperatures in other modes. */
  function refresh(c: number): void {
    settle(c);
    takeIn(c);
    // Ends with nothing between them but a link hold what they held.
    if (first[c + 1]! - first[c]! > 2) hold(c);
  }

  /** Modes of a chain's inside and how much of each there is, from its links and the temperatures in nodeC. */
  function takeIn(c: number): void {
    const start = first[c]!;
    const end = first[c + 1]! - 1;
    const inner = end - start - 1;
    if (inner > 1) takeInModes(c, start, end);
    else if (inner === 1) takeInNode(c, start + 1);
    else {
      // One end, or two with nothing but a link between them.
      const over = inner === 0 ? link[start]! : 0;
      byChain.insideA[c] = over;
      byChain.insideB[c] = over;
      byChain.across[c] = over;
    }
  }

  /** A single inner node is its own mode: the middle sheet of three, whose links change every hour. */
  function takeInNode(c: number, node: number): void {
    const { amount, keeps, fromA, fromB } = byMode;
    const stored = nodeJ[node]! * perStep;
    const toA = link[node - 1]!;
    const toB = link[node]!;
    const all = stored + toA + toB;
    const root = Math.sqrt(all);
    shapes[c]![0] = 1 / root;
    amount[node] = root * nodeC[node]!;
    keeps[node] = stored / all;
    fromA[node] = toA / root;
    fromB[node] = toB / root;
    byChain.insideA[c] = (toA * (stored + toB)) / all;
    byChain.insideB[c] = (toB * (stored + toA)) / all;
    byChain.across[c] = (toA * toB) / all;
  }

  function takeInModes(c: number, start: number, end: number): void {
    const inner = end - start - 1;
    const toA = link[start]!;
    const toB = link[end - 1]!;
    const { amount, keeps, fromA, fromB } = byMode;
    const storage = nodeJ.subarray(start + 1, end).map((joule) => joule * perStep);
    const links = link.subarray(start, end);
    const modes = chainModes(storage, links);
    const shape = modes.shapes;
    shapes[c] = shape;
    let restA = 0;
    let restB = 0;
    let over = 0;
    for (let k = 0; k < inner; k++) {
      const i = start + 1 + k;
      const ownA = toA * shape[k]!;
      const ownB = toB * shape[(inner - 1) * inner + k]!;
      keeps[i] = modes.decay[k]!;
      fromA[i] = ownA;
      fromB[i] = ownB;
      // What a mode gives back once inside and ends are one degree warm. Ends and inside tied by the sum of that, not by
      // the link less what comes through, leave steady heat neither made nor lost by round-off.
      const steady = (modes.decay[k]! * (ownA + ownB)) / Math.max(SLOWEST, 1 - modes.decay[k]!);
      restA += ownA * steady;
      restB += ownB * steady;
      over += ownA * ownB;
      // Shapes are orthonormal in storage and conduction together, so that amounts are SᵀM T; M has three entries a row.
      const own = (storage[k]! + links[k]! + links[k + 1]!) * nodeC[i]!;
      const before = k > 0 ? links[k]! * nodeC[i - 1]! : 0;
      const after = k < inner - 1 ? links[k + 1]! * nodeC[i + 1]! : 0;
      pull[i] = own - before - after;
    }
    toModes(c, pull, amount);
    byChain.insideA[c] = over + restA;
    byChain.insideB[c] = over + restB;
    byChain.across[c] = over;
  }

  /** What a chain's ends will get in the next step from what they and its inside hold, and from heat put inside. */
  function hold(c: number): void {
    const { amount, keeps, fromA, fromB, fed } = byMode;
    const start = first[c]!;
    const end = first[c + 1]! - 1;
    let atA = byChain.storageA[c]! * nodeC[start]!;
    let atB = byChain.storageB[c]! * nodeC[end]!;
    for (let i = start + 1; i < end; i++) {
      const kept = keeps[i]! * amount[i]! + fed[i]!;
      atA += fromA[i]! * kept;
      atB += fromB[i]! * kept;
    }
    byChain.heldA[c] = atA;
    byChain.heldB[c] = atB;
  }

  /** Temperatures between the ends of a chain, from its modes, into nodeC. */
  function settle(c: number): void {
    const { amount } = byMode;
    const shape = shapes[c]!;
    const start = first[c]! + 1;
    const inner = first[c + 1]! - 1 - start;
    for (let n = 0; n < inner; n++) {
      let sum = 0;
      for (let k = 0; k < inner; k++) sum += shape[n * inner + k]! * amount[start + k]!;
      nodeC[start + n] = sum;
    }
  }

  /** What stands at the inner nodes of a chain, by its modes. */
  function toModes(c: number, nodes: Float64Array, modes: Float64Array): void {
    const shape = shapes[c]!;
    const start = first[c]! + 1;
    const inner = first[c + 1]! - 1 - start;
    for (let k = 0; k < inner; k++) {
      let sum = 0;
      for (let n = 0; n < inner; n++) sum += shape[n * inner + k]! * nodes[start + n]!;
      modes[start + k] = sum;
    }
  }

  /** Heat put into the nodes between a chain's ends, as what it adds to each mode. */
  function feed(c: number): void {
    const { fed } = byMode;
    const end = first[c + 1]! - 1;
    toModes(c, nodeW, fed);
    byChain.isFed[c] = 0;
    for (let i = first[c]! + 1; i < end; i++) if (fed[i] !== 0) byChain.isFed[c] = 1;
    hold(c);
  }

  /** The step of a chain's modes once more, with what heat inside adds to them. */
  function addFed(c: number): void {
    const { amount, fed } = byMode;
    const end = first[c + 1]! - 1;
    for (let i = first[c]! + 1; i < end; i++) amount[i]! += fed[i]!;
    hold(c);
  }

  return { load, refresh, settle, feed, addFed, byMode, byChain };
}
