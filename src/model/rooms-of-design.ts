// What the parts of a divided house share: which zone stands for the house behind a sunspace, and what each room has of the
// wall to it. A design or its room plan in; ids and areas out.

import type { Design } from '../design/design.ts';
import { type PlacedRoom, type RoomPlan, roomPlanOf } from '../design/room-plan.ts';
import type { CommonPart } from './common-wall.ts';

/** The zone that the sunspace's door leads to: the house, or one of its rooms. */
export function roomBehindSunspace(design: Design): string {
  const plan = roomPlanOf(design);
  return plan === null ? 'house' : (plan.rooms[plan.sunspaceRoom] ?? plan.rooms[plan.stove]!).id;
}

/** The common wall by room; its windows shared by area, its door in one of them. */
export function commonParts({ rooms, sunspaceRoom }: RoomPlan): CommonPart[] {
  const wholeM2 = rooms.reduce((sum, { behindSunspaceM2 }) => sum + behindSunspaceM2, 0);
  return rooms
    .map((placed, i) => ({ placed, i }))
    .filter(({ placed }) => placed.behindSunspaceM > 0)
    .map(({ placed: { id, behindSunspaceM2, behindSunspaceM }, i }) => ({
      zone: id,
      suffix: ` ${id}`,
      grossM2: behindSunspaceM2,
      lengthM: behindSunspaceM,
      heightM: behindSunspaceM2 / behindSunspaceM,
      glassShare: behindSunspaceM2 / wholeM2,
      hasDoor: i === sunspaceRoom,
    }));
}

/** Share of a house's extra mass that stands in each room: by floor area, in those said to hold it, or in all. */
export function massShares(rooms: readonly PlacedRoom[]): number[] {
  const holds = rooms.some(({ room }) => room.mass);
  const areas = rooms.map(({ room, floorM2 }) => (room.mass || !holds ? floorM2 : 0));
  const wholeM2 = areas.reduce((sum, areaM2) => sum + areaM2, 0);
  return areas.map((areaM2) => areaM2 / wholeM2);
}
