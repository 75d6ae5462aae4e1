// Means, extremes and the weeks worth looking at. Hourly arrays in, plain numbers out.

import { DAYS, dailyMeans } from './calendar.ts';

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

export interface Weeks {
  /** first hour of the seven whole days with the highest and lowest mean, 0…8592 */
  readonly hottest: number;
  readonly coldest: number;
}

/**
 * The hottest and coldest seven days on end, starting at a midnight and not reaching across new year.
 *
 * @param hourly a temperature [°C], 8760 hours
 * @returns first hours; of equal weeks the earlier
 */
export function extremeWeeks(hourly: Float64Array): Weeks {
  const days = dailyMeans(hourly);
  let sum = 0;
  for (let day = 0; day < 7; day++) sum += days[day]!;
  let hottest = 0;
  let coldest = 0;
  let hottestSum = sum;
  let coldestSum = sum;
  for (let first = 1; first + 7 <= DAYS; first++) {
    sum += days[first + 6]! - days[first - 1]!;
    if (sum > hottestSum + 1e-9) [hottest, hottestSum] = [first, sum];
    if (sum < coldestSum - 1e-9) [coldest, coldestSum] = [first, sum];
  }
  return { hottest: hottest * 24, coldest: coldest * 24 };
}
