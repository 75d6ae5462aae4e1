// What a list of rooms may hold and what does not go together. A design in, faults out. House rules.

import type { Design } from './design.ts';
import type { DesignFault } from './design-fault.ts';
import { geometryOf } from './geometry.ts';
import { MOST_OF_ROOM_WALL, type Room, type Rooms, type RoomWindow } from './room.ts';
import { type PlacedRoom, placingFaults } from './room-plan.ts';

/** The design divided into rooms, or one room again: its version follows. */
export function withRooms(design: Design, rooms: Rooms | undefined): Design {
  const { rooms: _, ...plain } = design;
  return rooms === undefined ? { ...plain, version: 1 } : { ...plain, version: 2, rooms };
}

/** Faults of a design's rooms; none without rooms. */
export function roomFaults(design: Design): DesignFault[] {
  if (design.rooms === undefined) return [];
  const { list } = design.rooms;
  const faults = [...nameFaults(list), ...storeyFaults(design), ...heatFaults(design), ...windowFaults(list)];
  if (faults.length > 0) return faults;
  faults.push(...placingFaults(design));
  return faults;
}

function nameFaults(list: readonly Room[]): DesignFault[] {
  return list.flatMap(({ name }, i): DesignFault[] => {
    const path = `rooms.list.${i}.name`;
    const value = JSON.stringify(name);
    if (name.trim() === '') return [{ path, value, allowed: 'a name' }];
    const isTaken = list.findIndex((other) => other.name.trim() === name.trim()) < i;
    return isTaken ? [{ path, value, allowed: 'a name that no other room has' }] : [];
  });
}

function storeyFaults({ rooms, house }: Design): DesignFault[] {
  return rooms!.list.flatMap(({ storey, reachesUp }, i): DesignFault[] => {
    const most = house.storeys - 1;
    if (storey > most) {
      return [
        {
          path: `rooms.list.${i}.storey`,
          value: String(storey),
          allowed: `0 to ${most}, the house having ${house.storeys}`,
        },
      ];
    }
    return reachesUp && storey === most
      ? [{ path: `rooms.list.${i}.reachesUp`, value: 'true', allowed: 'false under the roof' }]
      : [];
  });
}

function heatFaults({ rooms, heating }: Design): DesignFault[] {
  if (heating.capacityKW <= 0 || rooms!.list.some(({ heated }) => heated)) return [];
  return [
    { path: 'rooms.list', value: 'no heated room', allowed: 'one heated room at least, or no back-up heat' },
  ];
}

/** The most of a room's wall that a window of its own may take [m²]; of the front, of what is not the house's glass. */
export function mostWindowM2(design: Design, { wallM2 }: PlacedRoom, { side }: RoomWindow): number {
  const { join } = design.sunspace;
  if (side !== 'equator') return MOST_OF_ROOM_WALL * wallM2[side];
  // A leaning front is all slope.
  if (join === 'none' && design.glass.tiltDeg < 90) return 0;
  const { equatorWallM2, glassM2 } = geometryOf(design);
  const bare = join === 'none' ? Math.max(0, 1 - glassM2 / equatorWallM2) : 1;
  return MOST_OF_ROOM_WALL * bare * wallM2.equator;
}

/** A window of its own as it is built: as asked, or as large as its wall holds [m²]. */
export function builtWindow(
  design: Design,
  placed: PlacedRoom,
  window: RoomWindow,
): Pick<RoomWindow, 'areaM2' | 'openM2'> {
  const areaM2 = Math.min(window.areaM2, mostWindowM2(design, placed, window));
  return { areaM2, openM2: Math.min(window.openM2, areaM2) };
}

function windowFaults(list: readonly Room[]): DesignFault[] {
  return list.flatMap(({ windows = [] }, i) => {
    const seen = new Set<string>();
    return windows.flatMap(({ side, areaM2, openM2 }, w): DesignFault[] => {
      const path = `rooms.list.${i}.windows.${w}`;
      if (seen.has(side)) return [{ path: `${path}.side`, value: side, allowed: 'each side once' }];
      seen.add(side);
      return openM2 > areaM2 + 1e-9
        ? [{ path: `${path}.openM2`, value: String(openM2), allowed: `at most the window, ${areaM2} m²` }]
        : [];
    });
  });
}
