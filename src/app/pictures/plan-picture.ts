// The plans of a divided house for paper, a storey beside the other, to one scale. In: a design, its hemisphere, the units.

import type { Design } from '../../design/design.ts';
import { roomPlanOf } from '../../design/room-plan.ts';
import { storeyTitle } from '../../findings/room-words.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { SHARED, SHEET } from '../parts/palette.ts';
import type { Mark } from '../section/mark.ts';
import { planField, planMarks, planWords } from '../section/plan-marks.ts';
import type { Point } from '../section/section-shape.ts';
import { label, type Picture, type Shape, shape, tenth } from './picture.ts';

const WIDTH = 600;
const GAP = 20;
const EDGE = 4;
const CAPTION = 20;
const MOST_SCALE = 30;
const HALO = { 'paint-order': 'stroke', stroke: SHEET.ground, 'stroke-width': 4, 'stroke-linejoin': 'round' };

const LINES: Readonly<Record<string, Readonly<Record<string, string | number>>>> = {
  'plan-room': { stroke: SHEET.ink, 'stroke-width': 2 },
  'plan-sunspace': { stroke: SHEET.ink, 'stroke-width': 1, 'stroke-dasharray': '4 3' },
  'plan-window': { stroke: SHARED.glass, 'stroke-width': 5 },
  'plan-door is-open': { stroke: SHEET.ground, 'stroke-width': 4 },
  'plan-door is-ajar': { stroke: SHEET.ground, 'stroke-width': 4, 'stroke-dasharray': '3 3' },
  'plan-door is-shut': { stroke: SHEET.ink, 'stroke-width': 1 },
  'plan-stairs': { stroke: SHARED.inkSoft, 'stroke-width': 1 },
};

/** The plans; without rooms an empty sheet that says so. */
export function planPicture(design: Design, latitudeDeg: number, system: UnitSystem): Picture {
  const plan = roomPlanOf(design);
  if (plan === null) {
    const words = 'The house is one room.';
    return { id: 'plan', width: WIDTH, height: CAPTION, words, shapes: [label(0, 14, words)] };
  }
  const { storeys } = design.house;
  const { lengthM, depthM, frontM } = planField(design, plan);
  const wide = (WIDTH - (storeys - 1) * GAP) / storeys;
  const scale = Math.min(MOST_SCALE, (wide - 2 * EDGE) / lengthM);
  const height = (depthM + frontM) * scale + 2 * EDGE;
  const shapes = Array.from({ length: storeys }, (_, storey): Shape => {
    const toPx = ({ x, y }: Point) => ({ x: EDGE + x * scale, y: EDGE + (depthM - y) * scale });
    const marks = planMarks(design, storey, latitudeDeg >= 0, {}, null);
    return shape('g', { transform: `translate(${tenth(storey * (wide + GAP))} 0)` }, [
      ...marks.map((mark) => drawn(mark, toPx)),
      ...(storeys > 1 ? [label(EDGE, height + 14, storeyTitle(storey))] : []),
    ]);
  });
  return {
    id: 'plan',
    width: WIDTH,
    height: Math.round(height + CAPTION),
    words: planWords(design, (m2) => quantityText(m2, 'area', system)),
    shapes,
  };
}

function drawn(mark: Mark, toPx: (point: Point) => Point): Shape {
  if (mark.kind === 'word') {
    const at = toPx(mark.at);
    return label(at.x, at.y + 4, mark.text, 'middle', { 'font-size': 11.5, ...HALO });
  }
  const points = mark.kind === 'dot' ? [mark.at] : mark.points;
  const d = points
    .map((point, i) => {
      const { x, y } = toPx(point);
      return `${i === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`;
    })
    .join('');
  return shape('path', { d: mark.kind === 'area' ? `${d}Z` : d, fill: 'none', ...LINES[mark.role] });
}
