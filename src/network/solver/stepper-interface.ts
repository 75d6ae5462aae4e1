// What a stepper is to those who use it: live arrays to read and write, and the calls that move them on. How it steps:
// stepper.ts.

import type { LinearNetwork } from './linear-network.ts';

/** Arrays are live: the caller writes inputs, calls refresh* after changing conductances, then step(). */
export interface Stepper {
  readonly stepS: number;
  readonly nodes: number;
  readonly hubs: number;
  readonly chains: number;
  /** first node of each chain; entry `chains` = nodes */
  readonly first: Int32Array;
  /** node temperatures [°C]; between a chain's ends as of the last settleInside() of the chain */
  readonly nodeC: Float64Array;
  readonly hubC: Float64Array;
  /** heat put into a node or hub [W]; of chains with heatAtEnds, that of the ends */
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
  /** by end, b only where a touches hubs too: its temperatures of all steps added up; to read and clear [°C] */
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
  /** after link changed in a chain; allocates where more than one node stands between its ends */
  refreshChain(chain: number): void;
  /** after endBoundary or endHubG changed, or refreshChain was called */
  refreshEnds(): void;
  /** after nodeW, endBoundary or endBoundaryC changed */
  refreshSources(): void;
  /** put more heat into an end of a chain (2·chain = a, 2·chain + 1 = b) [W], until the next refreshSources() */
  addHeat(end: number, watt: number): void;
  /** write the temperatures between the ends of a chain into nodeC */
  settleInside(chain: number): void;
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
