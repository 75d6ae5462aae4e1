// `npm run bench`: timings side by side, printed as tables. Numbers are for reading, no test depends on them.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { readBundle } from '../../src/weather/formats/bundle-form.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { smallHouse } from '../network/small-house.ts';
import { benchAgainstBefore } from './against-before.ts';
import { benchGrowth, benchMemory } from './growth.ts';
import { measure, printTable } from './measure.ts';
import { yearLines } from './year-lines.ts';

const ROUNDS = 15;
const WARM_UPS = 4;

await benchAgainstBefore(ROUNDS, WARM_UPS);
const bundle = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
if (!bundle.ok) throw new Error('climates/denver.txt does not read; run npm run climates');
const climate = prepareClimate(bundle.year);

printTable(
  'One year, everything on (thermal, air, moisture), beside a bare loop',
  measure(yearLines(climate), ROUNDS, WARM_UPS),
);
const closed = modelOf(EXAMPLES.find(({ id }) => id === 'closed')!.design, bundle.year.site, climate.ground);
const shut = { ...closed, openings: closed.openings.filter(({ kind }) => kind === 'cracks') };
const small = smallHouse();
printTable(
  'What air and water cost: the closed example, and a small two-zone house of about 60 nodes',
  measure(
    [
      {
        name: 'closed: thermal, cracks only',
        run: () => void simulate(shut, climate, { water: false, lend: true }),
      },
      {
        name: 'closed: thermal, vents and doors',
        run: () => void simulate(closed, climate, { water: false, lend: true }),
      },
      {
        name: 'closed: thermal and water, cracks only',
        run: () => void simulate(shut, climate, { lend: true }),
      },
      { name: 'closed: everything', run: () => void simulate(closed, climate, { lend: true }) },
      {
        name: `small house: everything, 2 zones, ${simulate(small, climate).nodes} nodes`,
        run: () => void simulate(small, climate, { lend: true }),
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
benchGrowth(climate);
benchMemory(closed, climate);
// Loaded only now: once an array's memory has left a thread, by whatever is loaded through the loader of TypeScript or
// drives a browser, every array access there takes longer, by 1.4 to 1.7 in the bare loop. The tool itself hands none over.
const { benchYearsInBrowser } = await import('./years-in-browser.ts');
await benchYearsInBrowser(ROUNDS, WARM_UPS);
const { benchPool } = await import('./pool-in-browser.ts');
await benchPool();
const { servePage } = await import('../browser/served-page.ts');
const { measurePace, paceLines } = await import('../browser/page-pace.ts');
const served = await servePage();
try {
  console.log('\nThe built page in Chromium');
  console.log(paceLines(await measurePace(served)).join('\n'));
} finally {
  await served.close();
}
