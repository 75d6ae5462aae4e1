// The curves of an answer for paper and files: told apart by dash, with their names and the lettered marks below.

import type { Chart } from '../../questions/question.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { SHARED, SHEET } from '../parts/palette.ts';
import { DASHES, drawChart, LETTER_ROW } from '../questions/answer-chart.ts';
import { label, type Picture, rule, type Shape, shape, tenth } from './picture.ts';

const STROKES = [SHEET.ink, SHARED.clay, SHARED.skyDeep, SHARED.moss, SHARED.fair, SHEET.inkSoft];
const ROW = 17;

/** The first figure of a chart, upward. */
export function answerPicture(chart: Chart, limitHours: number, system: UnitSystem): Picture {
  const figure = chart.y[0]!;
  const drawing = drawChart(chart, figure, figure === 'tooHotHours' ? limitHours : null, system);
  const { frame, height } = drawing;
  const rows = [
    ...drawing.lines.map((line, i) => ({ text: line.label, style: i as number | null })),
    ...drawing.marks.map(({ letter, text }) => ({ text: `${letter}: ${text}`, style: null })),
  ];
  const small = { 'font-size': 11 };
  return {
    id: `answer-${chart.id}`,
    width: drawing.width,
    height: height + rows.length * ROW + 6,
    words: `${chart.title}: ${drawing.yTitle}`,
    shapes: [
      ...drawing.yTicks.flatMap(({ at, text }) => [
        rule(frame.left, at, frame.right, at),
        label(frame.left - 6, at + 4, text, 'end', small),
      ]),
      ...drawing.xTicks.map(({ at, text }) => label(at, frame.bottom + 16, text, 'middle', small)),
      ...drawing.shareRows.flatMap(({ head, y, ticks }) => [
        label(frame.left + 6, y, head, 'end', small),
        ...ticks.map(({ at, text }) => label(at, y, text, 'middle', small)),
      ]),
      label((frame.left + frame.right) / 2, height - 8, drawing.xTitle, 'middle'),
      label(4, 14, drawing.yTitle),
      ...drawing.marks.flatMap(({ x, letter, row }) => [
        rule(x, frame.top, x, frame.bottom, { stroke: SHEET.inkSoft, 'stroke-dasharray': '1 3' }),
        label(x + 3, frame.top - 2 + LETTER_ROW * row, letter, 'start', small),
      ]),
      ...(drawing.limitY === null
        ? []
        : [
            rule(frame.left, drawing.limitY, frame.right, drawing.limitY, {
              stroke: SHEET.ink,
              'stroke-width': 1.4,
            }),
            label(frame.right, drawing.limitY - 4, `limit ${limitHours} h`, 'end', small),
          ]),
      ...drawing.lines.flatMap(({ points }, i) => [
        shape('polyline', {
          points: points.map(({ x, y }) => `${tenth(x)},${tenth(y)}`).join(' '),
          fill: 'none',
          ...strokeOf(i),
        }),
      ]),
      ...rows.flatMap(({ text, style }, i) => keyOf(text, style, height + 14 + i * ROW)),
    ],
  };
}

function keyOf(text: string, style: number | null, y: number): readonly Shape[] {
  return [
    ...(style === null ? [] : [rule(KEY_X, y - 4, KEY_X + 34, y - 4, strokeOf(style))]),
    label(KEY_X + 42, y, text),
  ];
}

const KEY_X = 16;

function strokeOf(line: number): Record<string, string | number> {
  const dash = DASHES[line % DASHES.length]!;
  return {
    stroke: STROKES[line % STROKES.length]!,
    'stroke-width': 1.8,
    ...(dash === 'none' ? {} : { 'stroke-dasharray': dash }),
  };
}
