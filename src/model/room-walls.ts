// How each outer wall of a room is shared between windows, earth and bare wall. A design, its plan and the sides of the
// house in; areas by room and side [m²] out. Earth stands up to one height around the house, so it covers lower storeys
// first; windows take bare wall before they are let into the earth, as in a house of one room.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import type { RoomWindow, WindowSide } from '../design/room.ts';
import { boxWallM, type PlacedRoom } from '../design/room-plan.ts';
import { builtWindow } from '../design/room-rules.ts';
import { equatorFront } from './equator-front.ts';
import type { Side } from './other-windows.ts';

export interface RoomWall {
  readonly side: WindowSide;
  readonly azimuthDeg: number;
  readonly grossM2: number;
  readonly windowM2: number;
  readonly bareM2: number;
  readonly bermedM2: number;
  /** height of earth around the house [m] */
  readonly bermM: number;
  /** its own window; null for the house's rule */
  readonly window: RoomWindow | null;
}

/** The walls of a room on the three sides without equator-facing glass; sides it does not touch are left out. */
export function roomWalls(design: Design, placed: PlacedRoom, sides: readonly Side[]): RoomWall[] {
  const { room, boxes, wallM2 } = placed;
  const { ceilingHeightM } = design.house;
  return sides.flatMap((side): RoomWall[] => {
    const { name, azimuthDeg, bermM } = side;
    const grossM2 = wallM2[name];
    if (grossM2 <= 0) return [];
    const window = ownWindow(room.windows, name);
    const windowM2 = room.windows
      ? window === null
        ? 0
        : builtWindow(design, placed, window).areaM2
      : (side.windowM2 / side.grossM2) * grossM2;
    const earthM2 = boxes.reduce((sum, box) => {
      const heightM = Math.min(ceilingHeightM, Math.max(0, bermM - box.storey * ceilingHeightM));
      return sum + boxWallM(design, box, name) * heightM;
    }, 0);
    const aboveM2 = grossM2 - earthM2;
    return [
      {
        side: name,
        azimuthDeg,
        grossM2,
        windowM2,
        bareM2: Math.max(0, aboveM2 - windowM2),
        bermedM2: earthM2 - Math.max(0, windowM2 - aboveM2),
        bermM,
        window,
      },
    ];
  });
}

/** What a room has of the house's own equator-facing wall. */
export interface RoomFront {
  /** of the front's slope where the house has no sunspace, else of the wall beside it, opaque [m²] */
  readonly wallM2: number;
  readonly tiltDeg: number;
  /** of the house's front, 0…1; 0 behind or beside a sunspace */
  readonly share: number;
  /** an ordinary window of its own there [m²] */
  readonly windowM2: number;
  readonly window: RoomWindow | null;
}

/** The front of a room. */
export function roomFront(design: Design, placed: PlacedRoom): RoomFront {
  const { room, wallM2 } = placed;
  const window = ownWindow(room.windows, 'equator');
  const windowM2 = window === null ? 0 : builtWindow(design, placed, window).areaM2;
  if (design.sunspace.join !== 'none') {
    return { wallM2: Math.max(0, wallM2.equator - windowM2), tiltDeg: 90, share: 0, windowM2, window };
  }
  const share = wallM2.equator / geometryOf(design).equatorWallM2;
  const opaqueM2 = equatorFront(design).slopeWallM2 * share;
  return { wallM2: Math.max(0, opaqueM2 - windowM2), tiltDeg: design.glass.tiltDeg, share, windowM2, window };
}

function ownWindow(windows: readonly RoomWindow[] | undefined, side: WindowSide): RoomWindow | null {
  return windows?.find((window) => window.side === side) ?? null;
}
