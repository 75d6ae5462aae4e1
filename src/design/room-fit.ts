// Rooms drawn back to what fits, when the house around them, or one of them, has changed: the front row no deeper than leaves
// a back one, windows no larger than their wall, a heater where there is back-up heat. A design in, its rooms out; the same
// ones where all fits. What a storey more or fewer does to rooms is nobody's guess, so storeys stand while a house is divided.

import type { Design } from './design.ts';
import { geometryOf } from './geometry.ts';
import { leastRowM, type Rooms, type RoomWindow } from './room.ts';
import { roomPlanOf } from './room-plan.ts';
import { mostWindowM2 } from './room-rules.ts';

/** The rooms as they fit; undefined for an undivided house. */
export function roomsThatFit(design: Design): Rooms | undefined {
  const { rooms } = design;
  if (rooms === undefined) return undefined;
  const { houseDepthM } = geometryOf(design);
  const leastM = leastRowM(houseDepthM);
  const frontDepthM = Math.min(houseDepthM - leastM, Math.max(leastM, rooms.frontDepthM));
  const needsHeat = design.heating.capacityKW > 0 && !rooms.list.some(({ heated }) => heated);
  const moved: Rooms = {
    ...rooms,
    frontDepthM,
    list: rooms.list.map((room, i) => (needsHeat && i === 0 ? { ...room, heated: true } : room)),
  };
  const plan = roomPlanOf({ ...design, rooms: moved })!;
  const list = moved.list.map((room, i) => {
    if (room.windows === undefined) return room;
    const windows = room.windows.map((window) =>
      fitting(window, mostWindowM2(design, plan.rooms[i]!, window)),
    );
    return windows.every((window, w) => window === room.windows![w]) ? room : { ...room, windows };
  });
  const isSame = frontDepthM === rooms.frontDepthM && list.every((room, i) => room === rooms.list[i]);
  return isSame ? rooms : { ...moved, list };
}

function fitting(window: RoomWindow, mostM2: number): RoomWindow {
  const areaM2 = Math.min(window.areaM2, mostM2);
  const openM2 = Math.min(window.openM2, areaM2);
  return areaM2 === window.areaM2 && openM2 === window.openM2 ? window : { ...window, areaM2, openM2 };
}
