// `npm run twins -- [--draws 12] [--case WORDS] [--seconds N] --kept FILE`: what matches give back of houses whose truth is
// known. Each draw is a line of FILE as soon as it is done, and one that stands there is not made again, so that it can be
// done in parts; then the tables of docs/as-found.md are printed from all of FILE.
import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { readBundle } from '../../src/daystone.ts';
import { acceptanceTable } from './twin-acceptance.ts';
import { TWIN_CASES } from './twin-cases.ts';
import { type TwinDraw, twinDraw } from './twin-draw.ts';
import { casesTable } from './twin-tables.ts';

const FIRST_SEED = 100;
const { values } = parseArgs({
  options: {
    draws: { type: 'string', default: '12' },
    case: { type: 'string', default: '' },
    seconds: { type: 'string', default: 'Infinity' },
    kept: { type: 'string' },
  },
});
if (values.kept === undefined) throw new Error('no --kept; allowed: --kept FILE, made if it is not there');
const read = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
if (!read.ok) throw new Error('the climate does not read');
const path = values.kept;
const lines = existsSync(path) ? readFileSync(path, 'utf8').split('\n').filter(Boolean) : [];
const draws = lines.map((line) => JSON.parse(line) as TwinDraw);
const until = Date.now() + 1000 * Number(values.seconds);
const wanted = Object.keys(TWIN_CASES).filter((name) => name.includes(values.case));
for (let draw = 0; draw < Number(values.draws); draw++) {
  for (const name of wanted) {
    const seed = FIRST_SEED + draw;
    if (Date.now() > until || draws.some((one) => one.name === name && one.seed === seed)) continue;
    const made = await twinDraw(name, read.year, seed);
    draws.push(made);
    appendFileSync(path, `${JSON.stringify(made)}\n`);
  }
}
console.log(casesTable(draws));
console.log(acceptanceTable(draws));
