// Air pressure from height above the sea in the standard atmosphere.
// Source: US Standard Atmosphere 1976, troposphere, in the form of ASHRAE Fundamentals chapter 1, equation 3.
import { requireRange } from './require-range.ts';

/** Standard pressure at sea level [Pa]. */
export const SEA_LEVEL_PRESSURE = 101_325;

/**
 * Standard pressure at a height.
 *
 *   p = 101 325 · (1 − 2.25577·10⁻⁵ z)^5.2559
 *
 * @param elevationM height above sea level [m]; −500…10 000
 * @returns [Pa]
 * Weather moves the true pressure by about 3 % around it.
 */
export function standardPressure(elevationM: number): number {
  requireRange('elevationM', elevationM, -500, 10_000, 'm');
  return SEA_LEVEL_PRESSURE * (1 - 2.25577e-5 * elevationM) ** 5.2559;
}
