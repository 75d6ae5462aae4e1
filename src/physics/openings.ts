// Air through openings somebody made on purpose: windows, vents, flaps. In: areas, heights, air temperatures, wind.
// Out: volume flow in m³/s, always a magnitude: the same air goes in as out, and swapping inside and outside
// changes its direction only. Method: BS 5925:1991 (code of practice, natural ventilation) and ASHRAE Fundamentals,
// ventilation and infiltration; both from memory, high confidence. Functions marked "every time step" have no guards.
import { GRAVITY, ZERO_CELSIUS_K } from './constants.ts';

/** Discharge coefficient of a sharp-edged opening [–]: BS 5925. ASHRAE uses 0.65 where air does not mix at the edge. */
export const SHARP_EDGE_DISCHARGE = 0.61;

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
