// Random valid designs for properties: every number drawn over the limits of limits.ts, every choice over its options,
// and the numbers that are tied to others drawn within what the others leave.
import fc from 'fast-check';
import { COVER_KINDS } from '../../src/design/cover-catalogue.ts';
import { COVER_LIMITS, MOST_COVERS } from '../../src/design/cover-rules.ts';
import type { Cover, Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { GLASS } from '../../src/design/glass-catalogue.ts';
import { LIMITS, type Limit } from '../../src/design/limits.ts';
import { MATERIALS } from '../../src/design/materials.ts';
import { TOO_HOT_CHOICES } from '../../src/design/too-hot-criterion.ts';

const ANY_MATERIAL = MATERIALS.map(({ id }) => id);
const MASS_MATERIAL = MATERIALS.filter(({ mass }) => mass).map(({ id }) => id);

const CHOICES: Readonly<Record<string, readonly (string | boolean)[]>> = {
  'glass.type': GLASS.map(({ id }) => id),
  'glass.basis': ['area', 'share-of-wall', 'share-of-floor'],
  'sunspace.join': ['none', 'open', 'closed'],
  'sunspace.endWalls': ['insulated', 'glazed'],
  'sunspace.commonWallMaterial': MASS_MATERIAL,
  'sunspace.doorRule': ['by-need', 'shut', 'open'],
  'mass.material': MASS_MATERIAL,
  'mass.place': ['sunlit', 'shaded'],
  'floor.material': ANY_MATERIAL,
  'floor.cover': ['bare', 'tile', 'carpet', 'wood'],
  'envelope.wallLining': ANY_MATERIAL,
  'vents.habit': ['automatic', 'attentive', 'away', 'forgetful', 'never'],
  'ventilation.aired': ['by-need', 'by-habit', 'never'],
  'ventilation.extractRuns': ['always', 'hours', 'humidity'],
  'ventilation.frost': ['preheat', 'recirculate'],
  'people.living': ['dry', 'moist', 'wet'],
  'people.awayWorkdays': [true, false],
  'plants.soil': ['mulched', 'bare', 'open-water'],
  'comfort.criterion': TOO_HOT_CHOICES,
};

/** Numbers to a millionth, as a person could write them, and often the very ends. */
const number = (min: number, max: number) =>
  fc.oneof(
    {
      weight: 8,
      arbitrary: fc
        .double({ min, max, noNaN: true })
        .map((value) => Math.min(max, Math.max(min, Math.round(value * 1e6) / 1e6))),
    },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
  );

const HABITS = ['automatic', 'attentive', 'away', 'forgetful', 'never'] as const;

/** Any cover: a kind, by what can draw it, with or without numbers and a hand of its own. */
const anyCover: fc.Arbitrary<Cover> = fc.constantFrom(...COVER_KINDS).chain(({ id, drawnBy }) =>
  fc.record(
    {
      kind: fc.constant(id),
      on: fc.constantFrom('front', 'sunspace', 'east', 'west', 'east-and-west', 'pole', 'all'),
      drawnBy: fc.constantFrom(...drawnBy),
      season: fc.constantFrom('year', 'warm', 'cold'),
      habit: fc.constantFrom(...HABITS),
      sunW: number(COVER_LIMITS.sunW.min, COVER_LIMITS.sunW.max),
      aboveC: number(COVER_LIMITS.aboveC.min, COVER_LIMITS.aboveC.max),
    },
    { requiredKeys: ['kind', 'on', 'drawnBy', 'season'] },
  ),
);

/** Valid designs anywhere within the limits, their ends included. */
export const anyDesign: fc.Arbitrary<Design> = designsWithin(({ min, max }) => [min, max]);

/** Designs that somebody might draw: every number within its plausible range. */
export const anyPlausibleDesign: fc.Arbitrary<Design> = designsWithin(({ plausible }) => plausible);

function designsWithin(rangeOf: (limit: Limit) => readonly [number, number]): fc.Arbitrary<Design> {
  return fc
    .record({
      numbers: fc.tuple(
        ...LIMITS.map((limit) => {
          const [min, max] = rangeOf(limit);
          return limit.whole ? fc.integer({ min, max }) : number(min, max);
        }),
      ),
      choices: fc.record(
        Object.fromEntries(
          Object.entries(CHOICES).map(([path, options]) => [path, fc.constantFrom(...options)]),
        ),
      ),
      covers: fc.option(fc.array(anyCover, { maxLength: MOST_COVERS }), { nil: undefined, freq: 2 }),
      lengthShare: number(0, 1),
      glassShare: number(0, 1),
    })
    .map(({ numbers, choices, covers, lengthShare, glassShare }) => {
      const design = structuredClone(EXAMPLES[0]!.design) as unknown as Record<
        string,
        Record<string, unknown>
      >;
      const set = (path: string, value: unknown) => {
        const [group, key] = path.split('.');
        design[group!]![key!] = value;
      };
      LIMITS.forEach(({ path }, i) => {
        set(path, numbers[i]);
      });
      for (const [path, choice] of Object.entries(choices)) set(path, choice);
      const { equatorWallM } = (design as unknown as Design).house;
      set('sunspace.lengthM', 1 + lengthShare * (equatorWallM - 1));
      set('glass.value', glassShare * largestValue(design as unknown as Design));
      return { ...(design as unknown as Design), ...(covers && { covers }) };
    });
}

/** The largest glass.value that fits the front by its basis. */
function largestValue(design: Design): number {
  const { largestGlassM2, equatorWallM2 } = geometryOf(design);
  switch (design.glass.basis) {
    case 'area':
      return Math.min(600, largestGlassM2);
    case 'share-of-wall':
      return Math.min(1, largestGlassM2 / equatorWallM2);
    case 'share-of-floor':
      return Math.min(1, largestGlassM2 / design.house.floorAreaM2);
  }
}
