import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { ask } from '../../src/questions/ask.ts';
import { uprightOrLeaning } from '../../src/questions/upright-or-leaning.ts';
import { USUAL_WEIGHTS, type Weights } from '../../src/questions/weights.ts';
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
  [100, 300, 900, 900, 'Stand it upright: the rooms are then too hot for 100 hours'],
  [300, 900, 900, 400, 'The price is 500 kWh more back-up heat a year, 900 kWh in all.'],
  [10, 200, 900, 870, 'Stand it upright:'],
  [10, 200, 1900, 870, 'Lean it to 60°: the rooms are then too hot for 200 hours a year instead of 10'],
  [50, 50, 900, 900, 'Back-up heat is the same. It also spares the leaks'],
  [0, 0, 900, 600, 'damp for 100 either way. Leaning gains too little to pay for the leaks'],
])(
  'with %i hours upright and %i leaning, %i and %i kWh, it recommends and names the price',
  async (uprightHours, leaningHours, uprightKWh, leaningKWh, words) => {
    const formula: Formula = ({ glass }) => ({
      overheatedHours: glass.tiltDeg === 90 ? uprightHours : leaningHours,
      heatingKWh: glass.tiltDeg === 90 ? uprightKWh : leaningKWh,
    });
    const { finding } = await ask(uprightOrLeaning, madeBasis(LEANING), madeRunner(formula));
    expect(finding!.text).toContain(words);
  },
);

test('a house without heat is told by its hours too cold', async () => {
  const unheated = { ...LEANING, heating: { ...LEANING.heating, capacityKW: 0 } };
  const { finding } = await ask(
    uprightOrLeaning,
    madeBasis(unheated),
    madeRunner(({ glass }) => ({ overheatedHours: 0, underheatedHours: glass.tiltDeg === 90 ? 400 : 1200 })),
  );
  expect(finding!.text).toMatch(/^Stand it upright: .* They are too cold for 400 hours instead of 1200\./);
});

test('the advice follows the weights a person has moved, and the notes say which', async () => {
  const formula: Formula = ({ glass }) => ({
    overheatedHours: glass.tiltDeg === 90 ? 300 : 900,
    heatingKWh: glass.tiltDeg === 90 ? 1100 : 400,
  });
  const asked = async (weights: Weights) =>
    ask(uprightOrLeaning, madeBasis(LEANING, { weights }), madeRunner(formula));
  const usual = await asked(USUAL_WEIGHTS);
  expect(usual.finding!.text).toMatch(/^Stand it upright/);
  expect(usual.notes.join(' ')).toContain('These weigh alike');
  const cold = await asked({ ...USUAL_WEIGHTS, hot: 0 });
  expect(cold.finding!.text).toMatch(/^Lean it to 60°/);
  expect(cold.notes.join(' ')).toContain('You weigh otherwise: hot 0 times');
});

test('the same house is set beside itself: no overhang that it does not have, and the very lean drawn', async () => {
  const drawn = { ...LEANING, glass: { ...LEANING.glass, tiltDeg: 52 } };
  const formula: Formula = ({ glass }) => ({
    overheatedHours: 10 + glass.tiltDeg + (glass.overhangM > 0 ? 1000 : 0),
    heatingKWh: 1000,
  });
  const { finding } = await ask(uprightOrLeaning, madeBasis(drawn), madeRunner(formula));
  expect(finding!.figures).toMatchObject({
    leanDeg: 52,
    uprightOverheatedHours: 100,
    leaningOverheatedHours: 62,
  });
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
