// What stands inside: extra mass, the planted bed, a person for scale, vents. In: a section shape and the design.
// Out: marks. The person is 1.70 m tall; leaves grow with the leaf area index; a vent's flap opens with its area.

import type { Design } from '../../design/design.ts';
import { area, box, dot, line, type Mark, moved, point } from './mark.ts';
import type { Point, SectionShape } from './section-shape.ts';

/** Mass, bed and plants. */
export function furnishingMarks(shape: SectionShape): readonly Mark[] {
  const marks: Mark[] = [];
  if (shape.mass) marks.push(box('mass', shape.mass.x0, 0, shape.mass.x1, shape.mass.topY));
  if (shape.bed) {
    const { x0, x1, topY, leafM } = shape.bed;
    marks.push(box('bed', x0, 0, x1, topY));
    const plants = Math.max(2, Math.round((x1 - x0) / 0.28));
    for (let i = 0; i < plants; i++) {
      marks.push(...plant(x0 + ((i + 0.5) / plants) * (x1 - x0), topY, leafM * (i % 2 === 0 ? 1 : 0.75)));
    }
  }
  return marks;
}

function plant(x: number, y: number, heightM: number): readonly Mark[] {
  const leaf = (side: number, from: number) =>
    line('leaf', [
      point(x, y + heightM * from),
      point(x + side * 0.07, y + heightM * (from + 0.22)),
      point(x + side * 0.13, y + heightM * (from + 0.3)),
    ]);
  return [
    line('leaf', [point(x, y), point(x, y + heightM)]),
    leaf(1, 0.2),
    leaf(-1, 0.35),
    leaf(1, 0.55),
    leaf(-1, 0.65),
  ];
}

/** A person, 1.70 m, standing in the room. */
export function personMarks(shape: SectionShape): readonly Mark[] {
  const room = shape.mass && shape.mass.x0 < 0.1 ? shape.mass.x1 : 0;
  const x = room + (shape.wallInnerX - room) * 0.26;
  const at = (dx: number, y: number): Point => point(x + dx, y);
  return [
    area('person', [
      at(-0.06, 0),
      at(-0.11, 0.82),
      at(-0.2, 0.84),
      at(-0.19, 1.36),
      at(-0.09, 1.45),
      at(0.09, 1.45),
      at(0.19, 1.36),
      at(0.2, 0.84),
      at(0.11, 0.82),
      at(0.06, 0),
      at(0.01, 0.7),
      at(-0.01, 0.7),
    ]),
    area('person', ring(x, 1.585, 0.11)),
  ];
}

function ring(x: number, y: number, radius: number): readonly Point[] {
  return Array.from({ length: 14 }, (_, i) => {
    const angle = (i / 14) * 2 * Math.PI;
    return point(x + radius * Math.cos(angle), y + radius * 1.1 * Math.sin(angle));
  });
}

export interface VentPlace {
  /** hinge and free end of the flap of the upper opening */
  readonly hinge: Point;
  readonly tip: Point;
  /** the opening in the front near the floor */
  readonly low: Point;
  readonly path: 'vents.sunspaceM2' | 'vents.houseM2';
}

/** Metres of drawn flap for each square metre of the upper half of the opening. */
const FLAP_M_PER_M2 = 0.3;
const FLAP_LEAST_M = 0.12;
/** the flap stands up and back from its hinge */
const FLAP_DIRECTION: Point = { x: -0.6, y: 0.8 };

/** Where the vents are: at the top of the sunspace, or at the top of the house's own windows. */
export function ventPlace(shape: SectionShape, design: Design): VentPlace {
  const path = shape.hasSunspace ? 'vents.sunspaceM2' : 'vents.houseM2';
  const areaM2 = shape.hasSunspace ? design.vents.sunspaceM2 : design.vents.houseM2;
  const hinge = shape.hasSunspace
    ? point(shape.wallOuterX + Math.max(0.12, (shape.top.x - shape.wallOuterX) * 0.4), shape.heightM + 0.18)
    : point(-shape.poleWallM - 0.15, shape.heightM - 0.25);
  const tip = moved(hinge, FLAP_DIRECTION, FLAP_LEAST_M + (areaM2 / 2) * FLAP_M_PER_M2);
  return { hinge, tip, low: point(shape.foot.x, 0.25), path };
}

export function flapAreaM2(hinge: Point, tip: Point): number {
  const length = (tip.x - hinge.x) * FLAP_DIRECTION.x + (tip.y - hinge.y) * FLAP_DIRECTION.y;
  return Math.max(0, ((length - FLAP_LEAST_M) / FLAP_M_PER_M2) * 2);
}

export function ventMarks(shape: SectionShape, design: Design): readonly Mark[] {
  const { hinge, tip, low, path } = ventPlace(shape, design);
  const areaM2 = path === 'vents.sunspaceM2' ? design.vents.sunspaceM2 : design.vents.houseM2;
  if (areaM2 <= 0) return [];
  return [
    line('vent', [hinge, tip]),
    dot('vent-hinge', hinge, 2.5),
    ...(shape.hasSunspace
      ? [line('vent', [low, point(low.x + 0.28, low.y - 0.16)]), dot('vent-hinge', low, 2.5)]
      : []),
  ];
}
