// Whether a file holds one actual year. A typical year is put together of months of several years, so months that are all
// of one year are an actual one; unless its maker stamped one year on all of them, which no file can tell.

import type { TypicalYear } from './typical-year.ts';

/** The calendar year all months are of, or null for a typical or a made year. */
export function actualYearOf({ monthYears, madeFrom }: TypicalYear): number | null {
  const [first] = monthYears;
  const isOne = madeFrom === undefined && monthYears.every((year) => year === first);
  return isOne ? (first ?? null) : null;
}
