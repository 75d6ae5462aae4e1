// What in a year's weather should make its user careful: a short list in plain words, each with what it would do to
// the answer. Nothing is changed here; a reader that changed something has said so in its notes.

import { elevationFromPressure } from '../../physics/altitude.ts';
import { power, square } from '../../physics/elementary.ts';
import { extraterrestrialNormal } from '../../physics/extraterrestrial.ts';
import { dateOfHour, MONTH_NAMES } from '../assembly/assembled-year.ts';
import { clearDayMinute, closureMinute, dailyExtraterrestrial } from '../assembly/radiation-timing.ts';
import { HOURS, MONTH_START_HOUR, type TypicalYear } from '../typical-year.ts';
import type { PreparedClimate } from './prepared-climate.ts';

export interface Doubt {
  readonly id:
    | 'closure'
    | 'clock'
    | 'months-off-clock'
    | 'impossible-sun'
    | 'sun-at-night'
    | 'stuck-value'
    | 'year-end-jump'
    | 'elevation'
    | 'time-zone'
    | 'season';
  /** 'look': small; 'careful': results are weakened; 'wrong': do not use before it is cleared up */
  readonly weight: 'look' | 'careful' | 'wrong';
  /** what was seen, with its number */
  readonly text: string;
  /** what it would do to the answer */
  readonly effect: string;
}

/** How much a doubt weighs, as a person would say it. */
export const DOUBT_WORDS: Readonly<Record<Doubt['weight'], string>> = {
  look: 'Have a look',
  careful: 'Be careful',
  wrong: 'Do not use it yet',
};

/** Limits of each test, with the reason. */
const LIMIT = {
  /** [W/m²] rms: good files show 0.5 to 4, single measured months raise a file to 7 to 12 */
  closure: 6,
  closureBad: 15,
  /** [min]: the clear-day test is good to 4, a mountain or morning fog shifts it by some more */
  clock: 12,
  /** [min]: closure in one month is good to a few minutes */
  monthClock: 20,
  /** share of the year's global radiation that may fall in hours without sun; good files 0.2 % */
  nightShare: 0.005,
  /** hours: real air is read to 0.1 K and hardly ever stays for a day and a half */
  stuckHours: 36,
  /** hours beyond the possible: single ones come from a low sun or the edge of a cloud, a wrong unit makes hundreds */
  strayHours: 24,
  /** [K]: whole days of calm fog change less, fronts change as much */
  yearEnd: 6,
  /** [m]: the mean pressure tells the height to about 130 m */
  elevation: 250,
  /** [h]: the widest legal zones are about two hours off the sun */
  zone: 2,
};

/** All doubts about a prepared climate, the gravest first. */
export function doubtsAbout(climate: PreparedClimate): readonly Doubt[] {
  const { year } = climate;
  const found = [
    season(year),
    timeZone(year),
    clock(year),
    monthsOffClock(year),
    closure(climate),
    impossibleSun(climate),
    sunAtNight(climate),
    elevation(year),
    stuckValue(year),
    yearEndJump(year),
  ];
  const rank = { wrong: 0, careful: 1, look: 2 };
  return found.filter((doubt) => doubt !== null).sort((a, b) => rank[a.weight] - rank[b.weight]);
}

/** Root mean square of global − (beam · cos z + diffuse) over hours with more than 20 W/m² [W/m²]. */
export function closureRms({ year, cosZenith }: PreparedClimate): { rms: number; beyond50: number } {
  let [squares, count, beyond50] = [0, 0, 0];
  for (let hour = 0; hour < HOURS; hour++) {
    if (!(year.globalHorizontal[hour]! > 20)) continue;
    const parts = year.beamNormal[hour]! * cosZenith[hour]! + year.diffuseHorizontal[hour]!;
    const error = year.globalHorizontal[hour]! - parts;
    squares += square(error);
    count++;
    if (Math.abs(error) > 50) beyond50++;
  }
  return { rms: Math.sqrt(squares / Math.max(count, 1)), beyond50 };
}

function closure(climate: PreparedClimate): Doubt | null {
  const { rms, beyond50 } = closureRms(climate);
  if (rms < LIMIT.closure) return null;
  return {
    id: 'closure',
    weight: rms < LIMIT.closureBad ? 'look' : 'careful',
    text: `Global, beam and diffuse radiation do not add up: ${rms.toFixed(0)} W/m² apart as a rule, more than 50 in ${beyond50} hours.`,
    effect: 'Sun through upright glass can be off by some per cent, in single hours by more.',
  };
}

/** Minute at which the year says its radiation is valid. */
function statedMinute(year: TypicalYear): number {
  return year.sunMinute === 'mean' ? 30 : year.sunMinute;
}

function clock(year: TypicalYear): Doubt | null {
  const minute = clearDayMinute(year);
  if (minute === null || Math.abs(minute - statedMinute(year)) <= LIMIT.clock) return null;
  const off = Math.round(minute - statedMinute(year));
  return {
    id: 'clock',
    weight: Math.abs(off) > 45 ? 'wrong' : 'careful',
    text: `On clear days the sun of the file is centred ${Math.abs(off)} minutes ${off > 0 ? 'before' : 'after'} solar noon.`,
    effect: `East and west glass are mixed up: an hour moves about a tenth of their sun from one to the other, and the hottest hour with it.`,
  };
}

function monthsOffClock(year: TypicalYear): Doubt | null {
  const off: number[] = [];
  for (let month = 0; month < 12; month++) {
    const days = (MONTH_START_HOUR[month + 1]! - MONTH_START_HOUR[month]!) / 24;
    const hours: number[] = [];
    for (let day = 0; day < days; day += 2) {
      for (let h = 0; h < 24; h++) hours.push(MONTH_START_HOUR[month]! + day * 24 + h);
    }
    const found = closureMinute(year, hours);
    if (found !== null && Math.abs(found.minute - statedMinute(year)) > LIMIT.monthClock) off.push(month);
  }
  if (off.length === 0) return null;
  return {
    id: 'months-off-clock',
    weight: off.length >= 3 ? 'wrong' : 'careful',
    text: `In ${off.map((month) => MONTH_NAMES[month]).join(', ')} the radiation runs on another clock than in the rest of the year.`,
    effect:
      'Morning and evening sun are exchanged in these months; use another file for this place if you can.',
  };
}

/**
 * Hours beyond the "extremely rare" limits of the Baseline Surface Radiation Network (Long and Shi 2008): global
 * 1.2 S μ^1.2 + 50, diffuse 0.75 S μ^1.2 + 30, beam 0.95 S μ^0.2 + 10 W/m²; S normal above the air, μ = cos z.
 */
function impossibleSun({ year, cosZenith }: PreparedClimate): Doubt | null {
  let hours = 0;
  let first = -1;
  for (let hour = 0; hour < HOURS; hour++) {
    const mu = cosZenith[hour]!;
    if (mu <= 0.05) continue;
    const above = extraterrestrialNormal(Math.floor(hour / 24) + 1);
    const beyond =
      year.globalHorizontal[hour]! > 1.2 * above * power(mu, 1.2) + 50 ||
      year.diffuseHorizontal[hour]! > 0.75 * above * power(mu, 1.2) + 30 ||
      year.beamNormal[hour]! > 0.95 * above * power(mu, 0.2) + 10;
    if (!beyond) continue;
    hours++;
    if (first < 0) first = hour;
  }
  if (hours < 5) return null;
  return {
    id: 'impossible-sun',
    weight: hours > 100 ? 'wrong' : hours > LIMIT.strayHours ? 'careful' : 'look',
    text: `In ${hours} hours the radiation is stronger than clear air lets through, the first on ${dateOfHour(first)}.`,
    effect:
      hours > LIMIT.strayHours
        ? 'Gains and overheating come out too high; a wrong unit or a wrong clock is likely.'
        : 'So few hours hardly move the answer.',
  };
}

function sunAtNight({ year, cosZenith }: PreparedClimate): Doubt | null {
  let [night, all, hours] = [0, 0, 0];
  for (let hour = 0; hour < HOURS; hour++) {
    all += year.globalHorizontal[hour]!;
    if (cosZenith[hour]! > 0 || year.globalHorizontal[hour]! === 0) continue;
    night += year.globalHorizontal[hour]!;
    hours++;
  }
  if (night <= LIMIT.nightShare * all) return null;
  return {
    id: 'sun-at-night',
    weight: night > 0.05 * all ? 'wrong' : 'careful',
    text: `${((100 * night) / all).toFixed(1)} % of the year's radiation falls in ${hours} hours in which the sun is down at this place.`,
    effect: 'That part is left out, so the sun comes out too weak; the clock or the place is wrong.',
  };
}

function elevation(year: TypicalYear): Doubt | null {
  const mean = year.pressurePa.reduce((sum, value) => sum + value, 0) / HOURS;
  const byPressure = elevationFromPressure(mean);
  if (Math.abs(byPressure - year.site.elevationM) <= LIMIT.elevation) return null;
  return {
    id: 'elevation',
    weight: 'look',
    text: `The elevation is given as ${Math.round(year.site.elevationM)} m, but the mean pressure of ${Math.round(mean / 100)} hPa belongs to about ${Math.round(byPressure / 50) * 50} m.`,
    effect:
      'Air density and venting are a few per cent off; the pressure may be reduced to sea level, or the place be another.',
  };
}

function timeZone(year: TypicalYear): Doubt | null {
  const { longitudeDeg, utcOffsetH } = year.site;
  const sunZone = longitudeDeg / 15;
  const difference = utcOffsetH - sunZone;
  const around = Math.abs(difference) > 12 ? 24 - Math.abs(difference) : Math.abs(difference);
  if (around <= LIMIT.zone) return null;
  return {
    id: 'time-zone',
    weight: 'careful',
    text: `The time zone of ${utcOffsetH} h from UTC does not fit the longitude of ${longitudeDeg.toFixed(1)}°, where the sun says ${sunZone.toFixed(1)} h.`,
    effect:
      'If the zone is wrong, morning and evening sun are exchanged; if the sign of the longitude is wrong, too.',
  };
}

/** Warmth and light above the air run together outside the tropics, half a season apart at most. */
function season(year: TypicalYear): Doubt | null {
  if (Math.abs(year.site.latitudeDeg) < 25) return null;
  const monthly = (value: (day: number) => number) =>
    MONTH_START_HOUR.slice(0, 12).map((start, month) => {
      const [from, to] = [start / 24, MONTH_START_HOUR[month + 1]! / 24];
      let sum = 0;
      for (let day = from; day < to; day++) sum += value(day) / (to - from);
      return sum;
    });
  const warmth = monthly((day) => year.dryBulbC[day * 24 + 12]!);
  const light = monthly((day) => dailyExtraterrestrial(year.site.latitudeDeg, day));
  if (correlation(warmth, light) > 0.2) return null;
  return {
    id: 'season',
    weight: 'wrong',
    text: `The warm months of the file are the months of low sun at latitude ${year.site.latitudeDeg.toFixed(1)}°.`,
    effect: 'The sign of the latitude is probably wrong; summer and winter sun are exchanged.',
  };
}

function correlation(a: readonly number[], b: readonly number[]): number {
  const mean = (x: readonly number[]) => x.reduce((s, v) => s + v, 0) / x.length;
  const [ma, mb] = [mean(a), mean(b)];
  let [ab, aa, bb] = [0, 0, 0];
  for (const [i, value] of a.entries()) {
    ab += (value - ma) * (b[i]! - mb);
    aa += square(value - ma);
    bb += square(b[i]! - mb);
  }
  return ab / Math.sqrt(Math.max(aa * bb, 1e-12));
}

function stuckValue(year: TypicalYear): Doubt | null {
  let [longest, at, run] = [0, 0, 1];
  for (let hour = 1; hour < HOURS; hour++) {
    run = year.dryBulbC[hour] === year.dryBulbC[hour - 1] ? run + 1 : 1;
    if (run > longest) [longest, at] = [run, hour - run + 1];
  }
  const days = repeatedDays(year);
  if (longest < LIMIT.stuckHours && days.length < 2) return null;
  const seen =
    longest >= LIMIT.stuckHours
      ? `The air temperature stays at ${year.dryBulbC[at]} °C for ${longest} hours from ${dateOfHour(at)}.`
      : `${days.length} days are copies of the day before, the first on ${dateOfHour(days[0]! * 24)}.`;
  return {
    id: 'stuck-value',
    weight: longest > 168 || days.length > 7 ? 'careful' : 'look',
    text: seen,
    effect: 'A stuck instrument or a filled gap: the days around it are invented.',
  };
}

/** Days whose temperature and radiation are those of the day before, hour by hour. */
function repeatedDays(year: TypicalYear): number[] {
  const same = (column: Float64Array, day: number) => {
    for (let h = 0; h < 24; h++) if (column[day * 24 + h] !== column[day * 24 - 24 + h]) return false;
    return true;
  };
  const days = Array.from({ length: 364 }, (_, i) => i + 1);
  return days.filter((day) => same(year.dryBulbC, day) && same(year.globalHorizontal, day));
}

function yearEndJump(year: TypicalYear): Doubt | null {
  const jump = year.dryBulbC[0]! - year.dryBulbC[HOURS - 1]!;
  if (Math.abs(jump) < LIMIT.yearEnd) return null;
  return {
    id: 'year-end-jump',
    weight: 'look',
    text: `From 31 December to 1 January the air jumps by ${Math.abs(jump).toFixed(1)} K: the months come from different years.`,
    effect: 'The first and last days of the year are off a little; nothing else.',
  };
}
