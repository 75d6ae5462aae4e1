// Another way to beam irradiance from global alone, kept beside the diffuse split as a second opinion.
// Source: Maxwell, A quasi-physical model for converting hourly global horizontal to direct normal insolation,
// SERI/TR-215-3087, 1987 (DISC).
import { SEA_LEVEL_PRESSURE, SOLAR_CONSTANT } from './constants.ts';
import { extraterrestrialNormal } from './extraterrestrial.ts';
import { requireRange } from './require-range.ts';

/** The model's own solar constant [W/m²]. */
const DISC_SOLAR_CONSTANT = 1370;

/**
 * Beam normal irradiance from global horizontal.
 *
 * @param global [W/m²]; ≥ 0
 * @param zenithDeg true zenith angle [°]; 0…180
 * @param dayOfYear 1…366
 * @param pressurePa station pressure [Pa]; 50 000…110 000
 * @returns [W/m²]; 0 when the sun is lower than 3°
 */
export function discBeamNormal(
  global: number,
  zenithDeg: number,
  dayOfYear: number,
  pressurePa: number,
): number {
  requireRange('global', global, 0, Number.POSITIVE_INFINITY, 'W/m²');
  requireRange('zenithDeg', zenithDeg, 0, 180, '°');
  requireRange('pressurePa', pressurePa, 50_000, 110_000, 'Pa');
  if (zenithDeg > 87) return 0;
  const extra = (extraterrestrialNormal(dayOfYear) * DISC_SOLAR_CONSTANT) / SOLAR_CONSTANT;
  const cosZenith = Math.cos((zenithDeg * Math.PI) / 180);
  const kt = Math.min(global / (extra * Math.max(cosZenith, 0.065)), 1);
  // Kasten 1966, the air mass the model was fitted with.
  const airMass = Math.min(
    (1 / (cosZenith + 0.15 * (93.885 - zenithDeg) ** -1.253)) * (pressurePa / SEA_LEVEL_PRESSURE),
    12,
  );
  const [a, b, c] = kt <= 0.6 ? cloudyTerms(kt) : clearTerms(kt);
  const clearest =
    0.866 - 0.122 * airMass + 0.0121 * airMass ** 2 - 0.000653 * airMass ** 3 + 1.4e-5 * airMass ** 4;
  return Math.max((clearest - (a + b * Math.exp(c * airMass))) * extra, 0);
}

function cloudyTerms(kt: number): readonly [number, number, number] {
  return [
    0.512 - 1.56 * kt + 2.286 * kt ** 2 - 2.222 * kt ** 3,
    0.37 + 0.962 * kt,
    -0.28 + 0.932 * kt - 2.048 * kt ** 2,
  ];
}

function clearTerms(kt: number): readonly [number, number, number] {
  return [
    -5.743 + 21.77 * kt - 27.49 * kt ** 2 + 11.56 * kt ** 3,
    41.4 - 118.5 * kt + 66.05 * kt ** 2 + 31.9 * kt ** 3,
    -47.01 + 184.2 * kt - 222 * kt ** 2 + 73.81 * kt ** 3,
  ];
}
