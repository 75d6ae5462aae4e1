// How much extra mass a house has room for: what stands on the floor takes some of it away. House and thickness in, area out.

import type { Design } from '../design/design.ts';

/** Faces that can be found in a house at most, for each m² of its floor. House rule. */
const MOST_PER_FLOOR = 1.5;
/** What stands on the floor is built so high [m] and is given so much of the floor at most. House rules. */
export const STANDS_M = 2;
export const FLOOR_GIVEN = 0.1;

/** Most face area that has room [m²], of so thick a wall [m]. */
export function roomForMass({ floorAreaM2 }: Design['house'], thicknessM: number): number {
  return Math.min(MOST_PER_FLOOR * floorAreaM2, (FLOOR_GIVEN * floorAreaM2 * STANDS_M) / thicknessM);
}
