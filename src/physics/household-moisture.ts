// Water that living in a house puts into its air. In: who lives there and how, or single activities. Out: grams an hour
// and kilograms a day, each with its source, and the damp that follows in a steady balance. Sources: BS 5250:2002,
// ASHRAE 160, ISO 13788 (from memory, medium confidence) and two handbooks that were read: a European solar-housing
// textbook (table 10.1.1) and a New Zealand roofing code of practice.
import { requireRange } from './require-range.ts';

const TEXTBOOK = 'European solar-housing textbook, table 10.1.1';
const ROOFING_CODE = 'New Zealand roofing code of practice, occupant behaviour';
const BS_5250 = 'BS 5250:2002; from memory, medium confidence';

/** A source of vapour while it runs: middle and range in g/h. */
export interface MoistureActivity {
  readonly id: string;
  readonly activity: string;
  readonly gramsPerHour: number;
  readonly range: readonly [number, number];
  readonly source: string;
}

/** Rates while the activity lasts; per person, plant, m² of water or appliance as named. */
export const MOISTURE_ACTIVITIES: readonly MoistureActivity[] = [
  {
    id: 'asleep',
    activity: 'person asleep',
    gramsPerHour: 40,
    range: [40, 50],
    source: `${BS_5250}; 50 in ${ROOFING_CODE}`,
  },
  {
    id: 'awake',
    activity: 'person awake',
    gramsPerHour: 55,
    range: [40, 60],
    source: `${BS_5250}; ${TEXTBOOK}`,
  },
  { id: 'at-work', activity: 'person at average work', gramsPerHour: 90, range: [60, 120], source: TEXTBOOK },
  {
    id: 'hard-work',
    activity: 'person at hard work',
    gramsPerHour: 160,
    range: [120, 200],
    source: TEXTBOOK,
  },
  { id: 'cooking', activity: 'cooking', gramsPerHour: 1000, range: [600, 1500], source: TEXTBOOK },
  { id: 'shower', activity: 'shower', gramsPerHour: 2500, range: [2500, 2500], source: TEXTBOOK },
  { id: 'bath', activity: 'bath', gramsPerHour: 700, range: [700, 700], source: TEXTBOOK },
  {
    id: 'drying-spun',
    activity: 'clothes drying indoors, spun',
    gramsPerHour: 125,
    range: [50, 200],
    source: TEXTBOOK,
  },
  {
    id: 'drying-wet',
    activity: 'clothes drying indoors, dripping',
    gramsPerHour: 300,
    range: [100, 500],
    source: TEXTBOOK,
  },
  { id: 'potted-plant', activity: 'potted plant', gramsPerHour: 10, range: [7, 15], source: TEXTBOOK },
  { id: 'aquarium', activity: 'open aquarium, each m²', gramsPerHour: 40, range: [30, 50], source: TEXTBOOK },
];

/** Water of a daily habit, g. */
export interface MoistureHabit {
  readonly habit: string;
  readonly per: 'household' | 'person' | 'load' | 'kg of gas';
  readonly grams: number;
  readonly source: string;
}

/** Daily amounts; the roofing code's are for rooms without an extract. */
export const MOISTURE_HABITS: readonly MoistureHabit[] = [
  { habit: 'cooking, electric', per: 'household', grams: 2000, source: BS_5250 },
  {
    habit: 'cooking, gas',
    per: 'household',
    grams: 3000,
    source: `${BS_5250}; 3 L/day unvented in ${ROOFING_CODE}`,
  },
  { habit: 'washing oneself', per: 'person', grams: 200, source: BS_5250 },
  { habit: 'washing dishes', per: 'household', grams: 400, source: `${BS_5250}; 1 L/day in ${ROOFING_CODE}` },
  { habit: 'washing clothes', per: 'household', grams: 500, source: `${BS_5250}; ${ROOFING_CODE}` },
  { habit: 'drying clothes indoors', per: 'person', grams: 1500, source: BS_5250 },
  { habit: 'drying clothes indoors, unvented', per: 'load', grams: 5000, source: ROOFING_CODE },
  { habit: 'unflued gas heater, at most', per: 'kg of gas', grams: 1600, source: ROOFING_CODE },
];

/** dry: good ventilation, out all day; moist: ordinary; wet: washing dried indoors without an extract, gas heaters. */
export type WayOfLiving = 'dry' | 'moist' | 'wet';

/** kg/day for 1 to 6 people. */
const DAILY_TOTALS: Readonly<Record<WayOfLiving, readonly number[]>> = {
  dry: [3.5, 4, 4, 5, 6, 7],
  moist: [6, 8, 9, 10, 11, 12],
  wet: [9, 11, 12, 14, 15, 16],
};

/**
 * Water a household releases in a day.
 *
 * @param people in the household, whole [–]; 0…20, above 6 one kilogram more each; 0 releases nothing
 * @param living how they live
 * @returns [kg/day]
 * Source: BS 5250:2002, table of daily moisture generation; from memory, medium confidence; the 9 kg of one
 *   person living wet was read in a surveyors' note of 2020. Above 6 people: own extension of its last step.
 */
export function householdMoisture(people: number, living: WayOfLiving): number {
  requireRange('people', people, 0, 20, '');
  if (!Number.isInteger(people)) throw new RangeError(`people is ${people}; allowed whole numbers 0 to 20`);
  if (people === 0) return 0;
  const totals = DAILY_TOTALS[living];
  return people <= totals.length ? totals[people - 1]! : totals.at(-1)! + (people - totals.length);
}

/**
 * Water a dwelling is designed for by its bedrooms.
 *
 * @param bedrooms whole [–]; 1…10
 * @returns [kg/day]
 * Source: ASHRAE 160, residential design moisture generation; from memory, medium confidence.
 */
export function designMoisture(bedrooms: number): number {
  requireRange('bedrooms', bedrooms, 1, 10, '');
  if (!Number.isInteger(bedrooms))
    throw new RangeError(`bedrooms is ${bedrooms}; allowed whole numbers 1 to 10`);
  return [8, 12, 14, 15][bedrooms - 1] ?? 15 + (bedrooms - 4);
}

/** 1 store, 2 office or dwelling of normal use and airing, 3 dwelling of unknown use, 4 sports hall or kitchen, 5 laundry, pool, growing sunspace. */
export type HumidityClass = 1 | 2 | 3 | 4 | 5;

/** Upper limit of each class at 0 °C outdoors and below, Pa; class 5 has none, 1360 Pa is what the standard's figure ends at. */
const CLASS_EXCESS_PA: Readonly<Record<HumidityClass, number>> = { 1: 270, 2: 540, 3: 810, 4: 1080, 5: 1360 };

/**
 * How much more vapour pressure than outdoors a building of a class holds: full at 0 °C and below, none at 20 °C.
 *
 * @param humidityClass 1…5
 * @param tempOutC monthly mean outdoors [°C]; −60…60
 * @returns excess, upper limit of the class [Pa]
 * Source: ISO 13788:2012, internal humidity classes; from memory, medium confidence, class 5 low.
 */
export function vapourExcess(humidityClass: HumidityClass, tempOutC: number): number {
  requireRange('humidityClass', humidityClass, 1, 5, '');
  requireRange('tempOutC', tempOutC, -60, 60, '°C');
  return CLASS_EXCESS_PA[humidityClass] * Math.min(Math.max((20 - tempOutC) / 20, 0), 1);
}

/**
 * Vapour in a room in a steady state: v = v_out + G/Q.
 *
 * @param vapourOut absolute humidity outdoors [g/m³]; ≥ 0
 * @param release G [g/h]; ≥ 0
 * @param airflow Q of outdoor air [m³/h]; > 0
 * @returns absolute humidity indoors, before any of it condenses [g/m³]
 */
export function steadyVapour(vapourOut: number, release: number, airflow: number): number {
  requireRange('vapourOut', vapourOut, 0, 200, 'g/m³');
  requireRange('release', release, 0, 1e6, 'g/h');
  requireRange('airflow', airflow, 1e-6, 1e6, 'm³/h');
  return vapourOut + release / airflow;
}
