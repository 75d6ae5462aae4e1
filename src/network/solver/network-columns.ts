// The state of a network as one record of columns: what the stepper steps, and its users read and write. Made once per
// engine with room to spare; the first `nodes`, `chains`, `hubs` rows hold the network. Rows: network-index.ts.
// Columns by chain have one length, as have columns by node: one check of the index then serves a line of a hot loop.

/** How much a solver has room for. */
export interface SolverCapacity {
  readonly nodes: number;
  readonly chains: number;
  readonly hubs: number;
}

export type NetworkColumns = ReturnType<typeof createNetworkColumns>;

/** Columns with room for so many nodes, chains and hubs. */
export function createNetworkColumns({ nodes, chains, hubs }: SolverCapacity) {
  return {
    /** first node of each chain; entry `chains` = nodes */
    first: new Int32Array(chains + 1),

    // By node.
    /** heat capacity [J/K] */
    nodeJ: new Float64Array(nodes),
    /** between node i and i+1 [W/K] */
    link: new Float64Array(nodes),
    /**
     * temperature at the end of the last step, of ends without capacity its mean [°C]; between a chain's ends as of the
     * last settleInside() of the chain
     */
    nodeC: new Float64Array(nodes),
    /** heat put in [W]; of chains with heatAtEnds, that of the ends */
    nodeW: new Float64Array(nodes),

    // By end.
    /** boundary conductance [W/K] and temperature [°C] */
    endBoundary: new Float64Array(2 * chains),
    endBoundaryC: new Float64Array(2 * chains),
    /** b only where a touches hubs too: its means of all steps added up; to read and clear [°C] */
    endSum: new Float64Array(2 * chains),

    // By slot.
    /** conductance to its hub [W/K] */
    endHubG: new Float64Array(4 * chains),
    /** hub, or −1 for none; and the same with the row after the last hub for none, so that a step need not ask */
    endHub: new Int32Array(4 * chains),
    endHubOrNone: new Int32Array(4 * chains),

    // By hub.
    /** heat capacity [J/K], and its storage over a step [W/K] */
    hubJ: new Float64Array(hubs),
    hubStorage: new Float64Array(hubs),
    /** temperature at the end of the last step, and its mean over the step with a row for none, which holds 0 [°C] */
    hubC: new Float64Array(hubs),
    hubMeanC: new Float64Array(hubs + 1),
    /** heat put in [W]; on changing hubs, more that follows their own mean: hubLineW − hubLineG · mean [W], [W/K] */
    hubW: new Float64Array(hubs),
    hubLineW: new Float64Array(hubs),
    hubLineG: new Float64Array(hubs),
    /** boundary conductance [W/K] and temperature [°C] */
    hubBoundary: new Float64Array(hubs),
    hubBoundaryC: new Float64Array(hubs),
    /** held at a step's end between these temperatures by heat within these powers [°C, W]; infinite = free */
    holdLowC: new Float64Array(hubs),
    holdHighC: new Float64Array(hubs),
    holdMaxW: new Float64Array(hubs),
    holdMinW: new Float64Array(hubs),
    /** 1 where the band moves on within the step, so that a held hub goes straight to its end */
    holdRamps: new Float64Array(hubs),
    /** heat given by holding, mean of the last step [W]; negative = taken out */
    heldW: new Float64Array(hubs),
    /** right-hand side of the hub system without boundary terms and storage [W], with a row for none */
    hubRhs: new Float64Array(hubs + 1),

    // Hub by hub, symmetric.
    /** conductance between hubs [W/K] */
    hubLink: new Float64Array(hubs * hubs),
    /** what chain ends put on the hub system [W/K] */
    hubMatrix: new Float64Array(hubs * hubs),
  };
}
