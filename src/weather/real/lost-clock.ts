// A clock that started anew in the middle of a table, as a logger's does when its battery fails: from that row on the stamps are
// years too early. When those rows were written nobody can tell, so they are left out; what stands before, and after the clock
// was set again, is used.

import { DAY_MS } from '../moments.ts';

export interface LostClock {
  /** rows to keep, in the order of the file */
  readonly kept: readonly number[];
  /** for the person: the line, both stamps, what is left out and what is used */
  readonly note: string;
}

/** A table that spans less than this may be what it says. */
const BELIEVED_MS = 3 * 366 * DAY_MS;
/** Stamps nearer to each other than this are of one setting of the clock. */
const ONE_SETTING_MS = 366 * DAY_MS;
/** Of rows, so many must have the later stamps: a clock that starts anew goes back, and a stamp too late is another fault. */
const LEAST_KEPT = 0.1;

/**
 * Rows whose clock can be believed; null where the stamps of the whole table lie within three years, or where those that are
 * latest are too few to be the right ones.
 *
 * @param wallMs what the clock showed at each row, in the order of the file
 * @param lines line of each row
 */
export function lostClock(wallMs: Float64Array, lines: readonly number[]): LostClock | null {
  const last = wallMs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const first = wallMs.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  if (!(last - first > BELIEVED_MS)) return null;
  const from = settingBefore(wallMs, last);
  const isKept = (row: number) => wallMs[row]! >= from;
  const rows = [...wallMs.keys()];
  const kept = rows.filter(isKept);
  if (kept.length < LEAST_KEPT * rows.length) return null;
  const lost = rows.find((row) => !isKept(row))!;
  const day = (row: number) => new Date(wallMs[row]!).toISOString().slice(0, 10);
  const stamp = (row: number) => new Date(wallMs[row]!).toISOString().slice(0, 16).replace('T', ' ');
  const beside = lost > 0 ? `after ${stamp(lost - 1)}` : `before ${stamp(kept[0]!)}`;
  const ofKept = kept.toSorted((a, b) => wallMs[a]! - wallMs[b]!);
  return {
    kept,
    note: `On line ${lines[lost]} the clock shows ${stamp(lost)} ${beside}: it started anew, as after a flat battery. When ${rows.length - kept.length} rows with such stamps were written cannot be told; they are left out. The ${kept.length} others, of ${day(ofKept[0]!)} to ${day(ofKept.at(-1)!)}, are used.`,
  };
}

/** The earliest stamp that goes with the last one, with no hole between that is longer than a clock's setting may be off. */
function settingBefore(wallMs: Float64Array, last: number): number {
  const rising = Float64Array.from(wallMs).sort();
  let from = last;
  for (let i = rising.length - 1; i >= 0 && from - rising[i]! <= ONE_SETTING_MS; i--) from = rising[i]!;
  return from;
}
