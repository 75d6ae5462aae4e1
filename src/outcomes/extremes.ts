// Means, extremes and the week around an hour worth looking at. Hourly arrays in, plain numbers out.

import { HOURS } from '../weather/typical-year.ts';

export interface Extremes {
  readonly mean: number;
  readonly max: number;
  readonly min: number;
  /** first hour of the year with the largest and smallest value, 0…8759 */
  readonly maxHour: number;
  readonly minHour: number;
}

/**
 * Mean, largest and smallest value of an hourly array, with their hours.
 *
 * @param hourly values in any unit, at least one
 */
export function extremesOf(hourly: Float64Array): Extremes {
  let sum = 0;
  let maxHour = 0;
  let minHour = 0;
  for (let hour = 0; hour < hourly.length; hour++) {
    const value = hourly[hour]!;
    sum += value;
    if (value > hourly[maxHour]!) maxHour = hour;
    if (value < hourly[minHour]!) minHour = hour;
  }
  return { mean: sum / hourly.length, max: hourly[maxHour]!, min: hourly[minHour]!, maxHour, minHour };
}

const WEEK_HOURS = 168;

/**
 * The week around an hour.
 *
 * @param hour of the year, 0…8759
 * @returns first hour of seven whole days with that hour in their middle day, kept inside the year
 */
export function weekAround(hour: number): number {
  const day = Math.floor(hour / 24) - 3;
  return Math.min(HOURS - WEEK_HOURS, Math.max(0, day * 24));
}
