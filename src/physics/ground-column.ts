// The soil under a floor or behind a wall as a column of one dimension that stores a year: its steady resistance, how
// fast it widens and the soil in; slices with their shares of the face's area, and a massless rest, out.
//
// Heat from a floor spreads sideways as it goes down: out under the walls to the ground around. A column that is one
// metre square at the floor and 1 + wz square metres at the depth z, and ends where its resistance is that of the whole
// field, ∫ dz/(λ (1 + wz)) = R, answers a room's yearly wave as two dimensions do, and a day's and a month's too, since
// near the floor it is plain soil.
// Source: own, fitted to the two-dimensional sections of tests/reference/ground-section.ts, in one number for floors and
// one for walls. Error (tests/published/ground-section.test.ts), B 3 to 12 m, λ 0.8 to 3.5 W/mK, bare to R 6: floors
// within 10 % and 9 days, with insulation at their edge 11 % and 12 days, bermed walls 21 % and 13 days, of which most is
// their steady U-value's. Without widening a bare floor answers up to 27 % too weakly.

import { expm1, log } from './elementary.ts';
import { type Ground, periodicDepth } from './ground-floor.ts';

/** Widening under a floor times its characteristic dimension, behind a wall times its height. */
const FLOOR_WIDENING = 3.4;
const WALL_WIDENING = 3;
/** No column widens faster, however small the floor [1/m]. */
const MOST_WIDENING = 3;
/** Soil below so many yearly depths stores nothing that comes back; less than that under insulation. */
const DEEPEST = 1.5;
/** Slices grow by this from the first [m]. */
const FIRST_SLICE_M = 0.25;
const SLICE_GROWTH = 1.6;
/** A slice thinner than this is left to the rest [m]. */
const LEAST_SLICE_M = 0.01;

export interface SoilSlice {
  readonly thicknessM: number;
  /** areas by which the slice conducts and stores, per area of the face */
  readonly conducting: number;
  readonly storing: number;
}

export interface SoilColumn {
  /** from the construction outwards */
  readonly slices: readonly SoilSlice[];
  /** beyond them [m²K/W] */
  readonly rest: number;
}

/**
 * Widening of the column under a floor.
 *
 * @param dimensionM characteristic dimension B [m]
 * @param edgeShare of the outdoor wave that insulation at the edge lets through, 0…1: what cannot come in there cannot
 *   spread out
 * @returns [1/m]
 */
export function wideningUnderFloor(dimensionM: number, edgeShare: number): number {
  return Math.min(MOST_WIDENING, (FLOOR_WIDENING * edgeShare) / dimensionM);
}

/** Widening of the column behind a wall that stands in earth to this height [m]; [1/m]. */
export function wideningBehindWall(heightM: number): number {
  return Math.min(MOST_WIDENING, WALL_WIDENING / heightM);
}

/**
 * Column of soil.
 *
 * @param soilResistance of all soil between construction and outdoors [m²K/W]; no column where it is not above 0
 * @param coverResistance of film and construction [m²K/W]
 * @param widening w [1/m]; ≥ 0
 */
export function soilColumn(
  soilResistance: number,
  coverResistance: number,
  widening: number,
  ground: Ground,
): SoilColumn {
  const { conductivity } = ground;
  const yearly = periodicDepth(ground);
  // Lengths of unwidened soil: ∫ dz/(1 + wz).
  const whole = Math.max(0, soilResistance) * conductivity;
  const plain = (from: number, to: number) =>
    widening > 0 ? log((1 + widening * to) / (1 + widening * from)) / widening : to - from;
  const full = widening > 0 ? expm1(Math.min(50, widening * whole)) / widening : whole;
  const depth = Math.min(full, (DEEPEST * yearly) / (1 + (conductivity * coverResistance) / yearly));
  const slices: SoilSlice[] = [];
  let top = 0;
  let spent = 0;
  for (let size = FIRST_SLICE_M; depth - top > LEAST_SLICE_M; size *= SLICE_GROWTH) {
    // What would be left over for a last slice smaller than half of this one is taken in.
    const end = depth - top < 1.5 * size ? depth : top + size;
    const length = plain(top, end);
    slices.push({
      thicknessM: end - top,
      conducting: (end - top) / length,
      storing: 1 + (widening * (top + end)) / 2,
    });
    spent += length;
    top = end;
  }
  return { slices, rest: Math.max(0, whole - spent) / conductivity };
}
