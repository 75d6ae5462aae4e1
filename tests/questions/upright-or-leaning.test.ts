import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { ask } from '../../src/questions/ask.ts';
import { uprightOrLeaning } from '../../src/questions/upright-or-leaning.ts';
import { type Formula, madeBasis, madeRunner, plausible } from './made-runner.ts';

const LEANING = EXAMPLES[0]!.design;

test('every tilt from upright to 30° is run with and without an overhang, with the same glass', async () => {
  const runner = madeRunner(plausible);
  const answer = await ask(uprightOrLeaning, madeBasis(LEANING), runner);
  const tilts = runner.ran.map(({ design }) => `${design.glass.tiltDeg} ${design.glass.overhangM > 0}`);
  expect(new Set(tilts).size).toBe(10);
  expect(new Set(runner.ran.map(({ design }) => geometryOf(design).glassM2.toFixed(6)))).toEqual(
    // The 38 m² drawn do not stand upright in a front of 13.5 m by 2.6 m.
    new Set(['35.100000']),
  );
  expect(answer.notes.join(' ')).toContain('not the 38 m² drawn');
  for (const caution of ['leaking', 'over people', 'local code']) {
    expect(answer.notes.join(' ')).toContain(caution);
  }
});

test.each([
  [100, 300, 'Stand it upright.'],
  [300, 900, 'Neither keeps to the limit; upright is nearer to it.'],
  [10, 200, 'Both keep to the limit; the cautions speak for upright.'],
  [50, 50, 'Leaning does no harm by these figures; the cautions still hold.'],
])('with %i hours upright and %i leaning it says: %s', async (uprightHours, leaningHours, words) => {
  const formula: Formula = ({ glass }) => ({
    overheatedHours: glass.tiltDeg === 90 ? uprightHours : leaningHours,
  });
  const { finding } = await ask(uprightOrLeaning, madeBasis(LEANING), madeRunner(formula));
  expect(finding!.text.endsWith(words)).toBe(true);
});

test('sun by month has twelve columns for every tilt', async () => {
  const { tables } = await ask(uprightOrLeaning, madeBasis(LEANING), madeRunner(plausible));
  const months = tables.find(({ id }) => id === 'sun-by-month')!;
  expect(months.rows).toHaveLength(10);
  for (const row of months.rows) expect(row).toHaveLength(13);
});

test('dark and bright months are those of the hemisphere', async () => {
  const southern = { ...madeBasis(LEANING).site, latitudeDeg: -38 };
  const titles = async (site: typeof southern) => {
    const { tables } = await ask(uprightOrLeaning, madeBasis(LEANING, { site }), madeRunner(plausible));
    return tables.find(({ id }) => id === 'sun-by-tilt')!.columns.map(({ label }) => label);
  };
  expect((await titles(southern))[1]).toBe('sun May to July');
  expect((await titles(madeBasis().site))[1]).toBe('sun November to January');
});
