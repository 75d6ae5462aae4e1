// Leaves under glass: the light they take up, and what they exchange with the air. In: leaf area, the sun's height, the
// light taken up, the air's deficit. Out: shares of light, the leaves' heat conductance and their vapour conductance, all
// per m² of planted ground. With these a leaf's temperature follows from its balance, which Penman–Monteith solves by a line
// (greenhouse form of 1987, tomato coefficients; from memory, medium confidence). Pressures in Pa.
import { clamp01 } from './clamp.ts';
import { AIR_HEAT_CAPACITY, LATENT_HEAT, PSYCHROMETRIC_SEA_LEVEL } from './constants.ts';
import { exp } from './elementary.ts';

/** Extinction of diffuse light, and of long-wave, in a canopy per leaf area [–]; from memory, medium confidence. */
const DIFFUSE_EXTINCTION = 0.7;

/** Of leaves that face every way alike, their mean shadow along the beam by leaf area [–]: Ross 1981, closed form. */
const BEAM_EXTINCTION = 0.5;

/** Leaf resistance with open stomata, s/m. */
const OPEN_STOMATA = 82;

/** The deficit can close stomata by no more than this factor [–]. */
const MAX_DEFICIT_FACTOR = 5.8;

/** Stomata of a chilled leaf open by degrees from 0 °C up to this [°C]; common practice, no source. */
const OPEN_ABOVE_C = 5;

/** ρcp/(γ λ): a pascal of vapour as kilograms in a cubic metre [kg/(m³·Pa)]. */
const VAPOUR_PER_PA = AIR_HEAT_CAPACITY / (PSYCHROMETRIC_SEA_LEVEL * LATENT_HEAT);

/**
 * Diffuse light, or long-wave, that passes between the leaves: e^(−0.7 LAI).
 *
 * @param leafAreaIndex m² leaf per m² ground [–]; ≥ 0
 * @returns share, 0…1
 */
export function diffusePast(leafAreaIndex: number): number {
  return exp(-DIFFUSE_EXTINCTION * leafAreaIndex);
}

/**
 * Beam that passes between the leaves: e^(−0.5 LAI/sin h).
 *
 * @param leafAreaIndex [–]; ≥ 0
 * @param sinHeight sine of the sun's height h, 0…1; below 0.02 none passes but by a leafless bed
 * @returns share, 0…1
 */
export function beamPast(leafAreaIndex: number, sinHeight: number): number {
  return exp((-BEAM_EXTINCTION * leafAreaIndex) / Math.max(0.02, sinHeight));
}

/**
 * Internal resistance of the leaves: r = 82 · f(I) · f(VPD), I = Rn / (2·LAI);
 * f(I) = (I + 4.3)/(I + 0.54), f(VPD) = 1 + 4.3e-6·VPD² by day, 5.2e-6 at night, at most 5.8.
 *
 * The factor for leaf temperature, 1 + 0.023·(T − 24.5)², is left out as most users of the form do.
 * Every hour: no guards. No radiation means night; a negative deficit (dew) closes nothing.
 *
 * @param netRadiation absorbed by the canopy [W/m² ground]
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
 * Convection of the leaves, both sides: 2·LAI·ρcp/r_b.
 *
 * @param leafAreaIndex [–]; ≥ 0
 * @param boundaryResistance r_b [s/m]; > 0
 * @param airHeatCapacity ρcp [J/(m³·K)]; 1206 at sea level
 * @returns [W/(m² ground·K)]
 */
export function leafConvection(
  leafAreaIndex: number,
  boundaryResistance: number,
  airHeatCapacity: number,
): number {
  return (2 * leafAreaIndex * airHeatCapacity) / boundaryResistance;
}

/**
 * Vapour that the leaves give by the pascal between saturation at their temperature and the air:
 * 2·LAI·ρcp/(γ λ (r_b + r_i)); ρcp and γ are both in proportion to pressure, so that altitude leaves it as it is.
 * Every hour: no guards.
 *
 * @param leafAreaIndex [–]; ≥ 0
 * @param tempC of the leaves [°C]; chilled ones close by degrees from 5 °C to 0
 * @param boundaryResistance r_b [s/m]; > 0
 * @param inner r_i, from `leafResistance` [s/m]
 * @returns [kg/(m² ground·s·Pa)]
 */
export function leafVapour(
  leafAreaIndex: number,
  tempC: number,
  boundaryResistance: number,
  inner: number,
): number {
  const open = clamp01(tempC / OPEN_ABOVE_C);
  return (open * 2 * leafAreaIndex * VAPOUR_PER_PA) / (boundaryResistance + inner);
}
