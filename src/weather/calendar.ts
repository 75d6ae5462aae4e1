// The calendar of a climate's hours: which month and which kind of day each row is, and its place in a table by month,
// kind of day and hour. A typical year begins on a Monday, so that every run of one design has the same weekends; rows
// of real days have their own dates (`startMs`).

import { HOUR_MS } from './moments.ts';
import { HOURS, monthOfHour, type TypicalYear } from './typical-year.ts';

export interface Calendar {
  /** January 0 … December 11, by row */
  readonly month: Uint8Array;
  /** 1 on Saturday and Sunday */
  readonly weekend: Uint8Array;
  /** (2 · month + weekend) · 24 + hour of the day */
  readonly monthDayHour: Uint16Array;
}

function calendarFrom(monthOf: (row: number) => number, isWeekend: (row: number) => boolean): Calendar {
  const month = Uint8Array.from({ length: HOURS }, (_, row) => monthOf(row));
  const weekend = Uint8Array.from({ length: HOURS }, (_, row) => (isWeekend(row) ? 1 : 0));
  const monthDayHour = Uint16Array.from(
    { length: HOURS },
    (_, row) => (2 * month[row]! + weekend[row]!) * 24 + (row % 24),
  );
  return { month, weekend, monthDayHour };
}

/** Of any typical year. */
export const TYPICAL_CALENDAR = calendarFrom(monthOfHour, (row) => Math.floor(row / 24) % 7 >= 5);

/** The calendar of a year: its own dates where it has any. */
export function calendarOf({ startMs, site }: Pick<TypicalYear, 'startMs' | 'site'>): Calendar {
  if (startMs === undefined) return TYPICAL_CALENDAR;
  const local = (row: number) => new Date(startMs[row]! + site.utcOffsetH * HOUR_MS);
  return calendarFrom(
    (row) => local(row).getUTCMonth(),
    (row) => local(row).getUTCDay() % 6 === 0,
  );
}
