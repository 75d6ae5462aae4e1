// Moist air: vapour pressure, humidity ratio, relative humidity, density, enthalpy, each from the others.
// Ideal gases without enhancement factor. Relative humidity and dew point are over WATER at every temperature, as
// weather files count them; only the wet bulb, which freezes, goes by ASHRAE with ice.
// Sources: WMO-No. 8 (saturation), ASHRAE Fundamentals 2017 chapter 1 (mixture), ISO 13788 (vapour content).
import { GAS_CONSTANT_AIR, VAPOUR_MASS_RATIO, ZERO_CELSIUS_K } from './constants.ts';
import { exp, log } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** What the saturation formula was fitted for [°C], and the pieces of the curve that loops read. */
const LEAST_C = -45;
const MOST_C = 60;
const PER_KELVIN = 2;
const PIECES = (MOST_C - LEAST_C) * PER_KELVIN;
const CUBICS = cubics();

/**
 * Saturation vapour pressure over liquid water.
 *
 *   p = 611.2 · exp(17.62 t / (243.12 + t))
 *
 * @param tempC air temperature [°C]; −100…100, fitted from −45 to 60
 * @returns pressure [Pa]
 * Error: below 0.32 % of IAPWS-IF97 from 0 to 60 °C (largest near 27 °C; tests/physics/moist-air.test.ts); below 0 °C this is
 *   supercooled water, not ice, so frost forms slightly earlier than it says.
 * Source: WMO-No. 8, Guide to Instruments and Methods of Observation, annex on humidity formulae.
 */
export function saturationPressure(tempC: number): number {
  requireRange('tempC', tempC, -100, 100, '°C');
  return 611.2 * exp((17.62 * tempC) / (243.12 + tempC));
}

/** saturationPressure for loops that keep to its range themselves: no guard. */
function saturationPressureUnchecked(tempC: number): number {
  return 611.2 * exp((17.62 * tempC) / (243.12 + tempC));
}

/** Slope of `saturationPressure` [Pa/K] at an air temperature [°C]: its derivative. Every time step: no guards. */
export function saturationSlope(tempC: number): number {
  const span = 243.12 + tempC;
  return (saturationPressureUnchecked(tempC) * 17.62 * 243.12) / (span * span);
}

/** A temperature held to what the saturation formula was fitted for [°C]; rooms beyond it have other worries. */
export function heldToSaturation(tempC: number): number {
  return Math.min(MOST_C, Math.max(LEAST_C, tempC));
}

/**
 * saturationPressure for loops, at a temperature held to what the formula was fitted for.
 *
 * @param tempC [°C]; any
 * @returns [Pa]; within 2e-8 of the formula, by cubics that meet it and its slope at every half kelvin
 */
export function saturationPressureHeld(tempC: number): number {
  const place = (heldToSaturation(tempC) - LEAST_C) * PER_KELVIN;
  const piece = Math.min(PIECES - 1, place | 0);
  const u = place - piece;
  const at = 4 * piece;
  return CUBICS[at]! + u * (CUBICS[at + 1]! + u * (CUBICS[at + 2]! + u * CUBICS[at + 3]!));
}

function cubics(): Float64Array {
  const coefficients = new Float64Array(4 * PIECES);
  for (let piece = 0; piece < PIECES; piece++) {
    const fromC = LEAST_C + piece / PER_KELVIN;
    const toC = fromC + 1 / PER_KELVIN;
    const from = saturationPressureUnchecked(fromC);
    const rise = saturationPressureUnchecked(toC) - from;
    const slope = saturationSlope(fromC) / PER_KELVIN;
    const bend = 3 * rise - 2 * slope - saturationSlope(toC) / PER_KELVIN;
    coefficients.set([from, slope, bend, rise - slope - bend], 4 * piece);
  }
  return coefficients;
}

/**
 * Dew point over water: the inverse of saturationPressure.
 *
 * @param vapourPressure [Pa]; 0.001…101 000
 * @returns [°C]
 */
export function dewPointFromVapourPressure(vapourPressure: number): number {
  requireRange('vapourPressure', vapourPressure, 0.001, 101_000, 'Pa');
  return dewPointUnchecked(vapourPressure);
}

/** dewPointFromVapourPressure [Pa] → [°C] for loops that keep to its range themselves: no guard. */
export function dewPointUnchecked(vapourPressure: number): number {
  const x = log(vapourPressure / 611.2);
  return (243.12 * x) / (17.62 - x);
}

/**
 * Humidity ratio.
 *
 *   w = 0.621945 p/(P − p)
 *
 * @param vapourPressure p [Pa]; 0…0.9 P
 * @param pressure P of the air [Pa]; 20 000…120 000
 * @returns kg of vapour per kg of dry air
 */
export function humidityRatio(vapourPressure: number, pressure: number): number {
  requireRange('pressure', pressure, 20_000, 120_000, 'Pa');
  requireRange('vapourPressure', vapourPressure, 0, 0.9 * pressure, 'Pa');
  return humidityRatioUnchecked(vapourPressure, pressure);
}

/** humidityRatio, both [Pa] → [kg/kg], for loops that keep to its ranges themselves: no guard. */
export function humidityRatioUnchecked(vapourPressure: number, pressure: number): number {
  return (VAPOUR_MASS_RATIO * vapourPressure) / (pressure - vapourPressure);
}

/**
 * Vapour pressure from humidity ratio: the inverse of humidityRatio. Every time step: no guards.
 *
 * @param ratio w [kg/kg]; 0…5
 * @param pressure [Pa]; 20 000…120 000
 * @returns [Pa]
 */
export function vapourPressureFromRatio(ratio: number, pressure: number): number {
  return (ratio * pressure) / (VAPOUR_MASS_RATIO + ratio);
}

/**
 * Relative humidity over water.
 *
 * @param vapourPressure [Pa]; ≥ 0
 * @param tempC air temperature [°C]; −100…100
 * @returns fraction; above 1 means mist
 */
export function relativeHumidity(vapourPressure: number, tempC: number): number {
  requireRange('vapourPressure', vapourPressure, 0, 101_000, 'Pa');
  return vapourPressure / saturationPressure(tempC);
}

/**
 * Density of moist air.
 *
 *   ρ = (1 + w) P / (287.042 T (1 + w/0.621945))
 *
 * @param tempC [°C]; −100…100
 * @param ratio humidity ratio w [kg/kg]; 0…1
 * @param pressure [Pa]; 20 000…120 000
 * @returns [kg of moist air per m³]
 */
export function airDensity(tempC: number, ratio: number, pressure: number): number {
  requireRange('tempC', tempC, -100, 100, '°C');
  requireRange('ratio', ratio, 0, 1, 'kg/kg');
  requireRange('pressure', pressure, 20_000, 120_000, 'Pa');
  const volumePerDryKg =
    (GAS_CONSTANT_AIR * (tempC + ZERO_CELSIUS_K) * (1 + ratio / VAPOUR_MASS_RATIO)) / pressure;
  return (1 + ratio) / volumePerDryKg;
}
