// What stands between sunspace and house: with 'closed', a mass wall with its windows and door; with 'open', nothing
// but the way through. Areas [m²] of each are settled here once, so that together they are the wall. A design in;
// element, pane and door out. Windows and door that ask for more than the wall are cut to it, door first served.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf } from './compass.ts';
import { glassSystem, paneWith } from './glazing.ts';
import { faceIn, LEAST_AREA_M2, layerOf } from './layers.ts';
import type { DoorOpening, Element, HeatGiving, Pane } from './model.ts';

/** Windows inside carry frames as others do. */
const FRAME_SHARE = 0.25;
const DOOR_HEIGHT_M = 2;
/** Sharp-edged doorway: 0.6, measured 0.4–0.8; from memory, medium confidence. */
export const DOOR_DISCHARGE = 0.6;
/** Rooms are glad of sunspace air up to this much above their heating set-point [K]; common practice, no source. */
const WELCOME_ABOVE_K = 2;
/**
 * The door stays shut while the sunspace air holds 2 g/kg more water than the rooms': about 2.4 g/m³, which alone
 * lifts a room at 20 °C by some 14 % relative humidity. Common practice, no source.
 */
const DAMP_LIMIT = 0.002;

interface Split {
  readonly grossM2: number;
  readonly glassM2: number;
  readonly doorM2: number;
}

/** The part of it that one room has behind the sunspace. */
export interface CommonPart {
  readonly zone: string;
  /** after the name of wall, pane or door: empty for the whole house */
  readonly suffix: string;
  readonly grossM2: number;
  readonly lengthM: number;
  readonly heightM: number;
  /** of the windows, 0…1; whether the door leads here */
  readonly glassShare: number;
  readonly hasDoor: boolean;
}

function splitOf(design: Design, part: CommonPart): Split {
  const { sunspace } = design;
  const { grossM2 } = part;
  const doorM2 = part.hasDoor ? Math.min(sunspace.doorM2, grossM2) : 0;
  return { grossM2, doorM2, glassM2: Math.min(sunspace.commonGlassM2 * part.glassShare, grossM2 - doorM2) };
}

/** All of it, behind a house of one room. */
export function wholeCommonWall(design: Design): CommonPart {
  const { lengthM } = design.sunspace;
  const { heightM } = geometryOf(design);
  const grossM2 = lengthM * heightM;
  return { zone: 'house', suffix: '', grossM2, lengthM, heightM, glassShare: 1, hasDoor: true };
}

/** The mass wall, from its sunspace face to its house face; null when open or there is no sunspace. */
export function commonWall(design: Design, part: CommonPart): Element | null {
  const { join, commonWallMaterial, commonWallM } = design.sunspace;
  if (join !== 'closed') return null;
  const { grossM2, glassM2, doorM2 } = splitOf(design, part);
  return {
    id: `common wall${part.suffix}`,
    areaM2: grossM2 - glassM2 - doorM2,
    layers: [layerOf(commonWallMaterial, commonWallM)],
    a: faceIn('sunspace', commonWallMaterial, 90, 'back'),
    b: faceIn(part.zone, commonWallMaterial, 90, 'none'),
    moistureBuffer: materialById(commonWallMaterial).moistureBuffer,
  };
}

/** Windows in it; null for none. */
export function commonPane(design: Design, site: Site, part: CommonPart): Pane | null {
  if (design.sunspace.join !== 'closed') return null;
  const { grossM2, glassM2 } = splitOf(design, part);
  if (glassM2 <= LEAST_AREA_M2) return null;
  return paneWith({
    id: `common${part.suffix}`,
    areaM2: glassM2,
    wallM2: grossM2,
    frameShare: FRAME_SHARE,
    glass: glassSystem(design.glass.type),
    azimuthDeg: compassOf(site, design.house.turnDeg).equatorDeg,
    from: 'sunspace',
    to: part.zone,
  });
}

/** When the sunspace gives heat to the house, by its door and its fan. */
export function heatGiving({ heating }: Design): HeatGiving {
  return { wantsHeatBelowC: heating.dayC + WELCOME_ABOVE_K, dampLimit: DAMP_LIMIT };
}

/** The way for air between sunspace and house; null for none. */
export function commonDoor(design: Design, part: CommonPart): DoorOpening | null {
  const { join, doorRule } = design.sunspace;
  const { lengthM, heightM, suffix } = part;
  const shared = {
    kind: 'door',
    zone: 'sunspace',
    other: part.zone,
    discharge: DOOR_DISCHARGE,
    control: design.vents.habit,
    ...heatGiving(design),
  } as const;
  if (join === 'open') {
    return { ...shared, id: `open side${suffix}`, widthM: lengthM, heightM, rule: 'open', seeThrough: true };
  }
  const { doorM2 } = splitOf(design, part);
  if (join === 'none' || doorM2 <= LEAST_AREA_M2) return null;
  const widthM = doorM2 / DOOR_HEIGHT_M;
  return {
    ...shared,
    id: `door${suffix}`,
    widthM,
    heightM: DOOR_HEIGHT_M,
    rule: doorRule,
    seeThrough: false,
  };
}
