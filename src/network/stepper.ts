// The stepper: a linear network in, one implicit (backward Euler) step at a time out. The only hot code of
// the project. Inside a chain the tridiagonal factors are kept; a step is one sweep down each chain, one
// small dense solve for the hubs, one sweep up. Nothing is allocated after compiling.
//
// Method: Gaussian elimination along each chain (LDLᵀ, no pivoting: the matrix is symmetric and diagonally
// dominant) leaves each chain end as a linear function of the hubs it touches; substituting that gives the
// hub system. Unconditionally stable, first order in time; error against exact solutions is measured in
// tests/published/annual-network.test.ts.

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
  /** solve the hubs with the conductances as they stand into trialC; may be repeated */
  solve(): void;
  /** hub temperatures of the last solve [°C] */
  readonly trialC: Float64Array;
  /** take the last solve: hubs and nodes move on */
  endStep(): void;
}

const HOLD_PASSES = 60;
const HOLD_TOLERANCE_W = 1e-9;

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
  const throughs = Int32Array.from([...through.keys()].filter((c) => through[c] === 1));
  /** the others, longest first, so that four in a row are of like length */
  const length = (c: number) => first[c + 1]! - first[c]!;
  const singles = Int32Array.from(
    [...through.keys()].filter((c) => through[c] === 0).toSorted((c, d) => length(d) - length(c)),
  );

  const hubJ = Float64Array.from(network.hubs, (hub) => hub.capacity);
  const hubBoundary = Float64Array.from(network.hubs, (hub) => hub.boundary);
  const hubLink = new Float64Array(hubs * hubs);
  for (const { from, to, conductance } of network.hubLinks) {
    hubLink[from * hubs + to]! += conductance;
    hubLink[to * hubs + from]! += conductance;
  }

  const nodeC = new Float64Array(nodes).fill(initialC);
  const hubC = new Float64Array(hubs).fill(initialC);
  const nodeW = new Float64Array(nodes);
  const hubW = new Float64Array(hubs);
  const hubBoundaryC = new Float64Array(hubs).fill(initialC);
  const holdLowC = new Float64Array(hubs).fill(Number.NEGATIVE_INFINITY);
  const holdHighC = new Float64Array(hubs).fill(Number.POSITIVE_INFINITY);
  const holdMaxW = new Float64Array(hubs).fill(Number.POSITIVE_INFINITY);
  const holdMinW = new Float64Array(hubs).fill(Number.NEGATIVE_INFINITY);
  const heldW = new Float64Array(hubs);

  const nodePerS = nodeJ.map((joule) => joule / stepS);
  const hubPerS = hubJ.map((joule) => joule / stepS);
  /** nodeW plus boundary terms; right-hand side less storage */
  const source = new Float64Array(nodes);
  /** elimination factor link/pivot of the node before, and 1/pivot */
  const factor = new Float64Array(nodes);
  const inverse = new Float64Array(nodes);
  /** what a watt into node 0 does to the swept right-hand side; and that over the pivot */
  const carry = new Float64Array(nodes);
  const carryOver = new Float64Array(nodes);
  const swept = new Float64Array(nodes);
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
  /** hub system: constant part by ends, factored whole, right-hand side, unit response */
  const base = new Float64Array(hubs * hubs);
  const lower = new Float64Array(hubs * hubs);
  const pivot = new Float64Array(hubs);
  const rhs = new Float64Array(hubs);
  const fixedRhs = new Float64Array(hubs);
  const unit = new Float64Array(hubs * hubs);
  const unitReady = new Uint8Array(hubs);

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
      carry[i] = along;
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

  /** Factor base + air links + boundaries + storage as LDLᵀ. */
  function factorHubs(): void {
    const l = lower;
    const d = pivot;
    const links = hubLink;
    for (let i = 0; i < hubs; i++) {
      const row = i * hubs;
      let diagonal = base[row + i]! + hubPerS[i]! + hubBoundary[i]!;
      for (let j = 0; j < hubs; j++) diagonal += links[row + j]!;
      for (let j = 0; j < i; j++) {
        let value = base[row + j]! - links[row + j]!;
        const rowJ = j * hubs;
        for (let k = 0; k < j; k++) value -= l[row + k]! * l[rowJ + k]! * d[k]!;
        value /= d[j]!;
        l[row + j] = value;
        diagonal -= value * value * d[j]!;
      }
      d[i] = diagonal;
    }
    unitReady.fill(0);
  }

  function solveHubs(vector: Float64Array, offset: number): void {
    for (let i = 1; i < hubs; i++) {
      let value = vector[offset + i]!;
      for (let j = 0; j < i; j++) value -= lower[i * hubs + j]! * vector[offset + j]!;
      vector[offset + i] = value;
    }
    for (let i = hubs - 1; i >= 0; i--) {
      let value = vector[offset + i]! / pivot[i]!;
      for (let j = i + 1; j < hubs; j++) value -= lower[j * hubs + i]! * vector[offset + j]!;
      vector[offset + i] = value;
    }
  }

  /** Heat that keeps the held hubs inside their band, by relaxation: exact at once for one held hub. */
  function hold(): void {
    heldW.fill(0);
    for (let pass = 0; pass < HOLD_PASSES; pass++) {
      let largest = 0;
      for (let i = 0; i < hubs; i++) {
        const low = holdLowC[i]!;
        const high = holdHighC[i]!;
        if (low === Number.NEGATIVE_INFINITY && high === Number.POSITIVE_INFINITY) continue;
        const free = rhs[i]!;
        const held = heldW[i]!;
        if (held === 0 && free >= low && free <= high) continue;
        if (unitReady[i] === 0) {
          unit.fill(0, i * hubs, (i + 1) * hubs);
          unit[i * hubs + i] = 1;
          solveHubs(unit, i * hubs);
          unitReady[i] = 1;
        }
        const own = unit[i * hubs + i]!;
        const toLow = held + (low - free) / own;
        const toHigh = held + (high - free) / own;
        const wanted =
          toLow > 0 ? Math.min(toLow, holdMaxW[i]!) : toHigh < 0 ? Math.max(toHigh, holdMinW[i]!) : 0;
        const change = wanted - held;
        if (change === 0) continue;
        heldW[i] = wanted;
        for (let j = 0; j < hubs; j++) rhs[j]! += change * unit[i * hubs + j]!;
        largest = Math.max(largest, Math.abs(change));
      }
      if (largest <= HOLD_TOLERANCE_W) return;
    }
  }

  // Long on purpose: the one hot loop. Arrays are named again as locals, which the engine keeps in registers.
  function beginStep(): void {
    const t = nodeC;
    const y = swept;
    const f = factor;
    const inv = inverse;
    const cap = nodePerS;
    const src = source;
    const starts = first;
    for (let i = 0; i < hubs; i++) fixedRhs[i] = hubPerS[i]! * hubC[i]! + hubW[i]!;

    // Four chains side by side: each sweep waits for its own last result, so alone it would idle the processor.
    for (let q = 0; q + 3 < singles.length; q += 4) {
      const c0 = singles[q]!;
      const c1 = singles[q + 1]!;
      const c2 = singles[q + 2]!;
      const c3 = singles[q + 3]!;
      const shortest = starts[c3 + 1]! - starts[c3]!;
      let i0 = starts[c0]!;
      let i1 = starts[c1]!;
      let i2 = starts[c2]!;
      let i3 = starts[c3]!;
      let y0 = 0;
      let y1 = 0;
      let y2 = 0;
      let y3 = 0;
      for (let n = 0; n < shortest; n++) {
        y0 = cap[i0]! * t[i0]! + src[i0]! + f[i0]! * y0;
        y1 = cap[i1]! * t[i1]! + src[i1]! + f[i1]! * y1;
        y2 = cap[i2]! * t[i2]! + src[i2]! + f[i2]! * y2;
        y3 = cap[i3]! * t[i3]! + src[i3]! + f[i3]! * y3;
        y[i0++] = y0;
        y[i1++] = y1;
        y[i2++] = y2;
        y[i3++] = y3;
      }
      sweepDown(c0, i0, y0);
      sweepDown(c1, i1, y1);
      sweepDown(c2, i2, y2);
      sweepDown(c3, i3, y3);
    }
    for (let q = singles.length & ~3; q < singles.length; q++)
      sweepDown(singles[q]!, starts[singles[q]!]!, 0);
    for (let q = 0; q < throughs.length; q++) {
      const c = throughs[q]!;
      const start = starts[c]!;
      const stop = starts[c + 1]!;
      let sweep = cap[start]! * t[start]! + src[start]!;
      y[start] = sweep;
      let atA = sweep * carryOver[start]!;
      for (let i = start + 1; i < stop; i++) {
        sweep = cap[i]! * t[i]! + src[i]! + f[i]! * sweep;
        y[i] = sweep;
        atA += sweep * carryOver[i]!;
      }
      const atB = sweep * inv[stop - 1]!;
      const freeA = freeAA[c]! * atA + freeAB[c]! * atB;
      const freeB = freeBA[c]! * atA + freeBB[c]! * atB;
      endFreeA[c] = freeA;
      endFreeB[c] = freeB;
      addFree(4 * c, freeA);
      addFree(4 * c + 2, freeB);
    }
  }

  function solve(): void {
    for (let i = 0; i < hubs; i++) rhs[i] = fixedRhs[i]! + hubBoundary[i]! * hubBoundaryC[i]!;
    factorHubs();
    solveHubs(rhs, 0);
    hold();
  }

  function endStep(): void {
    const t = nodeC;
    const y = swept;
    const f = factor;
    const inv = inverse;
    const starts = first;
    const g = endHubG;
    hubC.set(rhs);
    for (let q = 0; q + 3 < singles.length; q += 4) {
      const c0 = singles[q]!;
      const c1 = singles[q + 1]!;
      const c2 = singles[q + 2]!;
      const c3 = singles[q + 3]!;
      const shortest = starts[c3 + 1]! - starts[c3]!;
      let i0 = starts[c0 + 1]! - 1;
      let i1 = starts[c1 + 1]! - 1;
      let i2 = starts[c2 + 1]! - 1;
      let i3 = starts[c3 + 1]! - 1;
      let t0 = endOf(c0);
      let t1 = endOf(c1);
      let t2 = endOf(c2);
      let t3 = endOf(c3);
      t[i0] = t0;
      t[i1] = t1;
      t[i2] = t2;
      t[i3] = t3;
      for (let n = 1; n < shortest; n++) {
        t0 = y[i0 - 1]! * inv[i0 - 1]! + f[i0]! * t0;
        t1 = y[i1 - 1]! * inv[i1 - 1]! + f[i1]! * t1;
        t2 = y[i2 - 1]! * inv[i2 - 1]! + f[i2]! * t2;
        t3 = y[i3 - 1]! * inv[i3 - 1]! + f[i3]! * t3;
        t[--i0] = t0;
        t[--i1] = t1;
        t[--i2] = t2;
        t[--i3] = t3;
      }
      sweepUp(c0, i0, t0);
      sweepUp(c1, i1, t1);
      sweepUp(c2, i2, t2);
      sweepUp(c3, i3, t3);
    }
    for (let q = singles.length & ~3; q < singles.length; q++) {
      const c = singles[q]!;
      const last = starts[c + 1]! - 1;
      t[last] = endOf(c);
      sweepUp(c, last, t[last]!);
    }
    for (let q = 0; q < throughs.length; q++) {
      const c = throughs[q]!;
      const last = starts[c + 1]! - 1;
      const pullA = pull(4 * c);
      const pullB = pull(4 * c + 2);
      const endA = endFreeA[c]! + kaa[c]! * pullA + kab[c]! * pullB;
      const wattA = pullA - (g[4 * c]! + g[4 * c + 1]!) * endA;
      let above = endFreeB[c]! + kab[c]! * pullA + kbb[c]! * pullB;
      t[last] = above;
      for (let i = last - 1; i >= starts[c]!; i--) {
        above = y[i]! * inv[i]! + wattA * carryOver[i]! + f[i + 1]! * above;
        t[i] = above;
      }
    }
  }

  /** Sweep the rest of a chain from node i on, and hand its free end to its hubs. */
  function sweepDown(c: number, from: number, swept0: number): void {
    const stop = first[c + 1]!;
    let sweep = swept0;
    for (let i = from; i < stop; i++) {
      sweep = nodePerS[i]! * nodeC[i]! + source[i]! + factor[i]! * sweep;
      swept[i] = sweep;
    }
    const free = sweep * inverse[stop - 1]! * freeBB[c]!;
    endFreeB[c] = free;
    addFree(4 * c + 2, free);
  }

  /** Sweep back from node i, whose temperature is known, to end a. */
  function sweepUp(c: number, from: number, tempC: number): void {
    const start = first[c]!;
    let above = tempC;
    for (let i = from - 1; i >= start; i--) {
      above = swept[i]! * inverse[i]! + factor[i + 1]! * above;
      nodeC[i] = above;
    }
  }

  /** Temperature of end b with its hubs known [°C]. */
  function endOf(c: number): number {
    return endFreeB[c]! + kbb[c]! * pull(4 * c + 2);
  }

  /** Right-hand side of the hubs from a free end temperature. */
  function addFree(slot: number, free: number): void {
    const h0 = endHub[slot]!;
    if (h0 >= 0) fixedRhs[h0]! += endHubG[slot]! * free;
    const h1 = endHub[slot + 1]!;
    if (h1 >= 0) fixedRhs[h1]! += endHubG[slot + 1]! * free;
  }

  /** Σ g·T of the hubs an end touches [W]. */
  function pull(slot: number): number {
    const h0 = endHub[slot]!;
    const h1 = endHub[slot + 1]!;
    return (h0 >= 0 ? endHubG[slot]! * hubC[h0]! : 0) + (h1 >= 0 ? endHubG[slot + 1]! * hubC[h1]! : 0);
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
    hubBoundary,
    hubBoundaryC,
    hubLink,
    holdLowC,
    holdHighC,
    holdMaxW,
    holdMinW,
    heldW,
    nodeJ,
    hubJ,
    refreshChain,
    refreshEnds,
    refreshSources,
    step() {
      beginStep();
      solve();
      endStep();
    },
    beginStep,
    solve,
    trialC: rhs,
    endStep,
  };
}
