// `npm run bench`: timings side by side, printed as tables. Numbers are for reading, no test depends on them.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { readBundle } from '../../src/weather/bundle-form.ts';
import { prepareClimate } from '../../src/weather/prepared-climate.ts';
import { smallHouse } from '../network/small-house.ts';
import { bareLoop, measure, printTable } from './measure.ts';
import { benchPool } from './pool-in-browser.ts';

const ROUNDS = 15;
const WARM_UPS = 4;

const bundle = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
if (!bundle.ok) throw new Error('climates/denver.txt does not read; run npm run climates');
const climate = prepareClimate(bundle.year);

const examples = EXAMPLES.map(({ id, design }) => {
  const model = modelOf(design, bundle.year.site, climate.ground);
  const { nodes } = simulate(model, climate);
  return {
    name: `one year, ${id}: ${model.zones.length} zones, ${nodes} nodes`,
    nodes,
    run: () => void simulate(model, climate),
  };
});
const nodes = examples.find(({ name }) => name.includes('closed'))!.nodes;

printTable(
  'One year of an example, everything on (thermal, air, moisture), beside a bare loop',
  measure(
    [
      { name: `bare loop, ${nodes} nodes, 35 040 steps`, run: bareLoop(nodes) },
      { name: 'bare loop, 60 nodes, 35 040 steps', run: bareLoop(60) },
      ...examples,
    ],
    ROUNDS,
    WARM_UPS,
  ),
);
const closed = modelOf(EXAMPLES.find(({ id }) => id === 'closed')!.design, bundle.year.site, climate.ground);
const shut = { ...closed, openings: closed.openings.filter(({ kind }) => kind === 'cracks') };
const small = smallHouse();
printTable(
  'What air and water cost: the closed example, and a small two-zone house of about 60 nodes',
  measure(
    [
      { name: 'closed: thermal, cracks only', run: () => void simulate(shut, climate, { water: false }) },
      {
        name: 'closed: thermal, vents and doors',
        run: () => void simulate(closed, climate, { water: false }),
      },
      { name: 'closed: thermal and water, cracks only', run: () => void simulate(shut, climate) },
      { name: 'closed: everything', run: () => void simulate(closed, climate) },
      {
        name: `small house: everything, 2 zones, ${simulate(small, climate).nodes} nodes`,
        run: () => void simulate(small, climate),
      },
    ],
    ROUNDS,
    WARM_UPS,
  ),
);
printTable(
  'Preparing a climate',
  measure([{ name: 'sun, sky, moist air of 8760 hours', run: () => void prepareClimate(bundle.year) }], 7, 2),
);
await benchPool();
