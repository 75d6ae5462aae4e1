// What a heated floor or wall gives its room: how much warmer its face is in, W/m² out; and how warm it may be.

import { power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** q = 8.92 ΔT^1.1. EN 1264, memory, confirmed by the 100 and 175 W/m² that the standard's own limits give. */
const FLOOR_FACTOR = 8.92;
const FLOOR_POWER = 1.1;
/** Warmest that the face of a floor people live on should be [°C]. EN 1264. */
export const FLOOR_LIMIT_C = 29;
/** And of a heated wall [°C]. EN 1264, read second-hand. */
export const WALL_LIMIT_C = 40;
/** Of a heated wall, to the room [W/(m²K)]. EN 1264-5, memory, medium confidence. */
const WALL_W_PER_M2K = 8;

/**
 * Heat of a floor.
 *
 * @param overK its face over the room [K]; 0…20
 * @returns [W/m²]
 * Source: EN 1264.
 */
export function floorOutput(overK: number): number {
  requireRange('overK', overK, 0, 20, 'K');
  return FLOOR_FACTOR * power(overK, FLOOR_POWER);
}

/**
 * Heat of a wall.
 *
 * @param overK its face over the room [K]; 0…40
 * @returns [W/m²]
 * Source: EN 1264-5.
 */
export function wallOutput(overK: number): number {
  requireRange('overK', overK, 0, 40, 'K');
  return WALL_W_PER_M2K * overK;
}
