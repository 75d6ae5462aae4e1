// Air through openings somebody made on purpose: windows, vents, flaps. In: areas, heights, air temperatures, wind.
// Out: volume flow in m³/s, always a magnitude: the same air goes in as out, and swapping inside and outside
// changes its direction only. Method: BS 5925:1991 (code of practice, natural ventilation) and ASHRAE Fundamentals,
// ventilation and infiltration; both from memory, high confidence. Functions marked "every time step" have no guards.
import { GRAVITY, ZERO_CELSIUS_K } from './constants.ts';
import { requireRange } from './require-range.ts';

/** Discharge coefficient of a sharp-edged opening [–]: BS 5925. ASHRAE uses 0.65 where air does not mix at the edge. */
export const SHARP_EDGE_DISCHARGE = 0.61;

/** Free-area factor of an insect screen [–]: 0.5 (fine) to 0.65; growers' handbooks, from memory, medium confidence. */
export const INSECT_SCREEN_FACTOR = 0.55;

/**
 * Area that stands for two openings in series: 1/A² = 1/A₁² + 1/A₂².
 * Every time step: no guards. Zero when either is shut.
 *
 * @param area1M2 free area of the first opening [m²]; ≥ 0
 * @param area2M2 free area of the second [m²]; ≥ 0
 * @returns area [m²]
 */
export function effectiveArea(area1M2: number, area2M2: number): number {
  const squares = area1M2 * area1M2 + area2M2 * area2M2;
  return squares > 0 ? (area1M2 * area2M2) / Math.sqrt(squares) : 0;
}

/**
 * Stack flow through a low and a high opening.
 *
 *   Q = Cd · A · √(2 · g · H · |Ti − To| / T̄), T̄ the mean absolute temperature
 *
 * Every time step: no guards.
 *
 * @param effectiveAreaM2 of the pair, from `effectiveArea` [m²]; ≥ 0
 * @param heightM between the centres of the two [m]; ≥ 0
 * @param tempInC inside air [°C]
 * @param tempOutC outside air [°C]
 * @param dischargeCoefficient [–]; 0.61 sharp-edged
 * @returns flow in at one and out at the other [m³/s]
 * Source: BS 5925:1991, two openings at different heights.
 */
export function stackFlow(
  effectiveAreaM2: number,
  heightM: number,
  tempInC: number,
  tempOutC: number,
  dischargeCoefficient: number,
): number {
  const meanTempK = 0.5 * (tempInC + tempOutC) + ZERO_CELSIUS_K;
  return (
    dischargeCoefficient *
    effectiveAreaM2 *
    Math.sqrt((2 * GRAVITY * heightM * Math.abs(tempInC - tempOutC)) / meanTempK)
  );
}

/**
 * Stack flow through one opening that lies a known height from the neutral level.
 *
 *   Q = Cd · A · √(2 · g · h · |Ti − To| / Ti)
 *
 * Where two equal openings share a height H, h = H/2 and A is one of them: the same flow as `stackFlow`, but for
 * the temperature below the line. Every time step: no guards.
 *
 * @param areaM2 of the one opening [m²]; ≥ 0
 * @param heightM from the neutral level to its centre [m]; ≥ 0
 * @param tempInC the warmer air, inside [°C]
 * @param tempOutC outside air [°C]
 * @param dischargeCoefficient [–]; 0.65 in the source
 * @returns flow [m³/s]
 * Source: ASHRAE Fundamentals, flow caused by thermal forces only.
 */
export function neutralLevelFlow(
  areaM2: number,
  heightM: number,
  tempInC: number,
  tempOutC: number,
  dischargeCoefficient: number,
): number {
  const drive = (2 * GRAVITY * heightM * Math.abs(tempInC - tempOutC)) / (tempInC + ZERO_CELSIUS_K);
  return dischargeCoefficient * areaM2 * Math.sqrt(drive);
}

/**
 * Exchange through a single tall opening by temperature alone: in below, out above.
 *
 *   Q = Cd/3 · A · √(g · h · |Ti − To| / T̄)
 *
 * Every time step: no guards.
 *
 * @param areaM2 free area [m²]; ≥ 0
 * @param heightM of the opening itself [m]; ≥ 0
 * @param tempInC inside air [°C]
 * @param tempOutC outside air [°C]
 * @param dischargeCoefficient [–]; 0.61 in the source
 * @returns flow each way [m³/s]
 * Source: BS 5925:1991, openings in one wall only.
 */
export function singleSidedStackFlow(
  areaM2: number,
  heightM: number,
  tempInC: number,
  tempOutC: number,
  dischargeCoefficient: number,
): number {
  const meanTempK = 0.5 * (tempInC + tempOutC) + ZERO_CELSIUS_K;
  return (
    (dischargeCoefficient / 3) *
    areaM2 *
    Math.sqrt((GRAVITY * heightM * Math.abs(tempInC - tempOutC)) / meanTempK)
  );
}

/**
 * Exchange through an opening in one wall only by the wind's turbulence: Q = 0.025 · A · U.
 * Every time step: no guards.
 *
 * @param areaM2 free area [m²]; ≥ 0
 * @param windSpeed at roof height, undisturbed [m/s]; ≥ 0
 * @returns flow [m³/s]
 * Source: BS 5925:1991, openings in one wall only.
 */
export function singleSidedWindFlow(areaM2: number, windSpeed: number): number {
  return 0.025 * areaM2 * windSpeed;
}

/**
 * Wind from one side of a house through to another: Q = Cd · A · U · √ΔCp.
 * Every time step: no guards.
 *
 * @param effectiveAreaM2 `effectiveArea` of the sum of windward and the sum of lee openings [m²]; ≥ 0
 * @param windSpeed at roof height [m/s]; ≥ 0
 * @param pressureDifferenceCoefficient ΔCp [–]; about 1.0 exposed, 0.2–0.5 sheltered; ≥ 0
 * @param dischargeCoefficient [–]; 0.61 in the source
 * @returns flow [m³/s]
 * Source: BS 5925:1991, wind only.
 */
export function crossWindFlow(
  effectiveAreaM2: number,
  windSpeed: number,
  pressureDifferenceCoefficient: number,
  dischargeCoefficient: number,
): number {
  return dischargeCoefficient * effectiveAreaM2 * windSpeed * Math.sqrt(pressureDifferenceCoefficient);
}

/**
 * Wind on an inlet by its effectiveness: Q = Cv · A · U. Every time step: no guards.
 *
 * @param areaM2 free inlet area [m²]; ≥ 0
 * @param windSpeed [m/s]; ≥ 0
 * @param effectiveness Cv [–]; 0.5–0.6 wind square on, 0.25–0.35 diagonal
 * @returns flow [m³/s]
 * Source: ASHRAE Fundamentals, flow caused by wind only.
 */
export function inletWindFlow(areaM2: number, windSpeed: number, effectiveness: number): number {
  return effectiveness * areaM2 * windSpeed;
}

/**
 * Stack and wind together, as pressures add: Q = √(Qs² + Qw²). Smooth. Every time step: no guards.
 *
 * @param stackM3S flow by temperature alone [m³/s]; ≥ 0
 * @param windM3S flow by wind alone [m³/s]; ≥ 0
 * @returns flow [m³/s]
 * Source: ASHRAE Fundamentals, natural ventilation.
 */
export function combinedQuadrature(stackM3S: number, windM3S: number): number {
  return Math.sqrt(stackM3S * stackM3S + windM3S * windM3S);
}

/**
 * Stack and wind together, the stronger alone: Q = max(Qs, Qw). Every time step: no guards.
 * This is what the code of practice means by choosing one; `stackGoverns` is the test it prints.
 *
 * @param stackM3S flow by temperature alone [m³/s]; ≥ 0
 * @param windM3S flow by wind alone [m³/s]; ≥ 0
 * @returns flow [m³/s]
 */
export function combinedStronger(stackM3S: number, windM3S: number): number {
  return Math.max(stackM3S, windM3S);
}

/**
 * Whether the code of practice takes the stack result for a house with high and low openings on both sides.
 *
 *   U / √|ΔT| < 0.26 · √(Ab / Aw) · √(H / ΔCp)
 *
 * The two flows are equal at 0.26 · (Ab / Aw) · √(H / ΔCp), so with the square root as remembered the rule picks
 * the weaker flow in a band when the areas differ; the simulation uses `combinedStronger` or `combinedQuadrature`.
 *
 * @param windSpeed [m/s]; ≥ 0
 * @param deltaTempK either sign [K]
 * @param stackAreaM2 Ab, effective area of low and high openings in series [m²]; ≥ 0
 * @param windAreaM2 Aw, effective area of windward and lee openings in series [m²]; > 0
 * @param heightM between low and high openings [m]; ≥ 0
 * @param pressureDifferenceCoefficient ΔCp [–]; > 0
 * @returns true: stack; false: wind
 * Source: BS 5925:1991, wind and temperature difference together; from memory, high confidence.
 */
export function stackGoverns(
  windSpeed: number,
  deltaTempK: number,
  stackAreaM2: number,
  windAreaM2: number,
  heightM: number,
  pressureDifferenceCoefficient: number,
): boolean {
  requireRange('windSpeed', windSpeed, 0, 100, 'm/s');
  requireRange('deltaTempK', deltaTempK, -100, 100, 'K');
  requireRange('stackAreaM2', stackAreaM2, 0, 1e4, 'm²');
  requireRange('windAreaM2', windAreaM2, 1e-6, 1e4, 'm²');
  requireRange('heightM', heightM, 0, 100, 'm');
  requireRange('pressureDifferenceCoefficient', pressureDifferenceCoefficient, 1e-6, 3, '');
  const limit =
    0.26 * Math.sqrt(stackAreaM2 / windAreaM2) * Math.sqrt(heightM / pressureDifferenceCoefficient);
  return windSpeed < limit * Math.sqrt(Math.abs(deltaTempK));
}

/**
 * Free area of a top- or bottom-hung flap: the gap along its free edge and the two triangles at its sides, and
 * never more than the hole itself.
 *
 *   A = min(w · h, 2 · w · h · sin(θ/2) + h² · sin θ)
 *
 * @param widthM along the hinge [m]; ≥ 0
 * @param heightM from the hinge to the free edge [m]; ≥ 0
 * @param openingDeg opening angle θ [°]; 0…90
 * @returns area [m²]
 * Source: own derivation from the geometry.
 */
export function hingedFlapArea(widthM: number, heightM: number, openingDeg: number): number {
  requireRange('widthM', widthM, 0, 100, 'm');
  requireRange('heightM', heightM, 0, 100, 'm');
  requireRange('openingDeg', openingDeg, 0, 90, '°');
  const angle = (openingDeg * Math.PI) / 180;
  const gap = 2 * widthM * heightM * Math.sin(angle / 2) + heightM * heightM * Math.sin(angle);
  return Math.min(widthM * heightM, gap);
}
