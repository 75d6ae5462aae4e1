// Everything opaque of a divided house: each room's floor, roof and outer walls, the partitions and floors between rooms,
// and the extra mass where it stands. A design, site, room plan and ground in; elements out. Elements of no area are
// left out. The slab is one for the whole plan, shared by area; the far wall of a room takes the beam that comes deep
// through its front.

import type { Design } from '../design/design.ts';
import { materialById } from '../design/materials.ts';
import type { PlacedRoom, RoomPlan } from '../design/room-plan.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf } from './compass.ts';
import { floorElements, outerWall, roofElement } from './envelope-elements.ts';
import { equatorFront } from './equator-front.ts';
import {
  ceilingBuffer,
  ceilingFace,
  faceIn,
  insulationOf,
  LEAST_AREA_M2,
  layerOf,
  outdoorFace,
  upperFloorLayers,
  wallLayers,
} from './layers.ts';
import type { Element, Layer, ZoneFace } from './model.ts';
import { doorSize } from './openings-of-rooms.ts';
import type { Side } from './other-windows.ts';
import { roomFront, roomWalls } from './room-walls.ts';
import { gardenRoom } from './room-zones.ts';
import { massShares } from './rooms-of-design.ts';

const BOARD = 'plasterboard';
const BOARD_M = 0.0125;
/** Quilt in a light partition [m²K/W]; common practice, no source. */
const QUILT = 1.35;
const MASONRY = 'brick';
const EARTH = 'adobe';

/** Elements of the rooms. */
export function roomElements(
  design: Design,
  site: Site,
  plan: RoomPlan,
  sides: readonly Side[],
  ground: DeepGround,
): Element[] {
  const mass = massShares(plan.rooms).map((share) => share * design.mass.areaM2);
  return [
    ...plan.rooms.flatMap((placed, i) => [
      ...floorElements(design, ground, {
        id: `floor ${placed.id}`,
        zone: placed.id,
        areaM2: placed.groundM2,
        planted: i === gardenRoom(plan),
      }),
      { ...roofElement(design), id: `roof ${placed.id}`, areaM2: placed.roofM2, b: ceilingFace(placed.id) },
      ...outerWalls(design, site, placed, sides, ground, mass[i]!),
      extraMass(design, placed, mass[i]!),
    ]),
    ...partitionElements(design, plan, mass),
    ...floorsBetween(design, plan),
  ].filter((element) => element.areaM2 > LEAST_AREA_M2);
}

function outerWalls(
  design: Design,
  site: Site,
  placed: PlacedRoom,
  sides: readonly Side[],
  ground: DeepGround,
  massM2: number,
): Element[] {
  const { wallResistance, wallLining, wallLiningM } = design.envelope;
  const walls = roomWalls(design, placed, sides).flatMap((wall) =>
    outerWall(design, ground, wall, {
      id: `${wall.side} wall ${placed.id}`,
      bermedId: `${wall.side} wall, bermed, ${placed.id}`,
      zone: placed.id,
      lit: wall.side === 'pole' ? farWallLit(design, placed, massM2) : 'none',
    }),
  );
  const { wallM2, tiltDeg } = roomFront(design, placed);
  const front: Element = {
    id: `equator wall ${placed.id}`,
    areaM2: wallM2,
    layers: wallLayers(wallResistance, wallLining, wallLiningM),
    a: outdoorFace(tiltDeg, compassOf(site, design.house.turnDeg).equatorDeg),
    b: faceIn(placed.id, wallLining, 180 - tiltDeg, 'none'),
    moistureBuffer: materialById(wallLining).moistureBuffer,
  };
  return [...walls, front];
}

/** The wall across from the front of a room, unless sunlit mass stands before it. */
function farWallLit(design: Design, placed: PlacedRoom, massM2: number): ZoneFace['lit'] {
  const massInFront = design.mass.place === 'sunlit' && massM2 > 0;
  return hasFront(design, placed) && !massInFront ? 'back' : 'none';
}

function hasFront(design: Design, placed: PlacedRoom): boolean {
  return roomFront(design, placed).share > 0 && equatorFront(design).slopeGlassM2 > LEAST_AREA_M2;
}

/** As in a house of one room, where sun falls: in a room with a front of glass, or open to the sunspace. */
function extraMass(design: Design, placed: PlacedRoom, areaM2: number): Element {
  const { material, thicknessM, place } = design.mass;
  const isOpenToSun = design.sunspace.join === 'open' && placed.behindSunspaceM > 0;
  const lit = hasFront(design, placed) ? 'back' : isOpenToSun ? 'floor' : 'none';
  return {
    id: `extra mass ${placed.id}`,
    areaM2,
    layers: [layerOf(material, thicknessM)],
    a: { kind: 'adiabatic' },
    b: faceIn(placed.id, material, 90, place === 'sunlit' ? lit : 'none'),
    moistureBuffer: materialById(material).moistureBuffer,
  };
}

/** Walls between rooms, without the doors in them. */
function partitionElements(design: Design, plan: RoomPlan, mass: readonly number[]): Element[] {
  const { partition, partitionM } = design.rooms!;
  const { layers, finish } = partitionBuild(partition, partitionM);
  const moistureBuffer = materialById(finish).moistureBuffer;
  return plan.partitions.map(({ one, other, areaM2, isFrontToBack }): Element => {
    const [a, b] = [plan.rooms[one]!, plan.rooms[other]!];
    const doors = plan.ways.filter(
      ({ room, to, kind }) =>
        kind === 'door' && ((room === one && to === other) || (room === other && to === one)),
    );
    const doorM2 = doors.reduce((sum, { room }) => {
      const { widthM, heightM } = doorSize(plan.rooms[room]!.room.door);
      return sum + widthM * heightM;
    }, 0);
    const lit = (placed: PlacedRoom, i: number) =>
      isFrontToBack && placed.room.row === 'front' ? farWallLit(design, placed, mass[i]!) : 'none';
    return {
      id: `partition ${a.id} ${b.id}`,
      areaM2: Math.max(0, areaM2 - doorM2),
      layers,
      a: faceIn(a.id, finish, 90, lit(a, one)),
      b: faceIn(b.id, finish, 90, lit(b, other)),
      moistureBuffer,
      moistureBufferA: moistureBuffer,
    };
  });
}

function partitionBuild(
  kind: NonNullable<Design['rooms']>['partition'],
  thicknessM: number,
): { readonly layers: readonly Layer[]; readonly finish: string } {
  if (kind === 'light') {
    const board = layerOf(BOARD, BOARD_M);
    return { layers: [board, ...insulationOf(QUILT, 'mineral-wool'), board], finish: BOARD };
  }
  const finish = kind === 'masonry' ? MASONRY : EARTH;
  return { layers: [layerOf(finish, thicknessM)], finish };
}

/** Timber floors between storeys, from the ceiling below to the boards, without the hole of the stairs. */
function floorsBetween(design: Design, plan: RoomPlan): Element[] {
  const { stairM2 } = design.rooms!;
  return plan.floors.map(({ below, above, areaM2 }): Element => {
    const [lower, upper] = [plan.rooms[below]!.id, plan.rooms[above]!.id];
    const hasStairs = plan.ways.some(
      ({ room, to, kind }) =>
        kind === 'stairs' && ((room === above && to === below) || (room === below && to === above)),
    );
    return {
      id: `floor ${lower} ${upper}`,
      areaM2: Math.max(0, areaM2 - (hasStairs ? stairM2 : 0)),
      layers: upperFloorLayers(),
      a: ceilingFace(lower),
      b: faceIn(upper, 'softwood', 0, 'floor'),
      moistureBuffer: materialById('softwood').moistureBuffer,
      moistureBufferA: ceilingBuffer(),
    };
  });
}
