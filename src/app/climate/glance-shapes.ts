// The climate's two pictures as shapes: the band of temperatures through the months, and bars of sun on three planes.
// In: twelve numbers each, in the units shown, and a size in pixels. Out: paths, bars, lines. Pure, no DOM.

import { roundStep } from '../parts/axis.ts';

export interface Tick {
  readonly value: number;
  readonly y: number;
}

export interface MonthOfAir {
  /** means of the daily highest and lowest */
  readonly high: number;
  readonly low: number;
  readonly highest: number;
  readonly lowest: number;
}

export interface BandField {
  /** the band between the mean daily low and high, as a closed path through the months' middles */
  readonly band: string;
  /** highest and lowest of each month */
  readonly whiskers: readonly { readonly x: number; readonly top: number; readonly bottom: number }[];
  readonly ticks: readonly Tick[];
}

export interface SunBar {
  readonly plane: number;
  readonly month: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const BAR_SHARE = 0.78;

/** Temperatures by month in width × height pixels. */
export function bandField(months: readonly MonthOfAir[], width: number, height: number): BandField {
  const high = Math.max(...months.map(({ highest }) => highest));
  const low = Math.min(...months.map(({ lowest }) => lowest));
  const { ticks, yOf } = axis(low, high, height);
  const x = (month: number) => ((month + 0.5) * width) / 12;
  const point = (month: number, value: number) => `${round(x(month))} ${round(yOf(value))}`;
  const over = months.map(({ high: value }, month) => point(month, value));
  const under = months.map(({ low: value }, month) => point(month, value)).reverse();
  return {
    band: `M${[...over, ...under].join(' L')} Z`,
    whiskers: months.map(({ highest, lowest }, month) => ({
      x: x(month),
      top: yOf(highest),
      bottom: yOf(lowest),
    })),
    ticks,
  };
}

/**
 * Sun by month as bars side by side.
 *
 * @param planes one row a plane, twelve values each, none below 0
 */
export function sunField(
  planes: readonly (readonly number[])[],
  width: number,
  height: number,
): { readonly bars: readonly SunBar[]; readonly ticks: readonly Tick[] } {
  const { ticks, yOf } = axis(0, Math.max(1e-9, ...planes.flat()), height);
  const slot = width / 12;
  const wide = (slot * BAR_SHARE) / planes.length;
  const bars = planes.flatMap((values, plane) =>
    values.map((value, month) => ({
      plane,
      month,
      x: month * slot + (slot * (1 - BAR_SHARE)) / 2 + plane * wide,
      y: yOf(value),
      width: wide,
      height: height - yOf(value),
    })),
  );
  return { bars, ticks };
}

function axis(low: number, high: number, height: number) {
  // An even row still gets an axis one unit high.
  const step = roundStep(Math.max(high - low, 1) / 5);
  const top = Math.max(Math.ceil(high / step), Math.floor(low / step) + 1) * step;
  const bottom = Math.floor(low / step) * step;
  const yOf = (value: number) => ((top - value) / (top - bottom)) * height;
  const count = Math.round((top - bottom) / step);
  const ticks = Array.from({ length: count + 1 }, (_, i) => {
    const value = bottom + i * step;
    return { value, y: yOf(value) };
  });
  return { ticks, yOf };
}

function round(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}
