// Hourly global radiation of a year from twelve mean clearnesses: days by daily-clearness.ts, hours of each day by the
// same file's hourly model, each day's sum kept, each month's sum made equal to the input.

import { square } from '../../physics/elementary.ts';
import { extraterrestrialNormal } from '../../physics/extraterrestrial.ts';
import { cosZenithAt, solarNoonH } from '../assembly/radiation-timing.ts';
import { HOURS, MONTH_START_HOUR, type Site } from '../typical-year.ts';
import { clearestDay, clearestHour, dailyClearnessOfMonth, hourlyClearness } from './daily-clearness.ts';
import { autoregressive, type RandomNumbers } from './random-numbers.ts';

/** Persistence of clear and dull days; Graham, Hollands and Huget 1988 found 0.29, fifteen typical years 0.25. */
const DAY_PERSISTENCE = 0.29;

/** Days with less light above the air than this share it evenly: clearness means nothing then [Wh/m²]. */
const LEAST_LIGHT = 300;

export interface SyntheticRadiation {
  /** [W/m²] */
  readonly globalHorizontal: Float64Array;
  /** clearness of each day over the mean of its month, minus 1; 0 where the sun hardly rises */
  readonly clearnessAnomaly: Float64Array;
  /** the normal values that ordered the days, mean 0, deviation 1 */
  readonly dayOrder: Float64Array;
}

/**
 * Make the year's sunlight.
 *
 * @param above radiation above the air by hour, from extraterrestrialRadiation [W/m²]
 * @param dailyGlobal mean daily global radiation of each month [Wh/m²]
 */
export function syntheticRadiation(
  site: Site,
  above: Float64Array,
  dailyGlobal: readonly number[],
  random: RandomNumbers,
): SyntheticRadiation {
  const daily = Float64Array.from({ length: 365 }, (_, day) => sum(above, day * 24, day * 24 + 24));
  const dayOrder = autoregressive(random, 365, DAY_PERSISTENCE);
  const noise = autoregressive(random, HOURS, 0);
  const globalHorizontal = new Float64Array(HOURS);
  const clearnessAnomaly = new Float64Array(365);
  for (let month = 0; month < 12; month++) {
    const [from, to] = [MONTH_START_HOUR[month]! / 24, MONTH_START_HOUR[month + 1]! / 24];
    const wanted = dailyGlobal[month]! * (to - from);
    const mean = meanClearness(wanted, sum(daily, from, to));
    if (mean === 0) continue;
    const bright = sum(daily, from, to) / (to - from) >= LEAST_LIGHT;
    const clearness = bright
      ? dailyClearnessOfMonth(mean, dayOrder.subarray(from, to))
      : new Float64Array(to - from).fill(mean);
    for (let day = from; day < to; day++) {
      if (bright) clearnessAnomaly[day] = clearness[day - from]! / mean - 1;
      fillDay(globalHorizontal, above, noise, site, day, clearness[day - from]!);
    }
    scaleTo(globalHorizontal, from * 24, to * 24, wanted);
  }
  return { globalHorizontal, clearnessAnomaly, dayOrder };
}

/** Clearness of a month from its sums [Wh/m²]; 0 where there is no light. */
function meanClearness(global: number, above: number): number {
  return above < 1 ? 0 : global / above;
}

/** Highest mean clearness a month can be made with: its clearest day must be clearer than its mean. */
export function isPossibleClearness(mean: number): boolean {
  return mean >= 0.08 && mean < clearestDay(mean) - 0.03;
}

/** Radiation above the air on the horizontal, mean of each hour [W/m²], from ten-minute steps. */
export function extraterrestrialRadiation(site: Site, monthYears: readonly number[]): Float64Array {
  return new Float64Array(HOURS).map((_, hour) => {
    let cosine = 0;
    for (let minute = 5; minute < 60; minute += 10)
      cosine += cosZenithAt({ site, monthYears }, hour, minute) / 6;
    return cosine * extraterrestrialNormal(Math.floor(hour / 24) + 1);
  });
}

/** Hours of one day: model mean plus autocorrelated scatter, cut off, then scaled to the day's clearness. */
function fillDay(
  global: Float64Array,
  above: Float64Array,
  noise: Float64Array,
  site: Site,
  day: number,
  clearness: number,
): void {
  const model = hourlyClearness(Math.min(clearness, 0.85));
  const fresh = Math.sqrt(1 - square(model.persistence));
  const noon = solarNoonH(site.longitudeDeg, site.utcOffsetH, day);
  const normal = extraterrestrialNormal(day + 1);
  const most = new Float64Array(24);
  const hours = new Float64Array(24);
  let scatter = 0;
  for (let h = 0; h < 24; h++) {
    const light = above[day * 24 + h]!;
    if (light <= 0) continue;
    const sine = Math.max(light / normal, 0.02);
    scatter = model.persistence * scatter + fresh * noise[day * 24 + h]!;
    most[h] = light * Math.max(clearestHour(h + 0.5 - noon + 12), 0.3);
    const drawn = model.mean(sine) + model.deviation(sine) * scatter;
    hours[h] = Math.min(light * Math.max(drawn, 0.02), most[h]!);
  }
  const wanted = clearness * sum(above, day * 24, day * 24 + 24);
  for (let pass = 0; pass < 12; pass++) {
    const factor = wanted / Math.max(sum(hours, 0, 24), 1e-9);
    for (let h = 0; h < 24; h++) hours[h] = Math.min(hours[h]! * factor, most[h]!);
  }
  global.set(hours, day * 24);
}

function scaleTo(column: Float64Array, from: number, to: number, wanted: number): void {
  const factor = wanted / Math.max(sum(column, from, to), 1e-9);
  for (let i = from; i < to; i++) column[i]! *= factor;
}

function sum(column: Float64Array, from: number, to: number): number {
  let total = 0;
  for (let i = from; i < to; i++) total += column[i]!;
  return total;
}
