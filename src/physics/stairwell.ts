// Air that two storeys exchange through a hole in the floor between them: heavier air above lighter falls as lighter air
// rises through the same hole. In: hole, floor, two air temperatures. Out: flow each way in m³/s. While the upper air is
// the warmer nothing drives it, and only what people and doors stir passes.
// Source: M. Epstein, Buoyancy-driven exchange flow through small openings in horizontal partitions, J. Heat Transfer 110
// (1988); from memory, medium confidence. Measured with brine and water in round holes; 10 % scatter in the source.
import { GRAVITY, ZERO_CELSIUS_K } from './constants.ts';
import { power, square } from './elementary.ts';

/** What passes however warm the upper air is [m³/s each m² of hole], 10 m³/h: common practice, no source. */
const STIRRED_M_S = 10 / 3600;
/** Below this difference the exchange runs straight to nothing, so that its slope has an end [K]. */
export const STRAIGHT_BELOW_K = 0.05;

/**
 * Exchange by the hole's shape, as a Froude number: Q = Fr · √(g ΔT/T̄ · D⁵).
 *
 *   Fr = 0.055 [1 + 400 r³]^⅙ / [1 + 0.00527 (1 + 400 r³)^½ (r⁶ + 117 r²)^¾]^⅓, r = L/D
 *
 * @param slenderness thickness of the floor over the hole's diameter, r [–]; 0…10, the source's range
 * @returns Fr [–]; 0.055 for a thin floor, 0.095 at most near r = 0.6, falling beyond
 */
export function stairFroude(slenderness: number): number {
  const r = slenderness;
  const tall = 1 + 400 * power(r, 3);
  const slowed = 1 + 0.00527 * Math.sqrt(tall) * power(power(r, 6) + 117 * square(r), 0.75);
  return (0.055 * power(tall, 1 / 6)) / power(slowed, 1 / 3);
}

/** Flow by the square root of kelvins through a hole of that area, as a round one [m³/(s·√K)] at a mean of 20 °C. */
export function stairConductance(areaM2: number, thicknessM: number): number {
  const diameterM = Math.sqrt((4 * areaM2) / Math.PI);
  return (
    stairFroude(thicknessM / diameterM) * Math.sqrt((GRAVITY * power(diameterM, 5)) / (20 + ZERO_CELSIUS_K))
  );
}

/**
 * Exchange through a hole between storeys, each direction. Every time step: no guards.
 *
 * @param conductance from `stairConductance` [m³/(s·√K)]
 * @param areaM2 of the hole [m²]
 * @param lowerC air below [°C]
 * @param upperC air above [°C]
 * @returns flow up, equal to the flow down [m³/s]
 */
export function stairExchange(conductance: number, areaM2: number, lowerC: number, upperC: number): number {
  const warmerK = lowerC - upperC;
  const stirred = STIRRED_M_S * areaM2;
  return warmerK <= 0 ? stirred : stirred + conductance * rootOfKelvins(warmerK);
}

/**
 * √ΔT with a straight end below 0.05 K, so that its slope stays finite at none.
 *
 * @param kelvins ΔT [K]; ≥ 0
 * @returns [√K]
 */
export function rootOfKelvins(kelvins: number): number {
  return kelvins < STRAIGHT_BELOW_K ? kelvins / Math.sqrt(STRAIGHT_BELOW_K) : Math.sqrt(kelvins);
}
