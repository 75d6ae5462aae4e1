// Numbers that hang on others, drawn back to what fits: the glass to what its front holds, the sunspace to the wall it leans
// on; and whether the planted bed has the floor it asks for. In one place, so that a house drawn by hand and one that a question varies come to the same.

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

/** A bed that is larger than its floor by no more than this is one that fits [m²]. */
const ROUNDED_M2 = 0.05;

/** Floor that the planted bed may stand on: the sunspace's, or the ground floor where there is none [m²]. */
export function bedFloorM2(design: Design): number {
  const { groundFloorM2, sunspaceFloorM2 } = geometryOf(design);
  return design.sunspace.join === 'none' ? groundFloorM2 : sunspaceFloorM2;
}

/** Whether the bed asked for is larger than its floor; the run plants that floor and no more. */
export function isBedTooLarge(design: Design): boolean {
  return design.plants.bedM2 > bedFloorM2(design) + ROUNDED_M2;
}
