// A part of the day over several days: the hours that one long step stands for. The year before the one that counts is
// lived in such steps, since parts of a day differ more than its neighbours do.

import { HOURS } from '../../weather/typical-year.ts';
import { type Moment, momentOf } from './clock.ts';

/**
 * Parts of like warmth outdoors: the warm and sunny hours from nine to five, the evening until past midnight, the cold end
 * of the night and the morning that is as cold. Of equal length, so that all long steps are.
 */
export const PARTS_OF_DAY = 3;
const PART_H = 24 / PARTS_OF_DAY;
const WARM_FROM_H = 9;

export interface DayPart {
  /** hours of the year; the first `count` places */
  readonly hours: Int32Array;
  readonly count: number;
}

/** Room for a part of so many days. */
export function blankDayPart(mostDays: number): { hours: Int32Array; count: number } {
  return { hours: new Int32Array(mostDays * PART_H), count: 0 };
}

/**
 * The hours of a part of the day, over some days of the year; nothing is allocated.
 *
 * @param day the first; below 0 in the years before
 * @param days from the first to before the last
 * @param every so many days apart
 * @param part 0…2
 */
export function readDayPart(
  day: number,
  days: number,
  every: number,
  part: number,
  into: { hours: Int32Array; count: number },
): void {
  into.count = 0;
  for (let d = 0; d < days; d += every) {
    for (let h = 0; h < PART_H; h++) {
      const hour = ((day + d) * 24 + WARM_FROM_H + part * PART_H + h) % HOURS;
      into.hours[into.count++] = hour < 0 ? hour + HOURS : hour;
    }
  }
}

/** The hour in the middle of a day part, of its middle day. */
export function middleOf({ hours, count }: DayPart, into: Moment): void {
  momentOf(hours[Math.floor(count / PART_H / 2) * PART_H + PART_H / 2]!, into);
}

/** Mean of an hourly column over the hours of a day part, in the column's unit. */
export function meanOver({ hours, count }: DayPart, column: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < count; k++) sum += column[hours[k]!]!;
  return sum / count;
}
