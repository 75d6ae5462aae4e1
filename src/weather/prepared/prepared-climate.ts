// A typical year made ready for many runs: all that depends on the climate alone, computed once. Sun directions,
// sky brightness, sky temperature, moist-air state, ground reflectance and what the soil needs. A plain object of
// typed arrays (8760 entries each), so it can be copied to a worker; light on planes is remembered beside it.
// Sources: see the physics files named in the imports.

import { atan2, cos, sin, square } from '../../physics/elementary.ts';
import { extraterrestrialNormal } from '../../physics/extraterrestrial.ts';
import { airDensity, humidityRatio, saturationPressure } from '../../physics/moist-air.ts';
import { perezCoefficients } from '../../physics/sky-on-plane.ts';
import { skyTemperatureC, skyTemperatureFromLongwaveC } from '../../physics/sky-temperature.ts';
import { sunPosition, sunVector } from '../../physics/sun-position.ts';
import { sunlitMinute } from '../../physics/sunlit-hour.ts';
import { type Calendar, calendarOf } from '../calendar.ts';
import { HOURS, instantOfHour, type TypicalYear } from '../typical-year.ts';

/** Ground reflectance where the file has none: grass and soil without snow (0.20–0.25 in handbooks). */
export const DEFAULT_ALBEDO = 0.2;

export interface DeepGround {
  /** mean air temperature of the year [°C] */
  readonly meanC: number;
  /** half the swing of the air temperature over the year, first harmonic [K] */
  readonly amplitudeK: number;
  /** day of the year of its minimum, 0…365 */
  readonly coldestDay: number;
}

export interface PreparedClimate {
  readonly year: TypicalYear;
  readonly calendar: Calendar;
  /** sun's TRUE elevation at the moment that stands for the hour [°]; at mid-hour when the sun stays down */
  readonly sunElevationDeg: Float64Array;
  /** [° clockwise from north] */
  readonly sunAzimuthDeg: Float64Array;
  /** unit vector to the sun, zero vector in hours without sun */
  readonly sunEast: Float64Array;
  readonly sunNorth: Float64Array;
  readonly sunUp: Float64Array;
  /** cosine of the zenith angle, 0 in hours without sun; the same array as sunUp */
  readonly cosZenith: Float64Array;
  /** extraterrestrial normal irradiance [W/m²] */
  readonly extraNormal: Float64Array;
  /** circumsolar and horizon brightness of the sky, Perez 1990 */
  readonly f1: Float64Array;
  readonly f2: Float64Array;
  /** the file's radiation, 0 in hours in which the sun never rises [W/m²] */
  readonly beamNormal: Float64Array;
  readonly diffuseHorizontal: Float64Array;
  readonly globalHorizontal: Float64Array;
  /** hours that had global radiation in the file although the sun never rises in them */
  readonly darkHoursCleared: number;
  /** temperature of a black sky that radiates as the sky does [°C] */
  readonly skyTempC: Float64Array;
  /** water vapour pressure outdoors [Pa] */
  readonly vapourPressurePa: Float64Array;
  /** kg water per kg dry air */
  readonly humidityRatio: Float64Array;
  /** relative humidity over water, 0…1 */
  readonly relativeHumidity: Float64Array;
  /** [kg/m³] */
  readonly airDensity: Float64Array;
  /** 0…1 */
  readonly albedo: Float64Array;
  readonly ground: DeepGround;
}

/**
 * Make a typical year ready for runs: sun, sky, moist air and ground of each of its 8760 hours; takes about 30 ms.
 *
 * @returns columns in the units that PreparedClimate says
 */
export function prepareClimate(year: TypicalYear): PreparedClimate {
  return {
    year,
    calendar: calendarOf(year),
    ...sunAndSky(year),
    ...moistAir(year),
    ground: deepGround(year.dryBulbC),
  };
}

const remembered = new WeakMap<TypicalYear, PreparedClimate>();

/** The same, made once for each typical year and remembered as long as that is. */
export function preparedOnce(year: TypicalYear): PreparedClimate {
  const known = remembered.get(year) ?? prepareClimate(year);
  remembered.set(year, known);
  return known;
}

/** Azimuth of the side that faces the equator [° clockwise from north]: 180 in the northern hemisphere, 0 south. */
export function equatorAzimuth(latitudeDeg: number): number {
  return latitudeDeg >= 0 ? 180 : 0;
}

function sunAndSky(year: TypicalYear) {
  const { latitudeDeg, longitudeDeg } = year.site;
  const column = () => new Float64Array(HOURS);
  const sunElevationDeg = column();
  const sunAzimuthDeg = column();
  const [sunEast, sunNorth, sunUp] = [column(), column(), column()];
  const [f1, f2, extraNormal] = [column(), column(), column()];
  const beamNormal = column();
  const diffuseHorizontal = column();
  const globalHorizontal = column();
  let darkHoursCleared = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const start = instantOfHour(year, hour, 0);
    const lit = year.sunMinute === 'mean' ? sunlitMinute(start, latitudeDeg, longitudeDeg) : year.sunMinute;
    const sun = sunPosition(start + (lit ?? 30) * 60_000, latitudeDeg, longitudeDeg);
    sunElevationDeg[hour] = sun.elevationDeg;
    sunAzimuthDeg[hour] = sun.azimuthDeg;
    extraNormal[hour] = extraterrestrialNormal(Math.floor(hour / 24) + 1);
    if (lit === null || sun.elevationDeg <= 0) {
      if (year.globalHorizontal[hour]! > 0) darkHoursCleared++;
      continue;
    }
    const direction = sunVector(sun.elevationDeg, sun.azimuthDeg);
    sunEast[hour] = direction.east;
    sunNorth[hour] = direction.north;
    sunUp[hour] = direction.up;
    beamNormal[hour] = year.beamNormal[hour]!;
    diffuseHorizontal[hour] = year.diffuseHorizontal[hour]!;
    globalHorizontal[hour] = year.globalHorizontal[hour]!;
    const sky = perezCoefficients(
      beamNormal[hour]!,
      diffuseHorizontal[hour]!,
      extraNormal[hour]!,
      90 - sun.elevationDeg,
    );
    f1[hour] = sky.f1;
    f2[hour] = sky.f2;
  }
  return {
    sunElevationDeg,
    sunAzimuthDeg,
    sunEast,
    sunNorth,
    sunUp,
    cosZenith: sunUp,
    extraNormal,
    f1,
    f2,
    beamNormal,
    diffuseHorizontal,
    globalHorizontal,
    darkHoursCleared,
    albedo: year.albedo ?? new Float64Array(HOURS).fill(DEFAULT_ALBEDO),
  };
}

function moistAir(year: TypicalYear) {
  const skyTempC = new Float64Array(HOURS);
  const vapourPressurePa = new Float64Array(HOURS);
  const ratio = new Float64Array(HOURS);
  const relativeHumidity = new Float64Array(HOURS);
  const density = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const dryC = year.dryBulbC[hour]!;
    const dewC = year.dewPointC[hour]!;
    const pressure = year.pressurePa[hour]!;
    const vapour = saturationPressure(dewC);
    vapourPressurePa[hour] = vapour;
    ratio[hour] = humidityRatio(vapour, pressure);
    relativeHumidity[hour] = vapour / saturationPressure(dryC);
    density[hour] = airDensity(dryC, ratio[hour]!, pressure);
    skyTempC[hour] =
      year.skyLongwave === null
        ? skyTemperatureC(dryC, dewC, (hour % 24) + 0.5, pressure, year.skyCover[hour]!)
        : skyTemperatureFromLongwaveC(year.skyLongwave[hour]!);
  }
  return { skyTempC, vapourPressurePa, humidityRatio: ratio, relativeHumidity, airDensity: density };
}

/** First harmonic of the hourly air temperature, which is what survives a few decimetres down. */
function deepGround(dryBulbC: Float64Array): DeepGround {
  let mean = 0;
  let inPhase = 0;
  let quadrature = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const angle = (2 * Math.PI * (hour + 0.5)) / HOURS;
    mean += dryBulbC[hour]! / HOURS;
    inPhase += (2 * dryBulbC[hour]! * cos(angle)) / HOURS;
    quadrature += (2 * dryBulbC[hour]! * sin(angle)) / HOURS;
  }
  const warmest = atan2(quadrature, inPhase);
  const coldestDay = (((warmest + Math.PI) / (2 * Math.PI)) * 365 + 365) % 365;
  return { meanC: mean, amplitudeK: Math.sqrt(square(inPhase) + square(quadrature)), coldestDay };
}
