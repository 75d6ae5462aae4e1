// Surface films: what stands between a surface and the air and surroundings it faces. Wind and temperature in; convective and radiative coefficients out, W/(m²·K).
// Source: ISO 6946:2017 annex C (from memory, high confidence).

import { STEFAN_BOLTZMANN } from './constants.ts';
import { requireRange } from './require-range.ts';

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
  return 4 * STEFAN_BOLTZMANN * meanTempK * meanTempK * meanTempK;
}
