// The stepper: a linear network in, one implicit (backward Euler) step at a time out. The only hot code of
// the project. Inside a chain the tridiagonal factors are kept; a step is one sweep down each chain, one
// small dense solve for the hubs, one sweep up. Nothing is allocated after compiling.
//
// Method: Gaussian elimination along each chain (LDLᵀ, no pivoting: the matrix is symmetric and diagonally
// dominant) leaves each chain end as a linear function of the hubs it touches; substituting that gives the
// hub system. Unconditionally stable, first order in time; error against exact solutions is measured in
// tests/published/annual-network.test.ts.

import { hubSolver } from './hub-solver.ts';
import { type Chain, type LinearNetwork, requireNetwork } from './linear-network.ts';

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
  /** put more heat into a node [W], with no need to refresh */
  addHeat(node: number, watt: number): void;
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

/** Arrays are live and have room to spare: read and write the first `nodes`, `hubs`, `chains` places. */
export interface LoadableStepper extends Stepper {
  /** take a network in, everything at `initialC` [°C]; refused with RangeError when it cannot be stepped */
  load(network: LinearNetwork, stepS: number, initialC: number): void;
}

/**
 * Compile a network into a stepper of its own size.
 *
 * @param network the description; refused with RangeError when it cannot be stepped
 * @param stepS time step [s]; above 0
 * @param initialC start temperature of every node and hub [°C]
 */
export function compileStepper(network: LinearNetwork, stepS: number, initialC: number): Stepper {
  requireNetwork(network);
  const nodes = network.chains.reduce((sum, { capacity }) => sum + capacity.length, 0);
  const stepper = createStepper({ nodes, chains: network.chains.length, hubs: network.hubs.length });
  stepper.load(network, stepS, initialC);
  return stepper;
}

/** A stepper with room for so many nodes, chains and hubs; load() before use. */
export function createStepper(room: { nodes: number; chains: number; hubs: number }): LoadableStepper {
  let nodes = 0;
  let chains = 0;
  let hubs = 0;
  const first = new Int32Array(room.chains + 1);
  const nodeJ = new Float64Array(room.nodes);
  const link = new Float64Array(room.nodes);
  const endBoundary = new Float64Array(2 * room.chains);
  const endBoundaryC = new Float64Array(2 * room.chains);
  const endHubG = new Float64Array(4 * room.chains);
  const endHub = new Int32Array(4 * room.chains);
  /** the same with the place after the last hub for none, so that the sweeps need not ask */
  const hubAt = new Int32Array(4 * room.chains);
  /** chains both of whose ends touch hubs */
  const through = new Int32Array(room.chains);
  const hubJ = new Float64Array(room.hubs);
  const hubBoundary = new Float64Array(room.hubs);
  const hubLink = new Float64Array(room.hubs * room.hubs);

  // All arrays by node have one length, and all by chain: one check of the index then serves a line of the hot loops.
  const perNode = () => new Float64Array(room.nodes);
  const byNode = {
    nodeC: perNode(),
    /** heat capacity over the step [W/K] */
    nodePerS: perNode(),
    /** nodeW plus boundary terms; right-hand side less storage [W] */
    source: perNode(),
    /** of the elimination: share of a node's row that passes to the next; inverse pivot; swept right-hand side */
    pass: perNode(),
    inverse: perNode(),
    swept: perNode(),
    /** in chains through: a node's answer to heat at end a, on the way up */
    carry: perNode(),
  };
  const perChain = () => new Float64Array(room.chains);
  const byChain = {
    /** end temperature per watt at a, at b from a, at b [K/W]; the same with the ends tied to their hubs */
    ownA: perChain(),
    cross: perChain(),
    ownB: perChain(),
    tiedA: perChain(),
    tiedCross: perChain(),
    tiedB: perChain(),
    /** shares of the free end temperatures that remain when tied; those temperatures, tied [°C] */
    freeAA: perChain(),
    freeAB: perChain(),
    freeBA: perChain(),
    freeBB: perChain(),
    endFreeA: perChain(),
    endFreeB: perChain(),
  };
  const { nodeC, nodePerS, source } = byNode;
  const hubsAndNone = new Float64Array(room.hubs + 1);
  const hubC = hubsAndNone.subarray(0, room.hubs);
  const endSum = new Float64Array(2 * room.chains);
  const nodeW = new Float64Array(room.nodes);
  const hubW = new Float64Array(room.hubs);
  const hubBoundaryC = new Float64Array(room.hubs);
  const holdLowC = new Float64Array(room.hubs);
  const holdHighC = new Float64Array(room.hubs);
  const holdMaxW = new Float64Array(room.hubs);
  const holdMinW = new Float64Array(room.hubs);
  const hubPerS = new Float64Array(room.hubs);
  const fixedRhs = new Float64Array(room.hubs + 1);

  const solver = hubSolver(room.hubs, {
    fixedRhs,
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

  function load(network: LinearNetwork, stepS: number, initialC: number): void {
    requireNetwork(network);
    if (!(stepS > 0 && Number.isFinite(stepS))) throw new RangeError(`stepS is ${stepS} s; allowed above 0`);
    chains = network.chains.length;
    hubs = network.hubs.length;
    for (const array of [nodeW, hubW, link, endSum, hubLink, endHubG, fixedRhs]) array.fill(0);
    endHub.fill(-1);
    network.chains.forEach(loadChain);
    nodes = first[chains]!;
    for (let i = 0; i < nodes; i++) nodePerS[i] = nodeJ[i]! / stepS;
    for (let e = 0; e < endHub.length; e++) hubAt[e] = endHub[e]! < 0 ? hubs : endHub[e]!;
    network.hubs.forEach(({ capacity, boundary }, h) => {
      hubJ[h] = capacity;
      hubPerS[h] = capacity / stepS;
      hubBoundary[h] = boundary;
    });
    for (const { from, to, conductance } of network.hubLinks) {
      hubLink[from * hubs + to]! += conductance;
      hubLink[to * hubs + from]! += conductance;
    }
    for (const array of [nodeC, hubC, hubBoundaryC, endBoundaryC]) array.fill(initialC);
    holdLowC.fill(Number.NEGATIVE_INFINITY);
    holdHighC.fill(Number.POSITIVE_INFINITY);
    holdMaxW.fill(Number.POSITIVE_INFINITY);
    holdMinW.fill(Number.NEGATIVE_INFINITY);
    solver.load(hubs, network.steadyHubs ?? 0);
    Object.assign(stepper, { stepS, nodes, hubs, chains });
    for (let c = 0; c < chains; c++) refreshChain(c);
    refreshEnds();
    refreshSources();
  }

  function loadChain(chain: Chain, c: number): void {
    first[c + 1] = first[c]! + chain.capacity.length;
    nodeJ.set(chain.capacity, first[c]!);
    link.set(chain.link, first[c]!);
    through[c] = chain.a.hubs.length > 0 ? 1 : 0;
    [chain.a, chain.b].forEach((end, side) => {
      const e = 2 * c + side;
      endBoundary[e] = end.boundary;
      end.hubs.forEach(({ hub, conductance }, slot) => {
        endHub[2 * e + slot] = hub;
        endHubG[2 * e + slot] = conductance;
      });
    });
  }

  function refreshChain(c: number): void {
    const { nodePerS, pass, inverse, carry } = byNode;
    const start = first[c]!;
    const end = first[c + 1]! - 1;
    const isThrough = through[c] === 1;
    let passed = 0;
    let linkBefore = endBoundary[2 * c]!;
    let along = 1;
    let response = 0;
    let inv = 0;
    for (let i = start; i <= end; i++) {
      const linkAfter = i < end ? link[i]! : endBoundary[2 * c + 1]!;
      const diagonal = nodePerS[i]! + linkBefore - passed * linkBefore + linkAfter;
      // A massless node held by nothing but its hub leaves a zero pivot; the floor keeps it finite and is
      // 1e-12 W/K against conductances of order one.
      inv = 1 / Math.max(diagonal, 1e-12);
      inverse[i] = inv;
      if (isThrough) {
        if (i > start) along *= passed;
        carry[i] = along * inv;
        response += along * along * inv;
      }
      linkBefore = linkAfter;
      passed = linkAfter * inv;
      pass[i] = passed;
    }
    byChain.ownA[c] = response;
    byChain.cross[c] = along * inv;
    byChain.ownB[c] = inv;
  }

  function refreshEnds(): void {
    const { ownA, cross, ownB, tiedA, tiedCross, tiedB, freeAA, freeAB, freeBA, freeBB } = byChain;
    const { base } = solver;
    const g = endHubG;
    const hubCount = hubs;
    const chainCount = chains;
    for (let i = 0; i < hubCount * hubCount; i++) base[i] = 0;
    for (let c = 0; c < chainCount; c++) {
      const b = 4 * c + 2;
      const own = ownB[c]!;
      const gb = g[b]! + g[b + 1]!;
      if (through[c] === 0) {
        const tied = 1 / (1 + own * gb);
        freeBB[c] = tied;
        tiedB[c] = own * tied;
        addEnd(b, own * tied);
        continue;
      }
      const ga = g[b - 2]! + g[b - 1]!;
      const m11 = 1 + ownA[c]! * ga;
      const m12 = cross[c]! * gb;
      const m21 = cross[c]! * ga;
      const m22 = 1 + own * gb;
      const inverseDeterminant = 1 / (m11 * m22 - m12 * m21);
      freeAA[c] = m22 * inverseDeterminant;
      freeAB[c] = -m12 * inverseDeterminant;
      freeBA[c] = -m21 * inverseDeterminant;
      freeBB[c] = m11 * inverseDeterminant;
      tiedA[c] = freeAA[c]! * ownA[c]! + freeAB[c]! * cross[c]!;
      tiedCross[c] = freeAA[c]! * cross[c]! + freeAB[c]! * own;
      tiedB[c] = freeBA[c]! * cross[c]! + freeBB[c]! * own;
      addEnd(b - 2, tiedA[c]!);
      addEnd(b, tiedB[c]!);
      addCross(b - 2, b, tiedCross[c]!);
    }
    solver.refresh();
  }

  /** An end's own couplings on the hub system: +g on the diagonal, −g·k·g among its hubs. */
  function addEnd(slot: number, k: number): void {
    const g0 = endHubG[slot]!;
    const g1 = endHubG[slot + 1]!;
    const h0 = hubAt[slot]!;
    const h1 = hubAt[slot + 1]!;
    if (h0 < hubs) base[h0 * hubs + h0]! += g0 - g0 * k * g0;
    if (h1 < hubs) base[h1 * hubs + h1]! += g1 - g1 * k * g1;
    if (h0 === hubs || h1 === hubs) return;
    base[h0 * hubs + h1]! -= g0 * k * g1;
    base[h1 * hubs + h0]! -= g0 * k * g1;
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
    for (let i = 0; i < nodes; i++) source[i] = nodeW[i]!;
    for (let c = 0; c < chains; c++) {
      source[first[c]!]! += endBoundary[2 * c]! * endBoundaryC[2 * c]!;
      source[first[c + 1]! - 1]! += endBoundary[2 * c + 1]! * endBoundaryC[2 * c + 1]!;
    }
  }

  function addHeat(node: number, watt: number): void {
    nodeW[node]! += watt;
    source[node]! += watt;
  }

  // The two sweeps are the hot loops.
  function beginStep(): void {
    const { nodeC, nodePerS, source, pass, swept, carry } = byNode;
    const { ownB, freeAA, freeAB, freeBA, freeBB, endFreeA, endFreeB } = byChain;
    const hubCount = hubs;
    const chainCount = chains;
    const starts = first;
    const passes = through;
    const g = endHubG;
    const at = hubAt;
    const right = fixedRhs;
    for (let i = 0; i < hubCount; i++) right[i] = hubPerS[i]! * hubC[i]! + hubW[i]!;
    for (let c = 0; c < chainCount; c++) {
      const start = starts[c]!;
      const stop = starts[c + 1]!;
      const b = 4 * c + 2;
      let sweep = 0;
      let passed = 0;
      for (let i = start; i < stop; i++) {
        sweep = nodePerS[i]! * nodeC[i]! + source[i]! + passed;
        swept[i] = sweep;
        passed = pass[i]! * sweep;
      }
      const atB = sweep * ownB[c]!;
      let freeB = freeBB[c]! * atB;
      if (passes[c] === 1) {
        let atA = 0;
        for (let i = start; i < stop; i++) atA += swept[i]! * carry[i]!;
        const freeA = freeAA[c]! * atA + freeAB[c]! * atB;
        freeB += freeBA[c]! * atA;
        endFreeA[c] = freeA;
        right[at[b - 2]!]! += g[b - 2]! * freeA;
        right[at[b - 1]!]! += g[b - 1]! * freeA;
      }
      endFreeB[c] = freeB;
      right[at[b]!]! += g[b]! * freeB;
      right[at[b + 1]!]! += g[b + 1]! * freeB;
    }
    solver.begin();
  }

  function endStep(): void {
    solver.finish();
    const { nodeC, pass, inverse, swept, carry } = byNode;
    const { tiedA, tiedCross, tiedB, endFreeA, endFreeB } = byChain;
    const hubCount = hubs;
    const chainCount = chains;
    const starts = first;
    const passes = through;
    const sums = endSum;
    const g = endHubG;
    const at = hubAt;
    const hub = hubsAndNone;
    for (let i = 0; i < hubCount; i++) hub[i] = solver.hubC[i]!;
    // The place after the last hub stands for none; it holds no temperature and is coupled by 0.
    hub[hubCount] = 0;
    for (let c = 0; c < chainCount; c++) {
      const start = starts[c]!;
      const end = starts[c + 1]! - 1;
      const b = 4 * c + 2;
      const pullB = g[b]! * hub[at[b]!]! + g[b + 1]! * hub[at[b + 1]!]!;
      let above = endFreeB[c]! + tiedB[c]! * pullB;
      if (passes[c] === 0) {
        nodeC[end] = above;
        sums[2 * c + 1]! += above;
        for (let i = end - 1; i >= start; i--) {
          above = swept[i]! * inverse[i]! + pass[i]! * above;
          nodeC[i] = above;
        }
      } else {
        const pullA = g[b - 2]! * hub[at[b - 2]!]! + g[b - 1]! * hub[at[b - 1]!]!;
        const endA = endFreeA[c]! + tiedA[c]! * pullA + tiedCross[c]! * pullB;
        const wattA = pullA - (g[b - 2]! + g[b - 1]!) * endA;
        above += tiedCross[c]! * pullA;
        nodeC[end] = above;
        sums[2 * c + 1]! += above;
        for (let i = end - 1; i >= start; i--) {
          above = swept[i]! * inverse[i]! + wattA * carry[i]! + pass[i]! * above;
          nodeC[i] = above;
        }
      }
      sums[2 * c]! += above;
    }
  }

  const stepper: LoadableStepper = {
    load,
    stepS: 0,
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
    addHeat,
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
  return stepper;
}
