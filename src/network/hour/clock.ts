// The clock of a run: row of the climate to hour of day, weekday, month and day, and schedules read by it. What month and
// day of the week a row has is its climate's to say (src/weather/calendar.ts).

import type { Schedule } from '../../model/model.ts';
import { type Calendar, TYPICAL_CALENDAR } from '../../weather/calendar.ts';
import { HOURS } from '../../weather/typical-year.ts';

export interface Moment {
  /** of the climate; read by momentOf */
  readonly calendar: Calendar;
  /** 0…8759 */
  readonly hour: number;
  readonly hourOfDay: number;
  /** 0…364 */
  readonly day: number;
  /** January 0 … December 11 */
  readonly month: number;
  readonly weekend: boolean;
  /** the household is away for the weekend; and it is the last look before it leaves */
  readonly absent: boolean;
  readonly leaves: boolean;
  /** of the hour in the table of a schedule, 0…SCHEDULE_LENGTH − 1 */
  readonly scheduleIndex: number;
}

/** A schedule written out: by month, workday or weekend, and hour of the day. */
export const SCHEDULE_LENGTH = 12 * 2 * 24;

/** Read the clock at a row of the climate whose calendar `into` has; reuse it in loops to allocate nothing. */
export function momentOf(
  hour: number,
  into: { -readonly [K in keyof Moment]: Moment[K] } = blankMoment(),
): Moment {
  into.hour = hour;
  into.hourOfDay = hour % 24;
  into.day = Math.floor(hour / 24);
  const { month, weekend, monthDayHour } = into.calendar;
  into.month = month[hour]!;
  into.weekend = weekend[hour] === 1;
  into.scheduleIndex = monthDayHour[hour]!;
  return into;
}

/** A moment to reuse. */
export function blankMoment(calendar: Calendar = TYPICAL_CALENDAR) {
  return {
    calendar,
    hour: 0,
    hourOfDay: 0,
    day: 0,
    month: 0,
    weekend: false,
    absent: false,
    leaves: false,
    scheduleIndex: 0,
  };
}

/** Add a schedule, times a factor, to the SCHEDULE_LENGTH entries of a table from row `from`; in its unit, ramps left out. */
export function addToTable(table: Float64Array, from: number, schedule: Schedule, factor: number): void {
  const at = { month: 0, weekend: false, hourOfDay: 0 };
  for (let i = 0; i < SCHEDULE_LENGTH; i++) {
    const days = Math.floor(i / 24);
    at.month = days >> 1;
    at.weekend = days % 2 === 1;
    at.hourOfDay = i % 24;
    table[from + i]! += scheduled(schedule, at) * factor;
  }
}

/** What schedules depend on. */
type ScheduleTime = Pick<Moment, 'month' | 'weekend' | 'hourOfDay'>;

/** A schedule's value over an hour, before ramps. */
export function scheduled(schedule: Schedule, moment: ScheduleTime): number {
  const hours = moment.weekend && schedule.weekend ? schedule.weekend : schedule.workday;
  const factor = schedule.months ? schedule.months[moment.month]! : 1;
  return hours[moment.hourOfDay]! * factor;
}

/**
 * A schedule's value at a point within the hour. With `ramp`, a rise to the next hour is a straight line.
 *
 * @param through share of the hour gone by, 0…1
 */
export function scheduledWithin(schedule: Schedule, moment: Moment, through: number): number {
  const now = scheduled(schedule, moment);
  if (!schedule.ramp) return now;
  const next = scheduled(schedule, momentOf((moment.hour + 1) % HOURS, blankMoment(moment.calendar)));
  return next > now ? now + (next - now) * through : now;
}
