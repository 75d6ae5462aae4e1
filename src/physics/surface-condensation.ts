// Dew on cold glass. In: the convective film, vapour in the air and at saturation over the pane. Out: water that
// settles, its latent heat, and how much a pane holds before it runs. Method: the Lewis relation between heat and
// mass transfer (from memory, high confidence). Absolute humidity in g/m³; a gain to the pane is positive.

import { AIR_HEAT_CAPACITY } from './constants.ts';

/** Lewis number of vapour in air to the power 2/3 [–]. */
const LEWIS_FACTOR = 0.92;

/** Latent heat given up by vapour that condenses on a cold pane, J/g: 2.50 MJ/kg at 0 °C. */
export const CONDENSATION_HEAT = 2500;

/** Water an upright pane holds before it runs, g/m²: 50–100; from memory, low confidence, a default to edit. */
export const PANE_FILM_G_M2 = 75;

/** Slope below which a pane drips instead of running off, ° from flat: 20–25; from memory, low confidence. */
export const DRIPPING_TILT_DEG = 22;

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
 * Water that settles on a surface: g = β · max(v_air − v_sat, 0). Evaporation of what already lies there is the same
 * coefficient with the sign turned, `filmEvaporation`. Every time step: no guards.
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

/**
 * Water a wet surface gives back to drier air: β · max(v_sat − v_air, 0), while there is any film left.
 * Every time step: no guards. Same arguments and unit as `condensationRate`.
 */
export function filmEvaporation(
  convection: number,
  vapourAir: number,
  vapourSaturated: number,
  airHeatCapacity: number = AIR_HEAT_CAPACITY,
): number {
  return massTransferCoefficient(convection, airHeatCapacity) * Math.max(vapourSaturated - vapourAir, 0);
}

/** Latent heat a pane gains [W/m²] from condensation [g/(m²·s)]. Every time step: no guards. */
export function latentGain(condensation: number): number {
  return condensation * CONDENSATION_HEAT;
}
