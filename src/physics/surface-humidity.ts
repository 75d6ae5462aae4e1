// Damp at the inside face of a wall: which surface is cold enough for mould or for dew. In: air and surface
// temperatures, vapour pressures, U-values. Out: dew point, surface humidity, the temperature factor fRsi a detail has
// and the one it needs, month by month. Method: ISO 13788 (hygrothermal performance of building components), formulas
// from memory, high confidence. Relative humidity is a fraction 0–1; below 0 °C it counts over ice.
import { GAS_CONSTANT_VAPOUR, ZERO_CELSIUS_K } from './constants.ts';
import { requireRange } from './require-range.ts';

/** Surface humidity above which a month counts as a risk of mould [–]: ISO 13788; frames are judged at 1 (condensation). */
export const MOULD_SURFACE_HUMIDITY = 0.8;

/** Inside surface resistance for the mould check of opaque parts, m²K/W: ISO 13788 (corners and furniture included). */
export const MOULD_CHECK_RSI = 0.25;

/** Inside surface resistance for windows and doors, m²K/W: ISO 13788. */
export const WINDOW_CHECK_RSI = 0.13;

/** Least temperature factors national rules ask of details [–]; from memory, high confidence. Local codes decide. */
export const NATIONAL_MINIMUM_FACTORS: Readonly<Record<'germany' | 'netherlands' | 'unitedKingdom', number>> =
  {
    germany: 0.7,
    netherlands: 0.65,
    unitedKingdom: 0.75,
  };

/**
 * Saturation vapour pressure, over water from 0 °C up and over ice below.
 *
 *   p = 610.5 · exp(17.269 t / (237.3 + t)), below 0 °C 610.5 · exp(21.875 t / (265.5 + t))
 *
 * Every time step: no guards. Good from −40 to 60 °C.
 *
 * @param tempC temperature of the air or the surface [°C]
 * @returns pressure [Pa]
 * Source: ISO 13788:2012, annex on water vapour relations.
 */
export function isoSaturationPressure(tempC: number): number {
  return tempC >= 0
    ? 610.5 * Math.exp((17.269 * tempC) / (237.3 + tempC))
    : 610.5 * Math.exp((21.875 * tempC) / (265.5 + tempC));
}

/**
 * Dew point, frost point below 0 °C: the temperature whose `isoSaturationPressure` is the pressure given.
 *
 * @param vapourPressurePa [Pa]; 1…20 000
 * @returns temperature [°C]
 * Source: ISO 13788:2012, the inverse of its saturation formula.
 */
export function isoDewPoint(vapourPressurePa: number): number {
  requireRange('vapourPressurePa', vapourPressurePa, 1, 20000, 'Pa');
  const x = Math.log(vapourPressurePa / 610.5);
  return x >= 0 ? (237.3 * x) / (17.269 - x) : (265.5 * x) / (21.875 - x);
}

/**
 * Mass of vapour in a cubic metre: v = 1000 · p / (R · T), R of vapour. Every time step: no guards.
 *
 * @param vapourPressurePa [Pa]
 * @param tempC of the air [°C]
 * @returns absolute humidity [g/m³]
 */
export function vapourDensity(vapourPressurePa: number, tempC: number): number {
  return (1000 * vapourPressurePa) / (GAS_CONSTANT_VAPOUR * (tempC + ZERO_CELSIUS_K));
}

/** Inverse of `vapourDensity`: absolute humidity [g/m³] at tempC [°C] to vapour pressure [Pa]. Every time step: no guards. */
export function densityPressure(vapour: number, tempC: number): number {
  return (vapour * GAS_CONSTANT_VAPOUR * (tempC + ZERO_CELSIUS_K)) / 1000;
}

/** Temperature of a surface from its factor: Te + fRsi · (Ti − Te) [°C]. Every time step: no guards. */
export function surfaceTemperature(factor: number, tempInC: number, tempOutC: number): number {
  return tempOutC + factor * (tempInC - tempOutC);
}

/**
 * Humidity of the air that lies against a surface: p / psat(surface), not capped: above 1 it condenses.
 * Every time step: no guards.
 *
 * @param vapourPressurePa of the room air [Pa]
 * @param surfaceTempC [°C]
 * @returns relative humidity [–], 1 saturated
 */
export function surfaceHumidity(vapourPressurePa: number, surfaceTempC: number): number {
  return vapourPressurePa / isoSaturationPressure(surfaceTempC);
}

/**
 * Temperature factor of a plain area: fRsi = (1/U − Rsi) / (1/U) = 1 − U · Rsi. Corners and bridges are colder.
 *
 * @param uValue of the construction with its usual films [W m⁻² K⁻¹]; 0…7
 * @param rsi surface resistance of the check [m²K/W]; `MOULD_CHECK_RSI` opaque, `WINDOW_CHECK_RSI` glazed
 * @returns fRsi [–]
 * Source: ISO 13788:2012.
 */
export function plainFactor(uValue: number, rsi: number): number {
  requireRange('uValue', uValue, 0, 7, 'W m⁻² K⁻¹');
  requireRange('rsi', rsi, 0.04, 0.5, 'm²K/W');
  return 1 - uValue * rsi;
}

/**
 * Temperature at which the room's vapour makes a surface as damp as the limit.
 *
 * @param vapourPressurePa of the room air [Pa]; > 0
 * @param limitHumidity surface humidity allowed [–]; 0.1…1
 * @returns lowest allowed surface temperature [°C]
 */
export function leastSurfaceTemperature(vapourPressurePa: number, limitHumidity: number): number {
  requireRange('limitHumidity', limitHumidity, 0.1, 1, '');
  return isoDewPoint(vapourPressurePa / limitHumidity);
}

/**
 * Temperature factor a detail needs: (Tsi,min − Te) / (Ti − Te).
 *
 * @param tempInC [°C]
 * @param tempOutC [°C]; below tempInC, else there is no cold side and the answer is 0
 * @param vapourPressurePa of the room air [Pa]; > 0
 * @param limitHumidity 0.8 for mould, 1 for condensation [–]; 0.1…1
 * @returns fRsi,min [–]; at most 0 when no surface can be too cold; above 1 when no insulation helps, only drier air
 * Source: ISO 13788:2012, design to avoid critical surface humidity.
 */
export function neededFactor(
  tempInC: number,
  tempOutC: number,
  vapourPressurePa: number,
  limitHumidity: number,
): number {
  requireRange('tempInC', tempInC, -30, 60, '°C');
  requireRange('tempOutC', tempOutC, -60, 60, '°C');
  if (tempOutC >= tempInC) return 0;
  return (leastSurfaceTemperature(vapourPressurePa, limitHumidity) - tempOutC) / (tempInC - tempOutC);
}

/** One month of a surface check: mean air temperatures [°C] and the room's mean vapour pressure [Pa]. */
export interface SurfaceMonth {
  readonly tempInC: number;
  readonly tempOutC: number;
  readonly vapourPressurePa: number;
}

/** Needed factor of each month [–], the highest of them and the month it falls in (0 = the first given). */
export interface SurfaceCheck {
  readonly neededFactors: readonly number[];
  readonly criticalFactor: number;
  readonly criticalMonth: number;
}

/**
 * The monthly check: the factor each month asks for and the critical month.
 *
 * @param months at least one, usually twelve
 * @param limitHumidity 0.8 for mould, 1 for condensation [–]
 * Source: ISO 13788:2012, calculation of the critical month.
 */
export function checkMonths(months: readonly SurfaceMonth[], limitHumidity: number): SurfaceCheck {
  requireRange('months.length', months.length, 1, 120, '');
  const neededFactors = months.map((m) =>
    neededFactor(m.tempInC, m.tempOutC, m.vapourPressurePa, limitHumidity),
  );
  const criticalFactor = Math.max(...neededFactors);
  return { neededFactors, criticalFactor, criticalMonth: neededFactors.indexOf(criticalFactor) };
}
