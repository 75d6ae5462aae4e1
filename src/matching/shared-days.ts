// The days that a weather table and loggers' files have in common: whole days of local standard time, and columns cut to
// them.

import { DAY_MS, dateOfMoment, HOUR_MS } from '../weather/moments.ts';
import type { HourGrid } from '../weather/real/hourly-means.ts';

/** Fewer whole days tell nothing. */
export const LEAST_DAYS = 5;

export interface SharedDays extends HourGrid {
  /** whole days, 0 for none */
  readonly days: number;
}

/**
 * Days that all of them have a part in; of loggers the first reading and the last of any counts.
 *
 * @param within moments to stay between [ms since 1970 UTC]
 */
export function sharedDays(
  weather: HourGrid,
  utcOffsetH: number,
  loggers: readonly HourGrid[],
  { fromMs = -Infinity, untilMs = Infinity }: { readonly fromMs?: number; readonly untilMs?: number } = {},
): SharedDays {
  const from = Math.max(weather.startMs, fromMs, Math.min(...loggers.map(({ startMs }) => startMs)));
  const until = Math.min(endOf(weather), untilMs, Math.max(...loggers.map(endOf)));
  const offset = utcOffsetH * HOUR_MS;
  const startMs = Math.ceil((from + offset) / DAY_MS) * DAY_MS - offset;
  const endMs = Math.floor((until + offset) / DAY_MS) * DAY_MS - offset;
  const days = Math.max(0, Math.floor((endMs - startMs) / DAY_MS));
  return { startMs, hours: 24 * days, days };
}

/** "2026-01-12 00:00 to 2026-01-26 00:00". */
export function datesOf(grid: HourGrid, utcOffsetH: number): string {
  return `${dateOfMoment(grid.startMs, utcOffsetH)} to ${dateOfMoment(endOf(grid), utcOffsetH)}`;
}

/** A column cut to these days; NaN where it has none. */
export function columnOver(values: Float64Array, fromMs: number, { startMs, hours }: HourGrid): Float64Array {
  const shift = Math.round((startMs - fromMs) / HOUR_MS);
  return Float64Array.from({ length: hours }, (_, hour) => values[hour + shift] ?? Number.NaN);
}

function endOf({ startMs, hours }: HourGrid): number {
  return startMs + hours * HOUR_MS;
}
