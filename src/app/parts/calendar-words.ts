// Hours of the typical year in words: "21 June, 14:00". The hour named is the end of the hour's span, standard time.

import { MONTH_NAMES } from '../../outcomes/calendar.ts';
import { MONTH_START_HOUR, monthOfHour } from '../../weather/typical-year.ts';

export { MONTH_NAMES };

export const MONTH_SHORT: readonly string[] = MONTH_NAMES.map((name) => name.slice(0, 3));

export function dayText(hour: number): string {
  const month = monthOfHour(hour);
  return `${Math.floor((hour - MONTH_START_HOUR[month]!) / 24) + 1} ${MONTH_NAMES[month]}`;
}

/** Day and hour; hour h stands for the span from h:00 to h+1:00. */
export function hourText(hour: number): string {
  const start = String(hour % 24).padStart(2, '0');
  const end = String((hour % 24) + 1).padStart(2, '0');
  return `${dayText(hour)}, ${start}–${end} h`;
}
