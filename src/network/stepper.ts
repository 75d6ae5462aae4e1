// The stepper: a linear network in, one implicit (backward Euler) step at a time out. The only hot code of
// the project. Inside a chain the tridiagonal factors are kept; a step is one sweep down each chain, one
// small dense solve for the hubs, one sweep up. Nothing is allocated after compiling.
//
// Method: Gaussian elimination along each chain (LDLᵀ, no pivoting: the matrix is symmetric and diagonally
// dominant) leaves each chain end as a linear function of the hubs it touches; substituting that gives the
// hub system. Unconditionally stable, first order in time; error against exact solutions is measured in
// tests/published/annual-network.test.ts.

import { hubSolver } from './hub-solver.ts';
import { type LinearNetwork, requireNetwork } from './linear-network.ts';

/** Arrays are live: the caller writes inputs, calls refresh* after changing conductances, then step(). */
export interface Stepper {
  readonly stepS: number;
  readonly nodes: number;
  readonly hubs: number;
  readonly chains: number;
  /** first node of each chain; entry `chains` = nodes */
  readonly first: Int32Array;
  /** node temperatures [°C] */
  readonly nodeC: Float64Array;
  readonly hubC: Float64Array;
  /** heat put into a node or hub [W] */
  readonly nodeW: Float64Array;
  readonly hubW: Float64Array;
  /** between node i and i+1 [W/K] */
  readonly link: Float64Array;
  /** by end (2·chain = a, 2·chain + 1 = b): boundary conductance [W/K] and temperature [°C] */
  readonly endBoundary: Float64Array;
  readonly endBoundaryC: Float64Array;
  /** by end and slot (2·end + slot): conductance to its hub [W/K]; hub index or −1 */
  readonly endHubG: Float64Array;
  readonly endHub: Int32Array;
  /** by end: its temperatures of all steps added up; for the caller to read and clear [°C] */
  readonly endSum: Float64Array;
  readonly hubBoundary: Float64Array;
  readonly hubBoundaryC: Float64Array;
  /** symmetric, hub · hubs + hub [W/K] */
  readonly hubLink: Float64Array;
  /** hubs held between these temperatures by heat within these powers [°C, W]; infinite = free */
  readonly holdLowC: Float64Array;
  readonly holdHighC: Float64Array;
  readonly holdMaxW: Float64Array;
  readonly holdMinW: Float64Array;
  /** heat given by holding, last step [W]; negative = taken out */
  readonly heldW: Float64Array;
  /** heat capacity of nodes and hubs [J/K] */
  readonly nodeJ: Float64Array;
  readonly hubJ: Float64Array;
  /** after endBoundary, link changed in a chain */
  refreshChain(chain: number): void;
  /** after endHubG changed, or refreshChain was called */
  refreshEnds(): void;
  /** after nodeW or endBoundaryC changed */
  refreshSources(): void;
  /** beginStep, solve, endStep */
  step(): void;
  /** sweep the chains; hub conductances to boundaries and other hubs may still change after it */
  beginStep(): void;
  /** solve the moving hubs with the conductances as they stand into trialC; may be repeated */
  solve(): void;
  /** temperatures of the moving hubs in the last solve [°C] */
  readonly trialC: Float64Array;
  /** take the last solve: hubs and nodes move on */
  endStep(): void;
}

/**
 * Compile a network into a stepper.
 *
 * @param network the description; refused with RangeError when it cannot be stepped
 * @param stepS time step [s]; above 0
 * @param initialC start temperature of every node and hub [°C]
 */
export function compileStepper(network: LinearNetwork, stepS: number, initialC: number): Stepper {
  requireNetwork(network);
  if (!(stepS > 0 && Number.isFinite(stepS))) throw new RangeError(`stepS is ${stepS} s; allowed above 0`);
  const chains = network.chains.length;
  const hubs = network.hubs.length;
  const first = new Int32Array(chains + 1);
  network.chains.forEach((chain, c) => {
    first[c + 1] = first[c]! + chain.capacity.length;
  });
  const nodes = first[chains]!;

  const nodeJ = new Float64Array(nodes);
  const link = new Float64Array(nodes);
  const endBoundary = new Float64Array(2 * chains);
  const endBoundaryC = new Float64Array(2 * chains).fill(initialC);
  const endHubG = new Float64Array(4 * chains);
  const endHub = new Int32Array(4 * chains).fill(-1);
  network.chains.forEach((chain, c) => {
    nodeJ.set(chain.capacity, first[c]!);
    link.set(chain.link, first[c]!);
    [chain.a, chain.b].forEach((end, side) => {
      const e = 2 * c + side;
      endBoundary[e] = end.boundary;
      end.hubs.forEach(({ hub, conductance }, slot) => {
        endHub[2 * e + slot] = hub;
        endHubG[2 * e + slot] = conductance;
      });
    });
  });
  /** chains both of whose ends touch hubs */
  const through = Uint8Array.from(network.chains, (chain) => (chain.a.hubs.length > 0 ? 1 : 0));

  const hubJ = Float64Array.from(network.hubs, (hub) => hub.capacity);
  const hubBoundary = Float64Array.from(network.hubs, (hub) => hub.boundary);
  const hubLink = new Float64Array(hubs * hubs);
  for (const { from, to, conductance } of network.hubLinks) {
    hubLink[from * hubs + to]! += conductance;
    hubLink[to * hubs + from]! += conductance;
  }

  // Everything per node in one block, so that the loops follow one base address.
  const pool = new Float64Array(7 * nodes);
  const [AT_CAPACITY, AT_SOURCE, AT_FACTOR, AT_INVERSE, AT_SWEPT, AT_CARRY] = [1, 2, 3, 4, 5, 6].map(
    (k) => k * nodes,
  ) as [number, number, number, number, number, number];
  const section = (from: number) => pool.subarray(from, from + nodes);
  const nodeC = section(0).fill(initialC);
  // One hub more than there are, always at 0 and coupled by 0: where an end without a hub points, so that the sweeps
  // need not ask.
  const hubsAndNone = new Float64Array(hubs + 1);
  const hubC = hubsAndNone.subarray(0, hubs).fill(initialC);
  const hubAt = endHub.map((hub) => (hub < 0 ? hubs : hub));
  const endSum = new Float64Array(2 * chains);
  const nodeW = new Float64Array(nodes);
  const hubW = new Float64Array(hubs);
  const hubBoundaryC = new Float64Array(hubs).fill(initialC);
  const holdLowC = new Float64Array(hubs).fill(Number.NEGATIVE_INFINITY);
  const holdHighC = new Float64Array(hubs).fill(Number.POSITIVE_INFINITY);
  const holdMaxW = new Float64Array(hubs).fill(Number.POSITIVE_INFINITY);
  const holdMinW = new Float64Array(hubs).fill(Number.NEGATIVE_INFINITY);

  const nodePerS = section(AT_CAPACITY);
  nodePerS.set(nodeJ.map((joule) => joule / stepS));
  const hubPerS = hubJ.map((joule) => joule / stepS);
  /** nodeW plus boundary terms; right-hand side less storage */
  const source = section(AT_SOURCE);
  /** elimination factor link/pivot of the node before, and 1/pivot */
  const factor = section(AT_FACTOR);
  const inverse = section(AT_INVERSE);
  /** what a watt into node 0 does to the swept right-hand side, over the pivot */
  const carryOver = section(AT_CARRY);
  /** per chain: end temperature per watt at end a from a, b from a (= a from b), b from b [K/W] */
  const aa = new Float64Array(chains);
  const ab = new Float64Array(chains);
  const bb = new Float64Array(chains);
  /** the same with the ends tied to their hubs, and the share of a free end temperature that remains */
  const kaa = new Float64Array(chains);
  const kab = new Float64Array(chains);
  const kbb = new Float64Array(chains);
  const freeAA = new Float64Array(chains);
  const freeAB = new Float64Array(chains);
  const freeBA = new Float64Array(chains);
  const freeBB = new Float64Array(chains);
  /** free end temperatures with ends tied [°C] */
  const endFreeA = new Float64Array(chains);
  const endFreeB = new Float64Array(chains);
  const fixedRhs = new Float64Array(hubs + 1);

  const solver = hubSolver({
    hubs,
    steady: network.steadyHubs ?? 0,
    storage: hubPerS,
    boundary: hubBoundary,
    boundaryC: hubBoundaryC,
    link: hubLink,
    holdLowC,
    holdHighC,
    holdMaxW,
    holdMinW,
  });
  const { base } = solver;

  function refreshChain(c: number): void {
    const start = first[c]!;
    const end = first[c + 1]! - 1;
    let before = 0;
    let linkBefore = 0;
    let along = 1;
    let response = 0;
    for (let i = start; i <= end; i++) {
      let diagonal = nodePerS[i]! + linkBefore - before * linkBefore;
      if (i < end) diagonal += link[i]!;
      if (i === start) diagonal += endBoundary[2 * c]!;
      if (i === end) diagonal += endBoundary[2 * c + 1]!;
      factor[i] = before;
      if (i > start) along *= before;
      // A massless node held by nothing but its hub leaves a zero pivot; the floor keeps it finite and is
      // 1e-12 W/K against conductances of order one.
      const inv = 1 / Math.max(diagonal, 1e-12);
      inverse[i] = inv;
      carryOver[i] = along * inv;
      response += along * along * inv;
      linkBefore = link[i]!;
      before = linkBefore * inv;
    }
    aa[c] = response;
    ab[c] = along * inverse[end]!;
    bb[c] = inverse[end]!;
  }

  function refreshEnds(): void {
    base.fill(0);
    for (let c = 0; c < chains; c++) {
      const gb = endHubG[4 * c + 2]! + endHubG[4 * c + 3]!;
      if (through[c] === 0) {
        const tied = 1 / (1 + bb[c]! * gb);
        freeBB[c] = tied;
        kbb[c] = bb[c]! * tied;
        addEnd(4 * c + 2, 4 * c + 2, kbb[c]!);
        continue;
      }
      const ga = endHubG[4 * c]! + endHubG[4 * c + 1]!;
      const m11 = 1 + aa[c]! * ga;
      const m12 = ab[c]! * gb;
      const m21 = ab[c]! * ga;
      const m22 = 1 + bb[c]! * gb;
      const inverseDeterminant = 1 / (m11 * m22 - m12 * m21);
      freeAA[c] = m22 * inverseDeterminant;
      freeAB[c] = -m12 * inverseDeterminant;
      freeBA[c] = -m21 * inverseDeterminant;
      freeBB[c] = m11 * inverseDeterminant;
      kaa[c] = freeAA[c]! * aa[c]! + freeAB[c]! * ab[c]!;
      kab[c] = freeAA[c]! * ab[c]! + freeAB[c]! * bb[c]!;
      kbb[c] = freeBA[c]! * ab[c]! + freeBB[c]! * bb[c]!;
      addEnd(4 * c, 4 * c, kaa[c]!);
      addEnd(4 * c + 2, 4 * c + 2, kbb[c]!);
      addCross(4 * c, 4 * c + 2, kab[c]!);
    }
    solver.refresh();
  }

  /** An end's own couplings on the hub system: +g on the diagonal, −g·k·g among its hubs. */
  function addEnd(slotA: number, slotB: number, k: number): void {
    for (let s = slotA; s < slotA + 2; s++) {
      const hub = endHub[s]!;
      if (hub < 0) continue;
      base[hub * hubs + hub]! += endHubG[s]!;
      for (let t = slotB; t < slotB + 2; t++) {
        const other = endHub[t]!;
        if (other >= 0) base[hub * hubs + other]! -= endHubG[s]! * k * endHubG[t]!;
      }
    }
  }

  /** The coupling between hubs of one end and hubs of the other, both ways. */
  function addCross(slotA: number, slotB: number, k: number): void {
    for (let s = slotA; s < slotA + 2; s++) {
      const hub = endHub[s]!;
      if (hub < 0) continue;
      for (let t = slotB; t < slotB + 2; t++) {
        const other = endHub[t]!;
        if (other < 0) continue;
        const value = endHubG[s]! * k * endHubG[t]!;
        base[hub * hubs + other]! -= value;
        base[other * hubs + hub]! -= value;
      }
    }
  }

  function refreshSources(): void {
    source.set(nodeW);
    for (let c = 0; c < chains; c++) {
      source[first[c]!]! += endBoundary[2 * c]! * endBoundaryC[2 * c]!;
      source[first[c + 1]! - 1]! += endBoundary[2 * c + 1]! * endBoundaryC[2 * c + 1]!;
    }
  }

  // The two sweeps are the hot loops. What they use is copied into locals first: reached through the closure, the
  // same code runs half as fast on every network but the first one the engine has seen.
  function beginStep(): void {
    const p = pool;
    const starts = first;
    const atCapacity = AT_CAPACITY;
    const atSource = AT_SOURCE;
    const atFactor = AT_FACTOR;
    const atSwept = AT_SWEPT;
    const atCarry = AT_CARRY;
    const pivotInverse = inverse;
    const g = endHubG;
    const at = hubAt;
    const right = fixedRhs;
    const last = chains;
    for (let i = 0; i < hubs; i++) right[i] = hubPerS[i]! * hubC[i]! + hubW[i]!;
    for (let c = 0; c < last; c++) {
      const stop = starts[c + 1]!;
      let sweep = 0;
      for (let i = starts[c]!; i < stop; i++) {
        sweep = p[atCapacity + i]! * p[i]! + p[atSource + i]! + p[atFactor + i]! * sweep;
        p[atSwept + i] = sweep;
      }
      const atB = sweep * pivotInverse[stop - 1]!;
      const b = 4 * c + 2;
      let freeB: number;
      if (through[c] === 0) {
        freeB = atB * freeBB[c]!;
      } else {
        let atA = 0;
        for (let i = starts[c]!; i < stop; i++) atA += p[atSwept + i]! * p[atCarry + i]!;
        const freeA = freeAA[c]! * atA + freeAB[c]! * atB;
        freeB = freeBA[c]! * atA + freeBB[c]! * atB;
        endFreeA[c] = freeA;
        right[at[b - 2]!]! += g[b - 2]! * freeA;
        right[at[b - 1]!]! += g[b - 1]! * freeA;
      }
      endFreeB[c] = freeB;
      right[at[b]!]! += g[b]! * freeB;
      right[at[b + 1]!]! += g[b + 1]! * freeB;
    }
    solver.begin(right);
  }

  function endStep(): void {
    solver.finish();
    for (let i = 0; i < hubs; i++) hubC[i] = solver.hubC[i]!;
    const p = pool;
    const starts = first;
    const atFactor = AT_FACTOR;
    const atInverse = AT_INVERSE;
    const atSwept = AT_SWEPT;
    const atCarry = AT_CARRY;
    const g = endHubG;
    const at = hubAt;
    const hub = hubsAndNone;
    const sums = endSum;
    const last = chains;
    for (let c = 0; c < last; c++) {
      const start = starts[c]!;
      const end = starts[c + 1]! - 1;
      const b = 4 * c + 2;
      const pullB = g[b]! * hub[at[b]!]! + g[b + 1]! * hub[at[b + 1]!]!;
      let above = endFreeB[c]! + kbb[c]! * pullB;
      let wattA = 0;
      if (through[c] === 1) {
        const pullA = g[b - 2]! * hub[at[b - 2]!]! + g[b - 1]! * hub[at[b - 1]!]!;
        const endA = endFreeA[c]! + kaa[c]! * pullA + kab[c]! * pullB;
        wattA = pullA - (g[b - 2]! + g[b - 1]!) * endA;
        above += kab[c]! * pullA;
      }
      p[end] = above;
      sums[2 * c + 1]! += above;
      if (wattA === 0) {
        for (let i = end - 1; i >= start; i--) {
          above = p[atSwept + i]! * p[atInverse + i]! + p[atFactor + i + 1]! * above;
          p[i] = above;
        }
      } else {
        for (let i = end - 1; i >= start; i--) {
          above =
            p[atSwept + i]! * p[atInverse + i]! + wattA * p[atCarry + i]! + p[atFactor + i + 1]! * above;
          p[i] = above;
        }
      }
      sums[2 * c]! += above;
    }
  }

  for (let c = 0; c < chains; c++) refreshChain(c);
  refreshEnds();
  refreshSources();
  return {
    stepS,
    nodes,
    hubs,
    chains,
    first,
    nodeC,
    hubC,
    nodeW,
    hubW,
    link,
    endBoundary,
    endBoundaryC,
    endHubG,
    endHub,
    endSum,
    hubBoundary,
    hubBoundaryC,
    hubLink,
    holdLowC,
    holdHighC,
    holdMaxW,
    holdMinW,
    heldW: solver.heldW,
    nodeJ,
    hubJ,
    refreshChain,
    refreshEnds,
    refreshSources,
    step() {
      beginStep();
      solver.solve();
      endStep();
    },
    beginStep,
    solve: solver.solve,
    trialC: solver.hubC,
    endStep,
  };
}
