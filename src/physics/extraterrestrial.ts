// Sunshine above the atmosphere: day of the year in, irradiance normal to the beam out.
// Source: Spencer, Fourier series representation of the position of the sun, Search 2(5), 1971, with the solar
// constant 1366.1 W/m² of ASTM E490 (1361 W/m² would lower a year's tilted sky irradiance by 0.015 %).
import { SOLAR_CONSTANT } from './constants.ts';
import { cos, sin } from './elementary.ts';
import { requireRange } from './require-range.ts';

/**
 * Extraterrestrial irradiance normal to the sun's rays.
 *
 * @param dayOfYear 1…366, 1 January = 1
 * @returns [W/m²], about 1320…1414
 * Source: Spencer 1971, eccentricity series.
 */
export function extraterrestrialNormal(dayOfYear: number): number {
  requireRange('dayOfYear', dayOfYear, 1, 366, '');
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  const eccentricity =
    1.00011 + 0.034221 * cos(b) + 0.00128 * sin(b) + 0.000719 * cos(2 * b) + 0.000077 * sin(2 * b);
  return SOLAR_CONSTANT * eccentricity;
}
