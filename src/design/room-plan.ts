// Where the rooms of a divided house stand and what they touch: a design in; rooms with their boxes, areas and outer walls,
// the partitions and floors between them, and their doors and stairs out. Lengths run along the equator-facing wall from
// its east end, depths from that wall inwards. Pure geometry; the schema refuses what does not fill the house.

import type { Design } from './design.ts';
import type { DesignFault } from './design-fault.ts';
import { geometryOf } from './geometry.ts';
import { leastRowM, type Room, type RoomRow, type Rooms, type WindowSide } from './room.ts';

/** What a room takes of one storey [m]. */
export interface RoomBox {
  readonly storey: number;
  readonly fromM: number;
  readonly toM: number;
  readonly nearM: number;
  readonly farM: number;
}

export interface PlacedRoom {
  readonly id: string;
  readonly room: Room;
  /** its own storey's first, then the one above that it reaches up into */
  readonly boxes: readonly RoomBox[];
  /** of its own storey [m²]; of all storeys [m³] */
  readonly floorM2: number;
  readonly volumeM3: number;
  /** outer walls, gross, the equator's as far as it stands behind no sunspace [m²] */
  readonly wallM2: Readonly<Record<WindowSide, number>>;
  /** of the equator-facing wall behind the sunspace [m²], and its length on the storey where it is longest [m] */
  readonly behindSunspaceM2: number;
  readonly behindSunspaceM: number;
  readonly roofM2: number;
  readonly groundM2: number;
}

/** A wall between two rooms, by their places in the list. */
export interface Partition {
  readonly one: number;
  readonly other: number;
  readonly areaM2: number;
  readonly lengthM: number;
  /** the other stands behind the one, not beside it */
  readonly isFrontToBack: boolean;
}

export interface FloorBetween {
  readonly below: number;
  readonly above: number;
  readonly areaM2: number;
}

/** The way from a room towards the stove: through its door, or by the stairs up to it or down from it. */
export interface Way {
  readonly room: number;
  readonly to: number;
  readonly kind: 'door' | 'stairs';
}

export interface RoomPlan {
  readonly rooms: readonly PlacedRoom[];
  readonly partitions: readonly Partition[];
  readonly floors: readonly FloorBetween[];
  /** every room but the one they all lead to, nearest first; a room that nothing leads to has none */
  readonly ways: readonly Way[];
  /** the room that ways lead to: the first that is heated, else the first */
  readonly stove: number;
  /** the room that the sunspace's door and fan lead to; −1 for none */
  readonly sunspaceRoom: number;
  readonly lengthM: number;
  readonly depthM: number;
  readonly storeyM: number;
}

const EPS = 1e-6;
/** Rooms that share less wall have no door in it [m]. House rule. */
const LEAST_DOOR_WALL_M = 0.5;

const plans = new WeakMap<Design, RoomPlan>();

/** The plan of a divided house, worked out once for each; null for one room. */
export function roomPlanOf(design: Design): RoomPlan | null {
  const { rooms } = design;
  if (rooms === undefined) return null;
  const found = plans.get(design);
  if (found) return found;
  const made = planOf(design, rooms);
  plans.set(design, made);
  return made;
}

function planOf(design: Design, { list }: Rooms): RoomPlan {
  const { houseDepthM } = geometryOf(design);
  const { boxes } = placed(design);
  const lengthM = design.house.equatorWallM;
  const storeyM = design.house.ceilingHeightM;
  const rooms = list.map((room, i) => placedRoom(design, room, i, boxes[i]!));
  const partitions = partitionsOf(boxes, storeyM);
  const floors = floorsOf(boxes);
  const stove = Math.max(
    0,
    list.findIndex(({ heated }) => heated),
  );
  return {
    rooms,
    partitions,
    floors,
    ways: waysOf(design, partitions, floors, stove),
    stove,
    sunspaceRoom: sunspaceRoomOf(rooms),
    lengthM,
    depthM: houseDepthM,
    storeyM,
  };
}

/** Places that are left empty or taken twice. */
export function placingFaults(design: Design): DesignFault[] {
  return placed(design).faults;
}

interface Placed {
  readonly boxes: readonly (readonly RoomBox[])[];
  readonly faults: DesignFault[];
}

/** Depth of the front row as it is built: as asked, or as far as leaves both rows their least [m]. */
export function builtFrontM(design: Design): number {
  const { houseDepthM } = geometryOf(design);
  const leastM = leastRowM(houseDepthM);
  return Math.min(houseDepthM - leastM, Math.max(leastM, design.rooms!.frontDepthM));
}

function placed(design: Design): Placed {
  const { list } = design.rooms!;
  const frontDepthM = builtFrontM(design);
  const { houseDepthM } = geometryOf(design);
  const boxes: RoomBox[][] = list.map(() => []);
  const faults: DesignFault[] = [];
  for (let storey = 0; storey < design.house.storeys; storey++) {
    const inRow = (row: RoomRow) => list.flatMap((room, i) => (room.row === row ? [i] : []));
    const own = (row: RoomRow) => inRow(row).filter((i) => list[i]!.storey === storey);
    const fromBelow = (row: RoomRow) =>
      inRow(row).filter((i) => list[i]!.storey === storey - 1 && list[i]!.reachesUp);
    const rows = (['front', 'back'] as const).filter((row) => own(row).length + fromBelow(row).length > 0);
    const where = `storey ${storey}`;
    if (rows.length === 0)
      faults.push({ path: 'rooms.list', value: `none on ${where}`, allowed: 'rooms on every storey' });
    for (const row of rows) {
      const isBack = rows.length === 2 && row === 'back';
      const nearM = isBack ? frontDepthM : 0;
      const farM = rows.length === 2 && row === 'front' ? frontDepthM : houseDepthM;
      const taken: { fromM: number; toM: number }[] = [];
      for (const i of fromBelow(row)) {
        const below = boxes[i]![0];
        if (below === undefined) continue;
        if (below.nearM > nearM + EPS || below.farM < farM - EPS) {
          faults.push({
            path: `rooms.list.${i}.reachesUp`,
            value: 'true',
            allowed: `false where the row above is deeper than the room below it`,
          });
        }
        taken.push(below);
        boxes[i]!.push({ ...below, storey, nearM, farM });
      }
      fillRow(design, own(row), taken, { storey, nearM, farM }, boxes, faults, `the ${row} row of ${where}`);
    }
  }
  return { boxes, faults };
}

/** Rooms of a row side by side from its east end, around spaces that reach up into it. */
function fillRow(
  design: Design,
  own: readonly number[],
  taken: readonly { fromM: number; toM: number }[],
  at: Pick<RoomBox, 'storey' | 'nearM' | 'farM'>,
  boxes: RoomBox[][],
  faults: DesignFault[],
  where: string,
): void {
  const { list } = design.rooms!;
  const lengthM = design.house.equatorWallM;
  const skip = (fromM: number): number => {
    const found = taken.find((space) => Math.abs(space.fromM - fromM) < EPS * lengthM);
    return found === undefined ? fromM : skip(found.toM);
  };
  let cursor = skip(0);
  for (const i of own) {
    const toM = cursor + list[i]!.share * lengthM;
    if (taken.some((space) => space.fromM < toM - EPS * lengthM && space.toM > cursor + EPS * lengthM)) {
      faults.push({
        path: `rooms.list.${i}.share`,
        value: String(list[i]!.share),
        allowed: `a share that ends at the two-storey space beside it, in ${where}`,
      });
    }
    boxes[i]!.push({ ...at, fromM: cursor, toM: Math.abs(toM - lengthM) < EPS * lengthM ? lengthM : toM });
    cursor = skip(toM);
  }
  if (Math.abs(cursor - lengthM) > EPS * lengthM) {
    const told = Number((cursor / lengthM).toFixed(4));
    faults.push({
      path: `rooms.list.${own.at(-1) ?? 0}.share`,
      value: own.length === 0 ? 'missing' : String(list[own.at(-1)!]!.share),
      allowed: `shares that add up to 1 in ${where}, where they make ${told}`,
    });
  }
}

/** Length of outer wall that a box has on a side, on the equator's as far as it stands behind no sunspace [m]. */
export function boxWallM(design: Design, box: RoomBox, side: WindowSide): number {
  const { fromM, toM, nearM, farM } = box;
  switch (side) {
    case 'equator':
      return nearM <= EPS ? toM - fromM - behindSunspaceM(design, box) : 0;
    case 'pole':
      return farM >= geometryOf(design).houseDepthM - EPS ? toM - fromM : 0;
    case 'east':
      return fromM <= EPS ? farM - nearM : 0;
    case 'west':
      return toM >= design.house.equatorWallM - EPS ? farM - nearM : 0;
  }
}

/** The sunspace stands before the east end of the front, where the first rooms are. */
function behindSunspaceM({ sunspace }: Design, { fromM, toM, nearM }: RoomBox): number {
  const lengthM = sunspace.join === 'none' ? 0 : sunspace.lengthM;
  return nearM > EPS ? 0 : Math.max(0, Math.min(toM, lengthM) - fromM);
}

function placedRoom(design: Design, room: Room, index: number, boxes: readonly RoomBox[]): PlacedRoom {
  const { storeys, ceilingHeightM } = design.house;
  const areaOf = ({ fromM, toM, nearM, farM }: RoomBox) => (toM - fromM) * (farM - nearM);
  const sum = (of: (box: RoomBox) => number) => boxes.reduce((total, box) => total + of(box), 0);
  const behind = (box: RoomBox) => behindSunspaceM(design, box);
  const wall = (side: WindowSide) => ceilingHeightM * sum((box) => boxWallM(design, box, side));
  return {
    id: `room-${index + 1}`,
    room,
    boxes,
    floorM2: areaOf(boxes[0]!),
    volumeM3: ceilingHeightM * sum(areaOf),
    wallM2: { equator: wall('equator'), pole: wall('pole'), east: wall('east'), west: wall('west') },
    behindSunspaceM2: ceilingHeightM * sum(behind),
    behindSunspaceM: Math.max(...boxes.map(behind)),
    roofM2: sum((box) => (box.storey === storeys - 1 ? areaOf(box) : 0)),
    groundM2: sum((box) => (box.storey === 0 ? areaOf(box) : 0)),
  };
}

function partitionsOf(boxes: readonly (readonly RoomBox[])[], storeyM: number): Partition[] {
  return pairs(boxes.length).flatMap(([one, other]): Partition[] => {
    let [side, depth] = [0, 0];
    for (const a of boxes[one]!) {
      for (const b of boxes[other]!) {
        if (a.storey !== b.storey) continue;
        const touchesSide = Math.abs(a.toM - b.fromM) < EPS || Math.abs(b.toM - a.fromM) < EPS;
        const touchesDepth = Math.abs(a.farM - b.nearM) < EPS || Math.abs(b.farM - a.nearM) < EPS;
        if (touchesSide) side += overlap(a.nearM, a.farM, b.nearM, b.farM);
        if (touchesDepth) depth += overlap(a.fromM, a.toM, b.fromM, b.toM);
      }
    }
    const lengthM = side + depth;
    if (lengthM < EPS) return [];
    return [{ one, other, lengthM, areaM2: lengthM * storeyM, isFrontToBack: depth > side }];
  });
}

function floorsOf(boxes: readonly (readonly RoomBox[])[]): FloorBetween[] {
  return pairs(boxes.length).flatMap(([one, other]) =>
    [
      [one, other],
      [other, one],
    ].flatMap(([below, above]): FloorBetween[] => {
      let areaM2 = 0;
      for (const a of boxes[below!]!) {
        for (const b of boxes[above!]!) {
          if (b.storey !== a.storey + 1) continue;
          areaM2 += overlap(a.fromM, a.toM, b.fromM, b.toM) * overlap(a.nearM, a.farM, b.nearM, b.farM);
        }
      }
      return areaM2 < EPS ? [] : [{ below: below!, above: above!, areaM2 }];
    }),
  );
}

/** Doors first, side by side before front to back; where none leads on, the stairs, once for every storey. */
function waysOf(
  design: Design,
  partitions: readonly Partition[],
  floors: readonly FloorBetween[],
  stove: number,
): Way[] {
  const { list, stairM2 } = design.rooms!;
  const depth = new Map([[stove, 0]]);
  const ways: Way[] = [];
  const join = (way: Way) => {
    ways.push(way);
    depth.set(way.room, depth.get(way.to)! + 1);
  };
  const doors = partitions
    .filter(({ lengthM }) => lengthM >= LEAST_DOOR_WALL_M)
    .flatMap(({ one, other, isFrontToBack }) => [
      { room: one, to: other, isFrontToBack },
      { room: other, to: one, isFrontToBack },
    ]);
  while (ways.length < list.length - 1) {
    const door = best(
      doors.filter(({ room, to }) => depth.has(to) && !depth.has(room)),
      ({ room, to, isFrontToBack }) => 100 * depth.get(to)! + 10 * Number(isFrontToBack) + room,
    );
    if (door !== undefined) {
      join({ room: door.room, to: door.to, kind: 'door' });
      continue;
    }
    if (stairM2 <= 0) break;
    const flights = floors.flatMap(({ below, above, areaM2 }) => [
      { room: above, to: below, areaM2 },
      { room: below, to: above, areaM2 },
    ]);
    const flight = best(
      flights.filter(({ room, to }) => depth.has(to) && !depth.has(room)),
      ({ to, areaM2 }) => 1e6 * depth.get(to)! - areaM2,
    );
    if (flight === undefined) break;
    join({ room: flight.room, to: flight.to, kind: 'stairs' });
  }
  return ways;
}

/** On the ground, behind it, the heated first, then the one most behind it. */
function sunspaceRoomOf(rooms: readonly PlacedRoom[]): number {
  const behind = rooms.flatMap(({ behindSunspaceM, room }, i) =>
    behindSunspaceM > EPS && room.storey === 0 ? [i] : [],
  );
  return best(behind, (i) => -rooms[i]!.behindSunspaceM - 1000 * Number(rooms[i]!.room.heated)) ?? -1;
}

function best<T>(items: readonly T[], cost: (item: T) => number): T | undefined {
  return items.reduce<T | undefined>(
    (found, item) => (found === undefined || cost(item) < cost(found) ? item : found),
    undefined,
  );
}

function pairs(count: number): [number, number][] {
  return Array.from({ length: count }, (_, one) =>
    Array.from({ length: count - one - 1 }, (_, k): [number, number] => [one, one + 1 + k]),
  ).flat();
}

function overlap(fromA: number, toA: number, fromB: number, toB: number): number {
  return Math.max(0, Math.min(toA, toB) - Math.max(fromA, fromB));
}
