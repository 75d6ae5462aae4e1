// Angle between the sun and a plane: directions in, cosine of the incidence angle out.
// Conventions: azimuths clockwise from north; tilt 0 = flat facing up, 90 = upright, 180 = facing down.
// Source: dot product of two unit vectors, any solar engineering text.

import { cos, sin } from './elementary.ts';
import type { SkyVector } from './sun-position.ts';

const DEG = Math.PI / 180;

/** Outward normal of a plane of a tilt and azimuth [°] as a unit vector. */
export function planeNormal(tiltDeg: number, azimuthDeg: number): SkyVector {
  return {
    east: sin(tiltDeg * DEG) * sin(azimuthDeg * DEG),
    north: sin(tiltDeg * DEG) * cos(azimuthDeg * DEG),
    up: cos(tiltDeg * DEG),
  };
}

/**
 * Cosine of the angle between the sun's direction and a plane's outward normal.
 *
 * Called for every plane in every hour, so it does not check its input.
 *
 * @param normal of the plane, unit vector
 * @param east @param north @param up of the direction to the sun, unit vector
 * @returns −1…1; negative when the sun is behind the plane (or, for flat ones, below the horizon)
 */
export function cosIncidence(normal: SkyVector, east: number, north: number, up: number): number {
  return normal.east * east + normal.north * north + normal.up * up;
}
