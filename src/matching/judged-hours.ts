// Which hours of a record are fitted, and which are kept unseen to judge by: hours with a reading and with weather, not soon
// after a hole in it, not before the house has forgotten its start, and by night only where the sun was not measured. Two
// ways to keep days unseen are both used: the last three tenths, and every fourth day.

import { sunPosition } from '../physics/sun-position.ts';
import { HOUR_MS } from '../weather/moments.ts';
import { type HouseRecord, hoursBefore, rowOf } from './house-record.ts';

/** A house still feels a hole in the weather for so long [h]. */
const FEELS_HOLES_H = 24;
/** Of weather before the first reading, fewer days leave the start in doubt; then the first days are not judged. */
const ENOUGH_BEFORE_D = 14;
const DOUBTFUL_START_D = 3;
const LAST_SHARE = 0.3;
const EVERY_DAY = 4;
const DARK_FOR_H = 2;

export type Unseen = 'last' | 'every-fourth';

/** By target, 1 for hours that say something. */
export function judgedHours(record: HouseRecord): Uint8Array[] {
  const { weather, hours, targets } = record;
  const first = hoursBefore(record);
  const doubtful = first < 24 * ENOUGH_BEFORE_D ? 24 * DOUBTFUL_START_D : 0;
  const isGood = Uint8Array.from({ length: hours }, (_, hour) => {
    if (hour < doubtful) return 0;
    for (let back = 0; back < FEELS_HOLES_H && first + hour - back >= 0; back++)
      if (weather.known[rowOf(record, hour - back)] === 0) return 0;
    return weather.sun !== 'typical' || isLongDark(record, hour) ? 1 : 0;
  });
  return targets.map(({ measured }) =>
    isGood.map((good, hour) => (Number.isNaN(measured[hour]!) ? 0 : good)),
  );
}

function isLongDark({ startMs, weather }: HouseRecord, hour: number): boolean {
  const { latitudeDeg, longitudeDeg } = weather.year.site;
  for (let back = 0; back <= DARK_FOR_H; back++) {
    const ms = startMs + (hour - back + 0.5) * HOUR_MS;
    if (sunPosition(ms, latitudeDeg, longitudeDeg).elevationDeg > 0) return false;
  }
  return true;
}

/** Whether an hour is kept unseen. */
function isUnseen(way: Unseen, hour: number, hours: number): boolean {
  const day = Math.floor(hour / 24);
  return way === 'last'
    ? day >= Math.round((1 - LAST_SHARE) * (hours / 24))
    : day % EVERY_DAY === EVERY_DAY - 1;
}

/** Of the judged hours, those that are fitted or those kept unseen. */
export function split(judged: readonly Uint8Array[], way: Unseen, unseen: boolean): Uint8Array[] {
  return judged.map((column) =>
    column.map((one, hour) => (isUnseen(way, hour, column.length) === unseen ? one : 0)),
  );
}
