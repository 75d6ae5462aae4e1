// A climate at a glance: monthly and yearly figures of a prepared climate for a page or a table.
// Degree-days are sums of |base − daily mean|; daily means are those of local standard days.
import { MONTH_DAYS } from '../assembly/calendar-hour.ts';
import { dailyExtraterrestrial } from '../assembly/radiation-timing.ts';
import { HOURS, MONTH_START_HOUR } from '../typical-year.ts';
import { planeIrradiance, planeTotal } from './plane-irradiance.ts';
import { equatorAzimuth, type PreparedClimate } from './prepared-climate.ts';

/** Base of the degree-days [°C]. */
export const DEGREE_DAY_BASE_C = 18;

/** Outdoor air at least this damp counts as a humid hour; mould on cold surfaces starts near it. */
export const HUMID_LIMIT = 0.8;

export interface Spell {
  readonly meanC: number;
  /** means of the daily highest and lowest [°C] */
  readonly meanDailyHighC: number;
  readonly meanDailyLowC: number;
  readonly highestC: number;
  readonly lowestC: number;
  /** [K·d] to base 18 °C */
  readonly heatingDegreeDays: number;
  readonly coolingDegreeDays: number;
  /** [kWh/m²]: on the horizontal, its beam (normal to the rays) and diffuse */
  readonly globalKWh: number;
  readonly beamNormalKWh: number;
  readonly diffuseKWh: number;
  /** [kWh/m²] on an equator-facing plane, upright and at 60°, ground reflection included */
  readonly upright90KWh: number;
  readonly leaning60KWh: number;
  /** global radiation over that above the air, 0…1; null when the sun hardly rises */
  readonly clearness: number | null;
  /** 0…1 */
  readonly meanRelativeHumidity: number;
  /** hours at or above HUMID_LIMIT */
  readonly humidHours: number;
  /** [m/s] */
  readonly meanWind: number;
}

export interface ClimateSummary {
  readonly months: readonly Spell[];
  readonly year: Spell;
  /** 0…11; the month with the least of the light above the air left, among those with a sun */
  readonly cloudiestMonth: number;
  readonly meanPressurePa: number;
}

/** Months and year of a climate; units stand with each figure of Spell. */
export function summariseClimate(climate: PreparedClimate): ClimateSummary {
  const months = MONTH_DAYS.map((_, m) => spell(climate, MONTH_START_HOUR[m]!, MONTH_START_HOUR[m + 1]!));
  const clearness = months.map((month) => month.clearness ?? Number.POSITIVE_INFINITY);
  return {
    months,
    year: spell(climate, 0, HOURS),
    cloudiestMonth: clearness.indexOf(Math.min(...clearness)),
    meanPressurePa: mean(climate.year.pressurePa, 0, HOURS),
  };
}

function spell(climate: PreparedClimate, from: number, to: number): Spell {
  const { year, relativeHumidity } = climate;
  const days = Array.from({ length: (to - from) / 24 }, (_, i) => {
    const air = year.dryBulbC.subarray(from + 24 * i, from + 24 * i + 24);
    return { mean: mean(air, 0, 24), high: Math.max(...air), low: Math.min(...air) };
  });
  const sumOver = (value: (day: (typeof days)[number]) => number) =>
    days.reduce((sum, day) => sum + value(day), 0);
  const azimuth = equatorAzimuth(year.site.latitudeDeg);
  const globalKWh = (mean(year.globalHorizontal, from, to) * (to - from)) / 1000;
  const above = days.reduce(
    (sum, _, i) => sum + dailyExtraterrestrial(year.site.latitudeDeg, from / 24 + i),
    0,
  );
  const humid = relativeHumidity
    .subarray(from, to)
    .reduce((n, share) => n + (share >= HUMID_LIMIT ? 1 : 0), 0);
  return {
    meanC: mean(year.dryBulbC, from, to),
    meanDailyHighC: sumOver((day) => day.high) / days.length,
    meanDailyLowC: sumOver((day) => day.low) / days.length,
    highestC: Math.max(...days.map((day) => day.high)),
    lowestC: Math.min(...days.map((day) => day.low)),
    heatingDegreeDays: sumOver((day) => Math.max(DEGREE_DAY_BASE_C - day.mean, 0)),
    coolingDegreeDays: sumOver((day) => Math.max(day.mean - DEGREE_DAY_BASE_C, 0)),
    globalKWh,
    beamNormalKWh: (mean(year.beamNormal, from, to) * (to - from)) / 1000,
    diffuseKWh: (mean(year.diffuseHorizontal, from, to) * (to - from)) / 1000,
    upright90KWh: planeTotal(planeIrradiance(climate, 90, azimuth), from, to),
    leaning60KWh: planeTotal(planeIrradiance(climate, 60, azimuth), from, to),
    clearness: above < 300 * days.length ? null : (1000 * globalKWh) / above,
    meanRelativeHumidity: mean(relativeHumidity, from, to),
    humidHours: humid,
    meanWind: mean(year.windSpeed, from, to),
  };
}

function mean(column: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let hour = from; hour < to; hour++) sum += column[hour]!;
  return sum / (to - from);
}
