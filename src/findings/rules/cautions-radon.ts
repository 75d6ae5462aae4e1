// Radon in houses that touch much earth. Levels by body: physics/radon.ts (a 2017 review of action levels and
// quoted agency texts). Building in the pipe: US EPA, Building Radon Out (2001). Only a measurement settles it.

import { BECQUEREL_PER_PICOCURIE, RADON_LEVELS, type RadonLevel } from '../../physics/radon.ts';
import type { Context } from '../context.ts';
import { caution, type Rule } from '../rule.ts';
import { listed, plain } from '../wording.ts';

type Region = 'north-america' | 'europe' | 'elsewhere';

/** Bodies whose level a site is held to, by a region wide enough that its border towns are safe in it. */
const BODIES: Readonly<Record<Region, readonly string[]>> = {
  'north-america': ['US EPA', 'Health Canada'],
  europe: ['United Kingdom', 'Ireland', 'European Union, directive 2013/59'],
  elsewhere: ['WHO'],
};

/** Where a site lies, by coordinates alone. */
export function regionOf(latitudeDeg: number, longitudeDeg: number): Region {
  if (latitudeDeg > 24 && longitudeDeg > -170 && longitudeDeg < -50) return 'north-america';
  if (latitudeDeg > 34 && longitudeDeg > -25 && longitudeDeg < 35) return 'europe';
  return 'elsewhere';
}

/** The level each body of the region acts at: the highest of its rows, but the WHO's reference level. */
function levelsOf(region: Region): readonly RadonLevel[] {
  return BODIES[region].map((body) => {
    const rows = RADON_LEVELS.filter((row) => row.body === body);
    return body === 'WHO' ? rows[0]! : rows[rows.length - 1]!;
  });
}

function earthCoupled({ design }: Context): boolean {
  return design.envelope.bermShare > 0 || design.plants.bedM2 > 0 || design.floor.resistance < 1;
}

const BODY_NAMES: Readonly<Record<string, string>> = {
  'US EPA': 'the US EPA',
  'United Kingdom': 'the United Kingdom',
  WHO: 'the World Health Organization',
  'European Union, directive 2013/59': 'the European Union, at most',
};
const bodyName = (body: string) => BODY_NAMES[body] ?? body;

export const RADON_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-radon',
    severity: (context) => (earthCoupled(context) ? 'warning' : 'note'),
    applies: () => true,
    figures: (context) => {
      const { latitudeDeg, longitudeDeg } = context.climate.year.site;
      const levels = levelsOf(regionOf(latitudeDeg, longitudeDeg));
      return {
        levels: listed(
          levels.map(({ body, level }) => {
            const inUs = body === 'US EPA' ? ` (${plain(level / BECQUEREL_PER_PICOCURIE, 0)} pCi/L)` : '';
            return `${level} Bq/m³${inUs} for ${bodyName(body)}`;
          }),
        ),
        earthCoupled: earthCoupled(context) ? 'yes' : 'no',
        source: 'action levels: review of 2017; measures: US EPA 402-K-01-002 (2001)',
      };
    },
    says: (f) =>
      (f.earthCoupled === 'yes'
        ? 'This house touches a lot of earth, and radon comes out of the earth. '
        : 'Radon can enter any house that stands on the ground. ') +
      `You cannot smell it, and it causes lung cancer. Before you pour the floor, plan a layer of gravel under it, a sealed sheet on top, and a pipe from the gravel up through the roof. When you have moved in, test for at least three months of the heating season. The level that calls for action is ${f.levels}. Your health authority knows the local level and who may test.`,
  }),
];
