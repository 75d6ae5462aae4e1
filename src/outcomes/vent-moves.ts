// What openings, or covers, ask of the people living there: times somebody moves one, the busiest month and day, and
// the hours in which one should have been moved and was not. Openings or covers of a year in, a few numbers out.

import type { OpeningYear } from '../network/year.ts';
import { J_PER_KWH } from '../physics/constants.ts';
import { HOURS, MONTH_START_HOUR } from '../weather/typical-year.ts';
import { DAYS, indexOfLargest } from './calendar.ts';

/** What moves by hand, opening or cover, asks in a year. */
export interface Moves {
  /** moves in the year, all of them */
  readonly moves: number;
  /** mean a day in the busiest month */
  readonly movesPerDayInBusiestMonth: number;
  /** that month, 0…11 */
  readonly busiestMonth: number;
  readonly movesOnBusiestDay: number;
  /** share of the year in which the most neglected one stood wrong, 0…1 */
  readonly neglectedShare: number;
}

export interface VentMoves extends Moves {
  readonly airings: number;
  /** hours in which the heater ran while the window that did so longest stood open to cool */
  readonly heatedWhileOpenHours: number;
  readonly heatedWhileOpenKWh: number;
}

type Moved = Pick<OpeningYear, 'moves' | 'movesByDay' | 'neglectedHours'>;

/** Moves of all openings together; cracks and fans have none. */
export function ventMoves(openings: readonly OpeningYear[]): VentMoves {
  return {
    ...movesOf(openings),
    airings: openings.reduce((sum, { airings }) => sum + airings, 0),
    heatedWhileOpenHours: openings.reduce((most, { heatedOpenHours }) => Math.max(most, heatedOpenHours), 0),
    heatedWhileOpenKWh: openings.reduce((sum, { heatedOpenJ }) => sum + heatedOpenJ, 0) / J_PER_KWH,
  };
}

/** Moves of all openings, or all covers, of one run together. */
export function movesOf(moved: readonly Moved[]): Moves {
  const byDay = new Float64Array(DAYS);
  for (const { movesByDay } of moved) {
    for (let day = 0; day < DAYS; day++) byDay[day]! += movesByDay[day]!;
  }
  const perDay = MONTH_START_HOUR.slice(0, 12).map((start, month) => {
    const first = start / 24;
    const last = MONTH_START_HOUR[month + 1]! / 24;
    return byDay.subarray(first, last).reduce((sum, moves) => sum + moves, 0) / (last - first);
  });
  const busiestMonth = indexOfLargest(perDay);
  const neglected = moved.reduce((most, { neglectedHours }) => Math.max(most, neglectedHours), 0);
  return {
    moves: moved.reduce((sum, { moves }) => sum + moves, 0),
    movesPerDayInBusiestMonth: perDay[busiestMonth]!,
    busiestMonth,
    movesOnBusiestDay: byDay[indexOfLargest(byDay)]!,
    neglectedShare: neglected / HOURS,
  };
}
