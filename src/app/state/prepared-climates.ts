// Climates as the findings want them, prepared on the page once each.

import { type PreparedClimate, prepareClimate } from '../../weather/prepared-climate.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';

const known = new WeakMap<TypicalYear, PreparedClimate>();

export function preparedClimate(year: TypicalYear): PreparedClimate {
  const found = known.get(year) ?? prepareClimate(year);
  known.set(year, found);
  return found;
}
