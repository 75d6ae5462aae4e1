// Air that two zones exchange by their temperature difference: through an open doorway, or through a low and a
// high vent in the wall between them. In: opening, two air temperatures. Out: flow each way in m³/s (what goes one
// way comes back the other), and the heat and vapour that ride on it. Method: Bernoulli flow either side of the
// neutral level, uniform air in each zone (Brown and Solvason 1962; the form of BS 5925:1991).
import { GRAVITY, ZERO_CELSIUS_K } from './constants.ts';
import { effectiveArea, stackFlow } from './openings.ts';

/**
 * Exchange through a doorway, each direction.
 *
 *   Q = Cd/3 · W · H^1.5 · √(g · |T₁ − T₂| / T̄)
 *
 * Every time step: no guards.
 *
 * @param widthM clear width, times the share of it that stands open [m]; ≥ 0
 * @param heightM clear height [m]; ≥ 0
 * @param temp1C air of one zone [°C]
 * @param temp2C air of the other [°C]
 * @param dischargeCoefficient [–]; 0.61 sharp-edged, 0.4–0.8 measured in houses at 1 to 2.5 K
 * @returns flow one way, equal to the flow back [m³/s]
 * Source: Brown and Solvason 1962; from memory, high confidence. The measured range: medium confidence.
 */
export function doorwayExchange(
  widthM: number,
  heightM: number,
  temp1C: number,
  temp2C: number,
  dischargeCoefficient: number,
): number {
  const meanTempK = 0.5 * (temp1C + temp2C) + ZERO_CELSIUS_K;
  return (
    (dischargeCoefficient / 3) *
    widthM *
    heightM *
    Math.sqrt((GRAVITY * heightM * Math.abs(temp1C - temp2C)) / meanTempK)
  );
}

/**
 * Exchange through a low and a high vent in the same wall between two zones: warm air one way through the high one,
 * the same volume back through the low one. Every time step: no guards.
 *
 * @param lowAreaM2 free area of the low vent [m²]; ≥ 0
 * @param highAreaM2 free area of the high vent [m²]; ≥ 0
 * @param heightM between their centres [m]; ≥ 0
 * @param temp1C air of one zone [°C]
 * @param temp2C air of the other [°C]
 * @param dischargeCoefficient [–]; 0.61 sharp-edged
 * @returns flow one way, equal to the flow back [m³/s]
 * Source: BS 5925:1991, two openings at different heights.
 */
export function pairedVentExchange(
  lowAreaM2: number,
  highAreaM2: number,
  heightM: number,
  temp1C: number,
  temp2C: number,
  dischargeCoefficient: number,
): number {
  return stackFlow(effectiveArea(lowAreaM2, highAreaM2), heightM, temp1C, temp2C, dischargeCoefficient);
}

/**
 * Heat an exchange carries from zone 1 to zone 2: ρcp · Q · (T₁ − T₂). Every time step: no guards.
 *
 * @param flowM3S flow each way [m³/s]; ≥ 0
 * @param temp1C air of the giving zone [°C]
 * @param temp2C air of the taking zone [°C]
 * @param airHeatCapacity ρcp of the air [J/(m³·K)]; `AIR_HEAT_CAPACITY` at sea level, 20 °C
 * @returns heat into zone 2, negative when it is the warmer [W]
 */
export function exchangeHeat(
  flowM3S: number,
  temp1C: number,
  temp2C: number,
  airHeatCapacity: number,
): number {
  return airHeatCapacity * flowM3S * (temp1C - temp2C);
}

/**
 * Vapour an exchange carries from zone 1 to zone 2: Q · (v₁ − v₂). Every time step: no guards.
 *
 * @param flowM3S flow each way [m³/s]; ≥ 0
 * @param vapour1 absolute humidity of the giving zone [g/m³]
 * @param vapour2 absolute humidity of the taking zone [g/m³]
 * @returns vapour into zone 2, negative when it is the damper [g/s]
 */
export function exchangeVapour(flowM3S: number, vapour1: number, vapour2: number): number {
  return flowM3S * (vapour1 - vapour2);
}
