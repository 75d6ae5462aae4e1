// Reference evapotranspiration outdoors, each published step on its own. In: weather of a day or an hour, the site.
// Out: what a well-watered 0.12 m grass cover would lose. Method and symbols: FAO Irrigation and Drainage Paper 56
// (1998), which works in kPa, MJ/m² and mm; these units are kept here. Do not use its wind terms in a sunspace: air there moves at
// 0.1 to 0.5 m/s. Longitudes are east positive, so west of Greenwich is negative.
import { requireRange } from './require-range.ts';

/** Solar constant, MJ/(m²·min): FAO-56. */
const SOLAR_CONSTANT = 0.082;

/** Stefan–Boltzmann constant, MJ/(m²·K⁴·day): FAO-56. */
const STEFAN_BOLTZMANN = 4.903e-9;

/** Albedo of the grass reference [–]: FAO-56. */
const GRASS_ALBEDO = 0.23;

const RADIANS = Math.PI / 180;

/** Air pressure [kPa] at an elevation [m; −450…9000]. FAO-56 equation 7. */
export function pressureKPa(elevationM: number): number {
  requireRange('elevationM', elevationM, -450, 9000, 'm');
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}

/** Psychrometric constant [kPa/K] at a pressure [kPa]. FAO-56 equation 8. */
export function psychrometricConstant(pressure: number): number {
  requireRange('pressure', pressure, 20, 120, 'kPa');
  return 0.665e-3 * pressure;
}

/** Saturation vapour pressure [kPa] at an air temperature [°C; −50…60]. FAO-56 equation 11. */
export function saturationKPa(tempC: number): number {
  requireRange('tempC', tempC, -50, 60, '°C');
  return 0.6108 * Math.exp((17.27 * tempC) / (tempC + 237.3));
}

/** Slope of the saturation curve [kPa/K] at an air temperature [°C; −50…60]. FAO-56 equation 13. */
export function saturationSlope(tempC: number): number {
  return (4098 * saturationKPa(tempC)) / (tempC + 237.3) ** 2;
}

/** Wind at 2 m [m/s] from wind measured at another height over grass [m/s, m; above 0.1 m]. FAO-56 equation 47. */
export function windAt2m(windSpeed: number, heightM: number): number {
  requireRange('windSpeed', windSpeed, 0, 100, 'm/s');
  requireRange('heightM', heightM, 0.1, 200, 'm');
  return (windSpeed * 4.87) / Math.log(67.8 * heightM - 5.42);
}

/** Mean of the saturation pressures of a day's extremes [kPa]. FAO-56 equation 12. */
export function dailySaturationKPa(maxTempC: number, minTempC: number): number {
  return (saturationKPa(maxTempC) + saturationKPa(minTempC)) / 2;
}

/** Vapour pressure [kPa] from a day's extremes of temperature [°C] and humidity [fractions 0–1]. FAO-56 equation 17. */
export function dailyVapourKPa(
  maxTempC: number,
  minTempC: number,
  maxHumidity: number,
  minHumidity: number,
): number {
  requireRange('maxHumidity', maxHumidity, 0, 1, '');
  requireRange('minHumidity', minHumidity, 0, 1, '');
  return (saturationKPa(minTempC) * maxHumidity + saturationKPa(maxTempC) * minHumidity) / 2;
}

/** Inverse relative distance to the sun [–] on a day of the year [1…366]. FAO-56 equation 23. */
export function inverseDistance(dayOfYear: number): number {
  requireRange('dayOfYear', dayOfYear, 1, 366, '');
  return 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
}

/** Solar declination [rad] on a day of the year [1…366]. FAO-56 equation 24. */
export function declination(dayOfYear: number): number {
  requireRange('dayOfYear', dayOfYear, 1, 366, '');
  return 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);
}

/** Hour angle of sunset [rad; 0 polar night…π polar day] at a latitude [°, north positive]. FAO-56 equation 25. */
export function sunsetAngle(latitudeDeg: number, dayOfYear: number): number {
  requireRange('latitudeDeg', latitudeDeg, -89.9, 89.9, '°');
  const cosine = -Math.tan(latitudeDeg * RADIANS) * Math.tan(declination(dayOfYear));
  return Math.acos(Math.min(Math.max(cosine, -1), 1));
}

/** Hours of daylight [h]. FAO-56 equation 34. */
export function daylightHours(latitudeDeg: number, dayOfYear: number): number {
  return (24 / Math.PI) * sunsetAngle(latitudeDeg, dayOfYear);
}

/** Extraterrestrial radiation on the flat over a day [MJ/m²]. FAO-56 equation 21. */
export function extraterrestrialDaily(latitudeDeg: number, dayOfYear: number): number {
  const sunset = sunsetAngle(latitudeDeg, dayOfYear);
  return extraterrestrialBetween(latitudeDeg, dayOfYear, -sunset, sunset);
}

/**
 * Extraterrestrial radiation on the flat over an hour [MJ/m²].
 *
 * @param latitudeDeg north positive [°]
 * @param dayOfYear [1…366]
 * @param midHour standard clock time at the middle of the hour [h]; 14.5 for 14–15 h
 * @param longitudeDeg east positive [°]
 * @param zoneMeridianDeg meridian of the clock, east positive [°]: 15 × the zone's hours
 * Source: FAO-56 equations 28 to 33. The part of the hour before sunrise or after sunset counts as nothing.
 */
export function extraterrestrialHourly(
  latitudeDeg: number,
  dayOfYear: number,
  midHour: number,
  longitudeDeg: number,
  zoneMeridianDeg: number,
): number {
  requireRange('midHour', midHour, 0, 24, 'h');
  const b = (2 * Math.PI * (dayOfYear - 81)) / 364;
  const seasonal = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
  const solarHour = midHour + (longitudeDeg - zoneMeridianDeg) / 15 + seasonal;
  const middle = (Math.PI / 12) * (solarHour - 12);
  const sunset = sunsetAngle(latitudeDeg, dayOfYear);
  const start = Math.max(middle - Math.PI / 24, -sunset);
  const end = Math.min(middle + Math.PI / 24, sunset);
  return start < end ? extraterrestrialBetween(latitudeDeg, dayOfYear, start, end) : 0;
}

function extraterrestrialBetween(latitudeDeg: number, dayOfYear: number, start: number, end: number): number {
  const [latitude, tilt] = [latitudeDeg * RADIANS, declination(dayOfYear)];
  const shape =
    (end - start) * Math.sin(latitude) * Math.sin(tilt) +
    Math.cos(latitude) * Math.cos(tilt) * (Math.sin(end) - Math.sin(start));
  return ((12 * 60) / Math.PI) * SOLAR_CONSTANT * inverseDistance(dayOfYear) * shape;
}

/** Solar radiation of a day [MJ/m²] from its hours of sunshine: (0.25 + 0.5 n/N) · Ra. FAO-56 equation 35. */
export function solarFromSunshine(sunshineHours: number, daylight: number, extraterrestrial: number): number {
  requireRange('daylight', daylight, 1e-6, 24, 'h');
  requireRange('sunshineHours', sunshineHours, 0, daylight, 'h');
  return (0.25 + (0.5 * sunshineHours) / daylight) * extraterrestrial;
}

/** Clear-sky radiation [MJ/m² in the period of `extraterrestrial`] at an elevation [m]. FAO-56 equation 37. */
export function clearSky(elevationM: number, extraterrestrial: number): number {
  return (0.75 + 2e-5 * elevationM) * extraterrestrial;
}

/** Net short-wave radiation of the grass reference: 0.77 · Rs, in the unit of Rs. FAO-56 equation 38. */
export function netShortwave(solar: number): number {
  return (1 - GRASS_ALBEDO) * solar;
}

/**
 * Net long-wave loss of the grass reference in a day [MJ/m²]; FAO-56 equation 39.
 *
 * @param maxTempC @param minTempC the day's extremes [°C]; give the hour's mean twice for an hour and divide by 24
 * @param vapour actual vapour pressure [kPa]
 * @param clearness Rs/Rso [–]; 0.33…1 is meaningful; at night that of the hours before sunset, else about 0.8 dry, 0.4–0.6 humid
 */
export function netLongwaveDaily(
  maxTempC: number,
  minTempC: number,
  vapour: number,
  clearness: number,
): number {
  requireRange('clearness', clearness, 0, 1, '');
  requireRange('vapour', vapour, 0, 20, 'kPa');
  const fourth = ((maxTempC + 273.16) ** 4 + (minTempC + 273.16) ** 4) / 2;
  return STEFAN_BOLTZMANN * fourth * (0.34 - 0.14 * Math.sqrt(vapour)) * (1.35 * clearness - 0.35);
}

/** Soil heat flux of an hour [MJ/m²]: a tenth of net radiation by day, half of it at night. FAO-56 equations 45, 46. */
export function soilHeatHourly(netRadiation: number, daytime: boolean): number {
  return (daytime ? 0.1 : 0.5) * netRadiation;
}

/** What the Penman–Monteith sum is made of; see `referenceDaily` and `referenceHourly` for the period. */
export interface ReferenceWeather {
  /** mean air temperature of the period [°C] */
  readonly tempC: number;
  /** at 2 m [m/s] */
  readonly windSpeed: number;
  /** saturation less actual vapour pressure [kPa] */
  readonly deficit: number;
  /** net radiation less soil heat flux in the period [MJ/m²] */
  readonly available: number;
  /** from `psychrometricConstant` [kPa/K] */
  readonly gamma: number;
}

/** Reference evapotranspiration of a day [mm]; radiation in MJ/(m²·day). FAO-56 equation 6. */
export function referenceDaily(weather: ReferenceWeather): number {
  return reference(weather, 900);
}

/** Reference evapotranspiration of an hour [mm]; radiation in MJ/(m²·h). FAO-56 equation 53. */
export function referenceHourly(weather: ReferenceWeather): number {
  return reference(weather, 37);
}

function reference(
  { tempC, windSpeed, deficit, available, gamma }: ReferenceWeather,
  numerator: number,
): number {
  requireRange('windSpeed', windSpeed, 0, 100, 'm/s');
  requireRange('available', available, -50, 50, 'MJ/m²');
  const slope = saturationSlope(tempC);
  const aerodynamic = gamma * (numerator / (tempC + 273)) * windSpeed * deficit;
  return (0.408 * slope * available + aerodynamic) / (slope + gamma * (1 + 0.34 * windSpeed));
}
