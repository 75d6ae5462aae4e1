// A week hour by hour for paper: rooms, sunspace and outdoors as lines told apart by weight, dash and the word at their
// end, the sun as a shade at the foot, thin lines where too hot and too cold begin. In: columns in shown units.

import type { WeekColumns } from '../charts/week-hours.ts';
import { axisTicks } from '../parts/axis.ts';
import { dayText } from '../parts/calendar-words.ts';
import { type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { numberText } from '../parts/number-text.ts';
import { PICTURE, SHARED, SHEET } from '../parts/palette.ts';
import { label, type Picture, rule, type Shape, shape, tenth } from './picture.ts';

const WIDTH = 680;
const HEIGHT = 164;
const LEFT = 46;
const RIGHT = 78;
const TOP = 12;
const BELOW = 22;
/** share of the height the strongest sun fills */
const SUN_SHARE = 0.4;
const LABEL_APART = 13;

export interface WeekPictureOrder {
  readonly id: string;
  readonly columns: WeekColumns;
  readonly system: UnitSystem;
  /** in shown units */
  readonly cold: number;
  readonly words: string;
}

/** The picture of a week. */
export function weekPicture({ id, columns, system, cold, words }: WeekPictureOrder): Picture {
  const lines = [
    { name: 'rooms', values: columns.house, stroke: SHEET.ink, width: 2.4, dash: '' },
    ...(columns.sunspace
      ? [{ name: 'sunspace', values: columns.sunspace, stroke: SHARED.clay, width: 1.4, dash: '8 3' }]
      : []),
    { name: 'outdoors', values: columns.outdoor, stroke: SHARED.skyDeep, width: 1.3, dash: '2 3' },
  ];
  const all = lines.flatMap(({ values }) => [...values]);
  const ticks = axisTicks(Math.min(...all), Math.max(...all), 6);
  const [low, high] = [ticks[0]!, ticks.at(-1)!];
  const count = columns.hours.length;
  const xOf = (i: number) => LEFT + ((i + 0.5) / count) * (WIDTH - LEFT - RIGHT);
  const yOf = (value: number) => TOP + ((high - value) / (high - low)) * (HEIGHT - TOP - BELOW);
  const sign = unitOf('temperature', system).sign;
  const foot = yOf(low);

  const grid = ticks.flatMap((tick, i) => [
    rule(LEFT, yOf(tick), WIDTH - RIGHT, yOf(tick)),
    label(
      LEFT - 4,
      yOf(tick) + 4,
      `${numberText(tick, 0)}${i === ticks.length - 1 ? ` ${sign}` : ''}`,
      'end',
      {
        'font-size': 11,
      },
    ),
  ]);
  const days = Array.from({ length: Math.floor(count / 24) }, (_, day) => {
    const x = LEFT + ((day * 24) / count) * (WIDTH - LEFT - RIGHT);
    const [number, month] = dayText((columns.from + day * 24) % 8760).split(' ');
    return [
      rule(x, TOP, x, foot),
      label(x + 3, HEIGHT - 8, `${number} ${month!.slice(0, 3)}`, 'start', {
        'font-size': 11,
      }),
    ];
  }).flat();
  const limits = [
    { values: columns.hot, text: 'too hot', below: -3 },
    { values: columns.hot.map(() => cold), text: 'too cold', below: 11 },
  ].flatMap(({ values, text, below }) => {
    const seen = [...values.entries()].filter(([, value]) => value > low && value < high);
    const [first] = seen;
    return first === undefined
      ? []
      : [
          shape('polyline', {
            points: seen.map(([i, value]) => `${tenth(xOf(i))},${tenth(yOf(value))}`).join(' '),
            fill: 'none',
            stroke: SHEET.ink,
            'stroke-width': 0.8,
            'stroke-dasharray': '1 4',
          }),
          label(xOf(first[0]) + 3, yOf(first[1]) + below, text, 'start', {
            'font-size': 10,
            'font-style': 'italic',
            'paint-order': 'stroke',
            stroke: SHEET.ground,
            'stroke-width': 3,
          }),
        ];
  });
  return {
    id,
    width: WIDTH,
    height: HEIGHT,
    words,
    shapes: [
      ...grid,
      ...days,
      sunShade(columns.sun, xOf, foot, (HEIGHT - TOP - BELOW) * SUN_SHARE),
      ...lines.map(({ values, stroke, width, dash }) =>
        shape('polyline', {
          points: [...values].map((value, i) => `${tenth(xOf(i))},${tenth(yOf(value))}`).join(' '),
          fill: 'none',
          stroke,
          'stroke-width': width,
          'stroke-linejoin': 'round',
          ...(dash === '' ? {} : { 'stroke-dasharray': dash }),
        }),
      ),
      ...limits,
      ...endLabels(
        lines.map(({ name, values, stroke }) => ({ text: name, y: yOf(values.at(-1)!) + 4, fill: stroke })),
      ),
      label(WIDTH - RIGHT + 6, foot - 1, 'sun', 'start', { fill: SHEET.inkSoft, 'font-size': 11 }),
    ],
  };
}

/** The sun as an area that stands on the foot of the chart. */
function sunShade(sun: Float64Array, xOf: (i: number) => number, foot: number, height: number): Shape {
  const most = Math.max(1, ...sun);
  const points = [...sun].map((value, i) => `L${tenth(xOf(i))} ${tenth(foot - (value / most) * height)}`);
  return shape('path', {
    d: `M${tenth(xOf(0))} ${tenth(foot)}${points.join('')}L${tenth(xOf(sun.length - 1))} ${tenth(foot)}Z`,
    fill: PICTURE.sunArea,
    stroke: PICTURE.sunEdge,
    'stroke-width': 0.6,
  });
}

/** Names at the right ends of their lines, moved apart where they would touch. */
function endLabels(names: readonly { text: string; y: number; fill: string }[]): readonly Shape[] {
  const sorted = [...names].sort((one, other) => one.y - other.y);
  const most = HEIGHT - BELOW - LABEL_APART;
  const ys: number[] = [];
  for (const { y } of sorted) ys.push(Math.max(y, (ys.at(-1) ?? -Infinity) + LABEL_APART, TOP + 4));
  // From below upwards, so that the lowest stays above the word for the sun.
  for (let i = ys.length - 1; i >= 0; i--) ys[i] = Math.min(ys[i]!, most - (ys.length - 1 - i) * LABEL_APART);
  return sorted.map(({ text, fill }, i) =>
    label(WIDTH - RIGHT + 6, ys[i]!, text, 'start', { fill, 'font-weight': text === 'rooms' ? 600 : 400 }),
  );
}
