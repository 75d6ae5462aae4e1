// Everything opaque around and inside the house: floor, roof, walls, earth against them, upper floors, extra mass.
// Design, site and ground in; elements of zone 'house' out. Elements of no area are left out.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf } from './compass.ts';
import { equatorFront } from './equator-front.ts';
import { slabOnGround, wallInGround } from './ground-contact.ts';
import { floorBuffer, floorFinish, floorLayers, housePlan, insulationUnderSlab } from './house-floor.ts';
import {
  ceilingBuffer,
  ceilingFace,
  faceIn,
  LEAST_AREA_M2,
  layerOf,
  outdoorFace,
  roofLayers,
  upperFloorLayers,
  wallLayers,
} from './layers.ts';
import type { Element, Layer, ZoneFace } from './model.ts';
import type { Side } from './other-windows.ts';
import { bedIn, bedM2In } from './planting.ts';

const HOUSE = 'house';

/** Elements of the house. */
export function houseElements(
  design: Design,
  site: Site,
  sides: readonly Side[],
  ground: DeepGround,
): Element[] {
  return [
    ...floorElements(design, ground, {
      id: 'floor',
      zone: HOUSE,
      areaM2: geometryOf(design).groundFloorM2,
      planted: true,
    }),
    roofElement(design),
    ...upperFloors(design),
    ...sideWalls(design, sides, ground),
    equatorWall(design, site),
    ...extraMass(design),
  ].filter((element) => element.areaM2 > LEAST_AREA_M2);
}

/**
 * The floor of one zone on the house's slab, and what is planted in its place, insulation under it kept.
 *
 * @param areaM2 of it
 * @param planted whether the bed of a house without a sunspace stands here
 */
export function floorElements(
  design: Design,
  ground: DeepGround,
  { id, zone, areaM2, planted }: { id: string; zone: string; areaM2: number; planted: boolean },
): Element[] {
  const plan = housePlan(design);
  const { edgeResistance, resistance } = design.floor;
  const contactOf = (layers: readonly Layer[]) => slabOnGround(plan, layers, edgeResistance, ground);
  const layers = floorLayers(design);
  const contact = contactOf(layers);
  const bedM2 = planted ? bedM2In(design, 'house', areaM2) : 0;
  return [
    {
      id,
      areaM2: areaM2 - bedM2,
      layers: [...contact.soil, ...layers],
      a: contact.face,
      b: faceIn(zone, floorFinish(design), 0, 'floor'),
      moistureBuffer: floorBuffer(design),
    },
    ...bedIn(design, zone, bedM2, contactOf, insulationUnderSlab(resistance)),
  ];
}

export function roofElement(design: Design): Element {
  return {
    id: 'roof',
    areaM2: geometryOf(design).roofM2,
    layers: roofLayers(design.envelope.roofResistance),
    a: outdoorFace(0, 0),
    b: ceilingFace(HOUSE),
    moistureBuffer: ceilingBuffer(),
  };
}

function upperFloors(design: Design): Element[] {
  const { storeys, floorAreaM2 } = design.house;
  if (storeys < 2) return [];
  return [
    {
      id: 'upper floors',
      areaM2: floorAreaM2 - geometryOf(design).groundFloorM2,
      layers: upperFloorLayers(),
      a: ceilingFace(HOUSE),
      b: faceIn(HOUSE, 'softwood', 0, 'floor'),
      moistureBuffer: materialById('softwood').moistureBuffer,
    },
  ];
}

function sideWalls(design: Design, sides: readonly Side[], ground: DeepGround): Element[] {
  return sides.flatMap((side) =>
    outerWall(design, ground, side, {
      id: `${side.name} wall`,
      bermedId: `${side.name} wall, bermed`,
      zone: HOUSE,
      lit: wallIsLit(design, side.name),
    }),
  );
}

/** An upright outer wall of the design's build-up: what stands bare, and what stands in earth where there is any. */
export function outerWall(
  design: Design,
  ground: DeepGround,
  { azimuthDeg, bareM2, bermedM2, bermM }: Pick<Side, 'azimuthDeg' | 'bareM2' | 'bermedM2' | 'bermM'>,
  { id, bermedId, zone, lit }: { id: string; bermedId: string; zone: string; lit: ZoneFace['lit'] },
): Element[] {
  const { wallResistance, wallLining, wallLiningM } = design.envelope;
  const layers = wallLayers(wallResistance, wallLining, wallLiningM);
  const moistureBuffer = materialById(wallLining).moistureBuffer;
  const b = faceIn(zone, wallLining, 90, lit);
  const bare: Element = { id, areaM2: bareM2, layers, a: outdoorFace(90, azimuthDeg), b, moistureBuffer };
  if (bermedM2 <= LEAST_AREA_M2) return [bare];
  const contact = wallInGround(housePlan(design), layers, bermM, ground);
  const bermed: Element = {
    id: bermedId,
    areaM2: bermedM2,
    layers: [...contact.soil, ...layers],
    a: contact.face,
    b,
    moistureBuffer,
  };
  return [bare, bermed];
}

/** Sun through a glazed house front that reaches the back falls on the pole wall, unless mass stands before it. */
function wallIsLit(design: Design, side: Side['name']): ZoneFace['lit'] {
  const massInFront = design.mass.place === 'sunlit' && design.mass.areaM2 > 0;
  return side === 'pole' && design.sunspace.join === 'none' && !massInFront ? 'back' : 'none';
}

/** The house's own equator wall: leaning with its glass, or what stands beside the sunspace. */
function equatorWall(design: Design, site: Site): Element {
  const { wallResistance, wallLining, wallLiningM } = design.envelope;
  const { equatorWallM2, heightM } = geometryOf(design);
  const hasSunspace = design.sunspace.join !== 'none';
  const tiltDeg = hasSunspace ? 90 : design.glass.tiltDeg;
  return {
    id: 'equator wall',
    areaM2: hasSunspace
      ? equatorWallM2 - design.sunspace.lengthM * heightM
      : equatorFront(design).slopeWallM2,
    layers: wallLayers(wallResistance, wallLining, wallLiningM),
    a: outdoorFace(tiltDeg, compassOf(site, design.house.turnDeg).equatorDeg),
    b: faceIn(HOUSE, wallLining, 180 - tiltDeg, 'none'),
    moistureBuffer: materialById(wallLining).moistureBuffer,
  };
}

/**
 * Extra mass: face area exposed to the room, full thickness behind it, an insulated back. Sunlit, it stands where the
 * beam that comes deep into the house falls; behind a sunspace, beam reaches the house on its floor, and the mass
 * shares that by area.
 */
function extraMass(design: Design): Element[] {
  const { material, areaM2, thicknessM, place } = design.mass;
  const inSun = design.sunspace.join === 'none' ? 'back' : 'floor';
  return [
    {
      id: 'extra mass',
      areaM2,
      layers: [layerOf(material, thicknessM)],
      a: { kind: 'adiabatic' },
      b: faceIn(HOUSE, material, 90, place === 'sunlit' ? inSun : 'none'),
      moistureBuffer: materialById(material).moistureBuffer,
    },
  ];
}
