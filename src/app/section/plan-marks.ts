// The plan of a storey as marks: a design in; rooms, sunspace, windows, doors and stairs out, in metres. The equator-facing
// side lies below, as the section has it at the right, so that east is right of a house in the north and left in the
// south. Windows are drawn as long as they would be at 2 m height.

import type { Design } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import type { RoomDoor, WindowSide } from '../../design/room.ts';
import {
  boxWallM,
  type PlacedRoom,
  type RoomBox,
  type RoomPlan,
  roomPlanOf,
} from '../../design/room-plan.ts';
import { builtWindow } from '../../design/room-rules.ts';
import { DOOR_WORDS, USE_WORDS } from '../../findings/room-words.ts';
import { box, line, type Mark, point, word } from './mark.ts';
import type { Point } from './section-shape.ts';

const WINDOW_HEIGHT_M = 2;
const DOOR_M = 0.8;
const WIDE_M = 2;
const DOOR_ROLES: Readonly<Record<RoomDoor, string>> = {
  open: 'plan-door is-open',
  wide: 'plan-door is-open',
  ajar: 'plan-door is-ajar',
  'by-day': 'plan-door is-ajar',
  'by-night': 'plan-door is-ajar',
  grille: 'plan-door is-shut',
  shut: 'plan-door is-shut',
};

/** Extent of every storey's plan [m]. */
export interface PlanField {
  readonly lengthM: number;
  readonly depthM: number;
  /** of the sunspace below the house */
  readonly frontM: number;
}

export function planField({ sunspace }: Design, { lengthM, depthM }: RoomPlan): PlanField {
  return { lengthM, depthM, frontM: sunspace.join === 'none' ? 0 : sunspace.depthM };
}

/**
 * Marks of one storey.
 *
 * @param isNorth of the equator
 * @param fills by zone
 */
export function planMarks(
  design: Design,
  storey: number,
  isNorth: boolean,
  fills: Readonly<Record<string, string>>,
  picked: string | null,
): readonly Mark[] {
  const plan = roomPlanOf(design);
  if (plan === null) return [];
  const x = (fromEastM: number) => (isNorth ? plan.lengthM - fromEastM : fromEastM);
  const at = (fromEastM: number, depthM: number) => point(x(fromEastM), depthM);
  const here = plan.rooms.flatMap((placed) =>
    placed.boxes.filter((one) => one.storey === storey).map((one) => ({ placed, one })),
  );
  const { join, lengthM, depthM } = design.sunspace;
  return [
    ...(join === 'none' ? [] : [box('plan-sunspace', x(0), -depthM, x(lengthM), 0, fills.sunspace)]),
    ...here.map(({ placed: { id }, one: { fromM, toM, nearM, farM } }) =>
      box(id === picked ? 'plan-room is-picked' : 'plan-room', x(fromM), nearM, x(toM), farM, fills[id]),
    ),
    ...here.flatMap(({ placed, one }) => windowMarks(design, placed, one, at)),
    ...doorMarks(plan, storey, at),
    ...here.map(({ placed: { room }, one: { fromM, toM, nearM, farM } }) =>
      word('room-name', at((fromM + toM) / 2, (nearM + farM) / 2), room.name),
    ),
  ];
}

type At = (fromEastM: number, depthM: number) => Point;

function windowMarks(design: Design, placed: PlacedRoom, one: RoomBox, at: At): Mark[] {
  const { fromM, toM, nearM, farM } = one;
  const middle = { length: (fromM + toM) / 2, depth: (nearM + farM) / 2 };
  const tick = (side: WindowSide, areaM2: number): Mark[] => {
    const wallM = boxWallM(design, one, side);
    const half = Math.min(wallM, areaM2 / placed.boxes.length / WINDOW_HEIGHT_M) / 2;
    if (half < 0.02) return [];
    if (side === 'equator') {
      // Beside the sunspace, where there is one.
      const from = toM - wallM / 2;
      return [line('plan-window', [at(from - half, 0), at(from + half, 0)])];
    }
    if (side === 'pole')
      return [line('plan-window', [at(middle.length - half, farM), at(middle.length + half, farM)])];
    const edge = side === 'east' ? fromM : toM;
    return [line('plan-window', [at(edge, middle.depth - half), at(edge, middle.depth + half)])];
  };
  return (['equator', 'pole', 'east', 'west'] as const).flatMap((side) =>
    tick(side, windowM2(design, placed, side)),
  );
}

/** Glass of a room on a side [m²]: its own, or its part of the house's. */
function windowM2(design: Design, placed: PlacedRoom, side: WindowSide): number {
  const { room, wallM2 } = placed;
  const { glassM2, equatorWallM2, poleWallM2, sideWallM2 } = geometryOf(design);
  const asked = room.windows?.find((window) => window.side === side);
  const own = asked ? builtWindow(design, placed, asked).areaM2 : 0;
  if (side === 'equator') {
    const front = design.sunspace.join === 'none' ? (glassM2 * wallM2.equator) / equatorWallM2 : 0;
    return front + own;
  }
  if (room.windows) return own;
  const share = (design.glass.otherShareOfFloor * design.house.floorAreaM2) / (poleWallM2 + 2 * sideWallM2);
  return Math.min(0.9, share) * wallM2[side];
}

function doorMarks({ ways, rooms }: RoomPlan, storey: number, at: At): Mark[] {
  return ways.flatMap(({ room, to, kind }): Mark[] => {
    const [own, next] = [rooms[room]!, rooms[to]!];
    const boxOn = ({ boxes }: PlacedRoom, floor: number) => boxes.find((one) => one.storey === floor);
    if (kind === 'stairs') {
      const lower = own.room.storey < next.room.storey ? own : next;
      const one = boxOn(lower === own ? own : next, storey) ?? boxOn(lower === own ? next : own, storey);
      const joins = storey === lower.room.storey || storey === lower.room.storey + 1;
      if (one === undefined || !joins) return [];
      const [from, depth] = [one.fromM + 0.3, one.farM - 0.3];
      return [0, 0.3, 0.6, 0.9, 1.2].map((step) =>
        line('plan-stairs', [at(from + step, depth), at(from + step, depth - 0.8)]),
      );
    }
    const [a, b] = [boxOn(own, storey), boxOn(next, storey)];
    if (a === undefined || b === undefined) return [];
    const half = (own.room.door === 'wide' ? WIDE_M : DOOR_M) / 2;
    const role = DOOR_ROLES[own.room.door];
    const overlap = (fromA: number, toA: number, fromB: number, toB: number) => {
      const [from, to] = [Math.max(fromA, fromB), Math.min(toA, toB)];
      return { middle: (from + to) / 2, half: Math.min(half, (to - from) / 2) };
    };
    if (Math.abs(a.nearM - b.farM) < 1e-6 || Math.abs(b.nearM - a.farM) < 1e-6) {
      const depth = Math.abs(a.nearM - b.farM) < 1e-6 ? a.nearM : a.farM;
      const { middle, half: wide } = overlap(a.fromM, a.toM, b.fromM, b.toM);
      return wide > 0 ? [line(role, [at(middle - wide, depth), at(middle + wide, depth)])] : [];
    }
    const edge = Math.abs(a.fromM - b.toM) < 1e-6 ? a.fromM : a.toM;
    const { middle, half: wide } = overlap(a.nearM, a.farM, b.nearM, b.farM);
    return wide > 0 ? [line(role, [at(edge, middle - wide), at(edge, middle + wide)])] : [];
  });
}

/** The rooms in words, one sentence each, for people who hear the page. */
export function planWords(design: Design, areaText: (m2: number) => string): string {
  const plan = roomPlanOf(design);
  if (plan === null) return '';
  return plan.rooms
    .map(({ room, floorM2 }, i) => {
      const way = plan.ways.find((one) => one.room === i);
      const leads =
        way === undefined
          ? ''
          : `; its ${way.kind === 'stairs' ? 'stairs lead' : 'door leads'} to ${plan.rooms[way.to]!.room.name}, ${DOOR_WORDS[room.door]}`;
      const sides = (['equator', 'pole', 'east', 'west'] as const).filter(
        (side) => windowM2(design, plan.rooms[i]!, side) > 0.1,
      );
      const windows =
        sides.length === 0 ? 'without a window' : `windows to ${sides.map((side) => SIDES[side]).join(', ')}`;
      const upper = room.storey === 0 ? '' : ', upstairs';
      return `${room.name}, a ${USE_WORDS[room.use]} of ${areaText(floorM2)} ${room.row === 'front' ? 'in front' : 'at the back'}${upper}, ${windows}${room.heated ? ', with the stove' : ''}${leads}.`;
    })
    .join(' ');
}

const SIDES: Readonly<Record<WindowSide, string>> = {
  equator: 'the sun',
  pole: 'the pole side',
  east: 'the east',
  west: 'the west',
};
