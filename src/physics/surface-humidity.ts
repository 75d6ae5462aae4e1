// Damp at the inside face of a wall: which surface is cold enough for mould or for dew. In: air and surface
// temperatures, vapour pressures, U-values. Out: the temperature factor fRsi a detail has and the one it needs, month by
// month. Method: ISO 13788 (hygrothermal performance of building components), formulas from memory, high confidence, but
// with the saturation of moist-air.ts (within 0.2 % of the standard's above 0 °C). Relative humidity is a fraction 0–1, over water.
import { GAS_CONSTANT_VAPOUR, ZERO_CELSIUS_K } from './constants.ts';
import { dewPointFromVapourPressure } from './moist-air.ts';
import { requireRange } from './require-range.ts';

/** Surface humidity above which a month counts as a risk of mould [–]: ISO 13788; frames are judged at 1 (condensation). */
export const MOULD_SURFACE_HUMIDITY = 0.8;

/** Inside surface resistance for the mould check of opaque parts, m²K/W: ISO 13788 (corners and furniture included). */
export const MOULD_CHECK_RSI = 0.25;

/** Inside surface resistance for windows and doors, m²K/W: ISO 13788. */
export const WINDOW_CHECK_RSI = 0.13;

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

/** Temperature of a surface from its factor: Te + fRsi · (Ti − Te) [°C]. Every time step: no guards. */
export function surfaceTemperature(factor: number, tempInC: number, tempOutC: number): number {
  return tempOutC + factor * (tempInC - tempOutC);
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
  return dewPointFromVapourPressure(vapourPressurePa / limitHumidity);
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
