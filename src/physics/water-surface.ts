/** Latent heat at about 30 °C surface, kJ/kg: the value the pool formula was fitted with. */
const POOL_LATENT_KJ_KG = 2443;

/** How much of the full formula applies [–]: undisturbed or residential 0.5, public pools 1. ASHRAE, from memory, high confidence. */
export const UNDISTURBED_WATER = 0.5;

/**
 * Evaporation from open water indoors.
 *
 *   w = activity · (pw − pa) · (0.089 + 0.0782 · V) / Y, pressures in kPa, Y = 2443 kJ/kg, w in kg/(m²·s)
 *
 * Every time step: no guards.
 *
 * @param saturatedPa vapour pressure at saturation at the water's temperature [Pa]
 * @param vapourPa vapour pressure of the air [Pa]
 * @param airSpeed over the water [m/s]; ≥ 0
 * @param activity 1 public pool, 0.5 undisturbed [–]; ≥ 0
 * @returns evaporation [g/(m²·s)]; negative is condensation on the water
 * Source: ASHRAE Handbook, HVAC Applications, natatoriums; from memory, high confidence.
 */
export function openWaterEvaporation(
  saturatedPa: number,
  vapourPa: number,
  airSpeed: number,
  activity: number,
): number {
  return (activity * (saturatedPa - vapourPa) * (0.089 + 0.0782 * airSpeed)) / POOL_LATENT_KJ_KG;
}
