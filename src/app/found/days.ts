// Days of a record as a person says them, local standard time.

import { DAY_MS, HOUR_MS } from '../../weather/moments.ts';
import type { HourGrid } from '../../weather/real/hourly-means.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';

const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

export interface Day {
  /** moment it starts [ms since 1970 UTC] */
  readonly startMs: number;
  readonly weekday: string;
  /** "15 Jan" */
  readonly date: string;
}

/** Days that begin in a record. */
export function daysIn({ startMs, hours }: HourGrid, utcOffsetH: number): readonly Day[] {
  return Array.from({ length: Math.floor(hours / 24) }, (_, i) => dayAt(startMs + i * DAY_MS, utcOffsetH));
}

function dayAt(startMs: number, utcOffsetH: number): Day {
  const local = new Date(startMs + utcOffsetH * HOUR_MS);
  return {
    startMs,
    weekday: WEEKDAYS[local.getUTCDay()]!,
    date: `${local.getUTCDate()} ${MONTH_SHORT[local.getUTCMonth()]}`,
  };
}

/** "15 Jan to 29 Jan 2021 (14 days)". */
export function describeSpan({ startMs, hours }: HourGrid, utcOffsetH: number): string {
  const end = startMs + (hours - 1) * HOUR_MS;
  const year = (ms: number) => new Date(ms + utcOffsetH * HOUR_MS).getUTCFullYear();
  const [from, until] = [dayAt(startMs, utcOffsetH).date, dayAt(end, utcOffsetH).date];
  const days = Math.round((10 * hours) / 24) / 10;
  return `${from}${year(startMs) === year(end) ? '' : ` ${year(startMs)}`} to ${until} ${year(end)} (${days} days)`;
}
