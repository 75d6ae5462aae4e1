// The clock of a run: hour of the year to hour of day, weekday, month and day, and schedules read by it. The
// week starts on 1 January, taken as a Monday, so that every run of one design has the same weekends.

import type { Schedule } from '../../model/model.ts';
import { HOURS, monthOfHour } from '../../weather/typical-year.ts';

export interface Moment {
  /** 0…8759 */
  readonly hour: number;
  readonly hourOfDay: number;
  /** 0…364 */
  readonly day: number;
  /** January 0 … December 11 */
  readonly month: number;
  readonly weekend: boolean;
  /** of the hour in the table of a schedule, 0…SCHEDULE_LENGTH − 1 */
  readonly scheduleIndex: number;
}

/** A schedule written out: by month, workday or weekend, and hour of the day. */
export const SCHEDULE_LENGTH = 12 * 2 * 24;

const MONTHS = Uint8Array.from({ length: HOURS }, (_, hour) => monthOfHour(hour));

/** Read the clock at an hour of the year; reuse `into` in loops to allocate nothing. */
export function momentOf(
  hour: number,
  into: { -readonly [K in keyof Moment]: Moment[K] } = blankMoment(),
): Moment {
  into.hour = hour;
  into.hourOfDay = hour % 24;
  into.day = Math.floor(hour / 24);
  into.month = MONTHS[hour]!;
  into.weekend = into.day % 7 >= 5;
  into.scheduleIndex = scheduleIndex(into);
  return into;
}

/** Of every hour of the year, in the table of a schedule. */
export const SCHEDULE_INDICES = Uint16Array.from(
  { length: HOURS },
  (_, hour) => momentOf(hour).scheduleIndex,
);

/** A moment to reuse. */
export function blankMoment() {
  return { hour: 0, hourOfDay: 0, day: 0, month: 0, weekend: false, scheduleIndex: 0 };
}

/** Add a schedule, times a factor, to the table that begins at `from`; ramps are left out. */
export function addToTable(table: Float64Array, from: number, schedule: Schedule, factor: number): void {
  for (let month = 0; month < 12; month++) {
    for (const weekend of [false, true]) {
      for (let hourOfDay = 0; hourOfDay < 24; hourOfDay++) {
        const at = { month, weekend, hourOfDay };
        table[from + scheduleIndex(at)]! += scheduled(schedule, at) * factor;
      }
    }
  }
}

/** What schedules depend on. */
type ScheduleTime = Pick<Moment, 'month' | 'weekend' | 'hourOfDay'>;

function scheduleIndex({ month, weekend, hourOfDay }: ScheduleTime): number {
  return (2 * month + (weekend ? 1 : 0)) * 24 + hourOfDay;
}

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
  const next = scheduled(schedule, momentOf((moment.hour + 1) % HOURS));
  return next > now ? now + (next - now) * through : now;
}
