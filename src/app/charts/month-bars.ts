// Monthly amounts as stacked bars, gains above the line and losses below. In: rows of twelve numbers by cause. Out:
// rectangles in a field of given size and the round numbers of its axis. Pure, so that the picture can be tested.

import type { MonthlyRow } from '../../outcomes/balances.ts';
import { roundStep } from '../parts/axis.ts';

export interface Bar {
  readonly cause: string;
  readonly month: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface BarField {
  readonly bars: readonly Bar[];
  readonly zeroY: number;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
}

const BAR_SHARE = 0.7;

/** Lay the bars out in width × height pixels. */
export function barField(rows: readonly MonthlyRow[], width: number, height: number): BarField {
  const sums = Array.from({ length: 12 }, (_, month) => ({
    up: rows.reduce((sum, row) => sum + Math.max(0, row.months[month]!), 0),
    down: rows.reduce((sum, row) => sum + Math.min(0, row.months[month]!), 0),
  }));
  const high = Math.max(1e-9, ...sums.map(({ up }) => up));
  const low = Math.min(0, ...sums.map(({ down }) => down));
  const step = roundStep((high - low) / 5);
  const top = Math.ceil(high / step) * step;
  const bottom = Math.floor(low / step) * step;
  const yOf = (value: number) => ((top - value) / (top - bottom)) * height;
  const slot = width / 12;
  const bars: Bar[] = [];
  for (let month = 0; month < 12; month++) {
    let up = 0;
    let down = 0;
    for (const { cause, months } of rows) {
      const value = months[month]!;
      if (Math.abs(value) < 1e-12) continue;
      const from = value > 0 ? up : down;
      const to = from + value;
      if (value > 0) up = to;
      else down = to;
      const y = yOf(Math.max(from, to));
      bars.push({
        cause,
        month,
        x: month * slot + (slot * (1 - BAR_SHARE)) / 2,
        y,
        width: slot * BAR_SHARE,
        height: yOf(Math.min(from, to)) - y,
      });
    }
  }
  const ticks: { value: number; y: number }[] = [];
  for (let i = Math.round(bottom / step); i <= Math.round(top / step); i++)
    ticks.push({ value: i * step, y: yOf(i * step) });
  return { bars, zeroY: yOf(0), ticks };
}
