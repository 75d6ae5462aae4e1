// Water that leaves open water and wet soil indoors. In: surface and air vapour pressures, air speed, how dry the soil
// is. Out: evaporation. Methods: the natatorium form of the ASHRAE Handbook for open water; for soil a wet-surface
// exchange cut back by the drying scheme of FAO-56. Evaporation is positive, in g/(m²·s) unless a name says otherwise.
import { requireRange } from './require-range.ts';
import { filmEvaporation } from './surface-condensation.ts';

/** Latent heat at about 30 °C surface, kJ/kg: the value the pool formula was fitted with. */
const POOL_LATENT_KJ_KG = 2443;

/** How much of the full formula applies [–]: undisturbed or residential 0.5, public pools 1. ASHRAE, from memory, high confidence. */
export const UNDISTURBED_WATER = 0.5;

/** What mulch or watering from below leaves of a bare bed's evaporation [–]: 0.2–0.4; from memory, medium confidence. */
export const MULCHED_BED = 0.3;

/** Soil, water a bed gives up at full rate (REW) and in all from the top 0.1–0.15 m (TEW) [mm]: middles of FAO-56 table 19. */
export interface SoilWater {
  readonly soil: string;
  readonly readilyMm: number;
  readonly totalMm: number;
}

/** Middles of the ranges of FAO-56 table 19; from memory, medium confidence. */
export const SOIL_WATER: readonly SoilWater[] = [
  { soil: 'sand', readilyMm: 4.5, totalMm: 9 },
  { soil: 'loamy sand', readilyMm: 6, totalMm: 11.5 },
  { soil: 'sandy loam', readilyMm: 8, totalMm: 17.5 },
  { soil: 'loam', readilyMm: 9, totalMm: 19 },
  { soil: 'silt loam', readilyMm: 9.5, totalMm: 21.5 },
  { soil: 'clay', readilyMm: 10, totalMm: 25.5 },
];

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

/**
 * How much of a wet bed's evaporation is left as it dries: 1 until the readily evaporable water is gone, then falling
 * in a straight line to 0. Every time step: no guards.
 *
 * @param depletedMm water lost since the last watering [mm]; ≥ 0
 * @param readilyMm REW [mm]
 * @param totalMm TEW [mm]; above readilyMm
 * @returns reduction [–]; 0…1
 * Source: FAO-56, equation 74 (Kr).
 */
export function soilDrying(depletedMm: number, readilyMm: number, totalMm: number): number {
  if (depletedMm <= readilyMm) return 1;
  return Math.max((totalMm - depletedMm) / (totalMm - readilyMm), 0);
}

/**
 * Evaporation from a soil surface: a wet surface's exchange through its convective film, cut back by drying.
 * Every time step: no guards.
 *
 * @param convection hc over the bed [W m⁻² K⁻¹]; ≥ 0
 * @param vapourAir absolute humidity of the air [g/m³]
 * @param vapourSaturated at saturation at the soil surface [g/m³]
 * @param reduction from `soilDrying`, times mulch [–]; 0…1
 * @returns evaporation [g/(m²·s)]; never negative
 */
export function soilEvaporation(
  convection: number,
  vapourAir: number,
  vapourSaturated: number,
  reduction: number,
): number {
  return reduction * filmEvaporation(convection, vapourAir, vapourSaturated);
}

/**
 * Most a bare wet bed loses in a day: 1.15 of reference evapotranspiration, FAO-56 gives 1.1–1.2.
 *
 * @param referenceMm reference evapotranspiration at the bed [mm/day]; 0…15
 * @returns evaporation [mm/day], the same number in kg/m²
 */
export function wetBedDaily(referenceMm: number): number {
  requireRange('referenceMm', referenceMm, 0, 15, 'mm/day');
  return 1.15 * referenceMm;
}
