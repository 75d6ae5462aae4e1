// `npm run twins-bound`: what records of twins can tell of leaks at most, and how flat the misfit is along them in one draw.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { readBundle } from '../../src/daystone.ts';
import type { UnknownId } from '../../src/design/as-found.ts';
import { judgedHours, split } from '../../src/matching/judged-hours.ts';
import { leastSquares, residualOf } from '../../src/matching/least-squares.ts';
import { rms } from '../../src/matching/verdict.ts';
import { UNKNOWNS, valueAt } from '../../src/model/unknowns.ts';
import { boundOf, chanceWithin } from './twin-bound.ts';
import { TWIN_CASES } from './twin-cases.ts';
import { plainMatchRunner, twinOf } from './twin-records.ts';
import { mean, row, table } from './twin-tables.ts';

const FIRST_SEED = 100;
/** Of the days, those that are fitted, and all. */
const SHARES = [0.7, 1] as const;
const { values } = parseArgs({
  options: { draws: { type: 'string', default: '12' }, seed: { type: 'string', default: '103' } },
});
const read = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
if (!read.ok) throw new Error('the climate does not read');
const typical = read.year;
const AIR = 'winter, no heating, shut, air';
const HUMID = 'winter, no heating, shut, air and humidity';
const seeds = Array.from({ length: Number(values.draws) }, (_, draw) => FIRST_SEED + draw);
const near = (sds: readonly number[]) => (12 * mean(sds.map((sd) => chanceWithin(0.25, sd)))).toFixed(1);

const WIND = 'winter, no heating, shut, air; the house’s wind is another';
const lines = [
  AIR,
  HUMID,
  'winter, no heating, shut, four weeks of air',
  WIND,
  'winter, closed sunspace, shut, all loggers',
].map((name) => {
  const [made] = TWIN_CASES[name]!;
  const days = SHARES.map((share) => Math.round(share * made.days));
  const bounds = seeds.map((seed) => boundOf(twinOf(made, typical, seed), days));
  const cells = SHARES.map((_, k) => bounds.map((one) => one[k]!));
  const wind = bounds.map((one) => one[0]!.wind ?? Number.NaN);
  return row([
    name,
    seeds.length,
    ...cells.flatMap((ones) => {
      const sds = ones.map((one) => one.airtightness!);
      return [mean(sds).toFixed(2), near(sds)];
    }),
    Number.isNaN(wind[0]!) ? '' : mean(wind).toFixed(2),
  ]);
});
console.log(
  table(
    [
      'case',
      'draws',
      'leaks, of the days fitted: error',
      'of 12 within 25 %',
      'of all days: error',
      'of 12 within 25 %',
      'wind at the house, of the days fitted: error',
    ],
    lines,
  ),
);

const TIMES = [0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5];
const profiles = [];
for (const name of [AIR, HUMID]) profiles.push(await profileOf(name, Number(values.seed)));
const [air, humid] = profiles as [Point[], Point[]];
console.log(
  table(
    [
      'leaks, times the true',
      'air: cost above the least',
      'misfit [K]',
      'sun let in',
      'insulation',
      'mass',
      'gains',
      'air and humidity: cost above the least',
    ],
    TIMES.map((times, i) => row([times, ...wordsOf(air, i), wordsOf(humid, i)[0]!])),
  ),
);

interface Point {
  readonly unlikeliness: number;
  readonly misfitK: number;
  /** of the truth, by unknown */
  readonly others: Readonly<Partial<Record<UnknownId, number>>>;
}

/** The best fit with leaks held at so many times the true ones, all else free. */
async function profileOf(name: string, seed: number): Promise<Point[]> {
  const { record, truth } = twinOf(TWIN_CASES[name]![0], typical, seed);
  const unknowns = (Object.keys(truth) as UnknownId[]).filter((id) => id !== 'airtightness');
  const fitted = split(judgedHours(record), 'last', false);
  const points: Point[] = [];
  let start: readonly number[] | null = null;
  for (const times of TIMES) {
    const airtightness = times * truth.airtightness!;
    const found = await leastSquares(plainMatchRunner(record), {
      unknowns,
      targets: record.targets,
      fitted,
      jobOf: (others) => ({ values: { ...others, airtightness } }),
      ...(start && { start, roughRounds: 0 }),
    });
    start = found.places;
    points.push({
      unlikeliness: found.unlikeliness + (Math.log(airtightness) / UNKNOWNS.airtightness.priorSd) ** 2,
      misfitK: rms(residualOf(record.targets[0]!, found.readings[0]!, found.own[0]!), fitted[0]!),
      others: Object.fromEntries(unknowns.map((id, i) => [id, valueAt(id, found.places[i]!) / truth[id]!])),
    });
  }
  return points;
}

function wordsOf(points: readonly Point[], i: number): string[] {
  const least = Math.min(...points.map(({ unlikeliness }) => unlikeliness));
  const { unlikeliness, misfitK, others } = points[i]!;
  const ids = ['sun', 'insulation', 'mass', 'gains'] as const;
  return [(unlikeliness - least).toFixed(1), misfitK.toFixed(3), ...ids.map((id) => others[id]!.toFixed(2))];
}
