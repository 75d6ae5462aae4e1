// The weather of the hour that runs: read once an hour from the prepared climate into one record, which films, air,
// water and books all read. Scalars only: columns of the climate are read nowhere else within an hour but for the sun,
// whose light on panes is worked out before the run.

import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { type DayPart, meanOver } from './day-part.ts';

export interface HourWeather {
  /** air dry bulb [°C]; ground and surroundings seen from outside are taken to be as warm */
  readonly dryBulbC: number;
  /** black-body temperature of the sky [°C] */
  readonly skyC: number;
  /** at 10 m [m/s] */
  readonly windSpeed: number;
  /** of the air [kg/m³] */
  readonly airDensity: number;
  /** [kg/kg dry air] */
  readonly humidityRatio: number;
  /** of the air at the site [Pa] */
  readonly pressurePa: number;
  /** in the hour [mm]; 0 where the weather knows of none */
  readonly rainMm: number;
  /** share of the time that the sun is down: 0 or 1 in an hour */
  readonly darkShare: number;
}

export type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** A record to fill, before the first hour. */
export function blankHourWeather(): Writable<HourWeather> {
  return {
    dryBulbC: 0,
    skyC: 0,
    windSpeed: 0,
    airDensity: 1.2,
    humidityRatio: 0,
    pressurePa: 101_325,
    rainMm: 0,
    darkShare: 1,
  };
}

/** Read an hour of the year, 0…8759, into a record; nothing is allocated. */
export function readHourWeather(climate: PreparedClimate, hour: number, into: Writable<HourWeather>): void {
  const { year } = climate;
  into.dryBulbC = year.dryBulbC[hour]!;
  into.skyC = climate.skyTempC[hour]!;
  into.windSpeed = year.windSpeed[hour]!;
  into.airDensity = climate.airDensity[hour]!;
  into.humidityRatio = climate.humidityRatio[hour]!;
  into.pressurePa = year.pressurePa[hour]!;
  into.rainMm = year.rainMm?.[hour] ?? 0;
  into.darkShare = climate.cosZenith[hour]! <= 0 ? 1 : 0;
}

/** Mean weather of a day part into a record; nothing is allocated. */
export function readMeanWeather(
  climate: PreparedClimate,
  dayPart: DayPart,
  into: Writable<HourWeather>,
): void {
  const { year } = climate;
  const { hours, count } = dayPart;
  let dark = 0;
  for (let k = 0; k < count; k++) if (climate.cosZenith[hours[k]!]! <= 0) dark++;
  into.dryBulbC = meanOver(dayPart, year.dryBulbC);
  into.skyC = meanOver(dayPart, climate.skyTempC);
  into.windSpeed = meanOver(dayPart, year.windSpeed);
  into.airDensity = meanOver(dayPart, climate.airDensity);
  into.humidityRatio = meanOver(dayPart, climate.humidityRatio);
  into.pressurePa = meanOver(dayPart, year.pressurePa);
  into.rainMm = year.rainMm ? meanOver(dayPart, year.rainMm) : 0;
  into.darkShare = dark / count;
}
