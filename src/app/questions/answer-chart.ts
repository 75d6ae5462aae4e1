// The geometry of an answer's curves: a chart and a figure to draw in, polylines, marks and axis ticks in picture
// units out. Pure, so that the drawing can be tested without a browser.

import type { FigureKey } from '../../questions/figures.ts';
import type { Chart } from '../../questions/question.ts';

export const CHART_WIDTH = 640;
export const CHART_HEIGHT = 300;
const LEFT = 58;
const RIGHT = 16;
const TOP = 34;
const BOTTOM = 44;

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

export interface Line {
  readonly id: string;
  readonly label: string;
  readonly points: readonly { readonly x: number; readonly y: number; readonly text: string }[];
}

export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface ChartDrawing {
  readonly lines: readonly Line[];
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  /** lettered, since their names are too long to stand in the picture */
  readonly marks: readonly {
    readonly x: number;
    readonly letter: string;
    readonly text: string;
    readonly row: number;
  }[];
  /** height of the limit line, null when it is not this figure's or out of sight */
  readonly limitY: number | null;
  readonly frame: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

/**
 * Draw one figure of a chart.
 *
 * @param chart curves by rising x; a point without this figure is left out
 * @param figure what to draw upward
 * @param limit horizontal limit in the figure's unit, null for none
 */
export function drawChart(chart: Chart, figure: FigureKey, limit: number | null): ChartDrawing {
  const frame = { left: LEFT, right: CHART_WIDTH - RIGHT, top: TOP, bottom: CHART_HEIGHT - BOTTOM };
  const points = chart.curves.flatMap((curve) =>
    curve.points.flatMap((point) => {
      const y = point.figures[figure];
      return y === null ? [] : [{ curve: curve.id, x: point.x, y }];
    }),
  );
  const xs = [...points.map(({ x }) => x), ...chart.marks.map(({ x }) => x)];
  const ys = [...points.map(({ y }) => y), ...(limit === null ? [] : [limit])];
  const xScale = niceScale(Math.min(...xs), Math.max(...xs), 6);
  const yScale = niceScale(Math.min(0, ...ys), Math.max(...ys), 5);
  const atX = (x: number) =>
    frame.left + ((x - xScale.low) / (xScale.high - xScale.low)) * (frame.right - frame.left);
  const atY = (y: number) =>
    frame.bottom - ((y - yScale.low) / (yScale.high - yScale.low)) * (frame.bottom - frame.top);
  return {
    frame,
    lines: chart.curves.map((curve) => ({
      id: curve.id,
      label: curve.label,
      points: curve.points.flatMap(({ x, figures }) => {
        const y = figures[figure];
        return y === null ? [] : [{ x: atX(x), y: atY(y), text: `${tidy(x)}: ${tidy(y)}` }];
      }),
    })),
    xTicks: xScale.ticks.map((value) => ({ at: atX(value), text: tidy(value) })),
    yTicks: yScale.ticks.map((value) => ({ at: atY(value), text: tidy(value) })),
    marks: chart.marks
      .toSorted((a, b) => a.x - b.x)
      .map((mark, i) => ({
        x: atX(mark.x),
        letter: LETTERS[i % LETTERS.length]!,
        text: mark.label,
        row: i % 3,
      })),
    limitY: limit === null ? null : atY(limit),
  };
}

interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

/** Round ends and steps of 1, 2 or 5 times a power of ten. */
export function niceScale(low: number, high: number, wanted: number): Scale {
  if (!Number.isFinite(low) || !Number.isFinite(high)) return { low: 0, high: 1, ticks: [0, 1] };
  const span = high > low ? high - low : Math.max(1, Math.abs(high));
  const raw = span / wanted;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((factor) => factor * power >= raw) ?? 10) * power;
  const first = Math.floor(low / step) * step;
  const last = Math.ceil((high > low ? high : low + span) / step) * step;
  const count = Math.round((last - first) / step);
  return { low: first, high: last, ticks: Array.from({ length: count + 1 }, (_, i) => first + i * step) };
}

/** A number without needless decimals. */
export function tidy(value: number): string {
  const size = Math.abs(value);
  return String(Number(value.toFixed(size >= 100 ? 0 : size >= 10 ? 1 : 2)));
}
