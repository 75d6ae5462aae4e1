// What a drawing is made of before it becomes SVG: areas, lines and words placed in metres, each with a role that
// the style sheet colours. Pure data, so that a drawing can be compared number by number in a test.

import type { Point } from './section-shape.ts';

export interface AreaMark {
  readonly kind: 'area';
  readonly role: string;
  readonly points: readonly Point[];
  /** fill that depends on a number (a temperature); otherwise the role's own */
  readonly fill?: string;
}

export interface LineMark {
  readonly kind: 'line';
  readonly role: string;
  readonly points: readonly Point[];
}

export interface DotMark {
  readonly kind: 'dot';
  readonly role: string;
  readonly at: Point;
  /** [px], so that it stays readable on a phone */
  readonly radiusPx: number;
}

export interface WordMark {
  readonly kind: 'word';
  readonly role: string;
  readonly at: Point;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

export type Mark = AreaMark | LineMark | DotMark | WordMark;

export const area = (role: string, points: readonly Point[], fill?: string): AreaMark =>
  fill === undefined ? { kind: 'area', role, points } : { kind: 'area', role, points, fill };

export const line = (role: string, points: readonly Point[]): LineMark => ({ kind: 'line', role, points });

export const dot = (role: string, at: Point, radiusPx: number): DotMark => ({
  kind: 'dot',
  role,
  at,
  radiusPx,
});

export const word = (
  role: string,
  at: Point,
  text: string,
  anchor: WordMark['anchor'] = 'middle',
): WordMark => ({ kind: 'word', role, at, text, anchor });

export const point = (x: number, y: number): Point => ({ x, y });

/** An upright rectangle. */
export const box = (role: string, x0: number, y0: number, x1: number, y1: number, fill?: string): AreaMark =>
  area(role, [point(x0, y0), point(x1, y0), point(x1, y1), point(x0, y1)], fill);

/** Move a point along a direction. */
export const moved = (from: Point, along: Point, metres: number): Point =>
  point(from.x + along.x * metres, from.y + along.y * metres);
