// `npm run same -- REVISION [COUNT]`: runs the engine of a revision (or of a built file) and that of these files side by
// side, over the three examples and random designs in six climates, and compares every number of every year bit by bit.
// Leaves with 1 where any differs, and says by how much of its column's range.
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Design } from '../../src/daystone.ts';
import { type Engine, engineOf } from './build-engine.ts';
import { differencesOf } from './differences.ts';

const CLIMATES = ['denver', 'anchorage', 'tucson', 'belfast', 'quillayute', 'southern-chile'];
const SEED = 20_260_101;
const MOST_TOLD = 20;

const [revision, count = '200'] = process.argv.slice(2);
if (revision === undefined) {
  console.error('same: name the revision to compare with, as: npm run same -- HEAD');
  process.exitCode = 2;
} else {
  process.exitCode = await compare(revision, Number(count));
}

async function compare(from: string, designs: number): Promise<number> {
  const before = await engineOf(from);
  const now = await engineOf(null);
  const climates = await Promise.all(CLIMATES.map((id) => climatesOf(id, before, now)));
  const houses: [string, Design][] = [
    ...before.EXAMPLES.map(({ id, design }): [string, Design] => [id, design]),
    ...before.randomDesigns(designs, SEED).map((design, i): [string, Design] => [`random ${i}`, design]),
  ];
  let [differing, numbers] = [0, 0];
  for (const [i, [name, design]] of houses.entries()) {
    const [old, current] = climates[i % climates.length]!;
    const { compared, differences } = differencesOf(
      before.runYear(design, old).year,
      now.runYear(opened(design, now), current).year,
    );
    numbers += compared;
    if (differences.length === 0) continue;
    differing++;
    if (differing <= MOST_TOLD) console.log(`${name}: ${differences.slice(0, 3).join('; ')}`);
  }
  console.log(
    `${houses.length} designs, ${numbers} numbers: ${differing === 0 ? 'the same to the last bit' : `${differing} designs differ`}`,
  );
  return differing === 0 ? 0 : 1;
}

/** A design as these files open it: what it says nothing of as it means when nothing is said. */
function opened(design: Design, { parseDesign }: Engine): Design {
  const result = parseDesign(design);
  if (!result.ok) throw new Error(`'${design.name}' is no design any more`);
  return result.design;
}

async function climatesOf(id: string, before: Engine, now: Engine) {
  const text = readFileSync(resolve(import.meta.dirname, '../../climates', `${id}.txt`));
  const prepared = async <E extends Engine>({ readWeather, prepareClimate }: E) => {
    const read = await readWeather(text);
    if (!read.ok) throw new Error(`${join('climates', id)}.txt does not read`);
    return prepareClimate(read.year);
  };
  return [await prepared(before), await prepared(now)] as const;
}
