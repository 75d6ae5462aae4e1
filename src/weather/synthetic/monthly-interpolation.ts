// Twelve monthly values as a smooth curve over the days of the year, each month's mean kept.
import { MONTH_START_HOUR } from '../typical-year.ts';

/** Straight lines between mid-months, adjusted until each month's mean is the one given. */
export function dailyFromMonthly(monthly: readonly number[]): Float64Array {
  const knots = [...monthly];
  let days = new Float64Array(365);
  for (let pass = 0; pass < 12; pass++) {
    days = Float64Array.from({ length: 365 }, (_, day) => betweenMonths(knots, day + 0.5));
    eachMonth((month, from, to) => {
      knots[month]! += monthly[month]! - mean(days, from, to);
    });
  }
  return days;
}

function betweenMonths(knots: readonly number[], day: number): number {
  const middles = MONTH_START_HOUR.slice(0, 12).map((start, m) => (start + MONTH_START_HOUR[m + 1]!) / 48);
  const next = middles.findIndex((middle) => middle > day);
  const [a, b] = next <= 0 ? [11, 0] : [next - 1, next];
  const from = middles[a]! - (next === 0 ? 365 : 0);
  const to = middles[b]! + (next < 0 ? 365 : 0);
  return knots[a]! + ((knots[b]! - knots[a]!) * (day - from)) / (to - from);
}

/** Each month with its first day and the day after its last. */
export function eachMonth(use: (month: number, from: number, to: number) => void): void {
  for (let month = 0; month < 12; month++)
    use(month, MONTH_START_HOUR[month]! / 24, MONTH_START_HOUR[month + 1]! / 24);
}

function mean(column: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let i = from; i < to; i++) total += column[i]!;
  return total / (to - from);
}
