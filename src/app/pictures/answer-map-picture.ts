// The map of glass and mass for paper and files: hours too hot as shades of ink and lines of equal value, the limit
// drawn strong, the design as it stands marked.

import type { GlassMassMap } from '../../questions/glass-mass-grid.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { PICTURE, SHEET } from '../parts/palette.ts';
import { drawMap, MAP_FRAME, MAP_HEIGHT, MAP_WIDTH } from '../questions/answer-map.ts';
import { label, type Picture, shape } from './picture.ts';

/** darkest shade, so that lines and words stay readable over it */
const DARKEST = 0.45;

export function answerMapPicture(map: GlassMassMap, system: UnitSystem): Picture {
  const drawing = drawMap(map, system);
  const { drawn, drawnLabel } = drawing;
  const { left, right, top, bottom } = MAP_FRAME;
  const small = { 'font-size': 11 };
  const halo = { 'paint-order': 'stroke', stroke: SHEET.ground, 'stroke-width': 3 };
  return {
    id: 'answer-map',
    width: MAP_WIDTH,
    height: MAP_HEIGHT,
    words: 'Hours too hot by glass and mass',
    shapes: [
      ...drawing.shades.map(({ depth, path }) =>
        shape('path', {
          d: path,
          fill: PICTURE.overheated,
          'fill-opacity': Math.round(100 * DARKEST * depth) / 100,
        }),
      ),
      shape('rect', {
        x: left,
        y: top,
        width: right - left,
        height: bottom - top,
        fill: 'none',
        stroke: SHEET.ink,
      }),
      ...drawing.lines.flatMap(({ line: { kind }, points }) =>
        points.map((path) =>
          shape('polyline', {
            points: path,
            fill: 'none',
            stroke: SHEET.ink,
            'stroke-width': kind === 'limit' ? 2.6 : 1,
          }),
        ),
      ),
      ...drawing.labels.map(({ x, y, text }) => label(x, y, text, 'middle', { ...small, ...halo })),
      shape('circle', {
        cx: drawn.x,
        cy: drawn.y,
        r: 6,
        fill: SHEET.ground,
        stroke: SHEET.ink,
        'stroke-width': 2,
      }),
      label(drawnLabel.x, drawnLabel.y, drawnLabel.text, drawnLabel.anchor, halo),
      ...drawing.xTicks.map(({ at, text }) => label(at, bottom + 16, text, 'middle', small)),
      ...drawing.yTicks.map(({ at, text }) => label(left - 6, at + 4, text, 'end', small)),
      label((left + right) / 2, MAP_HEIGHT - 8, drawing.xTitle, 'middle'),
    ],
  };
}
