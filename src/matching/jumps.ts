// Hours in which a logger jumps as the house as found does not: a stove lit, a door opened, the sun on it, that nobody told of.
// Only where windows were shut or written down; else it is they that jump.

import { dateOfMoment, HOUR_MS } from '../weather/moments.ts';
import type { HouseRecord } from './house-record.ts';
import type { Pattern } from './patterns.ts';

/** A step of what is left, from one hour to the next, is a jump from so many standard deviations of the usual steps on. */
const RARE = 5;
/** Smaller steps are none, however still the house is [K]; common practice, no source. */
const LEAST_JUMP_K = 1;
/** Fewer are a party. */
const LEAST_JUMPS = 4;
/** Of a normal distribution, the standard deviation over the median of sizes. */
const MEDIAN_TO_SD = 1.4826;

/** Jumps of a residual by hour (measured less computed; NaN where not judged); null where they are few or none. */
export function jumpsOf({ startMs, weather }: HouseRecord, residual: Float64Array): Pattern | null {
  const steps = residual.map((value, hour) => value - (residual[hour - 1] ?? Number.NaN));
  const sizes = [...steps.map(Math.abs)].filter((size) => !Number.isNaN(size)).sort((a, b) => a - b);
  if (sizes.length === 0) return null;
  const usualK = MEDIAN_TO_SD * sizes[sizes.length >> 1]!;
  const fromK = Math.max(LEAST_JUMP_K, RARE * usualK);
  const at = [...steps.keys()].filter((hour) => Math.abs(steps[hour]!) >= fromK);
  if (at.length < LEAST_JUMPS) return null;
  const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0);
  const jumps = at.map((hour) => Math.abs(steps[hour]!));
  const meanK = jumps.reduce((sum, size) => sum + size, 0) / jumps.length;
  const first = dateOfMoment(startMs + at[0]! * HOUR_MS, weather.year.site.utcOffsetH);
  return {
    with: 'moments',
    share: squares(jumps) / squares(sizes),
    rangeK: meanK,
    words: `In ${at.length} hours, first at ${first}, the logger jumped by ${meanK.toFixed(1)} K as the house does not: as if a stove was lit or went out, a door stood open, or the sun was on it, and nobody told of it.`,
  };
}
