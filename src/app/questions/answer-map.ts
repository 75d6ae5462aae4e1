// The geometry of the map of glass and mass: a map in, shades, lines, labels that stand clear of each other, ticks and
// the design's place out, in picture units. Pure; the page and the picture for paper draw the same.

import type { GlassMassMap, MapLine } from '../../questions/glass-mass-grid.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { niceScale, type Tick, tidy } from './answer-chart.ts';
import { unitShown, valueShown } from './answer-units.ts';

export const MAP_WIDTH = 560;
export const MAP_HEIGHT = 400;
export const MAP_FRAME = { left: 62, right: MAP_WIDTH - 14, top: 12, bottom: MAP_HEIGHT - 50 } as const;
/** Shades told apart; more would not be seen. */
const SHADES = 14;
/** Room a label needs at the largest letters it is shown in, those of a phone. */
const LETTER_WIDTH = 9.5;
const LETTER_HEIGHT = 20;
const MARKER = 9;

export interface Shade {
  /** 0 no hours too hot … 1 the most on the map */
  readonly depth: number;
  /** all its cells as one path */
  readonly path: string;
}

export interface Label {
  readonly x: number;
  /** baseline */
  readonly y: number;
  readonly text: string;
}

export interface MapDrawing {
  readonly shades: readonly Shade[];
  readonly lines: readonly { readonly line: MapLine; readonly points: readonly string[] }[];
  /** one a line at most; lines without room have none and stand in the key */
  readonly labels: readonly (Label & { readonly kind: MapLine['kind'] })[];
  readonly drawn: { readonly x: number; readonly y: number };
  readonly drawnLabel: Label & { readonly anchor: 'start' | 'end' };
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  readonly xTitle: string;
  /** what each line is, in words, rising */
  readonly key: string;
  readonly atX: (glassM2: number) => number;
  readonly atY: (massM2: number) => number;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Draw a map. */
export function drawMap(map: GlassMassMap, system: UnitSystem): MapDrawing {
  const mostGlass = map.glassM2.at(-1)!;
  const mostMass = map.massM2.at(-1)!;
  const { left, right, top, bottom } = MAP_FRAME;
  const atX = (m2: number) => round(left + (m2 / mostGlass) * (right - left));
  const atY = (m2: number) => round(bottom - (m2 / mostMass) * (bottom - top));
  // The design may have been drawn beyond the map since.
  const drawn = {
    x: atX(Math.min(map.drawn.glassM2, mostGlass)),
    y: atY(Math.min(map.drawn.massM2, mostMass)),
  };
  const isFarRight = map.drawn.glassM2 > 0.75 * mostGlass;
  const drawnLabel = {
    x: drawn.x + (isFarRight ? -11 : 11),
    y: Math.min(drawn.y + 5, bottom - 4),
    text: 'as drawn',
    anchor: isFarRight ? ('end' as const) : ('start' as const),
  };
  const { sign, factor } = unitShown('m²', system);
  const ticks = (most: number, at: (m2: number) => number, wanted: number): Tick[] =>
    niceScale(0, most * factor, wanted)
      .ticks.filter((value) => value <= most * factor)
      .map((value) => ({ at: at(value / factor), text: tidy(value) }));
  const sorted = map.lines.toSorted((one, other) => one.hours - other.hours);
  return {
    shades: map.filled === null ? [] : shadesOf(map, atX, atY),
    lines: map.lines.map((line) => ({
      line,
      points: line.paths.map((path) => path.map(([g, m]) => `${atX(g)},${atY(m)}`).join(' ')),
    })),
    labels: placedLabels(map.lines, atX, atY, [
      { left: drawn.x - MARKER, right: drawn.x + MARKER, top: drawn.y - MARKER, bottom: drawn.y + MARKER },
      boxOf(
        drawnLabel.text,
        drawnLabel.x + (isFarRight ? -0.5 : 0.5) * widthOf(drawnLabel.text),
        drawnLabel.y,
      ),
    ]),
    drawn,
    drawnLabel,
    xTicks: ticks(mostGlass, atX, 6),
    yTicks: ticks(mostMass, atY, 5),
    xTitle: `equator-facing glass, ${sign}; up: extra mass, ${sign}`,
    key: `Lines of equal hours: ${sorted.map(({ hours, kind }) => `${hours} h${kind === 'limit' ? ' (the limit, drawn strong)' : ''}`).join(', ')}. The stronger the shade, the more hours.`,
    atX,
    atY,
  };
}

/** Hours at the nearest cell in words, for someone who moves over the map by keys. */
export function cellWords(map: GlassMassMap, column: number, row: number, system: UnitSystem): string {
  const { sign } = unitShown('m²', system);
  const area = (m2: number) => `${tidy(valueShown(m2, 'm²', system))} ${sign}`;
  const hours = map.filled?.[row * map.glassM2.length + column];
  const said = hours === undefined ? 'not run yet' : `${Math.round(hours)} hours too hot a year`;
  return `${area(map.glassM2[column]!)} of glass, ${area(map.massM2[row]!)} of extra mass: ${said}`;
}

/** Column or row of a value on an axis, the nearest. */
export function nearest(axis: readonly number[], value: number): number {
  let best = 0;
  for (let i = 1; i < axis.length; i++) {
    if (Math.abs(axis[i]! - value) < Math.abs(axis[best]! - value)) best = i;
  }
  return best;
}

/** Cells of like depth as one path each, neighbours in a row as one stroke, cut at the frame. */
function shadesOf(
  { filled, glassM2, massM2 }: GlassMassMap,
  atX: (m2: number) => number,
  atY: (m2: number) => number,
): Shade[] {
  const side = glassM2.length;
  const most = Math.max(...filled!, 1);
  const level = filled!.map((hours) => Math.round(SHADES * Math.sqrt(Math.max(0, hours) / most)));
  const edge = (axis: readonly number[], i: number) =>
    i <= 0 ? axis[0]! : i >= axis.length ? axis.at(-1)! : (axis[i - 1]! + axis[i]!) / 2;
  const paths = new Map<number, string>();
  for (let row = 0; row < side; row++) {
    const [low, high] = [atY(edge(massM2, row)), atY(edge(massM2, row + 1))];
    for (let column = 0; column < side; ) {
      const of = level[row * side + column]!;
      let end = column + 1;
      while (end < side && level[row * side + end] === of) end++;
      const [from, to] = [atX(edge(glassM2, column)), atX(edge(glassM2, end))];
      if (of > 0) paths.set(of, `${paths.get(of) ?? ''}M${from} ${low}H${to}V${high}H${from}Z`);
      column = end;
    }
  }
  return [...paths].map(([of, path]) => ({ depth: of / SHADES, path })).sort((a, b) => a.depth - b.depth);
}

/** The limit's label first, then the others, each where it is clear of what stands already; or none. */
function placedLabels(
  lines: readonly MapLine[],
  atX: (m2: number) => number,
  atY: (m2: number) => number,
  taken: readonly Box[],
): (Label & { readonly kind: MapLine['kind'] })[] {
  const boxes = [...taken];
  const order = lines.toSorted((one, other) => rankOf(one) - rankOf(other));
  return order.flatMap((line) => {
    const text = `${line.hours} h${line.kind === 'limit' ? ' limit' : ''}`;
    for (const path of line.paths.toSorted((one, other) => other.length - one.length)) {
      // From the middle outward.
      for (let step = 0; step < path.length; step++) {
        const i = Math.floor(path.length / 2) + (step % 2 === 0 ? step / 2 : -(step + 1) / 2);
        const point = path[i];
        if (point === undefined) continue;
        const [x, y] = [atX(point[0]), atY(point[1]) + LETTER_HEIGHT / 4];
        const box = boxOf(text, x, y);
        if (!isInFrame(box) || boxes.some((other) => overlap(box, other))) continue;
        boxes.push(box);
        return [{ x, y, text, kind: line.kind }];
      }
    }
    return [];
  });
}

function rankOf({ kind, hours }: MapLine): number {
  return kind === 'limit' ? -1 : hours;
}

function widthOf(text: string): number {
  return text.length * LETTER_WIDTH;
}

function boxOf(text: string, x: number, y: number): Box {
  const half = widthOf(text) / 2;
  return { left: x - half, right: x + half, top: y - 0.75 * LETTER_HEIGHT, bottom: y + 0.25 * LETTER_HEIGHT };
}

function isInFrame({ left, right, top, bottom }: Box): boolean {
  return (
    left >= MAP_FRAME.left && right <= MAP_FRAME.right && top >= MAP_FRAME.top && bottom <= MAP_FRAME.bottom
  );
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

function round(value: number): number {
  return Math.round(10 * value) / 10;
}
