// Surface films: what stands between a surface and the air and surroundings it faces. Wind, direction of heat flow and
// temperature in; convective and radiative coefficients out, W/(m²·K).
// Source: ISO 6946:2017 annex C (from memory, high confidence).

import { STEFAN_BOLTZMANN } from './constants.ts';
import { requireRange } from './require-range.ts';

export type HeatFlow = 'up' | 'horizontal' | 'down';

/** Convective coefficient inside, by the direction heat flows [W/(m²·K)]. */
export const INSIDE_CONVECTION: Record<HeatFlow, number> = { up: 5.0, horizontal: 2.5, down: 0.7 };

/** Whole inside surface resistance for design values [m²K/W]. */
export const INSIDE_RESISTANCE: Record<HeatFlow, number> = { up: 0.1, horizontal: 0.13, down: 0.17 };

/** Whole outside surface resistance for design values [m²K/W]. */
export const OUTSIDE_RESISTANCE = 0.04;

/**
 * Which way heat crosses the film of a surface. Up to 30° from level counts as horizontal.
 *
 * @param faceTiltDeg outward normal of the surface, towards the air [°]: 0 a floor, 90 a wall, 180 a ceiling
 * @param surfaceMinusAirK temperature of surface less air [K]; only the sign counts
 */
export function heatFlowDirection(faceTiltDeg: number, surfaceMinusAirK: number): HeatFlow {
  if (faceTiltDeg >= 60 && faceTiltDeg <= 120) return 'horizontal';
  const isFacingUp = faceTiltDeg < 60;
  return surfaceMinusAirK > 0 === isFacingUp ? 'up' : 'down';
}

/**
 * Convective coefficient inside. No checks: called in the hourly loop.
 *
 * @param faceTiltDeg as in heatFlowDirection
 * @param surfaceMinusAirK [K]
 * @returns 5.0, 2.5 or 0.7 W/(m²·K)
 */
export function insideConvection(faceTiltDeg: number, surfaceMinusAirK: number): number {
  return INSIDE_CONVECTION[heatFlowDirection(faceTiltDeg, surfaceMinusAirK)];
}

/**
 * Convective coefficient outside. No checks: called in the hourly loop.
 *
 *   h = 4 + 4 v
 *
 * @param windSpeed v at the surface [m/s]; ≥ 0
 * @returns [W/(m²·K)]
 */
export function outsideConvection(windSpeed: number): number {
  return 4 + 4 * windSpeed;
}

/**
 * Radiative coefficient between black surfaces near one temperature.
 *
 *   h = 4 σ T³
 *
 * @param meanTempK mean of the two surfaces [K]; 150…450
 * @returns [W/(m²·K)]; multiply by the emissivity for a small surface in large surroundings
 */
export function blackBodyConductance(meanTempK: number): number {
  requireRange('meanTempK', meanTempK, 150, 450, 'K');
  return 4 * STEFAN_BOLTZMANN * meanTempK ** 3;
}
