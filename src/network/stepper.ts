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

// What is kept of a chain, by place in its row: end temperature per watt at a, at b from a, at b [K/W]; the same with
// the ends tied to their hubs; shares of the free end temperatures that remain when tied; those temperatures [°C].
const [OWN_A, CROSS, OWN_B, TIED_A, TIED_CROSS, TIED_B] = [0, 1, 2, 3, 4, 5] as const;
const [FREE_AA, FREE_AB, FREE_BA, FREE_BB, END_FREE_A, END_FREE_B] = [6, 7, 8, 9, 10, 11] as const;
const CHAIN_PLACES = 12;

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
  const through = new Uint8Array(room.chains);
  const hubJ = new Float64Array(room.hubs);
  const hubBoundary = new Float64Array(room.hubs);
  const hubLink = new Float64Array(room.hubs * room.hubs);

  // Everything per node in one block and everything per chain in another, so that the loops follow two base addresses.
  // A section of the first has one place more than there are nodes: the factor beyond the last node is always 0.
  const places = room.nodes + 1;
  const pool = new Float64Array(7 * places);
  const [AT_CAPACITY, AT_SOURCE, AT_FACTOR, AT_INVERSE, AT_SWEPT, AT_CARRY] = [1, 2, 3, 4, 5, 6].map(
    (k) => k * places,
  ) as [number, number, number, number, number, number];
  const section = (from: number) => pool.subarray(from, from + room.nodes);
  const nodeC = section(0);
  const nodePerS = section(AT_CAPACITY);
  /** nodeW plus boundary terms; right-hand side less storage */
  const source = section(AT_SOURCE);
  const perChain = new Float64Array(CHAIN_PLACES * room.chains);
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
    const p = pool;
    const start = first[c]!;
    const end = first[c + 1]! - 1;
    const isThrough = through[c] === 1;
    let before = 0;
    let linkBefore = 0;
    let along = 1;
    let response = 0;
    let inv = 0;
    for (let i = start; i <= end; i++) {
      const linkAfter = i < end ? link[i]! : endBoundary[2 * c + 1]!;
      let diagonal = p[AT_CAPACITY + i]! + linkBefore - before * linkBefore + linkAfter;
      if (i === start) diagonal += endBoundary[2 * c]!;
      p[AT_FACTOR + i] = before;
      // A massless node held by nothing but its hub leaves a zero pivot; the floor keeps it finite and is
      // 1e-12 W/K against conductances of order one.
      inv = 1 / Math.max(diagonal, 1e-12);
      p[AT_INVERSE + i] = inv;
      if (isThrough) {
        if (i > start) along *= before;
        p[AT_CARRY + i] = along * inv;
        response += along * along * inv;
      }
      linkBefore = linkAfter;
      before = linkAfter * inv;
    }
    const k = CHAIN_PLACES * c;
    perChain[k + OWN_A] = response;
    perChain[k + CROSS] = along * inv;
    perChain[k + OWN_B] = inv;
  }

  function refreshEnds(): void {
    const p = perChain;
    const g = endHubG;
    for (let i = 0; i < hubs * hubs; i++) base[i] = 0;
    for (let c = 0; c < chains; c++) {
      const k = CHAIN_PLACES * c;
      const b = 4 * c + 2;
      const ownB = p[k + OWN_B]!;
      const gb = g[b]! + g[b + 1]!;
      if (through[c] === 0) {
        const tied = 1 / (1 + ownB * gb);
        p[k + FREE_BB] = tied;
        p[k + TIED_B] = ownB * tied;
        addEnd(b, ownB * tied);
        continue;
      }
      const ga = g[b - 2]! + g[b - 1]!;
      const ownA = p[k + OWN_A]!;
      const cross = p[k + CROSS]!;
      const m11 = 1 + ownA * ga;
      const m12 = cross * gb;
      const m21 = cross * ga;
      const m22 = 1 + ownB * gb;
      const inverseDeterminant = 1 / (m11 * m22 - m12 * m21);
      p[k + FREE_AA] = m22 * inverseDeterminant;
      p[k + FREE_AB] = -m12 * inverseDeterminant;
      p[k + FREE_BA] = -m21 * inverseDeterminant;
      p[k + FREE_BB] = m11 * inverseDeterminant;
      p[k + TIED_A] = p[k + FREE_AA]! * ownA + p[k + FREE_AB]! * cross;
      p[k + TIED_CROSS] = p[k + FREE_AA]! * cross + p[k + FREE_AB]! * ownB;
      p[k + TIED_B] = p[k + FREE_BA]! * cross + p[k + FREE_BB]! * ownB;
      addEnd(b - 2, p[k + TIED_A]!);
      addEnd(b, p[k + TIED_B]!);
      addCross(b - 2, b, p[k + TIED_CROSS]!);
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

  // The two sweeps are the hot loops. What they use is copied into locals first: where the code has run on arrays of
  // more than one engine, reaching them through the closure takes twice as long.
  function beginStep(): void {
    const p = pool;
    const k = perChain;
    const starts = first;
    const atCapacity = AT_CAPACITY;
    const atSource = AT_SOURCE;
    const atFactor = AT_FACTOR;
    const atSwept = AT_SWEPT;
    const atCarry = AT_CARRY;
    const g = endHubG;
    const at = hubAt;
    const right = fixedRhs;
    for (let i = 0; i < hubs; i++) right[i] = hubPerS[i]! * hubC[i]! + hubW[i]!;
    for (let c = 0, row = 0, b = 2; c < chains; c++, row += CHAIN_PLACES, b += 4) {
      const start = starts[c]!;
      const stop = starts[c + 1]!;
      let sweep = 0;
      for (let i = start; i < stop; i++) {
        sweep = p[atCapacity + i]! * p[i]! + p[atSource + i]! + p[atFactor + i]! * sweep;
        p[atSwept + i] = sweep;
      }
      const atB = sweep * k[row + OWN_B]!;
      let freeB = k[row + FREE_BB]! * atB;
      if (through[c] === 1) {
        let atA = 0;
        for (let i = start; i < stop; i++) atA += p[atSwept + i]! * p[atCarry + i]!;
        const freeA = k[row + FREE_AA]! * atA + k[row + FREE_AB]! * atB;
        freeB += k[row + FREE_BA]! * atA;
        k[row + END_FREE_A] = freeA;
        right[at[b - 2]!]! += g[b - 2]! * freeA;
        right[at[b - 1]!]! += g[b - 1]! * freeA;
      }
      k[row + END_FREE_B] = freeB;
      right[at[b]!]! += g[b]! * freeB;
      right[at[b + 1]!]! += g[b + 1]! * freeB;
    }
    solver.begin(right);
  }

  function endStep(): void {
    solver.finish();
    const p = pool;
    const k = perChain;
    const starts = first;
    const atFactor = AT_FACTOR + 1;
    const atInverse = AT_INVERSE;
    const atSwept = AT_SWEPT;
    const atCarry = AT_CARRY;
    const g = endHubG;
    const at = hubAt;
    const hub = hubsAndNone;
    const sums = endSum;
    for (let i = 0; i < hubs; i++) hub[i] = solver.hubC[i]!;
    // The place after the last hub stands for none; it holds no temperature and is coupled by 0.
    hub[hubs] = 0;
    for (let c = 0, row = 0, b = 2; c < chains; c++, row += CHAIN_PLACES, b += 4) {
      const start = starts[c]!;
      const end = starts[c + 1]! - 1;
      const pullB = g[b]! * hub[at[b]!]! + g[b + 1]! * hub[at[b + 1]!]!;
      let above = k[row + END_FREE_B]! + k[row + TIED_B]! * pullB;
      if (through[c] === 0) {
        p[end] = above;
        sums[2 * c + 1]! += above;
        for (let i = end - 1; i >= start; i--) {
          above = p[atSwept + i]! * p[atInverse + i]! + p[atFactor + i]! * above;
          p[i] = above;
        }
      } else {
        const pullA = g[b - 2]! * hub[at[b - 2]!]! + g[b - 1]! * hub[at[b - 1]!]!;
        const endA = k[row + END_FREE_A]! + k[row + TIED_A]! * pullA + k[row + TIED_CROSS]! * pullB;
        const wattA = pullA - (g[b - 2]! + g[b - 1]!) * endA;
        above += k[row + TIED_CROSS]! * pullA;
        p[end] = above;
        sums[2 * c + 1]! += above;
        for (let i = end - 1; i >= start; i--) {
          above = p[atSwept + i]! * p[atInverse + i]! + wattA * p[atCarry + i]! + p[atFactor + i]! * above;
          p[i] = above;
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
