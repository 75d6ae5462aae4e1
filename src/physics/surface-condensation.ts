// Dew on cold glass. In: the convective film, vapour in the air and at saturation over the pane. Out: water that
// settles, and how much a pane holds before it runs. Method: the Lewis relation between heat and
// mass transfer (from memory, high confidence). Absolute humidity in g/m³; a gain to the pane is positive.

import { AIR_HEAT_CAPACITY } from './constants.ts';

/** Lewis number of vapour in air to the power 2/3 [–]. */
const LEWIS_FACTOR = 0.92;

/** Water an upright pane holds before it runs, g/m²: 50–100; from memory, low confidence, a default to edit. */
export const PANE_FILM_G_M2 = 75;

/**
 * Mass-transfer coefficient that goes with a convective heat-transfer coefficient: β = hc / (ρcp · Le^(2/3)).
 * Every time step: no guards.
 *
 * @param convection hc at the surface [W m⁻² K⁻¹]; ≥ 0, without its radiant part
 * @param airHeatCapacity ρcp [J/(m³·K)]; 1206 at sea level, less in proportion to air pressure at altitude
 * @returns β [m/s]
 * Source: Lewis relation, as ISO 13788 and heat-transfer textbooks use it.
 */
export function massTransferCoefficient(
  convection: number,
  airHeatCapacity: number = AIR_HEAT_CAPACITY,
): number {
  return convection / (airHeatCapacity * LEWIS_FACTOR);
}

/**
 * Water that settles on a surface: g = β · max(v_air − v_sat, 0). Every time step: no guards.
 *
 * @param convection hc at the surface [W m⁻² K⁻¹]; ≥ 0
 * @param vapourAir absolute humidity of the room [g/m³]
 * @param vapourSaturated absolute humidity at saturation at the surface temperature [g/m³]
 * @param airHeatCapacity as `massTransferCoefficient`
 * @returns condensation [g/(m²·s)]; never negative
 */
export function condensationRate(
  convection: number,
  vapourAir: number,
  vapourSaturated: number,
  airHeatCapacity: number = AIR_HEAT_CAPACITY,
): number {
  return massTransferCoefficient(convection, airHeatCapacity) * Math.max(vapourAir - vapourSaturated, 0);
}
