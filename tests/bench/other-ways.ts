// The closed example's linear network stepped in other ways, on the same description and for some days, scaled to a
// year, beside our whole year with its air and water: the whole matrix assembled and factored with ml-matrix each hour, as
// a first program would, and an adaptive Runge-Kutta solver from the registry. The second takes no massless nodes: each
// is given heat for half a minute.
import ode45 from 'ode45-cash-karp';
import type { Model } from '../../src/model/model.ts';
import { layOut } from '../../src/network/layout/layout.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { LinearNetwork } from '../../src/network/solver/linear-network.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { denseSolver } from './dense-solver.ts';
import type { Line } from './measure.ts';

const STEP_S = 900;
const STEPS_PER_HOUR = 4;
const DAYS = 7;
const LEAST_TIME_S = 30;
const OUTDOOR_C = -5;

export const SHARE_OF_YEAR = DAYS / 365;

/** Beside our whole year: the plain way and the general solver, thermal alone, each for DAYS days. */
export function otherWays(model: Model, climate: PreparedClimate): Line[] {
  const { network } = layOut(model, 1);
  return [
    { name: 'ours, everything, a year', run: () => void simulate(model, climate, { lend: true }) },
    { name: `ml-matrix, assembled and factored each hour, ${DAYS} days`, run: () => plainWay(network) },
    { name: `adaptive Runge-Kutta (Cash-Karp), ${DAYS} days`, run: () => generalWay(network) },
  ];
}

function plainWay(network: LinearNetwork): void {
  const input = quiet(network);
  for (let hour = 0; hour < 24 * DAYS; hour++) {
    const solver = denseSolver(network, STEP_S, 18);
    for (let n = 0; n < STEPS_PER_HOUR; n++) solver.step(input);
  }
}

function quiet(network: LinearNetwork) {
  const nodes = network.chains.reduce((sum, { capacity }) => sum + capacity.length, 0);
  return {
    nodeW: new Float64Array(nodes),
    hubW: new Float64Array(network.hubs.length),
    endC: new Float64Array(2 * network.chains.length).fill(OUTDOOR_C),
    hubC: new Float64Array(network.hubs.length).fill(OUTDOOR_C),
  };
}

function generalWay(network: LinearNetwork): void {
  const { size, capacity, links, toOutdoors } = asEquations(network);
  const rates = (dydt: Float64Array, y: Float64Array) => {
    for (let i = 0; i < size; i++) dydt[i] = toOutdoors[i]! * (OUTDOOR_C - y[i]!);
    for (const { from, to, g } of links) {
      const watt = g * (y[from]! - y[to]!);
      dydt[from]! -= watt;
      dydt[to]! += watt;
    }
    for (let i = 0; i < size; i++) dydt[i]! /= capacity[i]!;
  };
  const solver = ode45(new Float64Array(size).fill(18), rates, 0, 10, { tol: 1e-4 });
  solver.steps(Number.POSITIVE_INFINITY, DAYS * 86_400);
}

function asEquations(network: LinearNetwork) {
  const nodes = network.chains.reduce((sum, { capacity }) => sum + capacity.length, 0);
  const size = nodes + network.hubs.length;
  const capacity = new Float64Array(size);
  const toOutdoors = new Float64Array(size);
  const links: { readonly from: number; readonly to: number; readonly g: number }[] = [];
  let first = 0;
  for (const chain of network.chains) {
    capacity.set(chain.capacity, first);
    const start = first;
    chain.link.forEach((g, i) => {
      links.push({ from: start + i, to: start + i + 1, g });
    });
    const last = first + chain.capacity.length - 1;
    for (const [node, end] of [
      [first, chain.a],
      [last, chain.b],
    ] as const) {
      toOutdoors[node]! += end.boundary;
      for (const { hub, conductance } of end.hubs)
        links.push({ from: node, to: nodes + hub, g: conductance });
    }
    first = last + 1;
  }
  network.hubs.forEach((hub, h) => {
    capacity[nodes + h] = hub.capacity;
    toOutdoors[nodes + h]! += hub.boundary;
  });
  for (const { from, to, conductance } of network.hubLinks) {
    links.push({ from: nodes + from, to: nodes + to, g: conductance });
  }
  for (let i = 0; i < size; i++) {
    const own = links.reduce(
      (sum, { from, to, g }) => sum + (from === i || to === i ? g : 0),
      toOutdoors[i]!,
    );
    capacity[i] = Math.max(capacity[i]!, own * LEAST_TIME_S);
  }
  return { size, capacity, links, toOutdoors };
}
