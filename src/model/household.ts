// The people of a house: when they are in, the heat they and their appliances give off, the water they put into the
// air and by which cause. A design in; schedules in W and g/h out. Daily water is BS 5250's total for that many
// people living so, split by cause and hour; the split and the hours are common practice, no source.

import type { Design } from '../design/design.ts';
import { householdMoisture, MOISTURE_ACTIVITIES } from '../physics/household-moisture.ts';
import type { Gain, MoistureSource, Schedule } from './model.ts';
import { always, byHour, withEachHour } from './schedule.ts';

const WAKES = 7;
const SLEEPS = 22;
const LEAVES = 8;
const RETURNS = 17;
/** Sensible heat of a seated and of a sleeping adult [W]: handbook values, from memory, medium confidence. */
const AWAKE_W = 70;
const ASLEEP_W = 50;
const PEOPLE_RADIANT = 0.6;
const APPLIANCE_RADIANT = 0.4;
/** People's own vapour is at most this share of the day's total; the table's totals are small for large households. */
const MOST_OWN_SHARE = 0.7;
/** Largest household of the table; each further person adds its last step [kg/day]. */
const TABLE_PEOPLE = 20;
const KG_A_FURTHER_PERSON = 1;
/** Appliances by hour, relative: low at night, a rise for breakfast and a peak in the evening. */
const APPLIANCE_HOURS = [4, 4, 4, 4, 4, 5, 8, 11, 10, 9, 9, 10, 12, 10, 9, 9, 10, 13, 17, 18, 18, 16, 11, 6];
const COOKING_HOURS = [7, 12, 18];
const WASHING_HOURS = [7, 8, 19, 21];
const WEEK_SHARES = { workday: 5 / 7, weekend: 2 / 7 };

/** Hours of the day in which somebody cooks or washes. */
export const WET_HOURS: readonly number[] = [...COOKING_HOURS, ...WASHING_HOURS];

/** Nobody is there on Saturdays and Sundays: no fire is lit, no window moved, and a thermostat is left at its night. */
export function isAwayAtWeekends({ people }: Design): boolean {
  return people.awayWeekends === true;
}

/** Share of the household at home, by hour: all, or none from 8 to 17 on workdays; weekends away are left out. */
function presence(design: Design): Schedule {
  const away = (hour: number) => design.people.awayWorkdays && hour >= LEAVES && hour < RETURNS;
  return { ...byHour((hour) => (away(hour) ? 0 : 1)), weekend: always(1).workday };
}

/** People at home by hour; null for an empty house. */
export function peopleAtHome(design: Design): Schedule | null {
  const { count } = design.people;
  return count > 0
    ? lived(
        design,
        byPresence(design, () => count),
      )
    : null;
}

/** Heat of people, and of lights and appliances at the design's average [W]. */
export function gainsOf(design: Design): Gain[] {
  const { count, appliancesW } = design.people;
  const gains: Gain[] = [];
  if (count > 0) {
    gains.push({
      id: 'people',
      power: lived(
        design,
        byPresence(design, (hour) => count * (isAwake(hour) ? AWAKE_W : ASLEEP_W)),
      ),
      radiantShare: PEOPLE_RADIANT,
    });
  }
  if (appliancesW > 0) {
    const mean = APPLIANCE_HOURS.reduce((sum, value) => sum + value, 0) / 24;
    const standing = (appliancesW * Math.min(...APPLIANCE_HOURS)) / mean;
    gains.push({
      id: 'lights and appliances',
      power: lived(
        design,
        { workday: APPLIANCE_HOURS.map((value) => (appliancesW * value) / mean) },
        standing,
      ),
      radiantShare: APPLIANCE_RADIANT,
    });
  }
  return gains;
}

/** Water by cause [g/h]; over a week the causes together make the table's daily total. */
export function moistureOf(design: Design): MoistureSource[] {
  const { count, living } = design.people;
  if (count === 0) return [];
  const totalG = 1000 * dailyKg(design);
  const asIs = byPresence(design, (hour) => count * rateOf(isAwake(hour) ? 'awake' : 'asleep'));
  const own = weekMean(asIs);
  const scale = Math.min(1, (MOST_OWN_SHARE * totalG) / own);
  const people = withEachHour(asIs, (value) => value * scale);
  const rest = totalG - own * scale;
  // Grams a day of BS 5250's habits, as weights: electric cooking; oneself, dishes and clothes; drying indoors.
  const weights = {
    cooking: 2000,
    washing: 200 * count + 400 + 500,
    drying: living === 'dry' ? 0 : 1500 * count,
  };
  const whole = weights.cooking + weights.washing + weights.drying;
  const sources: MoistureSource[] = [
    { cause: 'people', rate: people },
    { cause: 'cooking', rate: atHours(COOKING_HOURS, (rest * weights.cooking) / whole) },
    { cause: 'washing', rate: atHours(WASHING_HOURS, (rest * weights.washing) / whole) },
  ];
  if (weights.drying > 0) {
    const allDay = Array.from({ length: 24 }, (_, hour) => hour);
    sources.push({ cause: 'drying clothes', rate: atHours(allDay, (rest * weights.drying) / whole) });
  }
  return sources.map(({ cause, rate }) => ({ cause, rate: lived(design, rate) }));
}

/** The table at the household's size; between whole numbers (a guest half the week) on the straight line. */
function dailyKg(design: Design): number {
  const { count, living } = design.people;
  const tabled = Math.min(count, TABLE_PEOPLE);
  const below = Math.floor(tabled);
  const above = Math.ceil(tabled);
  const [less, more] = [householdMoisture(below, living), householdMoisture(above, living)];
  return less + (tabled - below) * (more - less) + KG_A_FURTHER_PERSON * (count - tabled);
}

function rateOf(activity: 'awake' | 'asleep'): number {
  return MOISTURE_ACTIVITIES.find(({ id }) => id === activity)!.gramsPerHour;
}

/** Whether people are up at this hour of the day. */
export function isAwake(hour: number): boolean {
  return hour >= WAKES && hour < SLEEPS;
}

function byPresence(design: Design, value: (hour: number) => number): Schedule {
  return withEachHour(presence(design), (share, hour) => share * value(hour));
}

/** The same in a week whose weekends nobody is there: what runs on by itself. */
function lived(design: Design, schedule: Schedule, standing = 0): Schedule {
  return isAwayAtWeekends(design) ? { ...schedule, weekend: always(standing).workday } : schedule;
}

/** Mean amount a day over a week of hourly rates. */
function weekMean({ workday, weekend = workday }: Schedule): number {
  const day = (hours: readonly number[]) => hours.reduce((sum, value) => sum + value, 0);
  return WEEK_SHARES.workday * day(workday) + WEEK_SHARES.weekend * day(weekend);
}

/** A daily amount spread over some hours. */
function atHours(hours: readonly number[], amount: number): Schedule {
  return byHour((hour) => (hours.includes(hour) ? amount / hours.length : 0));
}
