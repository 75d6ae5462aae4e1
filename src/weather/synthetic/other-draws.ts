// A made year's days are drawn; other draws of the same normals show how far its answers hang on the draw.

import type { TypicalYear } from '../typical-year.ts';
import { yearFromNormals } from './monthly-normals.ts';

/** Enough to show a spread, few enough to wait for. */
export const OTHER_DRAWS = 4;

/**
 * The same normals made into a year again, in a draw after its own.
 *
 * @param draw from 1; how many draws after its own
 */
export function otherDraw({ madeFrom }: TypicalYear, draw: number): TypicalYear {
  if (madeFrom === undefined) throw new RangeError('madeFrom is none; allowed: the normals of a made year');
  const made = yearFromNormals({ ...madeFrom, seed: (madeFrom.seed ?? 1) + draw });
  if (!made.ok) throw new Error('normals that made one year make no other');
  return made.year;
}
