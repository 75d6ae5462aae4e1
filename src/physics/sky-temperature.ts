// How cold the sky is to look at: dew point, hour, pressure and cloud in; emissivity of the sky and the
// temperature of a black dome that radiates as much, out. Temperatures are air temperatures at screen height.
// Sources: Berdahl and Martin, Emissivity of clear skies, Solar Energy 32, 1984; Martin and Berdahl,
// Characteristics of infrared sky radiation, Solar Energy 33, 1984 (clouds).
import { STEFAN_BOLTZMANN, ZERO_CELSIUS_K } from './constants.ts';
import { cos, square } from './elementary.ts';
import { requireRange } from './require-range.ts';

/**
 * Share of the gap between the clear sky and a black one that a full opaque cover closes: cloud emissivity times
 * its nearness (0.9 for low cloud, 0.5 for middle and 0.2 for high, from memory, medium confidence). Weather
 * files count opaque cover, which is mostly low cloud.
 */
export const CLOUD_EFFECT = 0.9;

/**
 * Emissivity of the clear sky, hemispherical.
 *
 *   ε₀ = 0.711 + 0.56 (Td/100) + 0.73 (Td/100)² + 0.013 cos(2π h/24) + 0.00012 (P − 1000 hPa)
 *
 * @param dewPointC Td at screen height [°C]; −100…50 (fitted −13…24; held at −38, the curve's lowest point)
 * @param hourOfDay h, hours after midnight in solar time; local standard time will do
 * @param pressurePa station pressure [Pa]; 40 000…110 000
 * @returns at most 1
 */
export function clearSkyEmissivity(dewPointC: number, hourOfDay: number, pressurePa: number): number {
  requireRange('dewPointC', dewPointC, -100, 50, '°C');
  requireRange('hourOfDay', hourOfDay, 0, 24, 'h');
  requireRange('pressurePa', pressurePa, 40_000, 110_000, 'Pa');
  const dew = Math.max(dewPointC, -38) / 100;
  const hourTerm = 0.013 * cos((2 * Math.PI * hourOfDay) / 24);
  const pressureTerm = 0.00012 * (pressurePa / 100 - 1000);
  return Math.min(0.711 + 0.56 * dew + 0.73 * square(dew) + hourTerm + pressureTerm, 1);
}

/**
 * Emissivity of the sky with clouds.
 *
 *   ε = ε₀ + (1 − ε₀) · n · CLOUD_EFFECT
 *
 * @param dewPointC [°C]; −100…50
 * @param hourOfDay hours after midnight; 0…24
 * @param pressurePa [Pa]; 40 000…110 000
 * @param cloudFraction n, opaque sky cover; 0…1
 * @returns at most 1
 */
export function skyEmissivity(
  dewPointC: number,
  hourOfDay: number,
  pressurePa: number,
  cloudFraction: number,
): number {
  requireRange('cloudFraction', cloudFraction, 0, 1, '');
  const clear = clearSkyEmissivity(dewPointC, hourOfDay, pressurePa);
  return clear + (1 - clear) * cloudFraction * CLOUD_EFFECT;
}

/**
 * Temperature of the black dome that radiates as much as the sky.
 *
 *   T_sky = ε^¼ T_air
 *
 * @param dryBulbC air temperature [°C]; −90…60
 * @param emissivity of the sky; 0…1.2 (a measured one may pass 1 by a little)
 * @returns [°C]
 */
export function skyDomeTempC(dryBulbC: number, emissivity: number): number {
  requireRange('dryBulbC', dryBulbC, -90, 60, '°C');
  requireRange('emissivity', emissivity, 0, 1.2, '');
  return Math.sqrt(Math.sqrt(emissivity)) * (dryBulbC + ZERO_CELSIUS_K) - ZERO_CELSIUS_K;
}

/**
 * Sky temperature from what a weather file holds: skyEmissivity and skyDomeTempC at once.
 *
 * @param dryBulbC [°C]; −90…60
 * @param dewPointC [°C]; −100…50
 * @param hourOfDay hours after midnight; 0…24
 * @param pressurePa [Pa]; 40 000…110 000
 * @param cloudFraction opaque sky cover; 0…1
 * @returns [°C]
 */
export function skyTemperatureC(
  dryBulbC: number,
  dewPointC: number,
  hourOfDay: number,
  pressurePa: number,
  cloudFraction: number,
): number {
  return skyDomeTempC(dryBulbC, skyEmissivity(dewPointC, hourOfDay, pressurePa, cloudFraction));
}

/**
 * Sky temperature from measured long-wave irradiance.
 *
 *   T_sky = (L/σ)^¼
 *
 * @param skyLongwave L, from the sky on the horizontal [W/m²]; 20…700
 * @returns [°C]
 */
export function skyTemperatureFromLongwaveC(skyLongwave: number): number {
  requireRange('skyLongwave', skyLongwave, 20, 700, 'W/m²');
  return Math.sqrt(Math.sqrt(skyLongwave / STEFAN_BOLTZMANN)) - ZERO_CELSIUS_K;
}
