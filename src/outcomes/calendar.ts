// Days and months of the typical year (365 days, no 29 February), and sums over them. Hourly or daily arrays
// in, twelve or 365 numbers out.

import { HOURS, MONTH_START_HOUR } from '../weather/typical-year.ts';

export const DAYS = 365;
export const MONTH_NAMES: readonly string[] = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** Where an hour stands in the year: month 1…12, day of the month 1…31, hour of the day 0…23 at its start. */
export interface HourDate {
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

/**
 * Calendar place of an hour.
 *
 * @param hour 0…8759, the hour from `hour` to `hour`+1 after 1 January 00:00
 */
export function dateOfHour(hour: number): HourDate {
  let month = 0;
  while (month < 11 && hour >= MONTH_START_HOUR[month + 1]!) month++;
  const into = hour - MONTH_START_HOUR[month]!;
  return { month: month + 1, day: Math.floor(into / 24) + 1, hour: into % 24 };
}

/** Means over days: 365 values in the unit of the hours. */
export function dailyMeans(hourly: Float64Array): Float64Array {
  const means = new Float64Array(DAYS);
  for (let hour = 0; hour < HOURS; hour++) means[Math.floor(hour / 24)]! += hourly[hour]! / 24;
  return means;
}

/** Sums over months of an hourly array: twelve values in the unit of the hours times hours. */
export function monthlySums(hourly: ArrayLike<number>): number[] {
  return MONTH_NAMES.map((_, month) => {
    let sum = 0;
    for (let hour = MONTH_START_HOUR[month]!; hour < MONTH_START_HOUR[month + 1]!; hour++) {
      sum += hourly[hour]!;
    }
    return sum;
  });
}

/** How many hours of each month satisfy a test. */
export function hoursByMonth(hourly: Float64Array, wanted: (value: number) => boolean): number[] {
  const flags = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) flags[hour] = wanted(hourly[hour]!) ? 1 : 0;
  return monthlySums(flags);
}

/** Index of the largest of a few numbers; the first of equals. */
export function indexOfLargest(values: ArrayLike<number>): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (values[i]! > values[best]!) best = i;
  return best;
}
