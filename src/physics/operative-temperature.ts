// The temperature a person feels, between that of the air and that of the surfaces around. In: air and mean radiant
// temperature, air speed or coefficients; sun on the person. Out: operative temperature, radiant rise by sun.
// Sources: ISO 7726 and ASHRAE 55, from memory: high confidence for the weights, medium for the sun.
import { requireRange } from './require-range.ts';

/**
 * Operative temperature from the heat-transfer coefficients of a body: (hc·Ta + hr·Tmr) / (hc + hr).
 * Every time step: no guards.
 *
 * @param airTempC [°C]
 * @param meanRadiantTempC [°C]
 * @param convection hc of the person [W m⁻² K⁻¹]
 * @param radiation hr of the person [W m⁻² K⁻¹]; about 4.7
 * @returns operative temperature [°C]
 * Source: ISO 7726; ASHRAE 55.
 */
export function operativeTemperature(
  airTempC: number,
  meanRadiantTempC: number,
  convection: number,
  radiation: number,
): number {
  return (convection * airTempC + radiation * meanRadiantTempC) / (convection + radiation);
}

/**
 * Operative temperature by the weight of the air: w·Ta + (1 − w)·Tmr. Every time step: no guards.
 *
 * @param airTempC [°C]
 * @param meanRadiantTempC [°C]
 * @param weight w from `airWeight` [–]; 0.5 in still rooms
 * @returns operative temperature [°C]
 */
export function weightedOperative(airTempC: number, meanRadiantTempC: number, weight: number): number {
  return weight * airTempC + (1 - weight) * meanRadiantTempC;
}

/**
 * Weight of the air temperature: 0.5 below 0.2 m/s, 0.6 from 0.2 to 0.6, 0.7 from 0.6 to 1.0.
 *
 * @param airSpeed at the person [m/s]; 0…1
 * @returns weight [–]
 * Source: ASHRAE 55, operative temperature.
 */
export function airWeight(airSpeed: number): number {
  requireRange('airSpeed', airSpeed, 0, 1, 'm/s');
  if (airSpeed < 0.2) return 0.5;
  return airSpeed < 0.6 ? 0.6 : 0.7;
}

/** Share of a seated body that takes part in radiation [–], and its linear radiant coefficient [W m⁻² K⁻¹]: ASHRAE 55. */
const SEATED_RADIATING_SHARE = 0.696;
const PERSON_RADIANT_COEFFICIENT = 6.012;

/** Short-wave over long-wave absorptance of skin and clothes [–]: 0.7 / 0.95. */
const SUN_OVER_HEAT_ABSORPTANCE = 0.7 / 0.95;

/**
 * How much warmer the surroundings feel to somebody the sun shines on through glass: ERF / (hr · f).
 *
 *   ERF = (α_sun/α_heat) · (0.5 · f · D + p · s · I)
 *
 * D diffuse, I beam, f the radiating share of the body, p the share of its skin the sun sees, s the share of that
 * which is in the sun. Light reflected from the floor is left out. Meant to flag seats in the sun, not to rate them.
 *
 * @param beamW beam through the glass, on a plane square to the sun [W/m²]; 0…1200
 * @param diffuseW diffuse at the person from the glazed half of the surroundings [W/m²]; 0…1000
 * @param projectedShare p [–]; 0…0.4; about 0.25 for a low sun in front, 0.1 overhead
 * @param exposedShare s [–]; 0…1; 0.5 at a window
 * @returns rise of mean radiant temperature [K]
 * Source: ASHRAE 55, solar-adjusted mean radiant temperature, simplified; from memory, medium confidence.
 */
export function sunOnPerson(
  beamW: number,
  diffuseW: number,
  projectedShare: number,
  exposedShare: number,
): number {
  requireRange('beamW', beamW, 0, 1200, 'W/m²');
  requireRange('diffuseW', diffuseW, 0, 1000, 'W/m²');
  requireRange('projectedShare', projectedShare, 0, 0.4, '');
  requireRange('exposedShare', exposedShare, 0, 1, '');
  const field =
    SUN_OVER_HEAT_ABSORPTANCE *
    (0.5 * SEATED_RADIATING_SHARE * diffuseW + projectedShare * exposedShare * beamW);
  return field / (PERSON_RADIANT_COEFFICIENT * SEATED_RADIATING_SHARE);
}
