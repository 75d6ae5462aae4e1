// The hottest and the coldest week around an hour, as columns for the chart. In: the year, the weather, the middle
// hour. Out: seven whole days, each series in the units shown, and a sentence that says what to notice.

import type { Design } from '../../design/design.ts';
import { roomPlanOf } from '../../design/room-plan.ts';
import type { Year, ZoneYear } from '../../network/year.ts';
import { hotLimits } from '../../outcomes/hot-limits.ts';
import { ALL_HOURS, livedHoursOf } from '../../outcomes/lived-hours.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { isUs, toShown, type UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';

const WEEK_HOURS = 168;

export interface WeekColumns {
  /** first hour of the year shown */
  readonly from: number;
  readonly hours: Float64Array;
  readonly outdoor: Float64Array;
  readonly sun: Float64Array;
  readonly house: Float64Array;
  readonly sunspace: Float64Array | null;
  /** where too hot begins in the rooms; Infinity where nothing is judged */
  readonly hot: Float64Array;
}

/** Columns of one week. */
export function weekColumns(
  year: Year,
  climate: TypicalYear,
  from: number,
  system: UnitSystem,
  design: Design,
  kind: 'hot' | 'cold',
): WeekColumns {
  const t = (column: Float64Array) => shownSlice(column, from, (v) => toShown(v, 'temperature', system));
  const house = roomOfWeek(year, from, kind);
  const placed = roomPlanOf(design)?.rooms.find(({ id }) => id === house.id);
  const lived = placed ? livedHoursOf(placed.room.use) : ALL_HOURS;
  const sunspace = zoneOf(year, 'sunspace');
  return {
    from,
    hours: Float64Array.from({ length: WEEK_HOURS }, (_, i) => from + i),
    outdoor: t(climate.dryBulbC),
    sun: shownSlice(climate.globalHorizontal, from, (v) => toShown(v, 'irradiance', system)),
    house: t(house.operativeC),
    sunspace: sunspace ? t(sunspace.operativeC) : null,
    hot: t(hotLimits(design, house, climate, lived).limitC),
  };
}

/** The rooms; of a divided house the one that is hottest, or coldest, in the week. */
function roomOfWeek({ zones, rooms }: Year, from: number, kind: 'hot' | 'cold'): ZoneYear {
  if (rooms === undefined) return zones.find(({ id }) => id === 'house')!;
  const height = ({ operativeC }: ZoneYear) => {
    const week = operativeC.subarray(from, from + WEEK_HOURS);
    return kind === 'hot' ? max(week) : -min(week);
  };
  return rooms.reduce((most, room) => (height(room) > height(most) ? room : most));
}

export function zoneOf(year: Year, id: string): ZoneYear | undefined {
  return year.zones.find((zone) => zone.id === id);
}

/** What a week shows: how far inside stays from outside, and the daily swing. */
export function weekSentence(
  year: Year,
  climate: TypicalYear,
  from: number,
  kind: 'hot' | 'cold',
  system: UnitSystem,
  design: Design,
): string {
  const outdoor = climate.dryBulbC.subarray(from, from + WEEK_HOURS);
  const shown = roomOfWeek(year, from, kind);
  const name = roomPlanOf(design)?.rooms.find(({ id }) => id === shown.id)?.room.name;
  const house = shown.operativeC.subarray(from, from + WEEK_HOURS);
  const t = (value: number) => quantityText(value, 'temperature', system, 0);
  const rooms = `${name ? `"${name}" goes` : 'the rooms go'} from ${t(min(house))} to ${t(max(house))}`;
  const outside = `the air outdoors from ${t(min(outdoor))} to ${t(max(outdoor))}`;
  const sunspace = zoneOf(year, 'sunspace')?.operativeC.subarray(from, from + WEEK_HOURS);
  const glass = sunspace ? `, the sunspace from ${t(min(sunspace))} to ${t(max(sunspace))}` : '';
  const swing = dailySwing(house);
  const steady = `By day and night ${name ? 'it swings' : 'the rooms swing'} by ${degrees(swing, system)}${swing < 4 ? ', a steady house' : swing < 8 ? '' : ', far too much for the mass there is'}.`;
  return `In the ${kind === 'hot' ? 'hottest' : 'coldest'} week ${rooms}${glass}, ${outside}. ${steady}`;
}

/** A difference as people say it: in degrees, not in kelvin. */
function degrees(kelvin: number, system: UnitSystem): string {
  return `${toShown(kelvin, 'temperatureStep', system).toFixed(1)}\u202f${isUs(system) ? '°F' : '°C'}`;
}

function dailySwing(week: Float64Array): number {
  let sum = 0;
  for (let day = 0; day < 7; day++) {
    const hours = week.subarray(day * 24, day * 24 + 24);
    sum += max(hours) - min(hours);
  }
  return sum / 7;
}

function shownSlice(column: Float64Array, from: number, shown: (value: number) => number): Float64Array {
  return column.slice(from, from + WEEK_HOURS).map(shown);
}

const min = (values: Float64Array): number =>
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
const max = (values: Float64Array): number =>
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
