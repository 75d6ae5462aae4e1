// Every way for air of a divided house: each room's cracks and windows, fans where they draw, doors kept by habit, stairs, and
// what joins the sunspace. A design, site and room plan in; openings out. Together the rooms have the house's cracks,
// windows and fans; what is shared out, and by what, stands with each.

import type { Design } from '../design/design.ts';
import type { RoomDoor } from '../design/room.ts';
import type { PlacedRoom, RoomPlan, Way } from '../design/room-plan.ts';
import { builtWindow } from '../design/room-rules.ts';
import { sharesOf } from '../design/room-uses.ts';
import type { Site } from '../weather/typical-year.ts';
import { commonDoor, DOOR_DISCHARGE, heatGiving } from './common-wall.ts';
import { isAwake } from './household.ts';
import type { CrackOpening, DoorOpening, FixedOpening, Opening, Schedule, StairOpening } from './model.ts';
import {
  extractFan,
  houseCracks,
  nightPurge,
  sunspaceCracks,
  sunspaceFan,
  sunspaceVents,
  ventilationUnit,
  windowsOf,
} from './openings-of-design.ts';
import { commonParts } from './rooms-of-design.ts';
import { always, byHour, withEachHour } from './schedule.ts';

/** Clear sizes of doors and wide openings [m]; common practice, no source. */
const DOOR = { widthM: 0.8, heightM: 2 };
const WIDE = { widthM: 2, heightM: 2.1 };
/**
 * A low and a high grille of 0.04 m² free area each, 1.8 m apart, as a doorway of that height and of the width that passes as
 * much: W = 3 √2 A/H with A the pair in series, by the formulas of both (BS 5925). Sizes: common practice, no source.
 */
const GRILLE_M = 1.8;
const GRILLE = { widthM: (3 * Math.SQRT2 * (0.04 / Math.SQRT2)) / GRILLE_M, heightM: GRILLE_M };
/** A door ajar lets through so much of what it does open; common practice, no source. */
const AJAR = 0.15;
const FLOOR_M = 0.25;

/** What lets air through of a door so kept [m]. */
export function doorSize(door: RoomDoor): { readonly widthM: number; readonly heightM: number } {
  return door === 'wide' ? WIDE : door === 'grille' ? GRILLE : DOOR;
}

/** Openings of the rooms. */
export function roomOpenings(design: Design, site: Site, plan: RoomPlan): Opening[] {
  const { rooms } = plan;
  const hasSunspace = design.sunspace.join !== 'none';
  const floorM2 = rooms.reduce((sum, room) => sum + room.floorM2, 0);
  const volumeM3 = rooms.reduce((sum, room) => sum + room.volumeM3, 0);
  const extract = sharesOf(rooms, 'extract');
  const behind = rooms[plan.sunspaceRoom];
  const fanToRooms = hasSunspace && behind ? sunspaceFan(design) : null;
  const openings: (Opening | null)[] = [
    ...roomCracks(design, rooms),
    hasSunspace ? sunspaceCracks(design) : null,
    ...rooms.map((placed) => roomWindows(design, placed, floorM2)),
    hasSunspace ? sunspaceVents(design) : null,
    ...rooms.map((placed) => fanIn(nightPurge(design, site), placed, placed.floorM2 / floorM2)),
    ...rooms.map((placed, i) => fanIn(extractFan(design), placed, extract[i]!)),
    ...rooms.map((placed) => fanIn(ventilationUnit(design), placed, placed.volumeM3 / volumeM3)),
    fanToRooms && { ...fanToRooms, other: behind!.id },
    ...(hasSunspace ? commonParts(plan).map((part) => commonDoor(design, part)) : []),
    ...plan.ways.map((way) => wayOpening(design, plan, way)),
    ...plan.ways.map((way) => roomFan(design, plan, way)),
  ];
  return openings.filter((opening) => opening !== null);
}

/** The house's cracks by what each room has of its shell: outer walls, the sunspace's behind them, and roof. */
function roomCracks(design: Design, rooms: readonly PlacedRoom[]): CrackOpening[] {
  const house = houseCracks(design);
  const shellM2 = rooms.map(
    ({ wallM2, behindSunspaceM2, roofM2 }) =>
      wallM2.equator + wallM2.pole + wallM2.east + wallM2.west + behindSunspaceM2 + roofM2,
  );
  const wholeM2 = shellM2.reduce((sum, areaM2) => sum + areaM2, 0);
  return rooms.map(({ id }, i) => ({
    ...house,
    id: `${id} cracks`,
    zone: id,
    leakageCm2: (house.leakageCm2 * shellM2[i]!) / wholeM2,
  }));
}

/** What the opening of a room's windows is called. */
export const windowsIdOf = (room: string): string => `${room} windows`;

/** What opens of a room's own windows, or its part by floor area of what opens of the house's. */
function roomWindows(design: Design, placed: PlacedRoom, wholeM2: number): Opening | null {
  const { id, room, floorM2 } = placed;
  const openM2 = room.windows
    ? room.windows.reduce((sum, window) => sum + builtWindow(design, placed, window).openM2, 0)
    : (design.vents.houseM2 * floorM2) / wholeM2;
  const windows = windowsOf(design, openM2);
  return windows && { ...windows, id: windowsIdOf(id), zone: id };
}

function fanIn(fan: FixedOpening | null, { id }: PlacedRoom, share: number): FixedOpening | null {
  if (fan === null || share <= 0) return null;
  return { ...fan, id: `${fan.id} ${id}`, zone: id, flow: withEachHour(fan.flow, (value) => value * share) };
}

/** From the room that a room's door leads to, while this one wants its warmth. */
function roomFan(design: Design, { rooms }: RoomPlan, { room, to }: Way): FixedOpening | null {
  const { fanM3H = 0 } = rooms[room]!.room;
  if (fanM3H <= 0) return null;
  return {
    kind: 'fixed',
    id: `fan ${rooms[to]!.id} ${rooms[room]!.id}`,
    zone: rooms[to]!.id,
    other: rooms[room]!.id,
    flow: always(fanM3H / 3600),
    fan: true,
    gives: heatGiving(design),
  };
}

/** The door of a room, or the stairs to it. */
function wayOpening(
  design: Design,
  { rooms }: RoomPlan,
  { room, to, kind }: Way,
): DoorOpening | StairOpening | null {
  const [own, next] = [rooms[room]!, rooms[to]!];
  const { door } = own.room;
  const schedule = openHours(door);
  if (kind === 'stairs') {
    const [lower, upper] = own.room.storey < next.room.storey ? [own, next] : [next, own];
    return {
      kind: 'stairs',
      id: wayId(own),
      zone: lower.id,
      other: upper.id,
      areaM2: design.rooms!.stairM2,
      thicknessM: FLOOR_M,
      schedule,
    };
  }
  return {
    kind: 'door',
    id: wayId(own),
    zone: next.id,
    other: own.id,
    ...doorSize(door),
    discharge: DOOR_DISCHARGE,
    rule: 'open',
    schedule,
    control: design.vents.habit,
    seeThrough: false,
    ...heatGiving(design),
  };
}

/** Id of the door or the stairs of a room. */
export function wayId({ id }: PlacedRoom): string {
  return `way ${id}`;
}

/** Share that a door stands open by hour; at night who sleeps behind it keeps it so. */
function openHours(door: RoomDoor): Schedule {
  const share = (hour: number) => {
    switch (door) {
      case 'shut':
        return 0;
      case 'ajar':
        return AJAR;
      case 'by-day':
        return isAwake(hour) ? 1 : 0;
      case 'by-night':
        return isAwake(hour) ? 0 : 1;
      default:
        return 1;
    }
  };
  return byHour(share);
}
