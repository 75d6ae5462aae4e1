// Hourly air temperature, dew point and wind of a year from monthly normals and the days' clearness.
// Where a published number is lacking, how much days and hours differ is taken from thirteen measured typical years (TMY2,
// TMY3, PVGIS; none of those the result is judged by), each figure by least squares over their months; wind from seventeen.

import { acos, cos, exp, log, power, sin, square, tan } from '../../physics/elementary.ts';
import { relativeHumidity, saturationPressure } from '../../physics/moist-air.ts';
import { solarNoonH } from '../assembly/radiation-timing.ts';
import { HOURS, type Site } from '../typical-year.ts';
import { dailyFromMonthly, eachMonth } from './monthly-interpolation.ts';
import { autoregressive, type RandomNumbers } from './random-numbers.ts';
import type { SyntheticRadiation } from './synthetic-radiation.ts';

/** Persistence of warm and cold days (0.65). */
const WARMTH_PERSISTENCE = 0.65;
/**
 * Standard deviation of the days of a month about the month's own mean, of that of all days: so persistent a sequence has 0.91
 * in thirty days, and from month to month it differs by a fifth (measured months by a quarter, their season left out). So a
 * month of one draw is steadier or more changeable than that of another, and hot spells come in some years and not in others.
 */
const WITHIN_A_MONTH = 0.91;
/** The day's range grows with its clearness, relative to relative (0.63). */
const RANGE_BY_CLEARNESS = 0.63;
/** Highest temperature of the day after solar noon [h] (2.3; Parton and Logan 1981: 1.9). */
const WARMEST_AFTER_NOON_H = 2.3;
/** How fast the air cools after sunset, per night's length; Parton and Logan 1981. */
const NIGHT_COOLING = 2.2;
/** Power of the day's sine: mornings and evenings are cooler than a sine has them, by which the year's mean is right. */
const DAY_POWER = 1.3;
/** Hours stray from the smooth curve, of the day's range, with this persistence: clouds, gusts, showers. */
const HOUR_SCATTER = 0.09;
const HOUR_PERSISTENCE = 0.7;

/** Standard deviation of daily means in a month [K]: smaller in warm months, larger where the year swings far (rms 1.1 K). */
function dayDeviation(meanC: number, amplitudeK: number): number {
  return Math.max(3.14 - 0.069 * meanC + 0.086 * amplitudeK, 1);
}

/** Scatter of a day's range beside what its clearness explains, of the range: little where the range is wide (rms 0.08). */
function rangeScatter(rangeK: number): number {
  return Math.min(Math.max(0.44 - 0.017 * rangeK, 0.1), 0.38);
}

/**
 * What of a day's range its clearness does not explain, mean 0, deviation 1: where the range is wide, in dry air, warm days
 * have the wider ones, so that their nights are not as warm as their afternoons (correlation, rms 0.33; 0.31 in warm months).
 */
function strayOfRange(rangeK: number, warmth: number, free: number): number {
  const shared = Math.min(Math.max(-0.17 + 0.026 * rangeK, -0.3), 0.4);
  return shared * warmth + Math.sqrt(1 - square(shared)) * free;
}

/** Correlation of a day's warmth with its clearness: clear days are cold in winter, warm in summer (rms 0.3). */
function warmthByClearness(meanC: number): number {
  return Math.min(Math.max(-0.18 + 0.0226 * meanC, -0.6), 0.5);
}

export interface MonthlyAir {
  readonly meanDailyHighC: readonly number[];
  readonly meanDailyLowC: readonly number[];
}

/**
 * Hourly air temperature [°C]; the months' mean daily extremes are those asked for, within 0.02 K, but for months whose daily
 * range is less than one day differs from the next: there the range comes out wider.
 */
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
  const hourNoise = autoregressive(random, HOURS, HOUR_PERSISTENCE);
  const warmth = new Float64Array(365);
  eachMonth((month, from, to) => {
    const shared = warmthByClearness(means[month]!);
    for (let day = from; day < to; day++) {
      warmth[day] = shared * sun.dayOrder[day]! + Math.sqrt(1 - square(shared)) * own[day]!;
    }
    aboutMean(warmth, from, to, dayDeviation(means[month]!, amplitude) / WITHIN_A_MONTH);
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
      const change =
        RANGE_BY_CLEARNESS * sun.clearnessAnomaly[day]! +
        rangeScatter(range) * strayOfRange(range, own[day]!, rangeNoise[day]!);
      const half = (range * Math.min(Math.max(change, -0.8), 1)) / 2;
      high[day] = baseHigh[day]! + warmth[day]! + half;
      low[day] = baseLow[day]! + warmth[day]! - half;
    }
    const smooth = throughDays(site, high, low);
    hourly = smooth.map((tempC, hour) => {
      const day = Math.floor(hour / 24);
      return tempC + HOUR_SCATTER * (high[day]! - low[day]!) * hourNoise[hour]!;
    });
    const found = dailyExtremes(hourly);
    eachMonth((month, from, to) => {
      highs[month]! += normals.meanDailyHighC[month]! - mean(found.high, from, to);
      lows[month]! += normals.meanDailyLowC[month]! - mean(found.low, from, to);
      // Where days differ by more than a day's range, the range cannot be less than nothing.
      if (highs[month]! < lows[month]!) highs[month] = lows[month] = (highs[month]! + lows[month]!) / 2;
    });
  }
  return hourly;
}

/**
 * Curve through each day's lowest temperature at sunrise and its highest in the afternoon: a sine by day, an
 * exponential fall by night.
 *
 *   day: low + (high − low) sin(π m/(Y + 2a))^p,  night: from the value at sunset to the next low as e^{−b n/Z}
 *
 * m hours after sunrise, Y day length, n hours after sunset, Z night length; after the highest the next morning's low
 * takes the place of the day's.
 * Source: Parton and Logan 1981, Agricultural Meteorology 23 (from memory, high); bent to end on the next low,
 * with p ours (1 in the source).
 */
function throughDays(site: Site, high: Float64Array, low: Float64Array): Float64Array {
  const day = (d: number) => ((d % 365) + 365) % 365;
  const half = Float64Array.from({ length: 365 }, (_, d) => halfDayH(site.latitudeDeg, d));
  const noon = (d: number) => d * 24 + solarNoonH(site.longitudeDeg, site.utcOffsetH, day(d));
  const sunrise = (d: number) => noon(d) - half[day(d)]!;
  const rest = exp(-NIGHT_COOLING);
  return new Float64Array(HOURS).map((_, hour) => {
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
    if (since <= 2 * half[day(d)]!) return base + (top - base) * power(sin(since * wave), DAY_POWER);
    const atSunset = power(sin(2 * half[day(d)]! * wave), DAY_POWER);
    const night = (since - 2 * half[day(d)]!) / (sunrise(d + 1) - sunrise(d) - 2 * half[day(d)]!);
    const left = (exp(-NIGHT_COOLING * night) - rest) / (1 - rest);
    return next + (top - next) * atSunset * left;
  });
}

/** Hours from sunrise to noon, held to 3…9. */
function halfDayH(latitudeDeg: number, day: number): number {
  const declination = -23.45 * cos((2 * Math.PI * (day + 10)) / 365) * (Math.PI / 180);
  const cosine = -tan((latitudeDeg * Math.PI) / 180) * tan(declination);
  const half = (acos(Math.min(Math.max(cosine, -1), 1)) * 12) / Math.PI;
  return Math.min(Math.max(half, 3), 9);
}

/**
 * How the dew point of a month's days moves, from how far it lies below the air in the mean and how warm the month is. In
 * damp air it follows warm and cold days; in dry air hot days are the drier ones. Clear days are drier than dull ones.
 *
 * @param below mean of air less dew point [K]
 * @param meanC mean of the month [°C]
 */
function dewHabits(below: number, meanC: number) {
  return {
    /** change with the day's mean temperature [K/K] (rms 0.36) */
    byWarmth: Math.min(Math.max(1.29 - 0.069 * below - 0.002 * meanC, -0.4), 1),
    /** fall with the day's clearness, relative to its month's [K] (rms 3.6) */
    byClearness: Math.max(1.25 + 0.594 * below - 0.033 * meanC, 0),
    /** standard deviation of what is left [K] (rms 0.6) */
    scatter: Math.max(0.88 + 0.169 * below - 0.028 * meanC, 0.5),
    /** afternoon, 13 to 18 h, less night, 2 to 6 h [K]: sun raises it in damp air, deep mixing lowers it in dry (rms 1.0) */
    swing: 2.51 - 0.219 * below - 0.055 * meanC,
  };
}

/** The swing over the day as a cosine that is highest in the afternoon [h of the day]; its two windows see 0.93 of it each. */
const MOIST_HOUR = 15.5;
const SEEN_OF_SWING = 1.86;

/**
 * Hourly dew point [°C] with each month's mean relative humidity within 0.3 points. It never passes the air: in damp months
 * it follows the air by night.
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
  const meansC: number[] = [];
  eachMonth((_, from, to) => meansC.push(mean(daily, from, to)));
  const usual = dailyFromMonthly(meansC);
  const depression = humidity.map((share) => -15 * log(share));
  let dew: Float64Array = new Float64Array(HOURS);
  for (let pass = 0; pass < 60; pass++) {
    const below = dailyFromMonthly(depression);
    const swing = new Float64Array(365);
    const days = daily.map((tempC, day) => {
      const habit = dewHabits(Math.max(below[day]!, 0), usual[day]!);
      swing[day] = habit.swing / SEEN_OF_SWING;
      const usualDew = usual[day]! - below[day]!;
      return (
        usualDew +
        habit.byWarmth * (tempC - usual[day]!) -
        habit.byClearness * sun.clearnessAnomaly[day]! +
        habit.scatter * noise[day]!
      );
    });
    dew = dryBulbC.map((tempC, hour) => {
      const daySwing = swing[Math.floor(hour / 24)]! * cos((2 * Math.PI * (hour + 1 - MOIST_HOUR)) / 24);
      return Math.min(betweenDays(days, hour) + daySwing, tempC);
    });
    eachMonth((month, from, to) => {
      let share = 0;
      for (let hour = from * 24; hour < to * 24; hour++) {
        share += relativeHumidity(saturationPressure(dew[hour]!), dryBulbC[hour]!) / ((to - from) * 24);
      }
      // in air near saturation the night's dew point is held at the air and the step has to be longer
      const gain = humidity[month]! > 0.85 ? 25 : 15;
      depression[month]! += gain * log(share / humidity[month]!);
    });
  }
  return dew;
}

/** What stays of a weather's wind and of a gust's from hour to hour (0.945, 0.6; 0.92 for both in one is too steady). */
const WEATHER_PERSISTENCE = 0.945;
const GUST_PERSISTENCE = 0.6;

/**
 * Share of the wind's variance that passing weather has; the rest is of gusts and of the day's heating. The wider the daily
 * range, the less one day's wind differs from the next (rms 0.2, from the correlation six hours apart of seventeen years).
 */
function weatherShare(rangeK: number): number {
  return Math.min(Math.max(1.05 - 0.039 * rangeK, 0.2), 0.95);
}

/**
 * The usual day of the wind, about 1: stronger by 15 % two hours after noon in days of ten hours, by 28 % three hours after
 * noon in days of fourteen (first harmonic of the same years: 15 and 27 %, 2.1 and 3.0 h).
 */
function windOfDay(site: Site, hour: number): number {
  const day = Math.floor(hour / 24);
  const heated = Math.min(Math.max((halfDayH(site.latitudeDeg, day) - 4.8) / 2.2, 0), 1);
  const afterNoon = (hour % 24) + 0.5 - solarNoonH(site.longitudeDeg, site.utcOffsetH, day);
  return 1 + (0.15 + 0.13 * heated) * cos((2 * Math.PI * (afterNoon - 2 - heated)) / 24);
}

/**
 * Hourly wind [m/s]: a Rayleigh spread (usual where only the mean is known, IEC 61400) with the persistence of weather and of
 * gusts and stronger afternoons, each month's mean exact.
 */
export function syntheticWind(
  site: Site,
  monthly: readonly number[],
  { meanDailyHighC, meanDailyLowC }: MonthlyAir,
  random: RandomNumbers,
): Float64Array {
  const weather = autoregressive(random, HOURS, WEATHER_PERSISTENCE);
  const gusts = autoregressive(random, HOURS, GUST_PERSISTENCE);
  const wind = new Float64Array(HOURS);
  eachMonth((month, from, to) => {
    const shared = weatherShare(meanDailyHighC[month]! - meanDailyLowC[month]!);
    for (let hour = from * 24; hour < to * 24; hour++) {
      const normal = Math.sqrt(shared) * weather[hour]! + Math.sqrt(1 - shared) * gusts[hour]!;
      const share = Math.min(normalShare(normal), 0.9999);
      wind[hour] = Math.sqrt(-log(1 - share)) * windOfDay(site, hour);
    }
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
  const tail = (exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
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

function aboutMean(values: Float64Array, from: number, to: number, times: number): void {
  const middle = mean(values, from, to);
  for (let i = from; i < to; i++) values[i] = (values[i]! - middle) * times;
}

function mean(column: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let i = from; i < to; i++) total += column[i]!;
  return total / (to - from);
}
