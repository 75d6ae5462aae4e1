// What a logger wrote that cannot be a room's air: stuck values, jumps, heads in the sun, humidity at its stop. Readings in;
// which of them to leave out, and a sentence for each kind, out. Nothing is left out without its sentence. Limits: common
// practice, no source.

import { HOUR_MS } from '../weather/moments.ts';

/** The same value for so long is a logger that hangs [h]. */
const STUCK_H = 12;
/** Air of a room does not jump so far in a reading; a logger that is carried, or a door beside it, does [K]. */
const JUMP_K = 5;
/** After a jump a logger takes so long to be itself again [h]. */
const SETTLES_H = 1;
/** Above the hours around it by so much, for no longer than so, and at the same time on most days: the sun is on it. */
const SPIKE_K = 3;
const SPIKE_H = 3;
const SPIKE_DAYS = 3;
/** Sensors that read this have met dew, and stop there [%]. */
const FULL_PERCENT = 99;
const FULL_H = 6;

export interface Suspicious {
  /** 1 where a reading is left out */
  readonly masked: Uint8Array;
  readonly notes: readonly string[];
}

/** A stretch of readings. */
interface Stretch {
  readonly from: number;
  /** after the last */
  readonly until: number;
}

/**
 * Look through a column in order of time.
 *
 * @param ms moment of each reading, rising
 * @param dateOf a moment in words
 */
export function suspicious(
  kind: 'temperature' | 'humidity',
  ms: Float64Array,
  values: Float64Array,
  dateOf: (ms: number) => string,
): Suspicious {
  const masked = new Uint8Array(values.length);
  const notes: string[] = [];
  const leaveOut = (stretches: readonly Stretch[], say: (first: string, hours: string) => string): void => {
    if (stretches.length === 0) return;
    let hours = 0;
    for (const { from, until } of stretches) {
      masked.fill(1, from, until);
      hours += (ms[until - 1]! - ms[from]!) / HOUR_MS;
    }
    const more = stretches.length > 1 ? `${stretches.length} times, first on ` : '';
    notes.push(say(`${more}${dateOf(ms[stretches[0]!.from]!)}`, `${Math.max(1, Math.round(hours))} h`));
  };
  const [low, high] = kind === 'temperature' ? [-50, 80] : [0, 105];
  const impossible = stretchesWhere(values, (value) => value < low || value > high);
  const unit = kind === 'temperature' ? '°C' : '%';
  leaveOut(impossible, (first) => `Readings outside ${low} to ${high} ${unit}, ${first}: left out.`);
  const longEnough =
    (hours: number) =>
    ({ from, until }: Stretch) =>
      (ms[until - 1]! - ms[from]!) / HOUR_MS >= hours;
  const stuck = sameValues(values).filter(longEnough(STUCK_H));
  leaveOut(
    stuck,
    (first, hours) =>
      `The same value for ${STUCK_H} h and more, ${first}, ${hours} in all: left out, as if it hung.`,
  );
  if (kind === 'humidity') {
    const full = stretchesWhere(values, (value) => value >= FULL_PERCENT).filter(longEnough(FULL_H));
    leaveOut(
      full,
      (first, hours) =>
        `Humidity at ${FULL_PERCENT} % and more for ${FULL_H} h, ${first}, ${hours} in all: left out, the sensor was wet.`,
    );
    return { masked, notes };
  }
  const spikes = sunnySpikes(ms, values, masked);
  leaveOut(
    spikes,
    (first, hours) =>
      `Warmer by ${SPIKE_K} K and more for under ${SPIKE_H} h at the same time of day, ${first}, ${hours} in all: left out, the sun was on it. Hang it in the shade.`,
  );
  const jumps = jumpsOf(ms, values, masked);
  leaveOut(
    jumps,
    (first) =>
      `A jump of ${JUMP_K} K between two readings, ${first}: the hour after is left out. It was moved, or stood by a door or stove.`,
  );
  return { masked, notes };
}

function stretchesWhere(values: Float64Array, is: (value: number) => boolean): Stretch[] {
  const found: Stretch[] = [];
  for (let i = 0; i < values.length; i++) {
    if (!is(values[i]!)) continue;
    const from = i;
    while (i + 1 < values.length && is(values[i + 1]!)) i++;
    found.push({ from, until: i + 1 });
  }
  return found;
}

function sameValues(values: Float64Array): Stretch[] {
  const found: Stretch[] = [];
  for (let i = 0; i < values.length; i++) {
    const from = i;
    while (i + 1 < values.length && values[i + 1] === values[from]) i++;
    if (i > from) found.push({ from, until: i + 1 });
  }
  return found;
}

function jumpsOf(ms: Float64Array, values: Float64Array, masked: Uint8Array): Stretch[] {
  const found: Stretch[] = [];
  for (let i = 1; i < values.length; i++) {
    const isNear = ms[i]! - ms[i - 1]! <= HOUR_MS;
    if (!isNear || masked[i] === 1 || masked[i - 1] === 1) continue;
    if (!(Math.abs(values[i]! - values[i - 1]!) >= JUMP_K)) continue;
    let until = i + 1;
    while (until < ms.length && ms[until]! - ms[i]! < SETTLES_H * HOUR_MS) until++;
    found.push({ from: i, until });
    i = until;
  }
  return found;
}

/** Short humps above the line from before to after, where they come back at the same time of day. */
function sunnySpikes(ms: Float64Array, values: Float64Array, masked: Uint8Array): Stretch[] {
  const humps: Stretch[] = [];
  for (let i = 1; i < values.length; i++) {
    if (masked[i] === 1 || Number.isNaN(values[i]!)) continue;
    // Steep up: so much above what it was an hour before, and back near it within the spike's length.
    const before = baseBefore(ms, values, i);
    if (!(values[i]! - before >= SPIKE_K)) continue;
    let until = i;
    while (until < values.length && values[until]! - before >= SPIKE_K / 2) until++;
    const isShort = until < values.length && ms[until]! - ms[i]! < SPIKE_H * HOUR_MS;
    if (isShort) humps.push({ from: Math.max(0, i - 1), until: Math.min(values.length, until + 1) });
    i = until;
  }
  const hourOf = ({ from }: Stretch) => (((ms[from]! / HOUR_MS) % 24) + 24) % 24;
  return humps.filter((hump) => {
    const alike = humps.filter((other) => {
      const apart = Math.abs(hourOf(hump) - hourOf(other));
      return Math.min(apart, 24 - apart) <= 1.5;
    });
    return alike.length >= SPIKE_DAYS;
  });
}

/** Lowest reading of the hour and a half before. */
function baseBefore(ms: Float64Array, values: Float64Array, i: number): number {
  let base = Number.POSITIVE_INFINITY;
  for (let k = i - 1; k >= 0 && ms[i]! - ms[k]! <= 5_400_000; k--) base = Math.min(base, values[k]!);
  return base;
}
