// The map of glass and mass for paper and files: overheated hours as shades of ink and lines of equal value, the limit
// drawn strong, the design as it stands marked.

import type { GlassMassMap } from '../../questions/glass-mass-grid.ts';
import { niceScale, tidy } from '../questions/answer-chart.ts';
import { INK, label, type Picture, shape, tenth } from './picture.ts';

const WIDTH = 560;
const HEIGHT = 400;
const FRAME = { left: 56, right: WIDTH - 16, top: 12, bottom: HEIGHT - 44 };
/** darkest shade, so that lines and words stay readable over it */
const DARKEST = 0.45;

export function answerMapPicture(map: GlassMassMap): Picture {
  const side = map.glassM2.length;
  const mostGlass = map.glassM2.at(-1)!;
  const mostMass = map.massM2.at(-1)!;
  const atX = (m2: number) => tenth(FRAME.left + (m2 / mostGlass) * (FRAME.right - FRAME.left));
  const atY = (m2: number) => tenth(FRAME.bottom - (m2 / mostMass) * (FRAME.bottom - FRAME.top));
  const most = Math.max(...(map.filled ?? [1]), 1);
  const cellW = (FRAME.right - FRAME.left) / (side - 1);
  const cellH = (FRAME.bottom - FRAME.top) / (side - 1);
  const small = { 'font-size': 11 };
  const halo = { 'paint-order': 'stroke', stroke: '#fff', 'stroke-width': 3 };
  return {
    id: 'answer-map',
    width: WIDTH,
    height: HEIGHT,
    words: 'Overheated hours by glass and mass',
    shapes: [
      shape('defs', {}, [
        shape('clipPath', { id: 'answer-map-field' }, [
          shape('rect', {
            x: FRAME.left,
            y: FRAME.top,
            width: FRAME.right - FRAME.left,
            height: FRAME.bottom - FRAME.top,
          }),
        ]),
      ]),
      shape(
        'g',
        { 'clip-path': 'url(#answer-map-field)' },
        (map.filled ?? []).map((hours, i) =>
          shape('rect', {
            x: tenth(atX(map.glassM2[i % side]!) - cellW / 2),
            y: tenth(atY(map.massM2[Math.floor(i / side)]!) - cellH / 2),
            width: tenth(cellW + 0.5),
            height: tenth(cellH + 0.5),
            fill: '#7a3b12',
            'fill-opacity': Math.round(100 * DARKEST * Math.sqrt(hours / most)) / 100,
          }),
        ),
      ),
      shape('rect', {
        x: FRAME.left,
        y: FRAME.top,
        width: FRAME.right - FRAME.left,
        height: FRAME.bottom - FRAME.top,
        fill: 'none',
        stroke: INK,
      }),
      ...map.lines.flatMap(({ hours, kind, paths }) =>
        paths.flatMap((path, p) => {
          const middle = path[Math.floor(path.length / 2)]!;
          const line = shape('polyline', {
            points: path.map(([glass, mass]) => `${atX(glass)},${atY(mass)}`).join(' '),
            fill: 'none',
            stroke: INK,
            'stroke-width': kind === 'limit' ? 2.6 : 1,
          });
          const words = `${hours} h${kind === 'limit' ? ' limit' : ''}`;
          return p === 0
            ? [line, label(atX(middle[0]), atY(middle[1]) - 3, words, 'middle', { ...small, ...halo })]
            : [line];
        }),
      ),
      shape('circle', {
        cx: atX(map.drawn.glassM2),
        cy: atY(map.drawn.massM2),
        r: 6,
        fill: '#fff',
        stroke: INK,
        'stroke-width': 2,
      }),
      label(
        atX(map.drawn.glassM2) + (map.drawn.glassM2 > 0.8 * mostGlass ? -9 : 9),
        atY(map.drawn.massM2) + 4,
        'as drawn',
        map.drawn.glassM2 > 0.8 * mostGlass ? 'end' : 'start',
        halo,
      ),
      ...niceScale(0, mostGlass, 6)
        .ticks.filter((value) => value <= mostGlass)
        .map((value) => label(atX(value), FRAME.bottom + 16, tidy(value), 'middle', small)),
      ...niceScale(0, mostMass, 5)
        .ticks.filter((value) => value <= mostMass)
        .map((value) => label(FRAME.left - 6, atY(value) + 4, tidy(value), 'end', small)),
      label(
        (FRAME.left + FRAME.right) / 2,
        HEIGHT - 8,
        'equator-facing glass, m² (up: extra mass, m² of face)',
        'middle',
      ),
    ],
  };
}
