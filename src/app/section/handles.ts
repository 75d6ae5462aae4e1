// What can be dragged in the section. In: a shape and its design. Out: for each handle where it sits, which number it
// moves, and what a point under the finger means for that number. Values snap to what builders build; finer steps
// are the number's own. Keyboard and pointer use the same table.

import type { Design } from '../../design/design.ts';
import { numberAt } from '../../design/design-path.ts';
import { geometryOf } from '../../design/geometry.ts';
import { limitOf } from '../../design/limits.ts';
import { leastRowM, ROOM_LIMITS } from '../../design/room.ts';
import { builtFrontM } from '../../design/room-plan.ts';
import {
  isUs,
  quantityOfLimit,
  type ShownQuantity,
  toShown,
  toSi,
  type UnitSystem,
} from '../parts/display-unit.ts';
import { flapAreaM2, ventPlace } from './inside-marks.ts';
import { moved } from './mark.ts';
import type { Point, SectionShape } from './section-shape.ts';
import { BERM_CREST_M } from './shell-marks.ts';

export interface Handle {
  readonly id: string;
  readonly path: string;
  readonly label: string;
  readonly quantity: ShownQuantity;
  readonly at: Point;
  /** direction in which it is drawn and moved, for the arrows beside it */
  readonly axis: 'across' | 'up' | 'slope';
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** the number a pointer at this place [m] means, unsnapped */
  valueAt(at: Point): number;
}

const DEG = Math.PI / 180;

/** Handles stand off their line where two would otherwise lie on each other [m]. */
const DEPTH_DROP_M = 0.45;
const TILT_OUT_M = 0.32;
const OVERHANG_RISE_M = 0.42;
const OVERHANG_OUT_M = 0.12;

const INCH_FT = 1 / 12;

/** Steps builders think in, as shown: metric, US. */
const SNAP: Readonly<Record<string, readonly [number, number]>> = {
  area: [0.5, 5],
  length: [0.05, 0.25],
  thickness: [1, 0.5],
  angle: [5, 5],
  share: [1, 1],
  number: [0.1, 0.1],
};

/** Fine steps, as shown. */
const FINE: Readonly<Record<string, readonly [number, number]>> = {
  area: [0.1, 1],
  length: [0.01, INCH_FT],
  thickness: [0.5, 0.25],
  angle: [1, 1],
  share: [0.1, 0.1],
  number: [0.01, 0.01],
};

/** The value on the nearest step of the unit system, kept within limits. */
export function snapped(
  value: number,
  handle: Pick<Handle, 'quantity' | 'min' | 'max'>,
  system: UnitSystem,
  fine: boolean,
): number {
  const step = stepOf(handle.quantity, system, fine);
  const shown = Math.round(toShown(value, handle.quantity, system) / step) * step;
  const si = Number(toSi(Number(shown.toFixed(6)), handle.quantity, system).toFixed(4));
  return Math.min(handle.max, Math.max(handle.min, si));
}

/** Step of a quantity in shown units. */
export function stepOf(quantity: ShownQuantity, system: UnitSystem, fine: boolean): number {
  const pair = (fine ? FINE : SNAP)[quantity] ?? [0.1, 0.1];
  return isUs(system) ? pair[1] : pair[0];
}

/** All handles that this design has. */
export function sectionHandles(shape: SectionShape, design: Design): readonly Handle[] {
  const made: Handle[] = [
    glassHandle(shape, design),
    tiltHandle(shape, design),
    overhangHandle(shape, design),
  ];
  if (shape.hasSunspace) {
    made.push(
      simple(
        design,
        'sunspace.depthM',
        'across',
        { x: shape.foot.x, y: shape.gradeY - DEPTH_DROP_M },
        (at) => at.x - shape.wallOuterX,
      ),
    );
  }
  if (design.sunspace.join === 'closed') {
    made.push(
      simple(
        design,
        'sunspace.commonWallM',
        'across',
        { x: shape.wallOuterX, y: shape.heightM * 0.62 },
        (at) => at.x - shape.wallInnerX,
      ),
    );
  }
  made.push(
    simple(design, 'floor.thicknessM', 'up', { x: shape.houseDepthM * 0.62, y: -shape.slabM }, (at) => -at.y),
    simple(
      design,
      'envelope.bermShare',
      'up',
      { x: -shape.poleWallM - BERM_CREST_M, y: Math.max(shape.gradeY, shape.bermTopY) },
      (at) => at.y / shape.heightM,
    ),
  );
  if (new Set(design.rooms?.list.map(({ row }) => row)).size === 2) made.push(partitionHandle(shape, design));
  const vent = ventPlace(shape, design);
  made.push(simple(design, vent.path, 'slope', vent.tip, (at) => flapAreaM2(vent.hinge, at)));
  return made;
}

function simple(
  design: Design,
  path: string,
  axis: Handle['axis'],
  at: Point,
  valueAt: (at: Point) => number,
): Handle {
  const limit = limitOf(path);
  return {
    id: path,
    path,
    label: limit.label,
    quantity: quantityOfLimit(limit),
    at,
    axis,
    value: numberAt(design, path),
    min: limit.min,
    max: limit.max,
    valueAt,
  };
}

/** The sill: the glass hangs from the ceiling line, so pulling its lower end makes it higher. */
function glassHandle(shape: SectionShape, design: Design): Handle {
  const { frontLengthM, equatorWallM2, largestGlassM2 } = geometryOf(design);
  const { basis } = design.glass;
  const perM2 =
    basis === 'area' ? 1 : 1 / (basis === 'share-of-wall' ? equatorWallM2 : design.house.floorAreaM2);
  const { head: top, knee, slope } = shape;
  const slopeM = Math.hypot(top.x - knee.x, top.y - knee.y);
  return {
    ...simple(design, 'glass.value', 'slope', shape.sill, (at) => {
      const along = (top.x - at.x) * slope.x + (top.y - at.y) * slope.y;
      const slant = along <= slopeM ? along : slopeM + Math.min(knee.y, Math.max(0, knee.y - at.y));
      return Math.max(0, slant) * shape.rows.length * frontLengthM * perM2;
    }),
    label: 'Equator-facing glass',
    quantity: basis === 'area' ? 'area' : 'share',
    max: Math.min(basis === 'area' ? limitOf('glass.value').max : 1, largestGlassM2 * perM2),
  };
}

/** On the middle of the slope; the slope turns about its foot, or about its top where it stands on an upright part. */
function tiltHandle(shape: SectionShape, design: Design): Handle {
  const { foot, knee, head, sill, heightM, wallOuterX, slope } = shape;
  const low = sill.y < knee.y ? knee : sill;
  const middle = { x: (low.x + head.x) / 2, y: (low.y + head.y) / 2 };
  const outward = { x: slope.y, y: -slope.x };
  const turnsAboutFoot = shape.hasSunspace && knee.y < 1e-6;
  return simple(design, 'glass.tiltDeg', 'slope', moved(middle, outward, TILT_OUT_M), (pointer) => {
    const p = moved(pointer, outward, -TILT_OUT_M);
    const angle = turnsAboutFoot
      ? Math.atan2(Math.max(0.05, p.y), foot.x - p.x)
      : Math.atan2(Math.max(0.05, heightM - p.y), p.x - wallOuterX);
    return angle / DEG;
  });
}

/** The partition between front and back row, at knee height. */
function partitionHandle(shape: SectionShape, design: Design): Handle {
  const leastM = leastRowM(shape.houseDepthM);
  const frontDepthM = builtFrontM(design);
  return {
    id: 'rooms.frontDepthM',
    path: 'rooms.frontDepthM',
    label: ROOM_LIMITS.frontDepthM.label,
    quantity: 'length',
    at: { x: shape.houseDepthM - frontDepthM, y: 0.5 },
    axis: 'across',
    value: frontDepthM,
    min: leastM,
    max: shape.houseDepthM - leastM,
    valueAt: ({ x }) => shape.houseDepthM - x,
  };
}

function overhangHandle(shape: SectionShape, design: Design): Handle {
  const at = { x: shape.overhangTip.x + OVERHANG_OUT_M, y: shape.overhangTip.y + OVERHANG_RISE_M };
  return simple(
    design,
    'glass.overhangM',
    'across',
    at,
    (pointer) => pointer.x - OVERHANG_OUT_M - shape.overhangFrom.x,
  );
}
