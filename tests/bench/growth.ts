// How the cost of a year grows with nodes, zones and runs: medians of a few rounds, and the exponent of a straight line
// through their logarithms. And what memory runs leave behind.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type { Element, Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { smallHouse } from '../network/small-house.ts';
import { measure } from './measure.ts';

const NODES = [20, 50, 100, 200, 400];
const ZONES = [1, 2, 4, 8];
const RUNS = [1, 10, 100, 1000];
const ROUNDS = 5;

interface Point {
  readonly size: number;
  readonly ms: number;
}

/** Print the three tables. */
export function benchGrowth(climate: PreparedClimate): void {
  const still = smallHouse({ moved: false, glass: false, planted: false });
  const byNodes = NODES.map((nodes) => withNodes(oneZone(still), nodes));
  printGrowth(
    'nodes, one zone, no vents',
    timed(byNodes, climate, (model) => simulate(model, climate, { lend: true }).nodes),
  );
  const byZones = ZONES.map((zones) => withZones(oneZone(still), zones));
  printGrowth(
    'zones, each a small house of its own',
    timed(byZones, climate, (model) => model.zones.length),
  );
  const small = oneZone(still);
  const runs = RUNS.map((count): Point => {
    const start = performance.now();
    for (let run = 0; run < count; run++) simulate(small, climate, { lend: true });
    return { size: count, ms: performance.now() - start };
  });
  printGrowth('runs, one after another', runs);
}

/** Print what the heap holds before and after runs, garbage collected. */
export function benchMemory(model: Model, climate: PreparedClimate): void {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const heldMB = () => {
    collect();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return (heapUsed + arrayBuffers) / 1e6;
  };
  simulate(model, climate);
  const before = heldMB();
  const year = simulate(model, climate);
  const oneYear = heldMB() - before;
  if (year.nodes === 0) throw new Error('a year without nodes');
  const rows = [100, 1000].map((count) => {
    const start = heldMB();
    for (let run = 0; run < count; run++) simulate(model, climate, { lend: true });
    return [count, heldMB() - start] as const;
  });
  console.log('\nMemory, closed example, garbage collected');
  console.log(`  a year held            ${oneYear.toFixed(1)} MB`);
  for (const [count, grown] of rows) {
    console.log(
      `  after ${String(count).padStart(4)} more runs   ${grown >= 0 ? '+' : '−'}${Math.abs(grown).toFixed(1)} MB`,
    );
  }
}

function timed(
  models: readonly Model[],
  climate: PreparedClimate,
  sizeOf: (model: Model) => number,
): readonly Point[] {
  const lines = models.map((model) => ({
    name: '',
    run: () => void simulate(model, climate, { lend: true }),
  }));
  const measured = measure(lines, ROUNDS, 2);
  return models.map((model, i) => ({ size: sizeOf(model), ms: measured[i]!.medianMs }));
}

function printGrowth(what: string, points: readonly Point[]): void {
  console.log(`\nCost against ${what}: exponent ${exponent(points).toFixed(2)}`);
  for (const { size, ms } of points)
    console.log(`  ${String(size).padStart(6)}  ${ms.toFixed(1).padStart(9)} ms`);
}

/** Slope of the least-squares line through the logarithms. */
function exponent(points: readonly Point[]): number {
  const xs = points.map(({ size }) => Math.log(size));
  const ys = points.map(({ ms }) => Math.log(ms));
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const [mx, my] = [mean(xs), mean(ys)];
  const above = xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i]! - my), 0);
  return above / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
}

function oneZone(model: Model): Model {
  return {
    ...model,
    zones: model.zones.slice(0, 1),
    elements: model.elements.filter(({ a, b }) => b.zone === 'house' && a.kind !== 'zone'),
    openings: model.openings.filter(({ zone }) => zone === 'house'),
  };
}

/** The same house with its pole wall in as many pieces as give about so many nodes, no two alike. */
function withNodes(model: Model, nodes: number): Model {
  const wall = model.elements.find(({ id }) => id === 'pole wall')!;
  const nodesEach = 7;
  const pieces = Math.max(1, Math.round(nodes / nodesEach));
  const elements = Array.from({ length: pieces }, (_, i): Element => {
    const [first, ...rest] = wall.layers;
    return {
      ...wall,
      id: `${wall.id} ${i}`,
      areaM2: (10 * wall.areaM2) / pieces,
      layers: [{ ...first!, density: first!.density + i * 1e-6 }, ...rest],
    };
  });
  return { ...model, elements };
}

/** So many copies of a house side by side. */
function withZones(model: Model, zones: number): Model {
  const copies = Array.from({ length: zones }, (_, i) => `${i}`);
  return {
    ...model,
    zones: copies.flatMap((mark) => model.zones.map((zone) => ({ ...zone, id: zone.id + mark }))),
    elements: copies.flatMap((mark) =>
      model.elements.map((element) => ({
        ...element,
        id: element.id + mark,
        b: { ...element.b, zone: element.b.zone + mark },
      })),
    ),
    openings: copies.flatMap((mark) =>
      model.openings.map((opening) => ({ ...opening, id: opening.id + mark, zone: opening.zone + mark })),
    ),
  };
}
