// Air pressure from height above the sea in the standard atmosphere.
// Source: US Standard Atmosphere 1976, troposphere, in the form of ASHRAE Fundamentals chapter 1, equation 3.
import { SEA_LEVEL_PRESSURE } from './constants.ts';
import { power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** Lapse of temperature over temperature at sea level [1/m], and the exponent [–]. */
const LAPSE_PER_M = 2.25577e-5;
const EXPONENT = 5.2559;

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
  return SEA_LEVEL_PRESSURE * power(1 - LAPSE_PER_M * elevationM, EXPONENT);
}

/**
 * Height at which a pressure is the standard one: the inverse of `standardPressure`.
 *
 * @param pressurePa mean station pressure [Pa]; > 0
 * @returns height above sea level [m]
 * Error: the mean pressure of a place, or of its grid cell, differs from the standard by up to 1.5 kPa, which is 130 m.
 */
export function elevationFromPressure(pressurePa: number): number {
  return (1 - power(pressurePa / SEA_LEVEL_PRESSURE, 1 / EXPONENT)) / LAPSE_PER_M;
}
