// What a stepper is to those who use it: live columns to read and write, and the calls that move them on. How it steps:
// stepper.ts.

import type { LinearNetwork } from './linear-network.ts';
import type { NetworkColumns } from './network-columns.ts';

/** Columns are live: the caller writes inputs, calls refresh* after changing conductances, then step(). */
export interface Stepper extends Readonly<NetworkColumns> {
  readonly stepS: number;
  /**
   * Step by another length from now on [s]. Never by itself: refreshEnds() and refreshSources() come before the next step, or
   * ends and heat inside chains are still those of the length before.
   */
  setStep(stepS: number): void;
  readonly nodes: number;
  readonly hubs: number;
  readonly chains: number;
  /** after link changed in a chain; allocates where more than one node stands between its ends */
  refreshChain(chain: number): void;
  /** after endBoundary or endHubG changed, or refreshChain was called */
  refreshEnds(): void;
  /** after nodeW, endBoundary or endBoundaryC changed */
  refreshSources(): void;
  /** put more heat into an end of a chain [W], until the next refreshSources(); before beginStep() */
  addHeat(end: number, watt: number): void;
  /** write the temperatures between the ends of a chain into nodeC */
  settleInside(chain: number): void;
  /** a period begins, at whose end modes are to be put where the same period over and over would leave them */
  beginPeriod(): void;
  endPeriod(seconds: number): void;
  /** beginStep, solve, finish, endStep */
  step(): void;
  /** sweep, beginSolving; hub conductances to boundaries and other hubs may still change after it */
  beginStep(): void;
  /** sweep the chains */
  sweep(): void;
  /** more heat into end b of a chain that is swept [W], until the next refreshSources(); beginSolving() after the last */
  addHeatInStep(chain: number, watt: number): void;
  /** take what the sweep left on the hubs */
  beginSolving(): void;
  /** solve the changing hubs, with conductances and lines as they stand, into hubMeanC; may be repeated */
  solve(): void;
  /** the steady hubs of the last solve, into hubMeanC */
  finish(): void;
  /** means at ends b of so many chains, after finish(); after sweep() by the hubs' means of the step before [°C] */
  readInnerMeans(chains: Int32Array, count: number, into: Float64Array): void;
  /** take the last solve: hubs and nodes move on */
  endStep(): void;
}

/** Columns have room to spare: read and write the first `nodes`, `hubs`, `chains` rows. */
export interface LoadableStepper extends Stepper {
  /** take a network in, everything at `initialC` [°C]; refused with RangeError when it cannot be stepped */
  load(network: LinearNetwork, stepS: number, initialC: number): void;
}
