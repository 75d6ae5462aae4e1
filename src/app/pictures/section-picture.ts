// The section for paper, with its dimensions: depth and height of the rooms, depth of the sunspace, reach of the
// overhang, length and lean of the glass, thickness of walls and floor. In: a design, its latitude, the units.

import type { Design } from '../../design/design.ts';
import { materialById } from '../../design/materials.ts';
import { isUs, type UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { SHEET } from '../parts/palette.ts';
import type { Mark } from '../section/mark.ts';
import { houseMarks } from '../section/StillSection.tsx';
import { type SectionFrame, sectionFrame } from '../section/section-frame.ts';
import { type Point, type SectionShape, sectionShape } from '../section/section-shape.ts';
import { sectionWords } from '../section/section-words.ts';
import { groundMarks, roomMarks } from '../section/shell-marks.ts';
import { lightMarks, noonLight } from '../section/sun-marks.ts';
import { label, type Picture, type Shape, shape, tenth } from './picture.ts';
import { sectionPaint } from './section-paint.ts';
import { textureFill, texturePattern } from './texture.ts';

const DRAWING_PX = 600;
/** room above for the overhang's dimension, on the right for heights, below for depths */
const MARGIN = { top: 24, right: 54, below: 34 };
/** feet and inches are longer words than metres */
const RIGHT_US = 72;
/** room for the words beside the glass */
const GLASS_WORDS_PX = 84;
const TICK = 4;
/** white around words that may lie over lines */
const HALO = { 'paint-order': 'stroke', stroke: SHEET.ground, 'stroke-width': 4, 'stroke-linejoin': 'round' };
/** a shorter overhang has no dimension */
const LEAST_M = 0.05;

/** The section with its dimensions. */
export function sectionPicture(design: Design, latitudeDeg: number, system: UnitSystem): Picture {
  const section = sectionShape(design);
  const frame = sectionFrame(section, DRAWING_PX, false);
  const lights = noonLight(section, design, latitudeDeg);
  const marks: readonly Mark[] = [
    ...groundMarks(section, frame),
    ...roomMarks(section),
    ...lightMarks(lights),
    ...houseMarks(section, design, frame.pxPerM),
  ];
  const roles = [...new Set(marks.map(({ role }) => role))];
  const legend = thicknesses(design, section, system);
  const heightsAt = Math.max(frame.widthPx + 16, glassWordsAt(section, frame).x + GLASS_WORDS_PX);
  // The sky above the house is left out.
  const sky = skyPx(marks, frame);
  const height = MARGIN.top - sky + frame.heightPx + MARGIN.below;
  return {
    id: 'section',
    width: Math.round(heightsAt) + (isUs(system) ? RIGHT_US : MARGIN.right),
    height: height + legend.length * 15,
    words: sectionWords(design, lights, latitudeDeg, system),
    shapes: [
      shape('defs', {}, [
        ...roles.flatMap((role) => {
          const fill = sectionPaint(role)?.fill;
          return fill ? texturePattern(patternId(role), fill) : [];
        }),
        shape('clipPath', { id: 'section-field' }, [
          shape('rect', { x: 0, y: 0, width: frame.widthPx, height: frame.heightPx }),
        ]),
      ]),
      shape('g', { transform: `translate(0 ${tenth(MARGIN.top - sky)})` }, [
        shape(
          'g',
          { 'clip-path': 'url(#section-field)' },
          marks.flatMap((mark) => painted(mark, frame)),
        ),
        ...dimensions(design, section, frame, heightsAt, system),
      ]),
      ...legend.map((text, i) => label(0, height + 10 + i * 15, text, 'start', { 'font-size': 11.5 })),
    ],
  };
}

const patternId = (role: string) => `section-${role.replaceAll(' ', '-')}`;

function painted(mark: Mark, frame: SectionFrame): readonly Shape[] {
  if (mark.kind === 'word') {
    if (mark.role !== 'room-name') return [];
    const at = frame.toPx(mark.at);
    return [label(at.x, at.y, mark.text, 'middle', { 'font-size': 11.5, ...HALO })];
  }
  const paint = sectionPaint(mark.role);
  if (paint === null) return [];
  const attributes = {
    fill: paint.fill ? textureFill(patternId(mark.role), paint.fill) : 'none',
    ...(paint.stroke ? { stroke: paint.stroke, 'stroke-width': paint.width ?? 1 } : {}),
    ...(paint.dash ? { 'stroke-dasharray': paint.dash } : {}),
    ...(paint.opacity ? { opacity: paint.opacity } : {}),
  };
  if (mark.kind === 'dot') {
    const at = frame.toPx(mark.at);
    return [shape('circle', { cx: tenth(at.x), cy: tenth(at.y), r: mark.radiusPx, ...attributes })];
  }
  const d = mark.points
    .map((point, i) => {
      const { x, y } = frame.toPx(point);
      return `${i === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`;
    })
    .join('');
  return [shape('path', { d: mark.kind === 'area' ? `${d}Z` : d, ...attributes })];
}

/** Dimension lines around the drawing. */
function dimensions(
  design: Design,
  section: SectionShape,
  frame: SectionFrame,
  heightsAt: number,
  system: UnitSystem,
): readonly Shape[] {
  const length = (metres: number) => quantityText(metres, 'length', system);
  const x = (metres: number) => frame.toPx({ x: metres, y: 0 }).x;
  const y = (metres: number) => frame.toPx({ x: 0, y: metres }).y;
  const below = frame.heightPx + 12;
  const shapes = [
    ...across(x(0), x(section.wallInnerX), below, length(section.houseDepthM)),
    ...upright(heightsAt, y(0), y(section.heightM), length(section.heightM)),
  ];
  if (section.hasSunspace)
    shapes.push(...across(x(section.wallOuterX), x(section.foot.x), below, length(design.sunspace.depthM)));
  const { overhangFrom, overhangTip } = section;
  if (overhangTip.x - overhangFrom.x > LEAST_M)
    shapes.push(
      ...across(
        x(overhangFrom.x),
        x(overhangTip.x),
        y(overhangTip.y) - 12,
        length(design.glass.overhangM),
        true,
      ),
    );
  const glassM = section.rows.reduce((sum, row) => sum + lengthOf(row.sill, row.head, section), 0);
  const at = glassWordsAt(section, frame);
  shapes.push(
    label(at.x, at.y - 3, `glass ${length(glassM)}`, 'start', HALO),
    label(at.x, at.y + 11, `at ${design.glass.tiltDeg}°`, 'start', HALO),
  );
  return shapes;
}

/** Just outside the middle of the glass. */
function glassWordsAt({ sill, head, slope }: SectionShape, frame: SectionFrame): Point {
  const off = 0.2;
  return frame.toPx({
    x: (sill.x + head.x) / 2 + slope.y * off,
    y: (sill.y + head.y) / 2 - slope.x * off,
  });
}

/** Height of the empty sky above everything that is drawn [px]. */
function skyPx(marks: readonly Mark[], frame: SectionFrame): number {
  const tops = marks.flatMap((mark) =>
    mark.kind === 'area' || mark.kind === 'line' ? mark.points.map(({ y }) => y) : [mark.at.y],
  );
  return Math.max(0, Math.floor(frame.toPx({ x: 0, y: Math.max(...tops) }).y) - 4);
}

/** Along the front: up the knee, then along the slope. */
function lengthOf(sill: Point, head: Point, { knee }: SectionShape): number {
  const uprightM = Math.max(0, knee.y - sill.y);
  const from = uprightM > 0 ? knee : sill;
  return uprightM + Math.hypot(head.x - from.x, head.y - from.y);
}

function across(x1: number, x2: number, at: number, text: string, above = false): readonly Shape[] {
  const line = { stroke: SHEET.ink, 'stroke-width': 0.8 };
  const isWide = x2 - x1 > text.length * 6.5;
  return [
    shape('path', {
      d: `M${tenth(x1)} ${tenth(at)}H${tenth(x2)}M${tenth(x1)} ${tenth(at - TICK)}v${2 * TICK}M${tenth(x2)} ${tenth(at - TICK)}v${2 * TICK}`,
      fill: 'none',
      ...line,
    }),
    isWide && !above
      ? label((x1 + x2) / 2, at + 12, text, 'middle')
      : label(x2 + 6, at + 4, text, 'start', HALO),
  ];
}

function upright(at: number, y1: number, y2: number, text: string): readonly Shape[] {
  return [
    shape('path', {
      d: `M${tenth(at)} ${tenth(y1)}V${tenth(y2)}M${tenth(at - TICK)} ${tenth(y1)}h${2 * TICK}M${tenth(at - TICK)} ${tenth(y2)}h${2 * TICK}`,
      fill: 'none',
      stroke: SHEET.ink,
      'stroke-width': 0.8,
    }),
    label(at + 7, (y1 + y2) / 2 + 4, text),
  ];
}

/** What is too thin to be dimensioned in the drawing, as lines under it. */
function thicknesses(design: Design, section: SectionShape, system: UnitSystem): readonly string[] {
  const thick = (metres: number) => quantityText(metres, 'thickness', system);
  const of = (material: string) => materialById(material).name.toLowerCase();
  const { floor, envelope, mass, sunspace, plants } = design;
  const parts = [
    `floor ${thick(floor.thicknessM)} ${of(floor.material)}`,
    `outer walls ${thick(envelope.wallLiningM)} ${of(envelope.wallLining)} inside the insulation`,
    ...(sunspace.join === 'closed'
      ? [`common wall ${thick(sunspace.commonWallM)} ${of(sunspace.commonWallMaterial)}`]
      : []),
    ...(section.mass
      ? [
          `added mass ${quantityText(mass.areaM2, 'area', system)} of ${thick(mass.thicknessM)} ${of(mass.material)}`,
        ]
      : []),
    ...(section.bed ? [`planted bed ${quantityText(plants.bedM2, 'area', system)}`] : []),
    ...(envelope.bermShare > 0
      ? [`earth to ${quantityText(envelope.bermShare, 'share', system, 0)} of the wall`]
      : []),
    `length of the front ${quantityText(design.house.equatorWallM, 'length', system)}`,
  ];
  const lines: string[] = [];
  for (const part of parts) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + part.length < 104) lines[lines.length - 1] = `${last}; ${part}`;
    else lines.push(part);
  }
  return lines.map((line) => `${line[0]!.toUpperCase()}${line.slice(1)}.`);
}
