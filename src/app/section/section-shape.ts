// The cross-section of a design as points in metres. x runs from the inside face of the pole-facing wall towards
// the sun, y up from the finished floor. In: a design. Out: where walls, glass, floor, berm, overhang and mass
// stand. Insulation is drawn as thick as blown cellulose (0.04 W/(m·K)) of its resistance; areas
// and lengths are the design's own. The house is drawn at its inside depth; the front is cut where its glass is.

import type { Design } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface GlassRow {
  readonly sill: Point;
  readonly head: Point;
}

export interface SectionShape {
  readonly houseDepthM: number;
  readonly heightM: number;
  readonly hasSunspace: boolean;
  /** the house's equator-facing wall, or the common wall: its two faces */
  readonly wallInnerX: number;
  readonly wallOuterX: number;
  /** thickness of the pole-facing wall, lining inside, and of the roof [m] */
  readonly poleLiningM: number;
  readonly poleWallM: number;
  readonly roofM: number;
  /** foot of the front on the floor line, where an upright part ends and the slope begins, top at the ceiling */
  readonly foot: Point;
  readonly knee: Point;
  readonly top: Point;
  /** rows of glass, lowest first: one a storey, or one in all behind a sunspace's front */
  readonly rows: readonly GlassRow[];
  /** the lowest row: lower and upper end along the front */
  readonly sill: Point;
  readonly head: Point;
  /** heights of the floors between storeys [m] */
  readonly upperFloors: readonly number[];
  /** unit vector up along the slope */
  readonly slope: Point;
  readonly overhangFrom: Point;
  readonly overhangTip: Point;
  readonly slabM: number;
  readonly slabInsulationM: number;
  readonly bermTopY: number;
  readonly bermRunM: number;
  readonly mass: { readonly x0: number; readonly x1: number; readonly topY: number } | null;
  readonly bed: {
    readonly x0: number;
    readonly x1: number;
    readonly topY: number;
    readonly leafM: number;
  } | null;
  /** ground level outside, below the floor line */
  readonly gradeY: number;
}

const INSULATION_CONDUCTIVITY = 0.04;
const GRADE_Y = -0.1;
const BED_HEIGHT_M = 0.45;

/** Lay a design out in section. */
export function sectionShape(design: Design): SectionShape {
  const { envelope, sunspace, glass, floor } = design;
  const geometry = geometryOf(design);
  const { houseDepthM, heightM } = geometry;
  const hasSunspace = sunspace.join !== 'none';
  const poleLiningM = envelope.wallLiningM;
  const poleWallM = poleLiningM + envelope.wallResistance * INSULATION_CONDUCTIVITY;
  // An open join is the whole height without a wall.
  const wallM = sunspace.join === 'none' ? poleWallM : sunspace.join === 'closed' ? sunspace.commonWallM : 0;
  const wallOuterX = houseDepthM + wallM;

  const tilt = (glass.tiltDeg * Math.PI) / 180;
  const slope = { x: -Math.cos(tilt), y: Math.sin(tilt) };
  const lean = heightM / Math.tan(tilt);
  // Without a sunspace the wall itself leans, its top over the inner face; with one, the slope starts at the front.
  const footX = hasSunspace ? wallOuterX + sunspace.depthM : wallOuterX + lean;
  const room = hasSunspace ? sunspace.depthM : lean;
  const kneeY = lean > room ? heightM - room * Math.tan(tilt) : 0;
  const foot = { x: footX, y: 0 };
  const knee = { x: footX, y: kneeY };
  const top = { x: footX - Math.min(lean, room), y: heightM };
  const rowCount = hasSunspace ? 1 : design.house.storeys;
  const rows = Array.from({ length: rowCount }, (_, row) => {
    const drop = (heightM * (1 - (row + 1) / rowCount)) / slope.y;
    const head = { x: top.x - slope.x * drop, y: top.y - slope.y * drop };
    return { head, sill: alongFront(geometry.glassSlantM / rowCount, head, knee, slope) };
  });
  const { sill, head } = rows[0]!;
  const overhangFrom = { x: head.x, y: head.y + glass.overhangGapM };

  return {
    houseDepthM,
    heightM,
    hasSunspace,
    wallInnerX: houseDepthM,
    wallOuterX,
    poleLiningM,
    poleWallM,
    roofM: Math.max(0.12, envelope.roofResistance * INSULATION_CONDUCTIVITY),
    foot,
    knee,
    top,
    rows,
    sill,
    head,
    upperFloors: Array.from(
      { length: design.house.storeys - 1 },
      (_, floor) => (floor + 1) * design.house.ceilingHeightM,
    ),
    slope,
    overhangFrom,
    overhangTip: { x: overhangFrom.x + glass.overhangM, y: overhangFrom.y },
    slabM: floor.thicknessM,
    slabInsulationM: floor.resistance * INSULATION_CONDUCTIVITY,
    bermTopY: envelope.bermShare * heightM,
    bermRunM: envelope.bermShare * heightM * 0.9 + 0.9,
    mass: massShape(design, houseDepthM, heightM),
    bed: bedShape(design, geometry.frontLengthM, foot.x, room, hasSunspace),
    gradeY: GRADE_Y,
  };
}

/** The point a length down from the top, along the slope and then the upright part. */
function alongFront(lengthM: number, top: Point, knee: Point, slope: Point): Point {
  const slopeM = Math.hypot(top.x - knee.x, top.y - knee.y);
  const onSlope = Math.min(lengthM, slopeM);
  const y = top.y - slope.y * onSlope - Math.max(0, lengthM - slopeM);
  return { x: top.x - slope.x * onSlope, y: Math.max(0, y) };
}

/** Extra mass: against the pole-facing wall when shaded, free in the room when sunlit. */
function massShape(design: Design, depthM: number, heightM: number): SectionShape['mass'] {
  const { mass, house } = design;
  if (mass.areaM2 <= 0) return null;
  const topY = Math.min(heightM, Math.max(0.2, mass.areaM2 / house.equatorWallM));
  const x0 = mass.place === 'sunlit' ? depthM * 0.5 : 0;
  return { x0, x1: Math.min(depthM, x0 + mass.thicknessM), topY };
}

/** The planted bed stands behind the front; its drawn width is its area over the front's length. */
function bedShape(
  design: Design,
  frontM: number,
  footX: number,
  roomM: number,
  hasSunspace: boolean,
): SectionShape['bed'] {
  const { plants } = design;
  if (plants.bedM2 <= 0) return null;
  const most = hasSunspace ? roomM * 0.85 : 2;
  const widthM = Math.min(most, Math.max(0.25, plants.bedM2 / frontM));
  const x1 = footX - 0.12;
  return { x0: x1 - widthM, x1, topY: BED_HEIGHT_M, leafM: 0.15 + 0.12 * plants.leafAreaIndex };
}
