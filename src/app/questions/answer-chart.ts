// The geometry of an answer's curves: a chart and a figure to draw in, polylines, marks and axis ticks in picture
// units out. Pure, so that the drawing can be tested without a browser.

import { FIGURE_NAMES, type FigureKey } from '../../questions/figures.ts';
import type { Chart } from '../../questions/question.ts';
import { roundStep } from '../parts/axis.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { unitShown, valueShown } from './answer-units.ts';

const CHART_WIDTH = 640;
const HEIGHT = 300;
/** each second row of ticks */
const SHARE_ROW = 22;
const LEFT = 58;
const RIGHT = 16;
const TOP = 34;
const BOTTOM = 44;

/** Curves are told apart by these as well as by colour; there are as many as ways to build mass. */
export const DASHES = ['none', '7 4', '2 3', '10 3 2 3', '14 4', '1 5'] as const;

/** Rows that the letters of marks stand in when they are close together, and the room between. */
const LETTER_ROWS = 4;
export const LETTER_ROW = 15;
const LETTER_ROOM = 14;

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

/** A second row of ticks: the x scale as a share of another amount, in per cent. */
export interface ShareRow {
  /** "floor, %" */
  readonly head: string;
  /** baseline of its text */
  readonly y: number;
  readonly ticks: readonly Tick[];
}

export interface ChartDrawing {
  readonly width: number;
  readonly height: number;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly lines: readonly Line[];
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  readonly shareRows: readonly ShareRow[];
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
 * @param system units of both scales
 */
export function drawChart(
  chart: Chart,
  figure: FigureKey,
  limit: number | null,
  system: UnitSystem,
): ChartDrawing {
  const { label, unit } = FIGURE_NAMES[figure];
  const shownX = (x: number) => valueShown(x, chart.x.unit, system);
  const shownY = (y: number) => valueShown(y, unit, system);
  const shares = chart.x.shares ?? [];
  const frame = { left: LEFT, right: CHART_WIDTH - RIGHT, top: TOP, bottom: HEIGHT - BOTTOM };
  const points = chart.curves.flatMap((curve) =>
    curve.points.flatMap((point) => {
      const y = point.figures[figure];
      return y === null ? [] : [{ x: shownX(point.x), y: shownY(y) }];
    }),
  );
  const xs = [...points.map(({ x }) => x), ...chart.marks.map(({ x }) => shownX(x))];
  const ys = [...points.map(({ y }) => y), ...(limit === null ? [] : [shownY(limit)])];
  const xScale = niceScale(Math.min(...xs), Math.max(...xs), 6);
  const yScale = niceScale(Math.min(0, ...ys), Math.max(...ys), 5);
  const atX = (x: number) =>
    frame.left + ((x - xScale.low) / (xScale.high - xScale.low)) * (frame.right - frame.left);
  const atY = (y: number) =>
    frame.bottom - ((y - yScale.low) / (yScale.high - yScale.low)) * (frame.bottom - frame.top);
  return {
    frame,
    width: CHART_WIDTH,
    height: HEIGHT + SHARE_ROW * shares.length,
    xTitle: `${chart.x.label}, ${unitShown(chart.x.unit, system).sign}`,
    yTitle: `${label}, ${unitShown(unit, system).sign}`,
    shareRows: shares.map(({ short, wholeX }, i) => {
      const whole = shownX(wholeX);
      const { ticks } = niceScale(0, (100 * xScale.high) / whole, 10);
      return {
        head: `${short}, %`,
        y: frame.bottom + 16 + SHARE_ROW * (i + 1),
        ticks: ticks
          .map((percent) => ({ at: atX((percent / 100) * whole), text: tidy(percent) }))
          .filter(({ at }) => at > frame.left + 1 && at <= frame.right),
      };
    }),
    lines: chart.curves.map((curve) => ({
      id: curve.id,
      label: curve.label,
      points: curve.points.flatMap(({ x, figures }) => {
        const y = figures[figure];
        if (y === null) return [];
        const [right, up] = [shownX(x), shownY(y)];
        return [{ x: atX(right), y: atY(up), text: `${tidy(right)}: ${tidy(up)}` }];
      }),
    })),
    xTicks: xScale.ticks.map((value) => ({ at: atX(value), text: tidy(value) })),
    yTicks: yScale.ticks.map((value) => ({ at: atY(value), text: tidy(value) })),
    marks: lettered(
      chart.marks.toSorted((a, b) => a.x - b.x),
      ({ x }) => atX(shownX(x)),
      (mark) => `${mark.label}: ${tidy(shownX(mark.x))} ${unitShown(chart.x.unit, system).sign}`,
    ),
    limitY: limit === null ? null : atY(shownY(limit)),
  };
}

/** Marks from left to right with their letters, each in the first row where the last letter is out of its way. */
function lettered(
  marks: Chart['marks'],
  placeOf: (mark: Chart['marks'][number]) => number,
  textOf: (mark: Chart['marks'][number]) => string,
): ChartDrawing['marks'] {
  const last = new Array<number>(LETTER_ROWS).fill(Number.NEGATIVE_INFINITY);
  return marks.map((mark, i) => {
    const x = placeOf(mark);
    const free = last.findIndex((taken) => x - taken >= LETTER_ROOM);
    const row = free >= 0 ? free : last.indexOf(Math.min(...last));
    last[row] = x;
    return { x, letter: LETTERS[i % LETTERS.length]!, text: textOf(mark), row };
  });
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
  const step = roundStep(span / wanted);
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
