// The shifts offered by name; the same as the question about a hotter year runs through.

import type { Hotter } from '../../design/design.ts';

export interface Shift extends Pick<Hotter, 'winterK' | 'summerK'> {
  readonly id: string;
}

export const SHIFTS: readonly Shift[] = [
  { id: 'none', winterK: 0, summerK: 0 },
  { id: 'colder', winterK: -1.5, summerK: -1.5 },
  { id: 'one', winterK: 1, summerK: 1 },
  { id: 'two', winterK: 2, summerK: 2 },
  { id: 'three', winterK: 3, summerK: 3 },
  { id: 'seasons', winterK: 1.5, summerK: 3 },
];

/** The shift a hotter year has, if it is one of those offered. */
export function shiftOf({ winterK, summerK }: Pick<Hotter, 'winterK' | 'summerK'>): Shift | undefined {
  return SHIFTS.find((shift) => shift.winterK === winterK && shift.summerK === summerK);
}
