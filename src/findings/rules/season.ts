// Seasons of a site, for rules: which months are warm, which hold most of a year's trouble, when the sun is high.
// Weather or monthly counts in, twelve flags out.

import { monthlySums } from '../../outcomes/calendar.ts';
import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { highSunMonths, lowSunMonths } from '../../weather/seasons.ts';
import { HOURS, MONTH_START_HOUR } from '../../weather/typical-year.ts';

/** Cold hours a year that nobody minds: 1 %. House rule. */
export function calmHours(): number {
  return 0.01 * HOURS;
}

/** The three months with the warmest outdoor air. */
export function warmestMonths(climate: PreparedClimate): boolean[] {
  const sums = monthlySums(climate.year.dryBulbC).map(
    (sum, month) => sum / (MONTH_START_HOUR[month + 1]! - MONTH_START_HOUR[month]!),
  );
  const third = [...sums].sort((one, other) => other - one)[2]!;
  return sums.map((mean) => mean >= third);
}

/** A month between two chosen ones that holds this share of the least of them belongs to their run. House rule. */
const LITTLE_LESS = 0.6;

/**
 * The fewest months that hold at least two thirds of a year's hours, the fullest first, and single months between them
 * that hold little less; all false without hours.
 *
 * @param byMonth twelve counts
 */
export function monthsThatMatter(byMonth: readonly number[]): boolean[] {
  const total = byMonth.reduce((sum, count) => sum + count, 0);
  const chosen = byMonth.map(() => false);
  const order = byMonth.map((_, month) => month).sort((one, other) => byMonth[other]! - byMonth[one]!);
  let held = 0;
  for (const month of order) {
    if (held >= (2 / 3) * total) break;
    chosen[month] = true;
    held += byMonth[month]!;
  }
  const least = Math.min(...byMonth.filter((_, month) => chosen[month]));
  return chosen.map(
    (is, month) =>
      is ||
      (chosen[(month + 11) % 12]! && chosen[(month + 1) % 12]! && byMonth[month]! >= LITTLE_LESS * least),
  );
}

/** The three months around the solstice with the high sun (true) or the low sun. */
export function solsticeMonths(latitudeDeg: number, high: boolean): boolean[] {
  const months = high ? highSunMonths(latitudeDeg) : lowSunMonths(latitudeDeg);
  return Array.from({ length: 12 }, (_, month) => months.includes(month));
}

/** Sum over the hours of chosen months. */
export function sumOverMonths(hourly: ArrayLike<number>, chosen: readonly boolean[]): number {
  return monthlySums(hourly).reduce((sum, value, month) => sum + (chosen[month] ? value : 0), 0);
}
