import { type LinearNetwork, requireNetwork } from '../../src/network/solver/linear-network.ts';
import { createStepper } from '../../src/network/solver/stepper.ts';
import type { Stepper } from '../../src/network/solver/stepper-interface.ts';

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
