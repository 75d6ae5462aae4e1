// A made year's days are drawn; other draws of the same normals show how far its answers hang on the draw.

import type { TypicalYear } from '../typical-year.ts';
import { yearFromNormals } from './monthly-normals.ts';

/** Enough to show a spread, few enough to wait for. */
const OTHER_DRAWS = 4;

/** The same normals made into years again, the draws after its own; none for a year that was not made. */
export function otherDraws({ madeFrom }: TypicalYear): readonly TypicalYear[] {
  if (madeFrom === undefined) return [];
  return Array.from({ length: OTHER_DRAWS }, (_, i) => {
    const made = yearFromNormals({ ...madeFrom, seed: (madeFrom.seed ?? 1) + i + 1 });
    if (!made.ok) throw new Error('normals that made one year make no other');
    return made.year;
  });
}
