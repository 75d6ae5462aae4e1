// Ground, slab, walls, roof, glass and overhang as marks. In: a section shape and its frame. Out: areas and lines in
// the order they are painted.

import type { Design } from '../../design/design.ts';
import { glassById } from '../../design/glass-catalogue.ts';
import { area, box, line, type Mark, moved, point } from './mark.ts';
import { floorStretches } from './room-marks.ts';
import type { SectionFrame } from './section-frame.ts';
import type { Point, SectionShape } from './section-shape.ts';

const FRONT_WALL_M = 0.2;
const UPPER_FLOOR_M = 0.22;
/** drawn distance of the sheets, for the eye [m] */
const SHEET_GAP_M = 0.055;
/** level top of the berm against the wall [m] */
export const BERM_CREST_M = 0.35;
const FOOTING_M = 0.7;
const FOOTING_HALF_M = 0.2;

/** Soil, berm, footings and the floor. */
export function groundMarks(shape: SectionShape, frame: SectionFrame): readonly Mark[] {
  const { gradeY, foot, slabM, slabInsulationM, poleWallM, bermRunM, bermTopY } = shape;
  const berm =
    bermTopY > 0.02
      ? [
          area('soil', [
            point(-poleWallM - bermRunM, gradeY),
            point(-poleWallM - BERM_CREST_M, bermTopY),
            point(-poleWallM, bermTopY),
            point(-poleWallM, gradeY),
          ]),
          line('grade', [
            point(Math.min(frame.left, -poleWallM - bermRunM), gradeY),
            point(-poleWallM - bermRunM, gradeY),
            point(-poleWallM - BERM_CREST_M, bermTopY),
            point(-poleWallM, bermTopY),
          ]),
        ]
      : [line('grade', [point(frame.left, gradeY), point(-poleWallM, gradeY)])];
  const footing = (x: number) =>
    box('footing', x - FOOTING_HALF_M, -FOOTING_M - slabM, x + FOOTING_HALF_M, 0);
  return [
    box('soil', frame.left, frame.bottom, frame.right, gradeY),
    ...berm,
    line('grade', [point(foot.x, gradeY), point(frame.right, gradeY)]),
    footing(-poleWallM / 2),
    ...(shape.hasSunspace && shape.wallOuterX === shape.wallInnerX
      ? []
      : [footing((shape.wallInnerX + shape.wallOuterX) / 2)]),
    ...(shape.hasSunspace ? [footing(foot.x - FOOTING_HALF_M / 2)] : []),
    box('insulation', 0, -slabM - slabInsulationM, shape.wallInnerX, -slabM),
    box('slab', 0, -slabM, foot.x, 0),
  ];
}

/** Rooms as plain areas, to be tinted by their temperature. */
export function roomMarks(
  shape: SectionShape,
  fills: { house?: string; sunspace?: string } = {},
): readonly Mark[] {
  const { wallInnerX, wallOuterX, heightM, foot, knee, top, hasSunspace } = shape;
  const front = [foot, knee, top, point(wallOuterX, heightM)];
  return [
    box('room', 0, 0, wallInnerX, heightM, fills.house),
    area(
      hasSunspace ? 'sunspace' : 'room',
      [point(hasSunspace ? wallOuterX : wallInnerX, 0), ...front],
      hasSunspace ? fills.sunspace : fills.house,
    ),
  ];
}

/** Walls and roof. */
export function shellMarks(
  shape: SectionShape,
  design: Design,
  picked: string | null = null,
): readonly Mark[] {
  const { poleWallM, poleLiningM, heightM, roofM, wallOuterX, wallInnerX, top, foot } = shape;
  const roofTop = heightM + roofM;
  const marks: Mark[] = [
    box('insulation', -poleWallM, -0.1, -poleLiningM, heightM),
    box('lining', -poleLiningM, 0, 0, heightM),
    box('insulation', -poleWallM - 0.15, heightM, wallOuterX, roofTop),
    line('outline', [
      point(-poleWallM - 0.15, heightM),
      point(-poleWallM - 0.15, roofTop + 0.06),
      point(wallOuterX + 0.1, roofTop + 0.02),
    ]),
  ];
  if (shape.hasSunspace) {
    marks.push(...commonWallMarks(shape, design));
    if (top.x > wallOuterX + 0.02) marks.push(box('insulation', wallOuterX, heightM, top.x, heightM + 0.16));
  }
  for (const y of shape.upperFloors) {
    for (const [x0, x1] of floorStretches(design, shape, y, picked)) {
      marks.push(box('upper-floor', x0, y - UPPER_FLOOR_M, x1, y));
    }
  }
  marks.push(...frontMarks(shape));
  marks.push(line('outline', [point(-poleWallM, 0), point(-poleWallM, heightM)]));
  marks.push(line('outline', [point(0, 0), point(0, heightM), point(wallInnerX, heightM)]));
  marks.push(line('outline', [point(0, 0), foot]));
  return marks;
}

/** The opaque parts of the front: below, between and above the rows of glass. */
function frontMarks(shape: SectionShape): readonly Mark[] {
  const { foot, knee, top, rows, slope, hasSunspace } = shape;
  const inward = { x: -slope.y, y: slope.x };
  const thickness = hasSunspace ? FRONT_WALL_M : shape.poleWallM;
  const ends = [foot, ...rows.flatMap(({ sill, head }) => [sill, head]), top];
  const marks: Mark[] = [];
  for (let i = 0; i < ends.length; i += 2) {
    const from = ends[i]!;
    const to = ends[i + 1]!;
    if (to.y - from.y < 0.03) continue;
    const bends = from.y < knee.y - 1e-6 && to.y > knee.y + 1e-6;
    const path = bends ? [from, knee, to] : [from, to];
    const back = [...path].reverse().map((at) => moved(at, inward, thickness));
    marks.push(area('insulation', [...path, ...back.map((at) => point(at.x, Math.max(0, at.y)))]));
  }
  return marks;
}

function commonWallMarks(shape: SectionShape, design: Design): readonly Mark[] {
  const { wallInnerX, wallOuterX, heightM } = shape;
  if (design.sunspace.join === 'closed') {
    return [
      box('common-wall', wallInnerX, 0, wallOuterX, heightM),
      line('outline', [point(wallInnerX, 0), point(wallInnerX, heightM)]),
      line('outline', [point(wallOuterX, 0), point(wallOuterX, heightM)]),
      ...(design.sunspace.doorM2 > 0
        ? [
            line('door', [
              point((wallInnerX + wallOuterX) / 2, 0.02),
              point((wallInnerX + wallOuterX) / 2, 2.05),
            ]),
          ]
        : []),
    ];
  }
  return [line('door', [point(wallInnerX, 0), point(wallInnerX, heightM)])];
}

/** The glass, a line for each sheet, and the overhang. */
export function glassMarks(shape: SectionShape, design: Design): readonly Mark[] {
  const { knee, rows, slope, head, overhangFrom, overhangTip } = shape;
  const { sheets } = glassById(design.glass.type);
  const normal = { x: slope.y, y: -slope.x };
  return rows.flatMap((row) => {
    const bent = row.sill.y < knee.y - 1e-6;
    const path: readonly Point[] = bent ? [row.sill, knee, row.head] : [row.sill, row.head];
    const marks: Mark[] = [line('glass-body', path)];
    for (let sheet = 0; sheet < sheets; sheet++) {
      const off = (sheet - (sheets - 1) / 2) * SHEET_GAP_M;
      marks.push(
        line(
          'glass',
          path.map((at) => moved(at, normal, off)),
        ),
      );
    }
    if (overhangTip.x > overhangFrom.x + 0.01) {
      const rise = row.head.y - head.y;
      const from = overhangFrom.x + row.head.x - head.x;
      marks.push(
        box(
          'overhang',
          Math.min(from, shape.wallOuterX) - 0.05,
          overhangFrom.y + rise,
          from + overhangTip.x - overhangFrom.x,
          overhangFrom.y + rise + 0.1,
        ),
      );
    }
    return marks;
  });
}
