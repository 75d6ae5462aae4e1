// Moist air: vapour pressure, humidity ratio, relative humidity, density, enthalpy, each from the others.
// Ideal gases without enhancement factor. Relative humidity and dew point are over WATER at every temperature, as
// weather files count them; only the wet bulb, which freezes, goes by ASHRAE with ice.
// Sources: WMO-No. 8 (saturation), ASHRAE Fundamentals 2017 chapter 1 (mixture), ISO 13788 (vapour content).
import { GAS_CONSTANT_AIR, SPECIFIC_HEAT_AIR, VAPOUR_MASS_RATIO, ZERO_CELSIUS_K } from './constants.ts';
import { requireRange } from './require-range.ts';
import { saturationPressureAshrae } from './saturation-pressure.ts';

/** Measured against IAPWS-IF97 saturation pressure from 0 to 60 °C in tests/physics/moist-air.test.ts. */
export const SATURATION_PRESSURE_MAX_REL_ERROR = 0.0032;

/** Specific heat of water vapour [J/(kg·K)], ASHRAE. */
export const SPECIFIC_HEAT_VAPOUR = 1860;

/** Heat of vaporisation of water at 0 °C [J/kg], ASHRAE. */
export const LATENT_HEAT_0C = 2_501_000;

/**
 * Saturation vapour pressure over liquid water.
 *
 *   p = 611.2 · exp(17.62 t / (243.12 + t))
 *
 * @param tempC air temperature [°C]; −100…100, fitted from −45 to 60
 * @returns pressure [Pa]
 * Error: below 0.32 % of IAPWS-IF97 from 0 to 60 °C (largest near 27 °C); below 0 °C this is
 *   supercooled water, not ice, so frost forms slightly earlier than it says.
 * Source: WMO-No. 8, Guide to Instruments and Methods of Observation, annex on humidity formulae.
 */
export function saturationPressure(tempC: number): number {
  requireRange('tempC', tempC, -100, 100, '°C');
  return 611.2 * Math.exp((17.62 * tempC) / (243.12 + tempC));
}

/** saturationPressure for loops that keep to its range themselves: no guard. */
export function saturationPressureUnchecked(tempC: number): number {
  return 611.2 * Math.exp((17.62 * tempC) / (243.12 + tempC));
}

/** Slope of `saturationPressure` [Pa/K] at an air temperature [°C]: its derivative. Every time step: no guards. */
export function saturationSlope(tempC: number): number {
  const span = 243.12 + tempC;
  return (saturationPressureUnchecked(tempC) * 17.62 * 243.12) / (span * span);
}

/** A temperature held to what the saturation formula was fitted for [°C]; rooms beyond it have other worries. */
export function heldToSaturation(tempC: number): number {
  return Math.min(60, Math.max(-45, tempC));
}

/** saturationPressure for loops, at a temperature held to what the formula was fitted for. */
export function saturationPressureHeld(tempC: number): number {
  return saturationPressureUnchecked(heldToSaturation(tempC));
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

/** dewPointFromVapourPressure for loops that keep to its range themselves: no guard. */
export function dewPointUnchecked(vapourPressure: number): number {
  const x = Math.log(vapourPressure / 611.2);
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
  return (VAPOUR_MASS_RATIO * vapourPressure) / (pressure - vapourPressure);
}

/**
 * Vapour pressure from humidity ratio: the inverse of humidityRatio.
 *
 * @param ratio w [kg/kg]; 0…5
 * @param pressure [Pa]; 20 000…120 000
 * @returns [Pa]
 */
export function vapourPressureFromRatio(ratio: number, pressure: number): number {
  requireRange('ratio', ratio, 0, 5, 'kg/kg');
  requireRange('pressure', pressure, 20_000, 120_000, 'Pa');
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
 * Enthalpy of moist air, 0 for dry air at 0 °C and for liquid water at 0 °C.
 *
 *   h = 1006 t + w (2 501 000 + 1860 t)
 *
 * @param tempC t [°C]; −100…100
 * @param ratio w [kg/kg]; 0…1
 * @returns [J per kg of dry air]
 * Source: ASHRAE Fundamentals 2017 chapter 1, equation 30.
 */
export function enthalpy(tempC: number, ratio: number): number {
  requireRange('tempC', tempC, -100, 100, '°C');
  requireRange('ratio', ratio, 0, 1, 'kg/kg');
  return SPECIFIC_HEAT_AIR * tempC + ratio * (LATENT_HEAT_0C + SPECIFIC_HEAT_VAPOUR * tempC);
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

/**
 * Heat of vaporisation of water.
 *
 * @param tempC of the water [°C]; −10…100
 * @returns [J/kg]: 2.501 MJ/kg at 0 °C, 2.454 at 20 °C
 * Source: FAO Irrigation and Drainage Paper 56, annex 3, equation 3-1.
 */
export function latentHeat(tempC: number): number {
  requireRange('tempC', tempC, -10, 100, '°C');
  return LATENT_HEAT_0C - 2361 * tempC;
}

/**
 * Thermodynamic wet-bulb temperature; below 0 °C of a bulb coated with ice.
 *
 * @param tempC dry bulb [°C]; −60…80
 * @param ratio humidity ratio [kg/kg]; 0 to saturation
 * @param pressure [Pa]; 20 000…120 000
 * @returns [°C], by halving to 1e-9 K
 * Source: ASHRAE Fundamentals 2017 chapter 1, equations 33 and 35, solved for the bulb.
 */
export function wetBulb(tempC: number, ratio: number, pressure: number): number {
  requireRange('tempC', tempC, -60, 80, '°C');
  requireRange('ratio', ratio, 0, 1, 'kg/kg');
  let low = -99;
  let high = tempC;
  while (high - low > 1e-9) {
    const bulb = (low + high) / 2;
    if (ratioAtWetBulb(tempC, bulb, pressure) > ratio) high = bulb;
    else low = bulb;
  }
  return (low + high) / 2;
}

/** Humidity ratio of air at dry bulb t over a bulb at t* [kg/kg]; negative for bulbs colder than possible. */
function ratioAtWetBulb(tempC: number, bulbC: number, pressure: number): number {
  const saturated = humidityRatio(saturationPressureAshrae(bulbC), pressure);
  const dry = 1.006 * (tempC - bulbC);
  return bulbC >= 0
    ? ((2501 - 2.326 * bulbC) * saturated - dry) / (2501 + 1.86 * tempC - 4.186 * bulbC)
    : ((2830 - 0.24 * bulbC) * saturated - dry) / (2830 + 1.86 * tempC - 2.1 * bulbC);
}
