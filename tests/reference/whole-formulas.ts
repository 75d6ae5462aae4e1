// Published formulas that the run takes in parts, put together from the run's own functions so that a test can hold the
// whole against its source.

import { AIR_HEAT_CAPACITY, LATENT_HEAT } from '../../src/physics/constants.ts';
import type { AngularTable } from '../../src/physics/glass-angular.ts';
import { glazingPath } from '../../src/physics/glass-u-value.ts';
import { saturationSlope } from '../../src/physics/moist-air.ts';
import {
  limitOnClass,
  type MouldClass,
  type MouldState,
  mouldStepUnder,
} from '../../src/physics/mould-index.ts';
import { perezCoefficients, type SkyLight, skyFromCoefficients } from '../../src/physics/sky-on-plane.ts';
import { leafConvection, leafResistance, leafVapour } from '../../src/physics/transpiration.ts';

/** U-value at the centre of a glazing [W/(m²·K)]; arguments as `glazingPath`. */
export function glazingUValue(...glazing: Parameters<typeof glazingPath>): number {
  return glazingPath(...glazing).uValue;
}

/** Solar heat gain coefficient τ + Σ N α at whole degrees of incidence or for diffuse light. */
export function solarHeatGain(
  table: AngularTable,
  inwardFractions: readonly number[],
  incidenceDeg: number | 'diffuse',
): number {
  const isDiffuse = incidenceDeg === 'diffuse';
  const absorbed = (pane: number) =>
    isDiffuse ? table.diffuseAbsorbed[pane]! : table.absorbed[pane]![incidenceDeg]!;
  const transmitted = isDiffuse ? table.diffuseTransmittance : table.transmittance[incidenceDeg]!;
  return inwardFractions.reduce((sum, inward, pane) => sum + inward * absorbed(pane), transmitted);
}

/** One step of a surface of a sensitivity class; arguments as `mouldStepUnder`. */
export function mouldStep(
  state: MouldState,
  tempC: number,
  humidity: number,
  dtHours: number,
  cls: MouldClass,
): number {
  return mouldStepUnder(limitOnClass(tempC, humidity, cls), state, tempC, humidity, dtHours, cls);
}

/**
 * Canopy evaporation λE [W/m² ground] from the leaves' own balance, net radiation = convection + evaporation, with the stomata
 * at the deficit given and, as Penman–Monteith has it, the saturation curve's tangent at the air in its place.
 */
export function canopyEvaporation(
  tempC: number,
  vpdPa: number,
  netRadiation: number,
  leafAreaIndex: number,
  boundaryResistance: number,
): number {
  const inner = leafResistance(netRadiation, leafAreaIndex, vpdPa);
  const convection = leafConvection(leafAreaIndex, boundaryResistance, AIR_HEAT_CAPACITY);
  const perPa = LATENT_HEAT * leafVapour(leafAreaIndex, tempC, boundaryResistance, inner);
  const slope = saturationSlope(tempC);
  const warmerK = (netRadiation - perPa * vpdPa) / (convection + perPa * slope);
  return perPa * (vpdPa + slope * warmerK);
}

/** Sky light on one plane in one hour [W/m²]; arguments as `perezCoefficients` and `skyFromCoefficients`. */
export function skyOnPlane(input: {
  readonly beamNormal: number;
  readonly diffuseHorizontal: number;
  readonly extraNormal: number;
  readonly zenithDeg: number;
  readonly cosIncidence: number;
  readonly tiltDeg: number;
}): SkyLight {
  const { beamNormal, diffuseHorizontal, extraNormal, zenithDeg, tiltDeg } = input;
  const { f1, f2 } = perezCoefficients(beamNormal, diffuseHorizontal, extraNormal, zenithDeg);
  const cosZenith = Math.cos((zenithDeg * Math.PI) / 180);
  return skyFromCoefficients(diffuseHorizontal, f1, f2, input.cosIncidence, cosZenith, tiltDeg);
}
