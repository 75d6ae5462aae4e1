// The stepper: a linear network in, one implicit step of any length at a time out. The only hot code of the project. The interior of each chain is kept as modes (chain-modes.ts); a step adds up what the modes bring to the two
// ends, solves one small dense system for the hubs, and lets ends and modes move on. Nothing is allocated after loading.
//
// Method: what is solved for is the mean over the step of every end and hub, at which heat into them, out of them and into
// store balance. A chain's modes know the ends by their means and a line from mean to mean, for which they are exact
// (mode-steps.ts); ends and hubs with a heat capacity go through a step as an exponential does (step-mean.ts). Interiors, and
// then ends, are eliminated: each end is a linear function of the hubs the chain touches; substituting that gives the hub
// system. Never unstable; error against exact solutions is measured in tests/published/annual-network.test.ts and wall-steps.test.ts.

import { createChainColumns } from './chain-columns.ts';
import { createChainInteriors } from './chain-interior.ts';
import {
  createEndMove,
  createEndSweep,
  createHeatInStep,
  createInnerMeans,
  createSourceGathering,
} from './chain-sweeps.ts';
import { createEndCoupling } from './end-coupling.ts';
import { createHubSolver } from './hub-solver.ts';
import { type Chain, type LinearNetwork, requireNetwork } from './linear-network.ts';
import { createNetworkColumns, type NetworkColumns, type SolverCapacity } from './network-columns.ts';
import { chainOf, endA, endB, entry, isEndA, slotOf } from './network-index.ts';
import { createPaceStore } from './pace-store.ts';
import type { LoadableStepper } from './stepper-interface.ts';

/** A stepper with room for so many nodes, chains and hubs; load() before use. */
export function createStepper(capacity: SolverCapacity): LoadableStepper {
  let chains = 0;
  let hubs = 0;
  /** couplings still to be found with ends fitted anew */
  let unfitted = 0;
  const columns = createNetworkColumns(capacity);
  const chainColumns = createChainColumns(capacity);
  const solver = createHubSolver(columns, capacity.hubs);
  const interiors = createChainInteriors(columns, chainColumns, createPaceStore(columns, chainColumns));
  const coupleEnds = createEndCoupling(columns, chainColumns, interiors);
  const gatherSources = createSourceGathering(columns, chainColumns, interiors);
  const sweepEnds = createEndSweep(columns, chainColumns);
  const moveOn = createEndMove(columns, chainColumns, interiors);
  const addHeatInStep = createHeatInStep(columns, chainColumns);
  const readInnerMeans = createInnerMeans(columns, chainColumns);

  function load(network: LinearNetwork, stepS: number, initialC: number): void {
    requireNetwork(network);
    if (!(stepS > 0 && Number.isFinite(stepS))) throw new RangeError(`stepS is ${stepS} s; allowed above 0`);
    chains = network.chains.length;
    hubs = network.hubs.length;
    loadColumns(columns, network, stepS, initialC);
    network.chains.forEach(({ capacity: nodes, heatAtEnds }, c) => {
      chainColumns.byChain.mayHeatInside[c] = nodes.length > 2 && !heatAtEnds ? 1 : 0;
    });
    solver.load(hubs, network.steadyHubs ?? 0);
    Object.assign(stepper, { stepS, nodes: columns.first[chains]!, hubs, chains });
    interiors.load(chains, stepS);
    // Once with conductances as the network has them, once as its user first sets them.
    unfitted = 2;
    refreshEnds();
    refreshSources();
  }

  function setStep(stepS: number): void {
    const { hubStorage, hubJ } = columns;
    for (let h = 0; h < hubs; h++) hubStorage[h] = hubJ[h]! / stepS;
    stepper.stepS = stepS;
    unfitted = interiors.setStep(stepS, unfitted === 0) ? 0 : 1;
  }

  function refreshEnds(): void {
    coupleEnds(chains, hubs, unfitted > 0);
    if (unfitted > 0) unfitted--;
    solver.condense();
  }

  function refreshSources(): void {
    gatherSources(chains);
  }

  function addHeat(end: number, watt: number): void {
    const { sourceA, sourceB } = chainColumns.byChain;
    if (isEndA(end)) sourceA[chainOf(end)]! += watt;
    else sourceB[chainOf(end)]! += watt;
  }

  function sweep(): void {
    sweepEnds(chains, hubs);
  }

  function beginStep(): void {
    sweep();
    solver.begin();
  }

  function endStep(): void {
    solver.moveOn();
    moveOn(chains, hubs);
  }

  const stepper: LoadableStepper & { stepS: number } = {
    ...columns,
    load,
    stepS: 0,
    setStep,
    nodes: 0,
    hubs,
    chains,
    refreshChain: interiors.refresh,
    refreshEnds,
    refreshSources,
    addHeat,
    settleInside: interiors.settle,
    beginPeriod: interiors.beginPeriod,
    endPeriod: interiors.endPeriod,
    step() {
      beginStep();
      solver.solve();
      solver.finish();
      endStep();
    },
    beginStep,
    sweep,
    addHeatInStep,
    beginSolving: solver.begin,
    solve: solver.solve,
    finish: solver.finish,
    readInnerMeans,
    endStep,
  };
  return stepper;
}

function loadColumns(columns: NetworkColumns, network: LinearNetwork, stepS: number, initialC: number): void {
  const { hubJ, hubStorage, hubBoundary, hubLink, endHub, endHubOrNone } = columns;
  const hubs = network.hubs.length;
  for (const array of [columns.nodeW, columns.hubW, columns.link, columns.endSum]) array.fill(0);
  for (const array of [
    hubLink,
    columns.endHubG,
    columns.hubRhs,
    columns.heldW,
    columns.hubLineW,
    columns.hubLineG,
  ])
    array.fill(0);
  endHub.fill(-1);
  network.chains.forEach((chain, c) => {
    loadChain(columns, chain, c);
  });
  for (let slot = 0; slot < endHub.length; slot++)
    endHubOrNone[slot] = endHub[slot]! < 0 ? hubs : endHub[slot]!;
  network.hubs.forEach((hub, h) => {
    hubJ[h] = hub.capacity;
    hubStorage[h] = hub.capacity / stepS;
    hubBoundary[h] = hub.boundary;
  });
  for (const { from, to, conductance } of network.hubLinks) {
    hubLink[entry(from, to, hubs)]! += conductance;
    hubLink[entry(to, from, hubs)]! += conductance;
  }
  for (const array of [columns.nodeC, columns.hubC, columns.hubBoundaryC, columns.endBoundaryC]) {
    array.fill(initialC);
  }
  columns.holdLowC.fill(Number.NEGATIVE_INFINITY);
  columns.holdHighC.fill(Number.POSITIVE_INFINITY);
  columns.holdMaxW.fill(Number.POSITIVE_INFINITY);
  columns.holdMinW.fill(Number.NEGATIVE_INFINITY);
  columns.holdRamps.fill(0);
}

function loadChain(
  { first, nodeJ, link, endBoundary, endHub, endHubG }: NetworkColumns,
  chain: Chain,
  c: number,
): void {
  const start = first[c]!;
  first[c + 1] = start + chain.capacity.length;
  nodeJ.set(chain.capacity, start);
  link.set(chain.link, start);
  for (const [end, { boundary, hubs }] of [
    [endA(c), chain.a],
    [endB(c), chain.b],
  ] as const) {
    endBoundary[end] = boundary;
    hubs.forEach(({ hub, conductance }, n) => {
      endHub[slotOf(end, n)] = hub;
      endHubG[slotOf(end, n)] = conductance;
    });
  }
}
