// Houses and places that few draw: every question still gives an honest sentence, and every house it runs can be drawn.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { ask } from '../../src/questions/ask.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { varied, withGlassAsArea, withGlassM2 } from '../../src/questions/variation.ts';
import { type Formula, madeBasis, madeRunner, plausible } from './made-runner.ts';

const [LEANING, CLOSED, MODEST, DIVIDED] = EXAMPLES.map(({ design }) => design) as [
  Design,
  Design,
  Design,
  Design,
];
const nothing: Formula = () => ({ overheatedHours: 0, heatingKWh: 0, humidHours: 0, underheatedHours: 0 });
const hopeless: Formula = () => ({
  overheatedHours: 8760,
  heatingKWh: 90_000,
  humidHours: 8760,
  underheatedHours: 8760,
});

/** A front of 100 m by 12 m, most of it glass. */
const HALL: Design = varied(
  {
    ...MODEST,
    house: { ...MODEST.house, floorAreaM2: 1500, equatorWallM: 100, ceilingHeightM: 4, storeys: 3 },
    glass: { ...MODEST.glass, basis: 'share-of-wall', value: 0.8 },
  },
  {},
);

const ODD: readonly (readonly [string, Design, number, Formula])[] = [
  [
    'a hut near the equator',
    varied(MODEST, { 'house.floorAreaM2': 12, 'house.equatorWallM': 3 }),
    -0.5,
    plausible,
  ],
  ['a hall', HALL, 40, plausible],
  ['no glass to the sun', withGlassM2(MODEST, 0), 40, plausible],
  [
    'no glass, no heat, no window',
    varied(withGlassM2(MODEST, 0), { 'heating.capacityKW': 0, 'vents.houseM2': 0 }),
    68,
    hopeless,
  ],
  ['rooms far south', DIVIDED, -54, plausible],
  ['rooms where nothing is amiss', DIVIDED, 40, nothing],
  ['planted, near the pole', LEANING, 89, hopeless],
  [
    'a stove where nothing is amiss',
    { ...CLOSED, heating: { ...CLOSED.heating, capacityKW: 5, source: USUAL_STOVE } },
    -38,
    nothing,
  ],
  ['nobody at home', varied(MODEST, { 'people.count': 0 }), 40, nothing],
];

test.each(ODD)(
  '%s: every question has a sentence, without a figure that is none',
  async (_, design, latitudeDeg, formula) => {
    const site = { ...madeBasis().site, latitudeDeg };
    for (const question of QUESTIONS) {
      const runner = madeRunner(formula);
      const answer = await ask(question, madeBasis(design, { site, samples: 3, mapSide: 5 }), runner);
      const said = [answer.finding!.text, answer.sure?.text ?? '', ...answer.notes].join('\n');
      expect(said, question.id).not.toMatch(/NaN|undefined|null|Infinity|[-−]0\b|\b0 to 0\b/);
      expect(answer.finding!.text).toMatch(/^[A-Z“"].*[.]$/s);
      for (const job of runner.ran) {
        const { ok } = parseDesign(JSON.parse(JSON.stringify(job.design)));
        if (!ok) expect.fail(`${question.id}: ${job.id} cannot be drawn`);
      }
    }
  },
);

test('the glass of a hall, more than an area may be, is a share of its wall and stays as much', () => {
  const { glassM2 } = geometryOf(HALL);
  expect(glassM2).toBeGreaterThan(600);
  const varied = withGlassAsArea(HALL);
  expect(varied.glass.basis).toBe('share-of-wall');
  expect(geometryOf(varied).glassM2).toBeCloseTo(glassM2, 9);
  expect(parseDesign(varied).ok).toBe(true);
  expect(withGlassM2(HALL, 500).glass).toMatchObject({ basis: 'area', value: 500 });
});
