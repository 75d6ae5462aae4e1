// The stepper: a linear network in, one implicit (backward Euler) step at a time out. The only hot code of
// the project. The inside of each chain is kept as modes (chain-modes.ts); a step adds up what the modes bring to the two
// ends, solves one small dense system for the hubs, and lets ends and modes move on. Nothing is allocated after loading.
//
// Method: backward Euler of the whole network, with the inside of each chain, and then its ends, eliminated: each end is a
// linear function of the hubs the chain touches; substituting that gives the hub system. Unconditionally stable, first
// order in time; error against exact solutions is measured in tests/published/annual-network.test.ts.

import { createChainInsides } from './chain-interior.ts';
import { createEndTies } from './end-coupling.ts';
import { hubSolver } from './hub-solver.ts';
import { type Chain, type LinearNetwork, requireNetwork } from './linear-network.ts';
import type { LoadableStepper } from './stepper-interface.ts';

/** A stepper with room for so many nodes, chains and hubs; load() before use. */
export function createStepper(capacity: { nodes: number; chains: number; hubs: number }): LoadableStepper {
  let nodes = 0;
  let chains = 0;
  let hubs = 0;
  const first = new Int32Array(capacity.chains + 1);
  const nodeJ = new Float64Array(capacity.nodes);
  const link = new Float64Array(capacity.nodes);
  const endBoundary = new Float64Array(2 * capacity.chains);
  const endBoundaryC = new Float64Array(2 * capacity.chains);
  const endHubG = new Float64Array(4 * capacity.chains);
  const endHub = new Int32Array(4 * capacity.chains);
  /** the same with the place after the last hub for none, so that a step need not ask */
  const hubAt = new Int32Array(4 * capacity.chains);
  const hubJ = new Float64Array(capacity.hubs);
  const hubBoundary = new Float64Array(capacity.hubs);
  const hubLink = new Float64Array(capacity.hubs * capacity.hubs);

  const nodeC = new Float64Array(capacity.nodes);
  const nodeW = new Float64Array(capacity.nodes);
  const insides = createChainInsides(capacity, { first, nodeJ, link, nodeW, nodeC });
  const hubsAndNone = new Float64Array(capacity.hubs + 1);
  const hubC = hubsAndNone.subarray(0, capacity.hubs);
  const endSum = new Float64Array(2 * capacity.chains);
  const hubW = new Float64Array(capacity.hubs);
  const hubBoundaryC = new Float64Array(capacity.hubs);
  const holdLowC = new Float64Array(capacity.hubs);
  const holdHighC = new Float64Array(capacity.hubs);
  const holdMaxW = new Float64Array(capacity.hubs);
  const holdMinW = new Float64Array(capacity.hubs);
  const hubPerS = new Float64Array(capacity.hubs);
  const fixedRhs = new Float64Array(capacity.hubs + 1);

  const solver = hubSolver(capacity.hubs, {
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

  const ties = createEndTies(
    capacity,
    { first, endBoundary, endHubG, hubAt, base: solver.base },
    insides.byChain,
  );
  // All arrays by chain have one length, as have all by node: one check of the index then serves a line of the hot loops.
  const perChain = () => new Float64Array(capacity.chains);
  const byChain = {
    ...insides.byChain,
    ...ties.byChain,
    /** heat into each end from sources and boundary [W] */
    sourceA: perChain(),
    sourceB: perChain(),
    /** 1 where heat may be put inside */
    mayFeed: perChain(),
    /** end temperatures without the hubs [°C] */
    endFreeA: perChain(),
    endFreeB: perChain(),
  };

  function load(network: LinearNetwork, stepS: number, initialC: number): void {
    requireNetwork(network);
    if (!(stepS > 0 && Number.isFinite(stepS))) throw new RangeError(`stepS is ${stepS} s; allowed above 0`);
    chains = network.chains.length;
    hubs = network.hubs.length;
    for (const array of [nodeW, hubW, link, endSum, hubLink, endHubG, fixedRhs]) array.fill(0);
    endHub.fill(-1);
    network.chains.forEach(loadChain);
    nodes = first[chains]!;
    for (let e = 0; e < endHub.length; e++) hubAt[e] = endHub[e]! < 0 ? hubs : endHub[e]!;
    network.hubs.forEach((hub, h) => {
      hubJ[h] = hub.capacity;
      hubPerS[h] = hub.capacity / stepS;
      hubBoundary[h] = hub.boundary;
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
    insides.load(chains, stepS);
    refreshEnds();
    refreshSources();
  }

  function loadChain(chain: Chain, c: number): void {
    const start = first[c]!;
    const count = chain.capacity.length;
    first[c + 1] = start + count;
    nodeJ.set(chain.capacity, start);
    link.set(chain.link, start);
    byChain.mayFeed[c] = count > 2 && !chain.heatAtEnds ? 1 : 0;
    [chain.a, chain.b].forEach((end, side) => {
      const e = 2 * c + side;
      endBoundary[e] = end.boundary;
      end.hubs.forEach(({ hub, conductance }, slot) => {
        endHub[2 * e + slot] = hub;
        endHubG[2 * e + slot] = conductance;
      });
    });
  }

  function refreshEnds(): void {
    ties.refresh(chains, hubs);
    solver.refresh();
  }

  function refreshSources(): void {
    const { sourceA, sourceB, mayFeed } = byChain;
    const starts = first;
    const heat = nodeW;
    const boundary = endBoundary;
    const outsideC = endBoundaryC;
    const chainCount = chains;
    for (let c = 0; c < chainCount; c++) {
      const start = starts[c]!;
      const end = starts[c + 1]! - 1;
      const atA = boundary[2 * c]! * outsideC[2 * c]!;
      const atB = heat[end]! + boundary[2 * c + 1]! * outsideC[2 * c + 1]!;
      sourceA[c] = start < end ? heat[start]! + atA : 0;
      sourceB[c] = start < end ? atB : atB + atA;
      if (mayFeed[c] === 1) insides.feed(c);
    }
  }

  function addHeat(end: number, watt: number): void {
    const { sourceA, sourceB } = byChain;
    if (end % 2 === 0) sourceA[end >> 1]! += watt;
    else sourceB[end >> 1]! += watt;
  }

  function beginStep(): void {
    const { sourceA, sourceB, heldA, heldB, tiedA, cross, tiedB, endFreeA, endFreeB } = byChain;
    const hubCount = hubs;
    const chainCount = chains;
    const g = endHubG;
    const at = hubAt;
    const right = fixedRhs;
    for (let i = 0; i < hubCount; i++) right[i] = hubPerS[i]! * hubC[i]! + hubW[i]!;
    for (let c = 0; c < chainCount; c++) {
      const b = 4 * c + 2;
      const heatA = heldA[c]! + sourceA[c]!;
      const heatB = heldB[c]! + sourceB[c]!;
      const over = cross[c]!;
      const freeA = tiedA[c]! * heatA + over * heatB;
      const freeB = over * heatA + tiedB[c]! * heatB;
      endFreeA[c] = freeA;
      endFreeB[c] = freeB;
      right[at[b]!]! += g[b]! * freeB;
      right[at[b + 1]!]! += g[b + 1]! * freeB;
      if (at[b - 2]! === hubCount) continue;
      right[at[b - 2]!]! += g[b - 2]! * freeA;
      right[at[b - 1]!]! += g[b - 1]! * freeA;
    }
    solver.begin();
  }

  function endStep(): void {
    solver.finish();
    const { amount, keeps, fromA, fromB } = insides.byMode;
    const temperature = nodeC;
    const { tiedA, cross, tiedB, endFreeA, endFreeB, heldA, heldB, storageA, storageB, isFed } = byChain;
    const hubCount = hubs;
    const chainCount = chains;
    const starts = first;
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
      const over = cross[c]!;
      let endA = endFreeA[c]! + over * pullB;
      let endB = endFreeB[c]! + tiedB[c]! * pullB;
      if (at[b - 2]! < hubCount) {
        const pullA = g[b - 2]! * hub[at[b - 2]!]! + g[b - 1]! * hub[at[b - 1]!]!;
        endA += tiedA[c]! * pullA;
        endB += over * pullA;
        sums[2 * c + 1]! += endB;
      }
      temperature[start] = endA;
      temperature[end] = endB;
      sums[2 * c]! += endA;
      // The hot loop.
      let atA = storageA[c]! * endA;
      let atB = storageB[c]! * endB;
      for (let i = start + 1; i < end; i++) {
        const own = keeps[i]!;
        const takesA = fromA[i]!;
        const takesB = fromB[i]!;
        const now = own * amount[i]! + takesA * endA + takesB * endB;
        amount[i] = now;
        atA += takesA * (own * now);
        atB += takesB * (own * now);
      }
      heldA[c] = atA;
      heldB[c] = atB;
      if (isFed[c] === 1) insides.addFed(c);
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
    refreshChain: insides.refresh,
    refreshEnds,
    refreshSources,
    addHeat,
    settleInside: insides.settle,
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
