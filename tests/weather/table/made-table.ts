// Tables as people bring them, made from a year that is known, so that reading them back can be judged.
import { MONTH_DAYS } from '../../../src/weather/assembly/calendar-hour.ts';
import { HOURS, type TypicalYear } from '../../../src/weather/typical-year.ts';

export interface Moment {
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

export function momentOf(hour: number): Moment {
  let day = Math.floor(hour / 24);
  let month = 0;
  while (day >= MONTH_DAYS[month]!) day -= MONTH_DAYS[month++]!;
  return { month: month + 1, day: day + 1, hour: hour % 24 };
}

export const two = (value: number) => String(value).padStart(2, '0');

/** One line an hour: the header, then the cells of each hour joined by the separator. */
export function madeTable(
  header: string,
  cells: (hour: number, at: Moment) => readonly (string | number)[],
  separator = ',',
): string {
  const lines = Array.from({ length: HOURS }, (_, hour) => cells(hour, momentOf(hour)).join(separator));
  return [header, ...lines].join('\n');
}

/** Largest difference of two columns. */
export function worst(a: Float64Array, b: Float64Array): number {
  return a.reduce((most, value, hour) => Math.max(most, Math.abs(value - b[hour]!)), 0);
}

export const placeOfYear = ({ site }: TypicalYear) => ({
  latitudeDeg: site.latitudeDeg,
  longitudeDeg: site.longitudeDeg,
  elevationM: site.elevationM,
  utcOffsetH: site.utcOffsetH,
});
