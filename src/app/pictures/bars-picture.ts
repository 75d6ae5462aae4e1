// Monthly amounts by cause for paper: stacked bars, each cause in its colour and texture, with a key in words. In: rows
// in shown units. Out: a picture.

import type { MonthlyRow } from '../../outcomes/balances.ts';
import { barField } from '../charts/month-bars.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';
import { numberText } from '../parts/number-text.ts';
import { SHEET } from '../parts/palette.ts';
import { causePaint } from './cause-paint.ts';
import { label, type Picture, rule, type Shape, shape, tenth } from './picture.ts';
import { textureFill, texturePattern } from './texture.ts';

const WIDTH = 680;
const LEFT = 52;
const TOP = 16;
const FIELD = 124;
const MONTHS = 22;
const KEY_ROW = 20;
const KEY_COLUMNS = 4;

/** Picture of monthly rows; rows that never amount to anything are left out. */
export function barsPicture(id: string, rows: readonly MonthlyRow[], sign: string, words: string): Picture {
  const shown = rows.filter(({ months }) => months.some((value) => Math.abs(value) >= 0.05));
  const field = barField(shown, WIDTH - LEFT, FIELD);
  const slot = (WIDTH - LEFT) / 12;
  const patternId = (cause: string) => `${id}-${cause.replace(/[^a-z]+/g, '-')}`;
  const fillOf = (cause: string) => textureFill(patternId(cause), causePaint(cause));
  return {
    id,
    width: WIDTH,
    height: TOP + FIELD + MONTHS + Math.ceil(shown.length / KEY_COLUMNS) * KEY_ROW,
    words,
    shapes: [
      shape(
        'defs',
        {},
        shown.flatMap(({ cause }) => texturePattern(patternId(cause), causePaint(cause))),
      ),
      ...field.ticks.flatMap(({ value, y }) => [
        rule(LEFT, TOP + y, WIDTH, TOP + y),
        label(LEFT - 5, TOP + y + 4, numberText(value, 0), 'end', { 'font-size': 11 }),
      ]),
      label(LEFT - 5, 9, sign, 'end', { 'font-size': 11 }),
      ...field.bars.map((bar) =>
        shape('rect', {
          x: tenth(LEFT + bar.x),
          y: tenth(TOP + bar.y),
          width: tenth(bar.width),
          height: tenth(Math.max(0, bar.height)),
          fill: fillOf(bar.cause),
          stroke: SHEET.ground,
          'stroke-width': 0.5,
        }),
      ),
      rule(LEFT, TOP + field.zeroY, WIDTH, TOP + field.zeroY, { stroke: SHEET.ink, 'stroke-width': 1.4 }),
      ...MONTH_SHORT.map((name, month) =>
        label(LEFT + (month + 0.5) * slot, TOP + FIELD + 15, name, 'middle', { 'font-size': 11 }),
      ),
      ...shown.flatMap(({ cause }, place) => keyOf(cause, place, fillOf(cause))),
    ],
  };
}

function keyOf(cause: string, place: number, fill: string): readonly Shape[] {
  const x = LEFT + (place % KEY_COLUMNS) * ((WIDTH - LEFT) / KEY_COLUMNS);
  const y = TOP + FIELD + MONTHS + Math.floor(place / KEY_COLUMNS) * KEY_ROW;
  return [
    shape('rect', {
      x: tenth(x),
      y: tenth(y + 3),
      width: 18,
      height: 12,
      fill,
      stroke: SHEET.ink,
      'stroke-width': 0.5,
    }),
    label(x + 23, y + 13, cause, 'start', { 'font-size': 11 }),
  ];
}
