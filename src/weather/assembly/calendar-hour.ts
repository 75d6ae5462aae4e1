// Month, day and hour as weather files print them into the hour of the typical year. Files that label hours
// 1…24 are never handed to a date parser: 24:00 belongs to the day it is written on.
import { MONTH_START_HOUR } from '../typical-year.ts';

/** Days in each month of the typical year, which has no leap day. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Hour of the year that starts at a month, day and hour.
 *
 * @param month 1…12
 * @param day 1…31
 * @param hour 0…23
 * @returns 0…8759, 'leap day' on 29 February, or null when there is no such hour
 */
export function hourOfYear(month: number, day: number, hour: number): number | 'leap day' | null {
  const whole = Number.isInteger(month) && Number.isInteger(day) && Number.isInteger(hour);
  if (!whole || month < 1 || month > 12 || day < 1 || hour < 0 || hour > 23) return null;
  if (month === 2 && day === 29) return 'leap day';
  if (day > MONTH_DAYS[month - 1]!) return null;
  return MONTH_START_HOUR[month - 1]! + (day - 1) * 24 + hour;
}
