// Hourly air temperature, dew point and wind of a year from monthly normals and the days' clearness.
// Where a published number is lacking, how much days differ is taken from fifteen measured typical years (TMY2, TMY3,
// PVGIS; none of those the result is judged by), each figure by least squares over 180 months.
import { relativeHumidity, saturationPressure } from '../../physics/moist-air.ts';
import { solarNoonH } from '../assembly/radiation-timing.ts';
import { HOURS, type Site } from '../typical-year.ts';
import { dailyFromMonthly, eachMonth } from './monthly-interpolation.ts';
import { autoregressive, type RandomNumbers } from './random-numbers.ts';
import type { SyntheticRadiation } from './synthetic-radiation.ts';

/** Persistence of warm and cold days (fifteen years: 0.65). */
const WARMTH_PERSISTENCE = 0.65;
/** The day's range grows with its clearness: relative to relative, with this scatter besides (0.63 and 0.25). */
const RANGE_BY_CLEARNESS = 0.63;
const RANGE_SCATTER = 0.25;
/** The dew point lies deeper on clear days (0.85), with scatter (0.31). */
const DRYNESS_BY_CLEARNESS = 0.85;
const DRYNESS_SCATTER = 0.31;
/** Highest temperature of the day after solar noon [h] (fifteen years: 2.3; Parton and Logan 1981: 1.9). */
const WARMEST_AFTER_NOON_H = 2.3;
/** How fast the air cools after sunset, per night's length; Parton and Logan 1981. */
const NIGHT_COOLING = 2.2;

/** Standard deviation of daily means in a month [K] (fifteen years; rms error 1.1 K). */
function dayDeviation(meanC: number, amplitudeK: number): number {
  return Math.max(2.37 - 0.066 * meanC + 0.138 * amplitudeK, 1);
}

/** Correlation of a day's warmth with its clearness: clear days are cold in winter, warm in summer (rms 0.3). */
function warmthByClearness(meanC: number): number {
  return Math.min(Math.max(-0.18 + 0.0226 * meanC, -0.6), 0.5);
}

export interface MonthlyAir {
  readonly meanDailyHighC: readonly number[];
  readonly meanDailyLowC: readonly number[];
}

/** Hourly air temperature [°C]; the months' mean daily extremes are those asked for, within 0.02 K. */
export function syntheticDryBulb(
  site: Site,
  normals: MonthlyAir,
  sun: SyntheticRadiation,
  random: RandomNumbers,
): Float64Array {
  const means = normals.meanDailyHighC.map((high, month) => (high + normals.meanDailyLowC[month]!) / 2);
  const amplitude = (Math.max(...means) - Math.min(...means)) / 2;
  const own = autoregressive(random, 365, WARMTH_PERSISTENCE);
  const rangeNoise = autoregressive(random, 365, 0);
  const warmth = new Float64Array(365);
  eachMonth((month, from, to) => {
    const shared = warmthByClearness(means[month]!);
    for (let day = from; day < to; day++) {
      warmth[day] = shared * sun.dayOrder[day]! + Math.sqrt(1 - shared ** 2) * own[day]!;
    }
    standardise(warmth, from, to, dayDeviation(means[month]!, amplitude));
  });
  const highs = [...normals.meanDailyHighC];
  const lows = [...normals.meanDailyLowC];
  let hourly: Float64Array = new Float64Array(HOURS);
  for (let pass = 0; pass < 12; pass++) {
    const [baseHigh, baseLow] = [dailyFromMonthly(highs), dailyFromMonthly(lows)];
    const high = new Float64Array(365);
    const low = new Float64Array(365);
    for (let day = 0; day < 365; day++) {
      const range = baseHigh[day]! - baseLow[day]!;
      const change = RANGE_BY_CLEARNESS * sun.clearnessAnomaly[day]! + RANGE_SCATTER * rangeNoise[day]!;
      const half = (range * Math.min(Math.max(change, -0.8), 1)) / 2;
      high[day] = baseHigh[day]! + warmth[day]! + half;
      low[day] = baseLow[day]! + warmth[day]! - half;
    }
    hourly = throughDays(site, high, low);
    const found = dailyExtremes(hourly);
    eachMonth((month, from, to) => {
      highs[month]! += normals.meanDailyHighC[month]! - mean(found.high, from, to);
      lows[month]! += normals.meanDailyLowC[month]! - mean(found.low, from, to);
    });
  }
  return hourly;
}

/**
 * Curve through each day's lowest temperature at sunrise and its highest in the afternoon: a sine by day, an
 * exponential fall by night.
 *
 *   day: low + (high − low) sin(π m/(Y + 2a)),  night: from the value at sunset to the next low as e^{−b n/Z}
 *
 * m hours after sunrise, Y day length, n hours after sunset, Z night length; after the highest the next morning's low
 * takes the place of the day's.
 * Source: Parton and Logan 1981, Agricultural Meteorology 23 (from memory, high); bent to end on the next low.
 */
function throughDays(site: Site, high: Float64Array, low: Float64Array): Float64Array {
  const day = (d: number) => ((d % 365) + 365) % 365;
  const half = Float64Array.from({ length: 365 }, (_, d) => halfDayH(site.latitudeDeg, d));
  const noon = (d: number) => d * 24 + solarNoonH(site.longitudeDeg, site.utcOffsetH, day(d));
  const sunrise = (d: number) => noon(d) - half[day(d)]!;
  const rest = Math.exp(-NIGHT_COOLING);
  return Float64Array.from({ length: HOURS }, (_, hour) => {
    // an hour's air is its reading at the end, as in measured files
    const time = hour + 1;
    let d = Math.floor(time / 24);
    if (time < sunrise(d)) d--;
    else if (time >= sunrise(d + 1)) d++;
    const top = high[day(d)]!;
    const next = low[day(d + 1)]!;
    const wave = Math.PI / (2 * half[day(d)]! + 2 * WARMEST_AFTER_NOON_H);
    const since = time - sunrise(d);
    const base = since * wave < Math.PI / 2 ? low[day(d)]! : next;
    if (since <= 2 * half[day(d)]!) return base + (top - base) * Math.sin(since * wave);
    const atSunset = Math.sin(2 * half[day(d)]! * wave);
    const night = (since - 2 * half[day(d)]!) / (sunrise(d + 1) - sunrise(d) - 2 * half[day(d)]!);
    const left = (Math.exp(-NIGHT_COOLING * night) - rest) / (1 - rest);
    return next + (top - next) * atSunset * left;
  });
}

/** Hours from sunrise to noon, held to 3…9. */
function halfDayH(latitudeDeg: number, day: number): number {
  const declination = -23.45 * Math.cos((2 * Math.PI * (day + 10)) / 365) * (Math.PI / 180);
  const cosine = -Math.tan((latitudeDeg * Math.PI) / 180) * Math.tan(declination);
  const half = (Math.acos(Math.min(Math.max(cosine, -1), 1)) * 12) / Math.PI;
  return Math.min(Math.max(half, 3), 9);
}

/**
 * Hourly dew point [°C] with each month's mean relative humidity within 0.3 points. The depression below the air is
 * negative in damp months: the dew point then follows the air by night and passes the daily mean by day.
 *
 * @param humidity monthly mean relative humidity, 0.05…0.97
 */
export function syntheticDewPoint(
  dryBulbC: Float64Array,
  humidity: readonly number[],
  sun: SyntheticRadiation,
  random: RandomNumbers,
): Float64Array {
  const noise = autoregressive(random, 365, WARMTH_PERSISTENCE);
  const daily = Float64Array.from({ length: 365 }, (_, day) => mean(dryBulbC, day * 24, day * 24 + 24));
  const depression = humidity.map((share) => -15 * Math.log(share));
  let dew: Float64Array = new Float64Array(HOURS);
  for (let pass = 0; pass < 60; pass++) {
    const monthly = dailyFromMonthly(depression);
    const days = daily.map((tempC, day) => {
      const change = DRYNESS_BY_CLEARNESS * sun.clearnessAnomaly[day]! + DRYNESS_SCATTER * noise[day]!;
      return tempC - monthly[day]! - Math.max(monthly[day]!, 0) * Math.min(Math.max(change, -0.85), 1.5);
    });
    dew = dryBulbC.map((tempC, hour) => Math.min(betweenDays(days, hour), tempC));
    eachMonth((month, from, to) => {
      let share = 0;
      for (let hour = from * 24; hour < to * 24; hour++) {
        share += relativeHumidity(saturationPressure(dew[hour]!), dryBulbC[hour]!) / ((to - from) * 24);
      }
      // in air near saturation the night's dew point is held at the air and the step has to be longer
      const gain = humidity[month]! > 0.85 ? 25 : 15;
      depression[month]! += gain * Math.log(share / humidity[month]!);
    });
  }
  return dew;
}

/**
 * Hourly wind [m/s]: a Rayleigh spread (usual where only the mean is known, IEC 61400) with persistence from hour to
 * hour and stronger afternoons, each month's mean exact. Persistence and the afternoon's 25 %: common practice, no source.
 */
export function syntheticWind(site: Site, monthly: readonly number[], random: RandomNumbers): Float64Array {
  const order = autoregressive(random, HOURS, 0.92);
  const wind = order.map((normal, hour) => {
    const share = Math.min(normalShare(normal), 0.9999);
    const time = (hour % 24) + 0.5 - solarNoonH(site.longitudeDeg, site.utcOffsetH, Math.floor(hour / 24));
    return Math.sqrt(-Math.log(1 - share)) * (1 + 0.25 * Math.cos((2 * Math.PI * (time - 2.5)) / 24));
  });
  eachMonth((month, from, to) => {
    const factor = monthly[month]! / mean(wind, from * 24, to * 24);
    for (let hour = from * 24; hour < to * 24; hour++) wind[hour]! *= factor;
  });
  return wind;
}

/** Share of a normal distribution below z; Abramowitz and Stegun 26.2.17, error below 7.5e-8. */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z >= 0 ? 1 - tail : tail;
}

/** Straight line between the middles of days. */
function betweenDays(days: Float64Array, hour: number): number {
  const at = (hour + 0.5) / 24 - 0.5;
  const day = Math.floor(at);
  const [a, b] = [days[(day + 365) % 365]!, days[(day + 1) % 365]!];
  return a + (b - a) * (at - day);
}

function dailyExtremes(hourly: Float64Array): { high: Float64Array; low: Float64Array } {
  const day = (d: number) => hourly.subarray(d * 24, d * 24 + 24);
  return {
    high: Float64Array.from({ length: 365 }, (_, d) => Math.max(...day(d))),
    low: Float64Array.from({ length: 365 }, (_, d) => Math.min(...day(d))),
  };
}

function standardise(values: Float64Array, from: number, to: number, deviation: number): void {
  const middle = mean(values, from, to);
  let square = 0;
  for (let i = from; i < to; i++) square += (values[i]! - middle) ** 2 / (to - from);
  for (let i = from; i < to; i++) values[i] = ((values[i]! - middle) * deviation) / Math.sqrt(square);
}

function mean(column: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let i = from; i < to; i++) total += column[i]!;
  return total / (to - from);
}
