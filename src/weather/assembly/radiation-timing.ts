// At which minute of the hour a file's radiation is valid, found from the data themselves in two independent
// ways. (1) Closure: the minute at which global = beam·cos z + diffuse fits best; it tells which sun the beam
// was split with. (2) Clear days: the radiation-weighted middle of a clear day against solar noon; it tells when
// the global radiation was measured, and needs neither beam nor diffuse. A mean over the hour shows 30 in both.

import { acos, cos, sin, square, tan } from '../../physics/elementary.ts';
import { extraterrestrialNormal } from '../../physics/extraterrestrial.ts';
import { sunPosition } from '../../physics/sun-position.ts';
import { instantOfHour, type TypicalYear } from '../typical-year.ts';

const DEG = Math.PI / 180;

/** What the two tests need of a year. */
export type RadiationYear = Pick<
  TypicalYear,
  'site' | 'monthYears' | 'globalHorizontal' | 'beamNormal' | 'diffuseHorizontal'
>;

export interface ClosureMinute {
  /** minute after the hour's start, −60…120 */
  readonly minute: number;
  /** root mean square of global − (beam·cos z + diffuse) there [W/m²] */
  readonly rms: number;
}

/** Minutes tried, and their step. */
const FROM_MIN = -60;
const TO_MIN = 120;
const STEP_MIN = 5;

/** Hours with less global radiation than this say little about the clock [W/m²]. */
const DARK = 20;

/** Cosine of the zenith angle, 0 when the sun is down, at a minute of an hour of the year. */
export function cosZenithAt(
  year: Pick<TypicalYear, 'site' | 'monthYears'>,
  hour: number,
  minute: number,
): number {
  const { latitudeDeg, longitudeDeg } = year.site;
  const { elevationDeg } = sunPosition(instantOfHour(year, hour, minute), latitudeDeg, longitudeDeg);
  return Math.max(sin(elevationDeg * DEG), 0);
}

/**
 * Minute at which the three components of radiation fit together best.
 *
 * Every fifth day is tried at steps of 5 min, then a parabola through the best three is taken; error about 1 min.
 *
 * @returns null when fewer than 50 hours have both beam and global radiation
 */
export function closureMinute(year: RadiationYear, hours?: readonly number[]): ClosureMinute | null {
  const useful = (hours ?? everyFifthDay()).filter(
    (hour) => year.globalHorizontal[hour]! > DARK && year.beamNormal[hour]! > DARK,
  );
  if (useful.length < 50) return null;
  const squares: number[] = [];
  for (let minute = FROM_MIN; minute <= TO_MIN; minute += STEP_MIN) {
    let sum = 0;
    for (const hour of useful) {
      const beam = year.beamNormal[hour]! * cosZenithAt(year, hour, minute);
      sum += square(year.globalHorizontal[hour]! - year.diffuseHorizontal[hour]! - beam);
    }
    squares.push(sum / useful.length);
  }
  const best = squares.indexOf(Math.min(...squares));
  const [left, middle, right] = [squares[best - 1], squares[best]!, squares[best + 1]];
  const grid = FROM_MIN + STEP_MIN * best;
  if (left === undefined || right === undefined) return { minute: grid, rms: Math.sqrt(middle) };
  const bend = left - 2 * middle + right;
  const shift = bend > 0 ? (left - right) / (2 * bend) : 0;
  const least = Math.max(middle - ((left - right) * shift) / 4, 0);
  return { minute: grid + STEP_MIN * shift, rms: Math.sqrt(least) };
}

function everyFifthDay(): number[] {
  return Array.from({ length: 73 * 24 }, (_, i) => Math.floor(i / 24) * 120 + (i % 24));
}

/**
 * Minute after the hour's start at which the global radiation of clear days is centred.
 *
 * For the clearest days of each month: (solar noon − radiation-weighted mean of the hours' starts), and the median
 * over them. Clouds before or after noon and mountains shift single days; the median is good to about 4 min.
 *
 * @returns null when the sun is too low in all months or no day is clear
 */
export function clearDayMinute(year: RadiationYear, days?: readonly number[]): number | null {
  const minutes: number[] = [];
  for (const month of byMonth(days ?? Array.from({ length: 365 }, (_, day) => day))) {
    const clearness = month.map((day) => ({ day, kt: dailyClearness(year, day) }));
    const clearest = clearness.filter(({ kt }) => kt > 0.6).sort((a, b) => b.kt - a.kt);
    for (const { day } of clearest.slice(0, 4)) minutes.push(centroidMinute(year, day));
  }
  if (minutes.length < 3) return null;
  minutes.sort((a, b) => a - b);
  const middle = minutes.length >> 1;
  return minutes.length % 2 === 1 ? minutes[middle]! : (minutes[middle - 1]! + minutes[middle]!) / 2;
}

function byMonth(days: readonly number[]): number[][] {
  const months: number[][] = Array.from({ length: 12 }, () => []);
  for (const day of days) months[Math.min(Math.floor(day / 30.42), 11)]!.push(day);
  return months;
}

function centroidMinute(year: RadiationYear, day: number): number {
  let sum = 0;
  let moment = 0;
  for (let h = 0; h < 24; h++) {
    const global = year.globalHorizontal[day * 24 + h]!;
    sum += global;
    moment += global * h;
  }
  return (solarNoonH(year.site.longitudeDeg, year.site.utcOffsetH, day) - moment / sum) * 60;
}

/**
 * Local standard time of solar noon [h].
 *
 * Source: equation of time of Spencer 1971 (Fourier series); good to about 0.6 min.
 */
export function solarNoonH(longitudeDeg: number, utcOffsetH: number, day: number): number {
  const a = (2 * Math.PI * day) / 365;
  const equationMin =
    229.18 *
    (0.000075 + 0.001868 * cos(a) - 0.032077 * sin(a) - 0.014615 * cos(2 * a) - 0.040849 * sin(2 * a));
  return 12 - equationMin / 60 + utcOffsetH - longitudeDeg / 15;
}

/**
 * Daily radiation above the air on the horizontal [Wh/m²].
 *
 *   H0 = 24/π · G · (cos φ cos δ sin ω + ω sin φ sin δ), G the normal irradiance and ω the sunset hour angle
 *
 * @param latitudeDeg −90…90
 * @param day 0…364
 * Source: Spencer 1971 declination; closed form as in Duffie and Beckman, Solar Engineering of Thermal Processes,
 *   equation 1.10.3.
 */
export function dailyExtraterrestrial(latitudeDeg: number, day: number): number {
  const a = (2 * Math.PI * day) / 365;
  const declination =
    0.006918 -
    0.399912 * cos(a) +
    0.070257 * sin(a) -
    0.006758 * cos(2 * a) +
    0.000907 * sin(2 * a) -
    0.002697 * cos(3 * a) +
    0.00148 * sin(3 * a);
  const phi = Math.min(Math.max(latitudeDeg, -89.9), 89.9) * DEG;
  const cosOmega = Math.min(Math.max(-tan(phi) * tan(declination), -1), 1);
  const omega = acos(cosOmega);
  const vertical = cos(phi) * cos(declination) * sin(omega);
  const polar = omega * sin(phi) * sin(declination);
  return Math.max((24 / Math.PI) * extraterrestrialNormal(day + 1) * (vertical + polar), 0);
}

/** Global radiation of a day over that above the air; 0 where the sun hardly rises (under 300 Wh/m²). */
function dailyClearness(year: Pick<RadiationYear, 'site' | 'globalHorizontal'>, day: number): number {
  const above = dailyExtraterrestrial(year.site.latitudeDeg, day);
  if (above < 300) return 0;
  let sum = 0;
  for (let h = 0; h < 24; h++) sum += year.globalHorizontal[day * 24 + h]!;
  return sum / above;
}
