// What openings, or covers, ask of the people living there: times somebody moves one, the busiest month and day, and
// the hours in which one should have been moved and was not. Openings or covers of a year in, a few numbers out.

import type { OpeningYear } from '../network/year.ts';
import { HOURS, MONTH_START_HOUR } from '../weather/typical-year.ts';
import { DAYS, indexOfLargest } from './calendar.ts';

export interface VentMoves {
  /** moves in the year, all openings */
  readonly moves: number;
  /** mean a day in the busiest month */
  readonly movesPerDayInBusiestMonth: number;
  /** that month, 0…11 */
  readonly busiestMonth: number;
  readonly movesOnBusiestDay: number;
  /** share of the year in which the most neglected opening stood wrong, 0…1 */
  readonly neglectedShare: number;
}

type Moved = Pick<OpeningYear, 'moves' | 'movesByDay' | 'neglectedHours'>;

/**
 * Moves of all openings, or all covers, together.
 *
 * @param openings of one run; cracks and fans have no moves
 */
export function ventMoves(openings: readonly Moved[]): VentMoves {
  const byDay = new Float64Array(DAYS);
  for (const opening of openings) {
    for (let day = 0; day < DAYS; day++) byDay[day]! += opening.movesByDay[day]!;
  }
  const perDay = MONTH_START_HOUR.slice(0, 12).map((start, month) => {
    const first = start / 24;
    const last = MONTH_START_HOUR[month + 1]! / 24;
    return byDay.subarray(first, last).reduce((sum, moves) => sum + moves, 0) / (last - first);
  });
  const busiestMonth = indexOfLargest(perDay);
  const neglected = openings.reduce((most, { neglectedHours }) => Math.max(most, neglectedHours), 0);
  return {
    moves: openings.reduce((sum, { moves }) => sum + moves, 0),
    movesPerDayInBusiestMonth: perDay[busiestMonth]!,
    busiestMonth,
    movesOnBusiestDay: byDay[indexOfLargest(byDay)]!,
    neglectedShare: neglected / HOURS,
  };
}
