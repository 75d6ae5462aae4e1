// Radon in houses that touch much earth. Levels by body, each with its source: physics/radon.ts. Which of them the site
// is held to: radon-country.ts. Building in the pipe: US EPA, Building Radon Out (2001). Only a measurement settles it.

import { BECQUEREL_PER_PICOCURIE, RADON_LEVELS, type RadonLevel } from '../../physics/radon.ts';
import type { Context } from '../context.ts';
import { type RadonCountry, radonCountries } from '../radon-country.ts';
import { caution, type Rule } from '../rule.ts';
import { listed, plain } from '../wording.ts';

/** The row of each country: the level at which its body asks for action. */
const ROWS: Readonly<Record<RadonCountry, { readonly body: string; readonly level: number }>> = {
  US: { body: 'US EPA', level: 148 },
  Canada: { body: 'Health Canada', level: 200 },
  'United Kingdom': { body: 'United Kingdom', level: 200 },
  Ireland: { body: 'Ireland', level: 200 },
  'European Union': { body: 'European Union, directive 2013/59', level: 300 },
};

/** Whose level it is, as said. */
const NAMES: Readonly<Record<RadonCountry, string>> = {
  US: 'in the United States, by the US EPA',
  Canada: 'in Canada, by Health Canada',
  'United Kingdom': 'in the United Kingdom',
  Ireland: 'in Ireland',
  'European Union': 'at most in a state of the European Union',
};

function rowOf(country: RadonCountry): RadonLevel {
  const wanted = ROWS[country];
  const found = RADON_LEVELS.find(({ body, level }) => body === wanted.body && level === wanted.level);
  if (found === undefined) throw new RangeError(`radon level of '${country}' is not in the table`);
  return found;
}

const [WHO_REFERENCE, WHO_MOST] = RADON_LEVELS.filter(({ body }) => body === 'WHO') as [
  RadonLevel,
  RadonLevel,
];

function levelIn(country: RadonCountry): string {
  const { level } = rowOf(country);
  const inUs = country === 'US' ? ` (${plain(level / BECQUEREL_PER_PICOCURIE, 0)} pCi/L)` : '';
  return `${level} Bq/m³${inUs} ${NAMES[country]}`;
}

function earthCoupled({ design }: Context): boolean {
  return design.envelope.bermShare > 0 || design.plants.bedM2 > 0 || design.floor.resistance < 1;
}

/** Where the earth comes near the rooms of this house. */
function openingOf(context: Context): string {
  const { envelope, plants, floor } = context.design;
  if (!earthCoupled(context)) return 'Radon can enter any house that stands on the ground.';
  if (envelope.bermShare > 0) return 'This house touches a lot of earth, and radon comes out of the earth.';
  const what = [...(floor.resistance < 1 ? ['floor'] : []), ...(plants.bedM2 > 0 ? ['planted bed'] : [])];
  return `The ${listed(what)} of this house ${what.length > 1 ? 'lie' : 'lies'} on the earth, and radon comes out of the earth.`;
}

export const RADON_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-radon',
    severity: (context) => (earthCoupled(context) ? 'warning' : 'note'),
    applies: () => true,
    figures: (context) => {
      const { latitudeDeg, longitudeDeg } = context.climate.year.site;
      const countries = radonCountries(latitudeDeg, longitudeDeg);
      const rows = [...countries.map(rowOf), WHO_REFERENCE];
      return {
        countries: countries.length,
        levels: listed(countries.map(levelIn)),
        whoBqPerM3: WHO_REFERENCE.level,
        whoMostBqPerM3: WHO_MOST.level,
        opening: openingOf(context),
        source: `${[...new Set(rows.map(({ body, source }) => `${body}: ${source}`))].join('; ')}; measures: US EPA 402-K-01-002 (2001)`,
      };
    },
    says: (f) =>
      `${f.opening} You cannot smell it, and it causes lung cancer. Before you pour the floor, plan a layer of gravel under it, a sealed sheet on top, and a pipe from the gravel up through the roof. When you have moved in, test for at least three months of the heating season. ${levelText(f)} Your health authority knows the local level and who may test.`,
  }),
];

interface LevelFigures {
  readonly countries: number;
  readonly levels: string;
  readonly whoBqPerM3: number;
  readonly whoMostBqPerM3: number;
}

/** One country's level, or those that may be meant side by side, and the world's. */
function levelText({ countries, levels, whoBqPerM3, whoMostBqPerM3 }: LevelFigures): string {
  const world = `The World Health Organization asks for less than ${whoBqPerM3} Bq/m³, and never more than ${whoMostBqPerM3}.`;
  if (countries === 0) return world;
  const own =
    countries === 1
      ? `The level that calls for action is ${levels}.`
      : `The level that calls for action is ${levels}: take the one of your country, and ask there if none is yours.`;
  return `${own} ${world}`;
}
