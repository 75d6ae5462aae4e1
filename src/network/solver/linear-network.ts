// The description of a linear thermal network: chains and hubs, nothing of houses. A chain is a row of nodes
// with constant conductances between neighbours; its ends may couple to hubs and to a boundary temperature.
// A hub is a node of its own (zone air, mean radiant node), coupled to chain ends, other hubs and a boundary.
// Capacities in J/K (zero allowed, where the node is held by a conductance), conductances in W/K.

export interface ChainEnd {
  /** conductance to this end's boundary temperature [W/K]; 0 for none */
  readonly boundary: number;
  /** hubs this end couples to, at most two */
  readonly hubs: readonly { readonly hub: number; readonly conductance: number }[];
}

export interface Chain {
  readonly id: string;
  /** one entry per node, from end a to end b [J/K] */
  readonly capacity: readonly number[];
  /** between node i and i+1 [W/K]; one fewer than nodes */
  readonly link: readonly number[];
  /** end a couples to hubs only if end b does too; a chain with one hub end has it at b */
  readonly a: ChainEnd;
  readonly b: ChainEnd;
  /** heat is put into its ends alone: what is written for nodes between them counts for nothing */
  readonly heatAtEnds?: boolean;
}

export interface Hub {
  readonly id: string;
  readonly capacity: number;
  /** conductance to this hub's boundary temperature [W/K] */
  readonly boundary: number;
}

export interface LinearNetwork {
  readonly chains: readonly Chain[];
  readonly hubs: readonly Hub[];
  /** so many hubs, the first, change their links and boundary only together with chain ends; absent = 0 */
  readonly steadyHubs?: number;
  readonly hubLinks: readonly { readonly from: number; readonly to: number; readonly conductance: number }[];
}

/**
 * Refuse a network that cannot be stepped.
 *
 * @param network the description
 * Throws RangeError with the chain's or hub's id, the value and what is allowed.
 */
export function requireNetwork(network: LinearNetwork): void {
  const nonNegative = (id: string, name: string, value: number) => {
    if (!(value >= 0 && Number.isFinite(value)))
      throw new RangeError(`${name} of ${id} is ${value}; allowed 0 or more, finite`);
  };
  for (const chain of network.chains) {
    if (chain.capacity.length === 0) throw new RangeError(`${chain.id} has 0 nodes; allowed 1 or more`);
    if (chain.link.length !== chain.capacity.length - 1)
      throw new RangeError(
        `${chain.id} has ${chain.link.length} links; allowed one fewer than its ${chain.capacity.length} nodes`,
      );
    for (const value of chain.capacity) nonNegative(chain.id, 'capacity', value);
    for (const value of chain.link)
      if (!(value > 0 && Number.isFinite(value)))
        throw new RangeError(`link of ${chain.id} is ${value} W/K; allowed above 0, finite`);
    for (const end of [chain.a, chain.b]) {
      nonNegative(chain.id, 'boundary conductance', end.boundary);
      if (end.hubs.length > 2)
        throw new RangeError(`${chain.id} has ${end.hubs.length} hubs at an end; allowed 2`);
      for (const { hub, conductance } of end.hubs) {
        nonNegative(chain.id, 'hub conductance', conductance);
        if (!network.hubs[hub])
          throw new RangeError(`${chain.id} couples to hub ${hub}; allowed 0 to ${network.hubs.length - 1}`);
      }
    }
    if (chain.a.hubs.length > 0 && chain.b.hubs.length === 0)
      throw new RangeError(`${chain.id} has its only hub end at a; allowed at b`);
    const held = chain.a.boundary > 0 || chain.b.boundary > 0 || chain.capacity.some((value) => value > 0);
    if (!held)
      throw new RangeError(
        `${chain.id} has no capacity and no boundary; allowed either (or link its hubs directly)`,
      );
  }
  const steady = network.steadyHubs ?? 0;
  if (!Number.isInteger(steady) || steady < 0 || steady > network.hubs.length)
    throw new RangeError(`steadyHubs is ${steady}; allowed 0 to ${network.hubs.length}`);
  for (const hub of network.hubs) {
    nonNegative(hub.id, 'capacity', hub.capacity);
    nonNegative(hub.id, 'boundary conductance', hub.boundary);
  }
}
