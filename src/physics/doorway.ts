// Air that two zones exchange by their temperature difference: through an open doorway, or through a low and a
// high vent in the wall between them. In: opening, two air temperatures. Out: flow each way in m³/s (what goes one
// way comes back the other), and the heat and vapour that ride on it. Method: Bernoulli flow either side of the
// neutral level, uniform air in each zone (Brown and Solvason 1962; the form of BS 5925:1991).
import { GRAVITY, ZERO_CELSIUS_K } from './constants.ts';

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
