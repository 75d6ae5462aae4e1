// `npm run twins [-- DRAWS [CASE]]`: what matches give back of houses whose truth is known, case by case, as the table of
// docs/as-found.md.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readBundle } from '../../src/daystone.ts';
import { matchHouse } from '../../src/matching/match.ts';
import { TWIN_CASES } from './twin-cases.ts';
import { errorOf, plainMatchRunner, twinOf } from './twin-records.ts';

const [draws = '12', only = ''] = process.argv.slice(2);
const read = readBundle(readFileSync(join(import.meta.dirname, '../../climates/denver.txt'), 'utf8'));
if (!read.ok) throw new Error('the climate does not read');
const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;

console.log(
  '| case | misfit fitted / unseen / as drawn / yesterday [K] | intervals that held | error where learnt | said |',
);
console.log('| --- | --- | --- | --- | --- |');
for (const [name, [made, windows]] of Object.entries(TWIN_CASES)) {
  if (!name.includes(only)) continue;
  const misfits: number[][] = [];
  const errors = new Map<string, number[]>();
  const said = new Map<string, number>();
  let [held, all] = [0, 0];
  const say = (word: string) => said.set(word, (said.get(word) ?? 0) + 1);
  for (let draw = 0; draw < Number(draws); draw++) {
    const { record, truth } = twinOf(made, read.year, 100 + draw);
    const match = await matchHouse(record, plainMatchRunner(record), { windows });
    misfits.push([match.misfitK, match.unseenMisfitK, match.drawnMisfitK, match.yesterdayMisfitK]);
    say(match.verdict);
    if (match.clockOffH !== 0) say(`clock ${match.clockOffH} h`);
    for (const pattern of match.patterns.slice(0, 1)) say(`pattern of ${pattern.with}`);
    for (const { id, value, low, high, learnt } of match.unknowns) {
      const true_ = truth[id];
      if (true_ === undefined) continue;
      all++;
      if (true_ >= low && true_ <= high) held++;
      if (learnt) errors.set(id, [...(errors.get(id) ?? []), errorOf(id, value, true_)]);
    }
  }
  const columns = [0, 1, 2, 3].map((i) => mean(misfits.map((one) => one[i]!)).toFixed(2));
  const told = [...errors].map(([id, values]) => `${id} ${rms(values).toFixed(2)} (${values.length})`);
  const words = [...said].map(([word, count]) => `${word} ${count}`);
  console.log(
    `| ${name} | ${columns.join(' / ')} | ${Math.round((100 * held) / all)} % of ${all} | ${told.join(', ')} | ${words.join(', ')} |`,
  );
}
