// The picture of a match as shapes: what was measured as dots, the house as drawn, as found, and yesterday's same hour as
// lines, days kept unseen shaded. Columns by hour and a size in; places in CSS pixels out.

import type { HourGrid } from '../../weather/real/hourly-means.ts';
import { axisTicks } from '../parts/axis.ts';
import { type Day, daysIn } from './days.ts';

export interface FoundColumns {
  readonly period: HourGrid;
  readonly utcOffsetH: number;
  /** in shown units, NaN where there is none; null before there is a run */
  readonly measured: Float64Array;
  readonly drawn: Float64Array | null;
  readonly found: Float64Array | null;
  /** 1 for hours kept unseen */
  readonly unseen: Uint8Array;
}

export interface FoundShapes {
  readonly dots: string;
  readonly drawn: string;
  readonly found: string;
  readonly yesterday: string;
  /** from … to along x */
  readonly unseen: readonly (readonly [number, number])[];
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
  readonly days: readonly { readonly day: Day; readonly x: number; readonly isNamed: boolean }[];
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly foot: number;
  };
}

const LEFT = 44;
const RIGHT = 8;
const TOP = 10;
const BELOW = 24;
/** Narrower is no picture; a page that is being laid out may ask for less for a moment. */
const LEAST_PX = 160;
/** A date takes so much room [px]. */
const DATE_PX = 52;

export function foundShapes(columns: FoundColumns, wide: number, height: number): FoundShapes {
  const width = Math.max(LEAST_PX, wide);
  const { measured, drawn, found, unseen, period, utcOffsetH } = columns;
  const yesterday = measured.map((_, hour) => measured[hour - 24] ?? Number.NaN);
  const [low, high] = rangeOf([measured, drawn, found]);
  const ticks = axisTicks(low, high, 5);
  const [first, last] = [ticks[0]!, ticks.at(-1)!];
  const plot = { left: LEFT, right: width - RIGHT, top: TOP, foot: height - BELOW };
  const xOf = (hour: number) => plot.left + (hour / measured.length) * (plot.right - plot.left);
  const yOf = (value: number) => plot.top + ((last - value) / (last - first)) * (plot.foot - plot.top);
  const at = (column: Float64Array, hour: number) =>
    `${(xOf(hour + 0.5)).toFixed(1)} ${yOf(column[hour]!).toFixed(1)}`;
  const line = (column: Float64Array | null): string => {
    let path = '';
    let isOpen = false;
    column?.forEach((value, hour) => {
      const isKnown = !Number.isNaN(value) && value >= first && value <= last;
      if (isKnown) path += `${isOpen ? 'L' : 'M'}${at(column, hour)}`;
      isOpen = isKnown;
    });
    return path;
  };
  let dots = '';
  measured.forEach((value, hour) => {
    if (!Number.isNaN(value)) dots += `M${at(measured, hour)}h0`;
  });
  const all = daysIn(period, utcOffsetH);
  const step = Math.max(1, Math.ceil((DATE_PX * all.length) / (plot.right - plot.left)));
  return {
    dots,
    drawn: line(drawn),
    found: line(found),
    yesterday: line(yesterday),
    unseen: stretchesOf(unseen).map(([from, until]) => [xOf(from), xOf(until)] as const),
    ticks: ticks.map((value) => ({ value, y: yOf(value) })),
    days: all.map((day, i) => ({ day, x: xOf(24 * i), isNamed: i % step === 0 })),
    plot,
  };
}

function rangeOf(columns: readonly (Float64Array | null)[]): [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const column of columns)
    for (const value of column ?? []) {
      if (Number.isNaN(value)) continue;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  return low > high ? [0, 1] : [low, high];
}

/** Runs of 1 that are longer than a few hours apart are told apart; short holes within a day do not cut them. */
function stretchesOf(flags: Uint8Array): [number, number][] {
  const found: [number, number][] = [];
  flags.forEach((flag, hour) => {
    if (flag !== 1) return;
    const open = found.at(-1);
    if (open && hour - open[1] <= 24) open[1] = hour + 1;
    else found.push([hour, hour + 1]);
  });
  return found;
}
