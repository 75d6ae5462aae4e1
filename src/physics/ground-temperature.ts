// Temperature of undisturbed ground through the year: a yearly wave at the surface that fades and lags with depth.
// Source: Kusuda and Achenbach, Earth temperature and thermal diffusivity at selected stations in the United States,
// ASHRAE Transactions 71, 1965 (from memory, high confidence). Typical diffusivities, from memory, medium confidence:
// dry sand 0.02, clay 0.04–0.05, wet sand 0.07, rock 0.10 m²/day. The surface swings about as the monthly air does;
// its yearly mean is the air's, or 1–2 K above it under snow or on bare sunny soil.

import { exp } from './elementary.ts';
import { requireRange } from './require-range.ts';

const DAYS = 365;

/**
 * Depth at which the yearly wave has shrunk to 1/e.
 *
 *   d = √(365 α/π)
 *
 * @param diffusivity α [m²/day]; 0.005…0.3
 * @returns [m]: 2.41 m in clay
 */
export function annualDampingDepth(diffusivity: number): number {
  requireRange('diffusivity', diffusivity, 0.005, 0.3, 'm²/day');
  return Math.sqrt((DAYS * diffusivity) / Math.PI);
}

/**
 * How much of the surface's swing arrives at a depth, and how many days later.
 *
 * @param diffusivity [m²/day]; 0.005…0.3
 * @param depthM [m]; 0…100
 * @returns damping 0…1 and lag [days]
 */
export function annualWave(
  diffusivity: number,
  depthM: number,
): { readonly damping: number; readonly lagDays: number } {
  requireRange('depthM', depthM, 0, 100, 'm');
  const ratio = depthM / annualDampingDepth(diffusivity);
  return { damping: exp(-ratio), lagDays: (ratio * DAYS) / (2 * Math.PI) };
}
