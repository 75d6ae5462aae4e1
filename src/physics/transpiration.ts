// Water that plants under glass give to the air, and the heat it takes. In: air temperature and vapour deficit, the
// radiation the canopy absorbs, leaf area. Out: latent heat in W per m² of planted floor, split into the part that
// follows the deficit and the part that does not, so that a humidity balance can take it implicitly.
// Method: Penman–Monteith with a leaf boundary layer (the greenhouse form of 1987, tomato coefficients); the
// Priestley–Taylor ceiling (1972). Formulas from memory, medium confidence; pressures in Pa.
import { AIR_HEAT_CAPACITY, PSYCHROMETRIC_SEA_LEVEL, SEA_LEVEL_PRESSURE } from './constants.ts';
import { saturationSlope } from './moist-air.ts';
import { requireRange } from './require-range.ts';

/** Extinction of short-wave radiation in a canopy per leaf area [–]. */
const CANOPY_EXTINCTION = 0.7;

/** Leaf resistance with open stomata, s/m. */
const OPEN_STOMATA = 82;

/** The deficit can close stomata by no more than this factor [–]. */
const MAX_DEFICIT_FACTOR = 5.8;

/**
 * Net radiation a canopy absorbs: G · (1 − e^(−0.7·LAI)) · (1 − albedo). Every time step: no guards.
 *
 * @param solar short-wave radiation on the canopy, under the glass [W/m²]; ≥ 0
 * @param leafAreaIndex m² leaf per m² floor [–]; ≥ 0
 * @param albedo of the canopy [–]; 0.2–0.25
 * @returns W per m² of planted floor
 */
export function canopyRadiation(solar: number, leafAreaIndex: number, albedo: number): number {
  return solar * (1 - Math.exp(-CANOPY_EXTINCTION * leafAreaIndex)) * (1 - albedo);
}

/**
 * Internal resistance of the leaves: r = 82 · f(I) · f(VPD), I = Rn / (2·LAI);
 * f(I) = (I + 4.3)/(I + 0.54), f(VPD) = 1 + 4.3e-6·VPD² by day, 5.2e-6 at night, at most 5.8.
 *
 * The factor for leaf temperature, 1 + 0.023·(T − 24.5)², is left out as most users of the form do.
 * Every time step: no guards. No radiation means night; a negative deficit (dew) closes nothing.
 *
 * @param netRadiation absorbed by the canopy [W/m² floor]
 * @param leafAreaIndex [–]; > 0
 * @param vpdPa vapour pressure deficit of the air [Pa]
 * @returns resistance [s/m]
 */
export function leafResistance(netRadiation: number, leafAreaIndex: number, vpdPa: number): number {
  const perLeaf = Math.max(netRadiation, 0) / (2 * leafAreaIndex);
  const deficit = Math.max(vpdPa, 0);
  const closing = 1 + (netRadiation > 0 ? 4.3e-6 : 5.2e-6) * deficit * deficit;
  return ((OPEN_STOMATA * (perLeaf + 4.3)) / (perLeaf + 0.54)) * Math.min(closing, MAX_DEFICIT_FACTOR);
}

/**
 * The part of canopy evaporation that radiation drives: Δ·Rn / D, D = Δ + γ·(1 + ri/rb).
 * Every time step: no guards.
 *
 * @param tempC air [°C]
 * @param netRadiation absorbed by the canopy [W/m² floor]
 * @param boundaryResistance rb [s/m]; > 0
 * @param leafResistanceSM ri from `leafResistance` [s/m]
 * @param pressurePa of the air [Pa]
 * @returns latent heat at zero deficit [W/m² floor]
 */
export function canopyConstant(
  tempC: number,
  netRadiation: number,
  boundaryResistance: number,
  leafResistanceSM: number,
  pressurePa: number = SEA_LEVEL_PRESSURE,
): number {
  const slope = saturationSlope(tempC);
  return (slope * netRadiation) / (slope + gammaTerm(boundaryResistance, leafResistanceSM, pressurePa));
}

/**
 * The part of canopy evaporation that the deficit drives, per pascal: 2·LAI·ρcp / (rb·D).
 * Every time step: no guards. Arguments as `canopyConstant`.
 *
 * @returns latent heat per pascal of deficit [W/(m² floor·Pa)]
 */
export function canopyPerPascal(
  tempC: number,
  leafAreaIndex: number,
  boundaryResistance: number,
  leafResistanceSM: number,
  pressurePa: number = SEA_LEVEL_PRESSURE,
): number {
  const airHeat = (AIR_HEAT_CAPACITY * pressurePa) / SEA_LEVEL_PRESSURE;
  const denominator = saturationSlope(tempC) + gammaTerm(boundaryResistance, leafResistanceSM, pressurePa);
  return (2 * leafAreaIndex * airHeat) / (boundaryResistance * denominator);
}

function gammaTerm(boundaryResistance: number, leafResistanceSM: number, pressurePa: number): number {
  return (
    ((PSYCHROMETRIC_SEA_LEVEL * pressurePa) / SEA_LEVEL_PRESSURE) *
    (1 + leafResistanceSM / boundaryResistance)
  );
}

/**
 * Priestley–Taylor: what radiation alone lets a wet cover evaporate, 1.26 · Δ/(Δ + γ) · Rn.
 *
 * @param tempC [°C]; −20…60
 * @param available net radiation less soil heat flux, any unit of flux
 * @returns latent heat in the unit of `available`
 */
export function priestleyTaylor(tempC: number, available: number): number {
  requireRange('tempC', tempC, -20, 60, '°C');
  const slope = saturationSlope(tempC);
  return (1.26 * slope * available) / (slope + PSYCHROMETRIC_SEA_LEVEL);
}
