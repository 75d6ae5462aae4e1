// Saturation vapour pressure over ice and water and its inverse; the simulation itself uses the shorter formula over
// water of moist-air.ts, surface checks that of surface-humidity.ts. Temperatures in, pascals out, and back.
// Source: ASHRAE Fundamentals 2017 chapter 1, equations 5 (ice) and 6 (water).
import { ZERO_CELSIUS_K } from './constants.ts';
import { requireRange } from './require-range.ts';

/** Triple point of water [°C]: ice below, water above. */
const TRIPLE_POINT_C = 0.01;

/** ln p over ice, T in K: c0/T + c1 + c2 T + … + c5 T⁴ + c6 ln T. */
const ICE = [
  -5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019,
] as const;

/** ln p over water, T in K: c0/T + c1 + c2 T + c3 T² + c4 T³ + c5 ln T. */
const WATER = [-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 6.5459673] as const;

/**
 * Saturation pressure by ASHRAE, over ice up to 0.01 °C and over water above.
 *
 * @param tempC [°C]; −100…200
 * @returns [Pa]
 * Error: within 0.05 % of steam tables.
 */
export function saturationPressureAshrae(tempC: number): number {
  requireRange('tempC', tempC, -100, 200, '°C');
  const t = tempC + ZERO_CELSIUS_K;
  if (tempC <= TRIPLE_POINT_C) {
    const [c0, c1, c2, c3, c4, c5, c6] = ICE;
    return Math.exp(c0 / t + c1 + t * (c2 + t * (c3 + t * (c4 + t * c5))) + c6 * Math.log(t));
  }
  const [c0, c1, c2, c3, c4, c5] = WATER;
  return Math.exp(c0 / t + c1 + t * (c2 + t * (c3 + t * c4)) + c5 * Math.log(t));
}

/**
 * Dew point, or frost point below 0.01 °C, at which air of this vapour pressure saturates by ASHRAE.
 *
 * @param vapourPressure [Pa]; 0.002…1 500 000
 * @returns [°C], by halving to 1e-9 K
 */
export function dewPointAshrae(vapourPressure: number): number {
  requireRange('vapourPressure', vapourPressure, 0.002, 1.5e6, 'Pa');
  let low = -100;
  let high = 200;
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (saturationPressureAshrae(middle) > vapourPressure) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
