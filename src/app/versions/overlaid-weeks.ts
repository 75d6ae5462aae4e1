// One week of several versions in one picture: the rooms of each and the air outdoors as lines that differ by dash
// and carry a letter at their end. Hourly values in the units shown and a size in, polylines and ticks out; pure.

import { axisTicks } from '../parts/axis.ts';
import { dayText } from '../parts/calendar-words.ts';

export const WEEK_HOURS = 168;
export const OVERLAY_HEIGHT = 260;
const LEFT = 46;
const RIGHT = 44;
const TOP = 14;
const BOTTOM = 26;
/** Words nearer than this would run into each other [px]. */
const WORD_PX = 14;

export interface WeekLine {
  /** stands at the line's end: "A", "out" */
  readonly mark: string;
  /** hourly, in the unit shown */
  readonly values: Float64Array;
}

export interface OverlaidWeek {
  readonly lines: readonly {
    readonly mark: string;
    /** points of an SVG polyline */
    readonly points: string;
    readonly endY: number;
    /** where the mark stands, apart from its neighbours */
    readonly markY: number;
  }[];
  readonly yTicks: readonly { readonly at: number; readonly value: number }[];
  readonly days: readonly { readonly at: number; readonly text: string }[];
  readonly limits: readonly { readonly at: number; readonly value: number }[];
  readonly frame: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

/**
 * Lay a week's lines over each other.
 *
 * @param lines one value an hour each, all of one length
 * @param from first hour of the year shown
 * @param width of the picture [px]
 * @param limits levels to rule across, in the unit shown; one outside the picture is left out
 */
export function overlaidWeek(
  lines: readonly WeekLine[],
  from: number,
  width: number,
  limits: readonly number[],
): OverlaidWeek {
  const frame = { left: LEFT, right: width - RIGHT, top: TOP, bottom: OVERLAY_HEIGHT - BOTTOM };
  const all = lines.flatMap(({ values }) => [...values]);
  const ticks = axisTicks(Math.min(...all), Math.max(...all), 5);
  const [low, high] = [ticks[0]!, ticks.at(-1)!];
  const atY = (value: number) => frame.bottom - ((value - low) / (high - low)) * (frame.bottom - frame.top);
  const atX = (hour: number) => frame.left + (hour / (WEEK_HOURS - 1)) * (frame.right - frame.left);
  const ends = lines.map(({ values }) => atY(values.at(-1)!));
  const marks = spread(ends, frame.top, frame.bottom);
  const isNarrow = width < 480;
  return {
    frame,
    lines: lines.map(({ mark, values }, i) => ({
      mark,
      points: Array.from(values, (value, hour) => `${atX(hour).toFixed(1)},${atY(value).toFixed(1)}`).join(
        ' ',
      ),
      endY: ends[i]!,
      markY: marks[i]!,
    })),
    yTicks: ticks.map((value) => ({ at: atY(value), value })),
    days: Array.from({ length: 7 }, (_, day) => {
      const [date, month] = dayText(from + 24 * day).split(' ');
      return { at: atX(24 * day), text: isNarrow ? date! : `${date} ${month!.slice(0, 3)}` };
    }),
    limits: limits
      .filter((value) => value >= low && value <= high)
      .map((value) => ({ at: atY(value), value })),
  };
}

/** Heights moved apart to be read, in the same order and inside top…bottom. */
function spread(heights: readonly number[], top: number, bottom: number): number[] {
  const order = heights.map((_, i) => i).sort((a, b) => heights[a]! - heights[b]!);
  const placed = [...heights];
  let least = top;
  for (const i of order) {
    placed[i] = Math.max(placed[i]!, least);
    least = placed[i]! + WORD_PX;
  }
  let most = bottom;
  for (const i of order.reverse()) {
    placed[i] = Math.min(placed[i]!, most);
    most = placed[i]! - WORD_PX;
  }
  return placed;
}
