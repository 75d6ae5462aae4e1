// What a rule of vent area means in degrees. In: heat to be carried off, two equal vents one above the other.
// Out: how far the sunspace rises over outdoors with no wind, the area that keeps a promised rise, and the airflow
// between. Method: the heat balance of a zone whose only way out for heat is its own stack flow (BS 5925:1991, two
// openings), solved for the rise. The absolute temperature below the line is fixed by the caller, not the mean.
import { AIR_HEAT_CAPACITY, GRAVITY } from '../../src/physics/constants.ts';
import { requireRange } from '../../src/physics/require-range.ts';

/** Absolute temperature of the air in a sunspace that needs venting, K: 35 °C. */
export const WARM_SUNSPACE_K = 308;

/**
 * Rise over outdoors with two equal vents.
 *
 *   ΔT = [ q / (ρcp · Cd · (A/√2) · √(2 g H / T)) ]^(2/3)
 *
 * @param heatW heat to be carried off [W]; ≥ 0
 * @param ventAreaM2 free area A of each of the two [m²]; > 0
 * @param heightM between their centres [m]; > 0
 * @param dischargeCoefficient [–]; 0.61 sharp-edged
 * @param airTempK absolute temperature below the line [K]; 250…350
 * @returns rise [K]
 * Source: own derivation from BS 5925:1991's stack flow.
 */
export function ventedRise(
  heatW: number,
  ventAreaM2: number,
  heightM: number,
  dischargeCoefficient: number,
  airTempK: number,
): number {
  requireRange('heatW', heatW, 0, 1e7, 'W');
  requireRange('ventAreaM2', ventAreaM2, 1e-6, 1e4, 'm²');
  const flowPerRootKelvin = (ventAreaM2 / Math.SQRT2) * stackSpeed(heightM, dischargeCoefficient, airTempK);
  return (heatW / (AIR_HEAT_CAPACITY * flowPerRootKelvin)) ** (2 / 3);
}

/**
 * Free area each of two equal vents needs to keep a rise: the inverse of `ventedRise`.
 *
 * @param heatW heat to be carried off [W]; ≥ 0
 * @param riseK rise over outdoors that is accepted [K]; > 0
 * @param heightM between the vents' centres [m]; > 0
 * @param dischargeCoefficient [–]
 * @param airTempK absolute temperature below the line [K]; 250…350
 * @returns area of each [m²]
 */
export function ventAreaForRise(
  heatW: number,
  riseK: number,
  heightM: number,
  dischargeCoefficient: number,
  airTempK: number,
): number {
  const flow = flowForRise(heatW, riseK);
  return (Math.SQRT2 * flow) / (stackSpeed(heightM, dischargeCoefficient, airTempK) * Math.sqrt(riseK));
}

/** Outdoor airflow [m³/s] that carries off heatW [W; ≥ 0] at a rise of riseK [K; > 0]: q / (ρcp · ΔT). */
export function flowForRise(heatW: number, riseK: number): number {
  requireRange('heatW', heatW, 0, 1e7, 'W');
  requireRange('riseK', riseK, 1e-6, 100, 'K');
  return heatW / (AIR_HEAT_CAPACITY * riseK);
}

/** Cd · √(2 g H / T): flow per effective area and root of the temperature difference [m/(s·√K)]. */
function stackSpeed(heightM: number, dischargeCoefficient: number, airTempK: number): number {
  requireRange('heightM', heightM, 1e-6, 100, 'm');
  requireRange('dischargeCoefficient', dischargeCoefficient, 0.1, 1, '');
  requireRange('airTempK', airTempK, 250, 350, 'K');
  return dischargeCoefficient * Math.sqrt((2 * GRAVITY * heightM) / airTempK);
}
