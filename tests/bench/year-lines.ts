// One year of everything, beside a bare loop of as many nodes: the lines that stand first in the bench.
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { smallHouse } from '../network/small-house.ts';
import { bareLoop, type Line } from './measure.ts';

/** Bare loop of 60 nodes, the three examples, a two-zone house of about 60 nodes; and for each a loop of as many nodes. */
export function yearLines(climate: PreparedClimate): Line[] {
  const models: [string, Model][] = [
    ...EXAMPLES.map(({ id, design }): [string, Model] => [
      id,
      modelOf(design, climate.year.site, climate.ground),
    ]),
    ['small house with an opener', smallHouse()],
  ];
  const years = models.map(([name, model]) => ({ name, model, nodes: simulate(model, climate).nodes }));
  const loop = (nodes: number): Line => ({ name: loopName(nodes), run: () => bareLoop(nodes) });
  return [
    loop(60),
    ...years.map(({ name, model, nodes }) => ({
      name: `${name}: ${model.zones.length} zones, ${nodes} nodes`,
      run: () => void simulate(model, climate, { lend: true }),
      beside: loopName(nodes),
    })),
    ...[...new Set(years.map(({ nodes }) => nodes))].map(loop),
  ];
}

const loopName = (nodes: number) => `bare loop, ${nodes} nodes, 35 040 steps`;
