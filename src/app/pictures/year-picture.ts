// The year as hours × days for paper: one column a day, midnight at the foot, each hour in the texture of its band.
// Hours of one band that stand together are one rectangle, so that the picture stays small and sharp at any size.

import { HOURS, MONTH_START_HOUR } from '../../weather/typical-year.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';
import { SHARED, SHEET } from '../parts/palette.ts';
import { label, type Picture, rule, type Shape, shape, tenth } from './picture.ts';
import { textureFill, texturePattern } from './texture.ts';
import type { YearBands } from './year-bands.ts';

const WIDTH = 680;
const LEFT = 38;
const TOP = 6;
const FIELD = 108;
const MONTHS = 20;
const KEY_ROW = 20;
const KEY_COLUMNS = 3;
const DAYS = 365;
/** neighbours overlap by this, so that no hairline shows between them */
const OVERLAP = 0.2;

/**
 * The picture of a year.
 *
 * @param hours 8760 values in the unit of the bands' edges
 */
export function yearPicture(id: string, hours: Float64Array, bands: YearBands, words: string): Picture {
  const dayWidth = (WIDTH - LEFT) / DAYS;
  const hourHeight = FIELD / 24;
  const paths = bands.bands.map(() => '');
  for (const { band, day, days, from, to } of bandBoxes(hours, bands.edges)) {
    const x = hundredth(LEFT + day * dayWidth);
    const y = hundredth(TOP + (24 - to) * hourHeight);
    const width = hundredth(Math.min(days * dayWidth + OVERLAP, WIDTH - x));
    const height = hundredth(Math.min((to - from) * hourHeight + OVERLAP, TOP + FIELD - y));
    paths[band] += `M${x} ${y}h${width}v${height}h-${width}z`;
  }
  const patternId = (band: number) => `${id}-${band}`;
  const clock = [0, 6, 12, 18, 24].map((hour) =>
    label(LEFT - 4, TOP + (24 - hour) * hourHeight + 4, hour === 24 ? '24 h' : String(hour), 'end', {
      'font-size': 11,
    }),
  );
  const months = MONTH_SHORT.flatMap((name, month) => {
    const x = LEFT + (MONTH_START_HOUR[month]! / HOURS) * (WIDTH - LEFT);
    return [
      rule(x, TOP + FIELD, x, TOP + FIELD + 5, { stroke: SHARED.ruleStrong }),
      label(x + 3, TOP + FIELD + 14, name, 'start', { 'font-size': 11 }),
    ];
  });
  const used = bands.bands.map((_, band) => band).filter((band) => paths[band] !== '');
  return {
    id,
    width: WIDTH,
    height: TOP + FIELD + MONTHS + Math.ceil(used.length / KEY_COLUMNS) * KEY_ROW,
    words,
    shapes: [
      shape(
        'defs',
        {},
        bands.bands.flatMap(({ texture }, band) => texturePattern(patternId(band), texture)),
      ),
      ...used.map((band) =>
        shape('path', { d: paths[band]!, fill: textureFill(patternId(band), bands.bands[band]!.texture) }),
      ),
      shape('rect', {
        x: LEFT,
        y: TOP,
        width: WIDTH - LEFT,
        height: FIELD,
        fill: 'none',
        stroke: SHEET.rule,
      }),
      ...clock,
      ...months,
      ...used.flatMap((band, place) => keyOf(bands, band, place, patternId(band))),
    ],
  };
}

function keyOf({ bands }: YearBands, band: number, place: number, id: string): readonly Shape[] {
  const { texture, words } = bands[band]!;
  const x = LEFT + (place % KEY_COLUMNS) * ((WIDTH - LEFT) / KEY_COLUMNS);
  const y = TOP + FIELD + MONTHS + Math.floor(place / KEY_COLUMNS) * KEY_ROW;
  return [
    shape('rect', {
      x: tenth(x),
      y: tenth(y + 2),
      width: 26,
      height: 13,
      fill: textureFill(id, texture),
      stroke: SHARED.ruleStrong,
      'stroke-width': 0.6,
    }),
    label(x + 32, y + 13, words),
  ];
}

export interface BandBox {
  readonly band: number;
  readonly day: number;
  readonly days: number;
  /** hours of the day, from ≤ h < to */
  readonly from: number;
  readonly to: number;
}

/**
 * Hours of one band that stand together, as boxes; every hour lies in exactly one.
 *
 * @param edges rising; a value at an edge belongs to the band below it
 */
export function bandBoxes(hours: Float64Array, edges: readonly number[]): readonly BandBox[] {
  const bandOf = (value: number) => {
    let band = 0;
    while (band < edges.length && value > edges[band]!) band++;
    return band;
  };
  const done: BandBox[] = [];
  let open = new Map<string, BandBox>();
  for (let day = 0; day < hours.length / 24; day++) {
    const next = new Map<string, BandBox>();
    for (let from = 0; from < 24; ) {
      const band = bandOf(hours[day * 24 + from]!);
      let to = from + 1;
      while (to < 24 && bandOf(hours[day * 24 + to]!) === band) to++;
      const key = `${band} ${from} ${to}`;
      const before = open.get(key);
      open.delete(key);
      next.set(key, before ? { ...before, days: before.days + 1 } : { band, day, days: 1, from, to });
      from = to;
    }
    done.push(...open.values());
    open = next;
  }
  return [...done, ...open.values()];
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}
