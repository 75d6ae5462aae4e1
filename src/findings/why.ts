// Why a headline figure is what it is: the hours behind it (how many, which months, which times of day) and the heat
// and water that moved in them. A context, a figure's name and a zone in, a trace out. The change that would move the
// figure most is not guessed here: questions/levers.ts runs the changes.

import { roomPlanOf } from '../design/room-plan.ts';
import type { ZoneYear } from '../network/year.ts';
import { hoursByMonth } from '../outcomes/calendar.ts';
import type { Respect } from '../outcomes/judged-house.ts';
import type { ZoneOutcome } from '../outcomes/outcome.ts';
import { AIR_HEAT_CAPACITY } from '../physics/constants.ts';
import { saturationPressureHeld } from '../physics/moist-air.ts';
import { MOULD_SURFACE_HUMIDITY } from '../physics/surface-humidity.ts';
import { HOURS, MONTH_START_HOUR } from '../weather/typical-year.ts';
import type { Context } from './context.ts';
import { heaterWords } from './fuel-words.ts';
import { houseLimits, sunspaceLimits } from './hot-hours.ts';
import { monthsThatMatter } from './rules/season.ts';
import { during, hours, listed, percent, plain } from './wording.ts';

export const TRACED = [
  'overheatedHours',
  'coldestHour',
  'humidHours',
  'mouldIndex',
  'heatingKWh',
  'ventMoves',
] as const;
export type Traced = (typeof TRACED)[number];
export type TracedZone = 'house' | 'sunspace';

export interface HeatFlow {
  readonly cause: string;
  /** mean over the hours behind the figure; into the zone is positive [W] */
  readonly watts: number;
}

export interface Trace {
  readonly figure: Traced;
  readonly zone: TracedZone;
  /** hours of the year behind the figure, in their order */
  readonly hours: readonly number[];
  /** twelve counts, and twenty-four by hour of day */
  readonly byMonth: readonly number[];
  readonly byHourOfDay: readonly number[];
  /** largest first, by size; the last named is what is left to close the sum */
  readonly flows: readonly HeatFlow[];
  /** water released in the months of those hours, largest first [kg/day]; for damp and mould, else none */
  readonly water: readonly { readonly cause: string; readonly kgPerDay: number }[];
  readonly text: string;
}

/** Hours so near the coldest belong to it [K]. House rule. */
const NEAR_COLDEST_K = 1;
/** An opening counts as open from here. */
const LEAST_OPEN = 0.02;
/** Flows smaller than this are not worth a word [W]. */
const LEAST_WATTS = 1;
const LEAST_KG_PER_DAY = 0.1;
const PEOPLE = 'people and appliances';
const UNIT_CAUSES = ['heat recovered', 'fans and frost heater'];
const REST = 'all else';

const MEANING: Readonly<Record<Traced, string>> = {
  overheatedHours: 'above the limit',
  coldestHour: 'within a degree of the coldest',
  humidHours: 'above the limit of humidity',
  mouldIndex: 'with damp enough for mould in the coldest corner',
  heatingKWh: 'in which heat is added',
  ventMoves: 'with a vent open',
};

/**
 * Trace a headline figure.
 *
 * @param context one run
 * @param figure its name
 * @param zone whose figure it is; one there is
 * @returns hours, flows and words; no hours and a plain sentence where the figure is zero
 */
export function whyOf(context: Context, figure: Traced, zone: TracedZone = 'house'): Trace {
  const isBehind = testOf(context, figure, zone);
  const behind: number[] = [];
  const byHourOfDay = Array<number>(24).fill(0);
  const flags = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    if (!isBehind(hour)) continue;
    behind.push(hour);
    flags[hour] = 1;
    byHourOfDay[hour % 24]!++;
  }
  const byMonth = hoursByMonth(flags, (flag) => flag > 0);
  const flows = behind.length === 0 ? [] : flowsIn(context, zone, figure, behind, byMonth);
  const isWater = figure === 'humidHours' || figure === 'mouldIndex';
  const water = isWater && behind.length > 0 ? waterIn(context, zone, figure, byMonth) : [];
  const trace = { figure, zone, hours: behind, byMonth, byHourOfDay, flows, water };
  return { ...trace, text: tell(trace, context) };
}

/** In what respect the room behind a figure is the worst; heat and vents are the house's. */
const RESPECT_OF: Readonly<Partial<Record<Traced, Respect>>> = {
  overheatedHours: 'hot',
  coldestHour: 'cold',
  humidHours: 'damp',
  mouldIndex: 'mould',
};

/** The hours behind a figure: of a divided house those of the room it is of. */
function zoneYearOf(context: Context, zone: TracedZone, figure: Traced): ZoneYear {
  const respect = RESPECT_OF[figure];
  const house = respect === undefined ? context.houseYear : context.worst(respect).year;
  const found = zone === 'house' ? house : context.sunspaceYear;
  if (found === null) throw new RangeError("zone is 'sunspace'; allowed: one the design has");
  return found;
}

function testOf(context: Context, figure: Traced, zone: TracedZone): (hour: number) => boolean {
  const year = zoneYearOf(context, zone, figure);
  const outcome: ZoneOutcome = zone === 'house' ? context.house : context.sunspace!;
  switch (figure) {
    case 'overheatedHours': {
      const { limitC } = (zone === 'house' ? houseLimits : sunspaceLimits)(context);
      return (hour) => year.operativeC[hour]! > limitC[hour]!;
    }
    case 'coldestHour':
      return (hour) => year.operativeC[hour]! <= outcome.minOperativeC + NEAR_COLDEST_K;
    case 'humidHours':
      return (hour) => year.relativeHumidity[hour]! > outcome.humidLimit;
    case 'mouldIndex':
      return (hour) => {
        const vapour = year.relativeHumidity[hour]! * saturationPressureHeld(year.airC[hour]!);
        return vapour > MOULD_SURFACE_HUMIDITY * saturationPressureHeld(year.cornerC[hour]!);
      };
    case 'heatingKWh':
      return (hour) => year.heatingW[hour]! > 0;
    case 'ventMoves': {
      const vents = context.year.openings.filter(({ kind }) => kind === 'vent');
      return (hour) => vents.some(({ open }) => open[hour]! > LEAST_OPEN);
    }
  }
}

/**
 * Mean flows in the hours: sun, heater and outdoor air by the hour; people and what a ventilation unit gives back by their
 * months; and what closes the sum, since air alone holds next to no heat.
 */
function flowsIn(
  context: Context,
  zone: TracedZone,
  figure: Traced,
  behind: readonly number[],
  byMonth: readonly number[],
): HeatFlow[] {
  const { climate, geometry, year } = context;
  const zoneYear = zoneYearOf(context, zone, figure);
  const placed = roomPlanOf(context.design)?.rooms.find(({ id }) => id === zoneYear.id);
  const volumeM3 =
    placed?.volumeM3 ?? (zone === 'house' ? geometry.houseVolumeM3 : geometry.sunspaceVolumeM3);
  let [sun, heater, air] = [0, 0, 0];
  for (const hour of behind) {
    sun += zoneYear.solarW[hour]!;
    heater += zoneYear.heatingW[hour]!;
    const perK = (zoneYear.ventAch[hour]! * volumeM3 * AIR_HEAT_CAPACITY) / 3600;
    air += perK * (climate.year.dryBulbC[hour]! - zoneYear.airC[hour]!);
  }
  const byMonths = (causes: readonly string[]) =>
    year.heat
      .concat(year.roomHeat ?? [])
      .filter((row) => row.zone === zoneYear.id && causes.includes(row.cause))
      .reduce((sum, { monthJ }) => sum + meanByMonth(monthJ, byMonth, 3600), 0);
  const known = [
    { cause: 'the sun', watts: sun / behind.length },
    { cause: `the ${heaterWords(context.design)}`, watts: heater / behind.length },
    { cause: 'outdoor air', watts: air / behind.length },
    { cause: 'the ventilation unit', watts: byMonths(UNIT_CAUSES) },
    { cause: PEOPLE, watts: byMonths([PEOPLE]) },
  ];
  const rest = { cause: REST, watts: -known.reduce((sum, { watts }) => sum + watts, 0) };
  return [...known.sort((one, other) => Math.abs(other.watts) - Math.abs(one.watts)), rest].filter(
    ({ watts }) => Math.abs(watts) >= LEAST_WATTS,
  );
}

/** An open sunspace and the rooms share their air, so they share their water. */
function waterIn(
  context: Context,
  zone: TracedZone,
  figure: Traced,
  byMonth: readonly number[],
): Trace['water'] {
  const own = [zoneYearOf(context, zone, figure)];
  const zones = context.design.sunspace.join === 'open' ? context.year.zones : own;
  const perDay = new Map<string, number>();
  for (const { cause, monthKg } of zones.flatMap(({ moistureByCause }) => moistureByCause))
    perDay.set(cause, (perDay.get(cause) ?? 0) + meanByMonth(monthKg, byMonth, 1 / 24));
  return [...perDay]
    .map(([cause, kgPerDay]) => ({ cause, kgPerDay }))
    .filter(({ kgPerDay }) => kgPerDay >= LEAST_KG_PER_DAY)
    .sort((one, other) => other.kgPerDay - one.kgPerDay);
}

/** Mean rate of monthly sums, each month weighed by its hours behind the figure; per hour over `per`. */
function meanByMonth(sums: readonly number[], byMonth: readonly number[], per: number): number {
  const total = byMonth.reduce((all, count) => all + count, 0);
  return byMonth.reduce((all, count, month) => {
    const inMonth = MONTH_START_HOUR[month + 1]! - MONTH_START_HOUR[month]!;
    return all + (count / total) * (sums[month]! / (inMonth * per));
  }, 0);
}

function tell(trace: Omit<Trace, 'text'>, { words, year, sunspace }: Context): string {
  const { figure, zone, hours: behind, byMonth, byHourOfDay, flows, water } = trace;
  if (behind.length === 0) return 'No hour of the year stands behind this figure.';
  const matter = during(monthsThatMatter(byMonth));
  const season = matter === 'all year' ? '' : `, mostly ${matter}`;
  const when = `Behind it ${behind.length === 1 ? 'stands' : 'stand'} ${hours(behind.length)} ${MEANING[figure]}${season}, ${partOfDay(byHourOfDay)}.`;
  const said = flows
    .filter(({ cause }) => cause !== REST)
    .map(({ cause, watts }) => {
      const verb = cause === PEOPLE ? ['bring', 'take'] : ['brings', 'takes'];
      return `${cause} ${watts > 0 ? verb[0] : verb[1]} ${wattsInWords(watts)}`;
    });
  const rest = flows.find(({ cause }) => cause === REST)?.watts ?? 0;
  const parts = ['the mass', 'the glass', 'the walls', 'the earth'];
  if (zone === 'sunspace') parts.push('the rooms');
  else if (sunspace !== null) parts.push('the sunspace');
  const restText =
    rest === 0
      ? ''
      : ` The rest, ${wattsInWords(rest)}, ${rest > 0 ? 'comes from' : 'goes into'} ${listed(parts)}${zone === 'sunspace' && rest < 0 ? ', or turns water into vapour' : ''}.`;
  const flow = said.length === 0 ? '' : ` On average in those hours ${listed(said)}.${restText}`;
  const total = water.reduce((sum, { kgPerDay }) => sum + kgPerDay, 0);
  const [first] = water;
  const wet =
    first === undefined
      ? ''
      : ` In those months ${words.water(total)} of water a day go into this air, ${percent(first.kgPerDay / total)} of it from ${first.cause}.`;
  const moved =
    figure === 'ventMoves'
      ? ` In all, vents and doors are moved ${Math.round(year.openings.filter(({ kind }) => kind !== 'cracks').reduce((sum, { moves }) => sum + moves, 0))} times.`
      : '';
  return `${when}${moved}${wet}${flow}`;
}

/** Power without its sign: whole tens of watts, from a kilowatt on kilowatts. */
function wattsInWords(watts: number): string {
  const size = Math.abs(watts);
  if (size >= 995) return `${plain(size / 1000, 1)} kW`;
  return size >= 10 ? `${10 * Math.round(size / 10)} W` : `${Math.round(size)} W`;
}

/** The part of the day with the most hours, in words; "at all hours" where none stands out. */
function partOfDay(byHourOfDay: readonly number[]): string {
  const all = byHourOfDay.reduce((sum, count) => sum + count, 0) / 24;
  const parts = [
    { name: 'at night', from: 22, to: 30 },
    { name: 'in the morning', from: 6, to: 12 },
    { name: 'in the afternoon', from: 12, to: 18 },
    { name: 'in the evening', from: 18, to: 22 },
  ].map(({ name, from, to }) => {
    let count = 0;
    for (let hour = from; hour < to; hour++) count += byHourOfDay[hour % 24]!;
    return { name, perHour: count / (to - from) };
  });
  const most = parts.reduce((best, part) => (part.perHour > best.perHour ? part : best));
  return most.perHour < 1.25 * all ? 'at all hours of the day' : most.name;
}
