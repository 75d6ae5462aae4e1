// Short holes in an hourly column: filled along a straight line between the readings on both sides, counted,
// and never longer than a limit. The year is a ring, so a hole may lie over its end.

/** Longest hole that is filled [h]; a longer one hides a whole morning or night and is refused. */
export const LONGEST_GAP_H = 3;

export interface Gap {
  /** first missing hour 0…8759 */
  readonly start: number;
  /** missing hours in a row */
  readonly hours: number;
}

/** Runs of NaN in a column, in order; a run over the year's end is one gap that starts near the end. */
export function gapsOf(column: Float64Array): Gap[] {
  const count = column.length;
  const first = column.findIndex((value) => !Number.isNaN(value));
  if (first < 0) return [{ start: 0, hours: count }];
  const gaps: Gap[] = [];
  for (let step = 0; step < count; step++) {
    const start = (first + step) % count;
    if (!Number.isNaN(column[start]!)) continue;
    let hours = 1;
    while (Number.isNaN(column[(start + hours) % count]!)) hours++;
    gaps.push({ start, hours });
    step += hours - 1;
  }
  return gaps.sort((a, b) => a.start - b.start);
}

/**
 * Fill the holes of a column in place.
 *
 * @param column hourly values, NaN where missing
 * @param longest longest hole to fill [h]
 * @returns hours filled, and the holes that were too long and are still NaN
 */
export function fillGaps(
  column: Float64Array,
  longest = LONGEST_GAP_H,
): { filled: number; tooLong: readonly Gap[] } {
  let filled = 0;
  const tooLong: Gap[] = [];
  const count = column.length;
  for (const gap of gapsOf(column)) {
    if (gap.hours > longest) {
      tooLong.push(gap);
      continue;
    }
    const before = column[(gap.start - 1 + count) % count]!;
    const after = column[(gap.start + gap.hours) % count]!;
    for (let i = 0; i < gap.hours; i++) {
      const share = (i + 1) / (gap.hours + 1);
      column[(gap.start + i) % count] = before + share * (after - before);
    }
    filled += gap.hours;
  }
  return { filled, tooLong };
}
