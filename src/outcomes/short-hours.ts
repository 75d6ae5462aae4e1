// Hours in which a house's heat does not do: people are up, and a heated room is plainly colder than they ask for. The model
// and its year in, a count out; null for a house of which no room is heated.

import type { Model } from '../model/model.ts';
import { blankMoment, momentOf, scheduled } from '../network/hour/clock.ts';
import type { Year } from '../network/year.ts';
import type { Calendar } from '../weather/calendar.ts';
import { HOURS } from '../weather/typical-year.ts';

/** So far below the set-point is plainly colder [K]; a hand at a stove keeps no closer. House rule. */
export const PLAINLY_K = 2;
/** Up, and the first hours given to whatever must be lit first; common practice, no source. */
const FROM_H = 9;
const UNTIL_H = 22;

/** Of 13 hours a day on which somebody is there, those in which some heated room falls short. */
export function shortHoursOf({ zones, awayWeekends }: Model, year: Year, calendar: Calendar): number | null {
  const columns = [...(year.rooms ?? []), ...year.zones];
  const heated = zones.flatMap(({ id, thermostat }) => {
    const column = columns.find((zone) => zone.id === id);
    return thermostat?.heatC && column ? [{ heatC: thermostat.heatC, airC: column.airC }] : [];
  });
  if (heated.length === 0) return null;
  const moment = blankMoment(calendar);
  let count = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const { hourOfDay } = momentOf(hour, moment);
    if (hourOfDay < FROM_H || hourOfDay >= UNTIL_H) continue;
    if (awayWeekends && calendar.weekend[hour] === 1) continue;
    if (heated.some(({ heatC, airC }) => airC[hour]! < scheduled(heatC, moment) - PLAINLY_K)) count++;
  }
  return count;
}
