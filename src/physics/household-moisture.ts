// Water that living in a house puts into its air. In: who lives there and how, or single activities. Out: grams an hour
// and kilograms a day, each with its source. Sources: BS 5250:2002
// (from memory, medium confidence) and two handbooks that were read: a European solar-housing
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
