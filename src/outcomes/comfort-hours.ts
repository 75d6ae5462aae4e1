// Hours outside fixed limits: too hot, too cold, too humid, and the daily swing. Hourly arrays of one zone in,
// hours a year out. "Above" and "below" are strict: an hour at the limit counts as comfortable.

import { DAYS } from './calendar.ts';

export interface Overheating {
  /** hours above the limit [h] */
  readonly hours: number;
  /** sum of the excess over those hours [K·h] */
  readonly degreeHours: number;
}

/**
 * Hours and degree-hours above a limit.
 *
 * @param operativeC operative temperature by hour [°C]
 * @param limitC limit [°C]
 */
export function overheating(operativeC: Float64Array, limitC: number): Overheating {
  let hours = 0;
  let degreeHours = 0;
  for (const value of operativeC) {
    if (value > limitC) {
      hours++;
      degreeHours += value - limitC;
    }
  }
  return { hours, degreeHours };
}

/** Hours strictly below a limit. */
export function hoursBelow(hourly: Float64Array, limit: number): number {
  let hours = 0;
  for (const value of hourly) if (value < limit) hours++;
  return hours;
}

/** Hours strictly above a limit. */
export function hoursAbove(hourly: Float64Array, limit: number): number {
  let hours = 0;
  for (const value of hourly) if (value > limit) hours++;
  return hours;
}

/**
 * Mean over the days of the year of the day's highest less its lowest hour.
 *
 * @param operativeC operative temperature by hour [°C], 8760 hours
 * @returns swing, peak to peak [K]
 */
export function meanDailySwing(operativeC: Float64Array): number {
  let sum = 0;
  for (let day = 0; day < DAYS; day++) {
    let max = Number.NEGATIVE_INFINITY;
    let min = Number.POSITIVE_INFINITY;
    for (let hour = 24 * day; hour < 24 * day + 24; hour++) {
      max = Math.max(max, operativeC[hour]!);
      min = Math.min(min, operativeC[hour]!);
    }
    sum += max - min;
  }
  return sum / DAYS;
}
