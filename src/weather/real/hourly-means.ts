// Rows of any step, 1 minute to 1 hour, into hours. Readings of a moment (air, most loggers) are joined by straight lines
// and averaged over each hour; amounts of an interval (most radiation) belong to the hour their middle falls in. Gaps stay
// gaps.

import { HOUR_MS } from '../moments.ts';

/** Lines join readings no further apart than so many usual steps, and never less than this. */
const STEPS_JOINED = 2.5;
const LEAST_JOINED_MS = 0.5 * HOUR_MS;
/** An hour is known when readings cover so much of it. */
const COVERED = 0.5;

/** Hours from a first moment on; rows must be in order of time. */
export interface HourGrid {
  readonly startMs: number;
  readonly hours: number;
}

/**
 * Mean of each hour of readings of a moment.
 *
 * @param ms moment of each row, rising; values NaN where there is none
 * @param stepMs usual step between rows
 */
export function hourlyFromMoments(
  ms: Float64Array,
  values: Float64Array,
  stepMs: number,
  { startMs, hours }: HourGrid,
): Float64Array {
  const sums = new Float64Array(hours);
  const covered = new Float64Array(hours);
  const joined = Math.max(STEPS_JOINED * stepMs, LEAST_JOINED_MS);
  let last = -1;
  for (let row = 0; row < ms.length; row++) {
    if (Number.isNaN(values[row]!)) continue;
    if (last >= 0 && ms[row]! - ms[last]! <= joined)
      addLine(ms[last]!, values[last]!, ms[row]!, values[row]!);
    last = row;
  }
  return sums.map((sum, hour) => (covered[hour]! < COVERED * HOUR_MS ? Number.NaN : sum / covered[hour]!));

  function addLine(from: number, a: number, until: number, b: number): void {
    let at = from;
    while (at < until) {
      const hour = Math.floor((at - startMs) / HOUR_MS);
      const end = Math.min(until, startMs + (hour + 1) * HOUR_MS);
      if (hour >= 0 && hour < hours) {
        const middle = a + ((b - a) * ((at + end) / 2 - from)) / (until - from);
        sums[hour]! += middle * (end - at);
        covered[hour]! += end - at;
      }
      at = end;
    }
  }
}

/** Mean of each hour of values that stand for an interval whose middle is `middleMs` after their stamp. */
export function hourlyFromIntervals(
  ms: Float64Array,
  values: Float64Array,
  middleMs: number,
  { startMs, hours }: HourGrid,
): Float64Array {
  const sums = new Float64Array(hours);
  const counts = new Float64Array(hours);
  for (let row = 0; row < ms.length; row++) {
    const hour = Math.floor((ms[row]! + middleMs - startMs) / HOUR_MS);
    if (Number.isNaN(values[row]!) || hour < 0 || hour >= hours) continue;
    sums[hour]! += values[row]!;
    counts[hour]! += 1;
  }
  return sums.map((sum, hour) => (counts[hour] === 0 ? Number.NaN : sum / counts[hour]!));
}

/** Full hours of local standard time that hold all rows. */
export function gridOver(ms: Float64Array, utcOffsetH: number): HourGrid {
  let [first, last] = [Infinity, -Infinity];
  for (const moment of ms) {
    first = Math.min(first, moment);
    last = Math.max(last, moment);
  }
  const offset = utcOffsetH * HOUR_MS;
  const startMs = Math.floor((first + offset) / HOUR_MS) * HOUR_MS - offset;
  return { startMs, hours: Math.max(1, Math.ceil((last - startMs) / HOUR_MS)) };
}
