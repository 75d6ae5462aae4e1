// How much air the sun's rays cross, as a multiple of the path straight up: true zenith angle in, air mass out.
// Not corrected for pressure.
// Source: Kasten and Young, Revised optical air mass tables and approximation formula, Applied Optics 28, 1989.

import { cos, power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/**
 * Relative optical air mass at sea level.
 *
 *   m = 1 / (cos z + 0.50572 · (96.07995 − z)^−1.6364)
 *
 * @param trueZenithDeg true (unrefracted) zenith angle [°]; 0…90
 * @returns 1 overhead to about 38 at the horizon
 * The formula was fitted to apparent zenith angles; the sky model it feeds is used with the true one here, as
 * the reference tables do (below 0.1 % of a year's sky irradiance).
 */
export function relativeAirMass(trueZenithDeg: number): number {
  requireRange('trueZenithDeg', trueZenithDeg, 0, 90, '°');
  const cosZenith = cos((trueZenithDeg * Math.PI) / 180);
  return 1 / (cosZenith + 0.50572 * power(96.07995 - trueZenithDeg, -1.6364));
}
