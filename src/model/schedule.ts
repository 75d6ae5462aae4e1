// Schedules made and changed: one value at all hours, values by the hour of the day, every value of another turned into a new
// one with weekends and months kept. Read by the clock they are in src/network/hour/clock.ts.

import type { Schedule } from './model.ts';

/** One value at all hours. */
export function always(value: number): Schedule {
  return { workday: new Array<number>(24).fill(value) };
}

/** A value by the hour of the day, 0…23, on all days alike. */
export function byHour(of: (hour: number) => number): Schedule {
  return { workday: Array.from({ length: 24 }, (_, hour) => of(hour)) };
}

/** Every value of workdays and weekends turned into another; months and ramp stay. */
export function withEachHour(schedule: Schedule, of: (value: number, hour: number) => number): Schedule {
  return {
    ...schedule,
    workday: schedule.workday.map(of),
    ...(schedule.weekend && { weekend: schedule.weekend.map(of) }),
  };
}

/** Its 24 values of workdays, and those of weekends where they differ; factors of months are left out. */
export function valuesOf({ workday, weekend = [] }: Schedule): readonly number[] {
  return [...workday, ...weekend];
}
