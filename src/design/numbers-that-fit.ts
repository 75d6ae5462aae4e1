// Numbers that hang on others, drawn back to what fits: the glass to what its front holds, the sunspace to the wall it leans
// on. In one place, so that a house drawn by hand and one that a question varies come to the same.

import type { Design } from './design.ts';
import { geometryOf } from './geometry.ts';
import { limitOf } from './limits.ts';

/**
 * The glass's value as it fits its front.
 *
 * @returns the value drawn, or the most that fits, rounded down to three decimals; shares at most 1
 */
export function glassThatFits(design: Design): number {
  const { basis, value } = design.glass;
  const { glassM2, largestGlassM2 } = geometryOf(design);
  const overFull = basis !== 'area' && value > 1;
  if (glassM2 <= largestGlassM2 && !overFull) return value;
  const share = overFull ? Math.min(1 / value, largestGlassM2 / glassM2) : largestGlassM2 / glassM2;
  return Math.max(limitOf('glass.value').min, roundedDown(value * share));
}

/** The sunspace's length as drawn, or that of the wall it leans on where it is longer [m]. */
export function lengthThatFits({ house, sunspace }: Design): number {
  return sunspace.join === 'none' ? sunspace.lengthM : Math.min(sunspace.lengthM, house.equatorWallM);
}

/** Three decimals, never above the value. */
function roundedDown(value: number): number {
  return Math.floor(value * 1000 + 1e-9) / 1000;
}
