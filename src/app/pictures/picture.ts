// A picture for paper and for files: plain shapes in points of a fixed size, with colours of their own, so that it looks
// the same in the report, in a file and in another program. What a picture tells is never told by colour alone: areas
// carry a texture, lines a dash and a word.

import { SHEET } from '../parts/palette.ts';

export type Tag =
  | 'circle'
  | 'clipPath'
  | 'defs'
  | 'g'
  | 'line'
  | 'path'
  | 'pattern'
  | 'polyline'
  | 'rect'
  | 'text';

export interface Shape {
  readonly tag: Tag;
  /** SVG attributes by their names */
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly inside?: readonly Shape[] | string;
}

export interface Picture {
  /** short name, part of a file's name and of the names of its textures */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** what a sighted reader takes from it, in a sentence */
  readonly words: string;
  readonly shapes: readonly Shape[];
}

export const TYPEFACE = "'Jost Variable', Jost, Futura, 'Century Gothic', sans-serif";

export function shape(tag: Tag, attributes: Shape['attributes'], inside?: Shape['inside']): Shape {
  return inside === undefined ? { tag, attributes } : { tag, attributes, inside };
}

export type Anchor = 'start' | 'middle' | 'end';

/** A word with its baseline at y. */
export function label(x: number, y: number, text: string, anchor: Anchor = 'start', more = {}): Shape {
  return shape(
    'text',
    { x: tenth(x), y: tenth(y), 'text-anchor': anchor, 'font-size': 12, fill: SHEET.ink, ...more },
    text,
  );
}

export function rule(x1: number, y1: number, x2: number, y2: number, more = {}): Shape {
  return shape('line', {
    x1: tenth(x1),
    y1: tenth(y1),
    x2: tenth(x2),
    y2: tenth(y2),
    stroke: SHEET.rule,
    'stroke-width': 1,
    ...more,
  });
}

/** Rounded to a tenth of a point; finer is neither seen nor worth its bytes. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}
