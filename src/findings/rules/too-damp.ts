// Rooms that get too damp or too stale, and where the water comes from. Limits: the design's own humidity limit;
// 1350 ppm over outdoors is category III of EN 16798-1 for carbon dioxide (from memory, medium confidence).

import { PLANT_CAUSE, SOIL_CAUSE } from '../../network/water/moisture-sources.ts';
import { ACCEPTABLE_DAMP_HOURS, NEARLY_ACCEPTABLE } from '../../outcomes/acceptable-hours.ts';
import { hoursByMonth } from '../../outcomes/calendar.ts';
import { STALE_AIR_PPM } from '../../physics/carbon-dioxide.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Context } from '../context.ts';
import { roomFigure } from '../room-words.ts';
import { finding, type Rule } from '../rule.ts';
import { during, hours, percent } from '../wording.ts';
import { monthsThatMatter } from './season.ts';

/** Hours of stale air worth a word: the same share as of damp. House rule. */
export const FEW_STALE_HOURS = ACCEPTABLE_DAMP_HOURS;
/** Hours that are the rule and not the exception. */
export const MOST_OF_THE_YEAR = 0.5 * HOURS;
const MANY_HUMID_HOURS = 0.25 * HOURS;
const LOW_SOURCE = 'ASHRAE 62 (1989): 0.35 air changes an hour in dwellings (from memory, high confidence)';
/** Mean humidity of the heated rooms below which air feels dry. Common practice, no source. */
const DRY_AIR = 0.3;
/** Words for a cause, where its name is not plain enough. */
const CAUSE_WORDS: Readonly<Record<string, string>> = {
  plants: 'the leaves of the plants',
  'soil and water': 'wet soil',
  people: 'the people themselves',
};

interface Water {
  readonly kgPerDay: number;
  readonly largest: string;
  readonly largestKgPerDay: number;
  readonly plantsKgPerDay: number;
}

/** Water released in the house and, where it is open to the rooms, in the sunspace. */
function waterOf({ house: judged, worst, sunspace, design }: Context): Water {
  const house = worst('damp').room ?? judged;
  const shared = sunspace !== null && design.sunspace.join === 'open' ? sunspace.moistureByCause : [];
  const sums = new Map<string, number>();
  for (const { cause, kgPerDay } of [...house.moistureByCause, ...shared]) {
    sums.set(cause, (sums.get(cause) ?? 0) + kgPerDay);
  }
  const [largest, largestKgPerDay] = [...sums].sort((one, other) => other[1] - one[1])[0] ?? ['nothing', 0];
  return {
    kgPerDay: [...sums.values()].reduce((sum, kg) => sum + kg, 0),
    largest,
    largestKgPerDay,
    plantsKgPerDay: [...sums].reduce((sum, [cause, kg]) => sum + (isGrowing(cause) ? kg : 0), 0),
  };
}

function isGrowing(cause: string): boolean {
  return cause === PLANT_CAUSE || cause === SOIL_CAUSE;
}

export const TOO_DAMP_RULES: readonly Rule[] = [
  finding({
    id: 'too-damp',
    severity: ({ house }) =>
      house.humidHours > MANY_HUMID_HOURS
        ? 'danger'
        : house.humidHours > NEARLY_ACCEPTABLE * ACCEPTABLE_DAMP_HOURS
          ? 'warning'
          : 'note',
    applies: ({ house }) => house.humidHours > ACCEPTABLE_DAMP_HOURS,
    figures: (context) => {
      const { house } = context;
      const place = context.worst('damp');
      const byMonth = hoursByMonth(place.year.relativeHumidity, (value) => value > house.humidLimit);
      const water = waterOf(context);
      return {
        ...roomFigure(place),
        hours: house.humidHours,
        fewHours: ACCEPTABLE_DAMP_HOURS,
        humidLimit: house.humidLimit,
        months: during(monthsThatMatter(byMonth)),
        kgPerDay: water.kgPerDay,
        largest: CAUSE_WORDS[water.largest] ?? water.largest,
        largestKgPerDay: water.largestKgPerDay,
        fromPeople: water.largest === 'people' ? 'yes' : 'no',
      };
    },
    says: (f, { words, worst }) =>
      `The air in ${worst('damp').the} is above ${percent(f.humidLimit)} humidity for ${hours(f.hours)} a year, mostly ${f.months}. ` +
      (f.hours <= NEARLY_ACCEPTABLE * f.fewHours
        ? `That is little more than ${hours(f.fewHours)}, a twentieth of the year, which we let pass. `
        : '') +
      `It takes up ${words.water(f.kgPerDay)} of water a day. The most comes from ${f.largest}: ${words.water(f.largestKgPerDay)}. ` +
      (f.fromPeople === 'yes'
        ? 'People breathe, and that stays. Cooking, washing and drying can add less: use a hood, and dry the washing outdoors.'
        : 'Stop the water where it starts before you try to air it out.'),
  }),
  finding({
    id: 'damp-from-plants',
    severity: 'warning',
    applies: (context) => {
      const water = waterOf(context);
      return (
        context.design.sunspace.join === 'open' &&
        water.plantsKgPerDay > 0.3 * water.kgPerDay &&
        context.house.humidHours > ACCEPTABLE_DAMP_HOURS
      );
    },
    figures: (context) => {
      const water = waterOf(context);
      return {
        plantsKgPerDay: water.plantsKgPerDay,
        plantsShare: water.plantsKgPerDay / water.kgPerDay,
        bedM2: context.design.plants.bedM2,
      };
    },
    says: (f, { words }) =>
      `The planted bed shares its air with the rooms, and gives off ${words.water(f.plantsKgPerDay)} of water a day, leaves and soil together: ${percent(f.plantsShare)} of all. ` +
      `Mulch the bed, or make it smaller than ${words.area(f.bedM2)}. A wall between bed and rooms keeps its water out only while the door is shut.`,
  }),
  finding({
    id: 'dry-enough',
    severity: 'good',
    applies: ({ house }) => house.humidHours <= ACCEPTABLE_DAMP_HOURS,
    figures: ({ house }) => ({
      hours: house.humidHours,
      humidLimit: house.humidLimit,
      meanHumidity: house.meanRelativeHumidity,
    }),
    says: (f) =>
      `The air in the rooms stays dry enough: ${hours(f.hours)} above ${percent(f.humidLimit)} in the year, and ${percent(f.meanHumidity)} on average.`,
  }),
  finding({
    id: 'dry-air',
    severity: 'note',
    applies: ({ house }) => house.meanRelativeHumidity < DRY_AIR,
    figures: ({ house }) => ({
      meanHumidity: house.meanRelativeHumidity,
      feelsDryBelow: DRY_AIR,
      source: 'the mark for dry air: common practice, no source',
    }),
    says: (f) =>
      `The air is dry, ${percent(f.meanHumidity)} humidity on average. Below about ${percent(f.feelsDryBelow)} many people feel it in the throat. A few plants in the rooms would do good here.`,
  }),
  finding({
    id: 'stale-air',
    severity: 'warning',
    applies: (context) => context.house.freshAir.staleAirHours > FEW_STALE_HOURS,
    figures: (context) => ({
      ...roomFigure(context.worst('stale')),
      hours: context.house.freshAir.staleAirHours,
      stalePpm: STALE_AIR_PPM,
      lowHours: context.house.freshAir.belowVentilationHours,
      airChanges: context.house.freshAir.ventilationFloorAch,
      source: `EN 16798-1, category III: 1350 ppm over outdoors (from memory); ${LOW_SOURCE}`,
    }),
    says: (f, { worst }) =>
      `The air ${worst('stale').room ? `in ${worst('stale').the} ` : ''}is stale for ${hours(f.hours)} a year: more than ${f.stalePpm} ppm of carbon dioxide, the gas people breathe out. It makes rooms stuffy and heads heavy. It is not the deadly carbon monoxide. The house is tight, and windows opened against heat or damp stay shut when it is cold. ` +
      (f.lowHours > f.hours
        ? `For ${hours(f.lowHours)} less air comes in than a US standard of 1989 asked for, ${f.airChanges} of the house's air each hour; part of that time the air is stale too. `
        : '') +
      'A small quiet fan that runs all day cures the stale air, and your code may ask for a larger one. Ask a ventilation fitter.',
  }),
  finding({
    id: 'little-fresh-air',
    severity: 'note',
    applies: ({ house: { freshAir } }) =>
      freshAir.belowVentilationHours > MOST_OF_THE_YEAR && freshAir.staleAirHours <= FEW_STALE_HOURS,
    figures: ({ house }) => ({
      hours: house.freshAir.belowVentilationHours,
      airChanges: house.freshAir.ventilationFloorAch,
      staleHours: house.freshAir.staleAirHours,
      source: LOW_SOURCE,
    }),
    says: (f) =>
      `For ${hours(f.hours)} a year less fresh air comes in than homes are asked to have: ${f.airChanges} of the house's air each hour, by a US standard of 1989. The air gets stale for ${hours(f.staleHours)}. ` +
      'Draughts come with the wind and not with the need. A fan that is large enough and runs all day would do it, and your code may ask for one. Ask a ventilation fitter.',
  }),
];
