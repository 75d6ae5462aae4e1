// The climate a design is run in: the site's typical year, made hotter where the design asks for it. Every run passes
// here, so that a page, a question and a command line never disagree. Hotter climates are remembered beside the one
// they were made from.

import type { Design } from '../design/design.ts';
import { hotterYear } from '../weather/hotter-year.ts';
import { type PreparedClimate, prepareClimate } from '../weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../weather/typical-year.ts';

/** Kept per climate; each takes about 1.5 MB, and a field being typed in passes through several. */
const MOST_KEPT = 4;

const remembered = new WeakMap<PreparedClimate, Map<string, PreparedClimate>>();

/** The typical year as the design has it. */
export function yearOfDesign({ hotter }: Pick<Design, 'hotter'>, year: TypicalYear): TypicalYear {
  return hotter === undefined ? year : hotterYear(year, hotter);
}

/** The same, prepared. */
export function climateOfDesign(design: Pick<Design, 'hotter'>, climate: PreparedClimate): PreparedClimate {
  const kept = remembered.get(climate) ?? new Map<string, PreparedClimate>();
  remembered.set(climate, kept);
  const key = JSON.stringify(design.hotter ?? null);
  const known = kept.get(key);
  if (known) return known;
  const year = yearOfDesign(design, climate.year);
  const made = year === climate.year ? climate : prepareClimate(year);
  if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
  kept.set(key, made);
  return made;
}
