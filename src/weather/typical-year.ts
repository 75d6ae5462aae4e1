// The typical year: 8760 hours of weather for one site, in the one internal form that every reader produces
// and everything downstream consumes.
//
// Hour convention. Row i (0…8759) is the hour from i to i+1 hours after 1 January 00:00 in local STANDARD time
// (utcOffsetH); there is no 29 February. Radiation columns are the mean over that hour, unless sunMinute says
// the file gives instants; air columns are the file's reading for the hour (at its end in TMY files).
// Months of a typical year come from different calendar years; monthYears keeps them, since the sun's
// position depends on the year by up to 0.17°.

import { HOUR_MS } from './moments.ts';
import type { MonthlyNormals } from './normals.ts';

/** Hours in a typical year. */
export const HOURS = 8760;

/** Row of the year so many hours after another, or before it where below zero; past either end it goes round. */
export function rowOfHour(firstRow: number, hours: number): number {
  return (((firstRow + hours) % HOURS) + HOURS) % HOURS;
}

/** First hour of each month, and 8760 as the thirteenth entry. */
export const MONTH_START_HOUR: readonly number[] = [
  0, 744, 1416, 2160, 2880, 3624, 4344, 5088, 5832, 6552, 7296, 8016, 8760,
];

/** How much hotter a year was made, and the heat wave put into it; height 0 for none. */
export interface Hotter {
  /** shift of the coldest month and of the warmest [K] */
  readonly winterK: number;
  readonly summerK: number;
  /** [d] */
  readonly waveDays: number;
  /** [K] */
  readonly waveK: number;
}

export interface Site {
  readonly name: string;
  /** [°] north positive, −90…90 */
  readonly latitudeDeg: number;
  /** [°] east positive, −180…180 */
  readonly longitudeDeg: number;
  /** [m] above sea level */
  readonly elevationM: number;
  /** local standard time minus UTC [h] */
  readonly utcOffsetH: number;
}

/** All columns have 8760 entries, without NaN. */
export interface TypicalYear {
  readonly site: Site;
  /** short stable id of a bundled climate, or a name made from the file; [a-z0-9-] */
  readonly id: string;
  /** dataset and station in a few words, e.g. "TMY3, station 725650" */
  readonly source: string;
  /** the credit line the dataset asks for */
  readonly credit: string;
  /** calendar year each month was taken from, January first */
  readonly monthYears: readonly number[];
  /**
   * Minute of the hour at which the radiation columns are valid: 'mean' for means over the hour (the sun is then
   * taken in the middle of the sunlit part of the hour), or an instant 0…60 [min after the hour's start].
   */
  readonly sunMinute: 'mean' | number;
  /** air dry bulb [°C] */
  readonly dryBulbC: Float64Array;
  /** dew point over water [°C], never above dry bulb */
  readonly dewPointC: Float64Array;
  /** station pressure [Pa] */
  readonly pressurePa: Float64Array;
  /** wind at 10 m [m/s] */
  readonly windSpeed: Float64Array;
  /** direction the wind comes from [° clockwise from north]; 0 also means calm */
  readonly windFromDeg: Float64Array;
  /** global horizontal irradiance [W/m²] */
  readonly globalHorizontal: Float64Array;
  /** beam (direct) normal irradiance [W/m²] */
  readonly beamNormal: Float64Array;
  /** diffuse horizontal irradiance [W/m²] */
  readonly diffuseHorizontal: Float64Array;
  /** opaque sky cover, fraction 0…1 */
  readonly skyCover: Float64Array;
  /** measured long-wave irradiance from the sky on the horizontal [W/m²]; null where the file has none */
  readonly skyLongwave: Float64Array | null;
  /** ground reflectance 0…1 by hour, snow included where the file has it; null where the file has none */
  readonly albedo: Float64Array | null;
  /** rain in the hour [mm]; null where the file has none */
  readonly rainMm: Float64Array | null;
  /** of real days: the moment at which each row starts [ms since 1970 UTC], rows in their place in the year; absent for a typical year */
  readonly startMs?: Float64Array;
  /** what was added to a typical year to make it hotter (hotter-year.ts); absent for the year as read */
  readonly hotter?: Hotter;
  /** the monthly normals it was made from, with its draw; absent for a year of measured or modelled hours */
  readonly madeFrom?: MonthlyNormals;
  /** what was filled, shifted or doubted on the way in, one plain sentence each */
  readonly notes: readonly string[];
}

/** Month 0…11 of an hour of the year. */
export function monthOfHour(hour: number): number {
  let month = 0;
  while (hour >= MONTH_START_HOUR[month + 1]!) month++;
  return month;
}

/**
 * UTC instant of a moment in an hour of the typical year, in the calendar year of that month.
 *
 * @param year the typical year, or its site and month years
 * @param hour 0…8759
 * @param minute minutes after the hour's start
 * @returns milliseconds since 1970-01-01T00:00Z
 */
export function instantOfHour(
  year: Pick<TypicalYear, 'site' | 'monthYears' | 'startMs'>,
  hour: number,
  minute: number,
): number {
  if (year.startMs !== undefined) return year.startMs[hour]! + minute * 60_000;
  const month = monthOfHour(hour);
  const intoMonth = hour - MONTH_START_HOUR[month]!;
  const monthStart = Date.UTC(year.monthYears[month]!, month, 1);
  return monthStart + (intoMonth - year.site.utcOffsetH) * HOUR_MS + minute * 60_000;
}
