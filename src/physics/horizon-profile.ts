// Hills, trees and houses around a site as one line along the horizon: heights by direction in; whether the beam
// clears them, and how much of the even sky they leave, out.
import { requireRange } from './require-range.ts';

const DEG = Math.PI / 180;

/** Elevation [°] of the skyline at equal steps of azimuth, the first due north, then clockwise; [] = open. */
export type HorizonProfile = readonly number[];

/**
 * Height of the skyline in a direction, along straight lines between the given ones.
 *
 * @param profile [°]
 * @param azimuthDeg [° clockwise from north]; any
 * @returns [°]; 0 for an empty profile
 */
export function skylineElevation(profile: HorizonProfile, azimuthDeg: number): number {
  if (profile.length === 0) return 0;
  const turns = azimuthDeg / 360;
  const place = (turns - Math.floor(turns)) * profile.length;
  const from = Math.floor(place) % profile.length;
  const to = (from + 1) % profile.length;
  return profile[from]! + (place - Math.floor(place)) * (profile[to]! - profile[from]!);
}

/**
 * Whether the sun stands clear of the skyline. No checks: called in the hourly loop.
 *
 * @param profile [°]
 * @param azimuthDeg of the sun [° clockwise from north]
 * @param elevationDeg of the sun, true [°]
 */
export function beamAboveHorizon(profile: HorizonProfile, azimuthDeg: number, elevationDeg: number): boolean {
  return elevationDeg > Math.max(skylineElevation(profile, azimuthDeg), 0);
}

/**
 * Share of the even sky's light on the horizontal that the skyline leaves.
 *
 *   mean over azimuth of cos² of the skyline's elevation
 *
 * @param profile [°]; each 0…89
 * @returns 0…1, by 720 steps of azimuth
 */
export function horizonSkyView(profile: HorizonProfile): number {
  for (const elevation of profile) requireRange('skyline elevation', elevation, 0, 89, '°');
  let sum = 0;
  for (let step = 0; step < 720; step++) {
    sum += Math.cos(skylineElevation(profile, step / 2) * DEG) ** 2;
  }
  return sum / 720;
}
