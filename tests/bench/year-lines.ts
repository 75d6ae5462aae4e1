// One year of everything, beside a bare loop of as many nodes: the lines that stand first in the bench.
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { PreparedClimate } from '../../src/weather/prepared-climate.ts';
import { smallHouse } from '../network/small-house.ts';
import { bareLoop, type Line } from './measure.ts';

/** Bare loop of 60 nodes, the three examples, a two-zone house of about 60 nodes. */
export function yearLines(climate: PreparedClimate): Line[] {
  const line = (name: string, model: Model): Line => {
    const { nodes } = simulate(model, climate);
    return {
      name: `${name}: ${model.zones.length} zones, ${nodes} nodes`,
      run: () => void simulate(model, climate, { lend: true }),
    };
  };
  return [
    { name: 'bare loop, 60 nodes, 35 040 steps', run: bareLoop(60) },
    ...EXAMPLES.map(({ id, design }) => line(id, modelOf(design, climate.year.site, climate.ground))),
    line('small house with an opener', smallHouse()),
  ];
}
