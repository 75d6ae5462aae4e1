// Single changes to the rooms of a divided house, as levers among the others: what costs next to nothing, its doors. A design
// in, levers out; none for one room.

import type { Design } from '../design/design.ts';
import type { RoomDoor } from '../design/room.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { Lever } from './lever.ts';
import { varied } from './variation.ts';

/** Doors that stand open for less than they could. */
const SHUT_AT_TIMES: readonly RoomDoor[] = ['by-day', 'by-night', 'ajar', 'shut', 'grille'];

/** Levers on the doors of rooms. */
export function roomLevers(design: Design): readonly Lever[] {
  const plan = roomPlanOf(design);
  if (plan === null) return [];
  return plan.rooms.flatMap(({ room, id }, i): Lever[] => {
    const hasWay = plan.ways.some((way) => way.room === i);
    if (!hasWay || !SHUT_AT_TIMES.includes(room.door)) return [];
    return [
      {
        id: `door-open ${id}`,
        words: `leave the door of "${room.name}" open by day and night`,
        apply: (to) => withDoor(to, i, 'open'),
      },
    ];
  });
}

function withDoor(design: Design, i: number, door: RoomDoor): Design {
  const { rooms } = design;
  if (rooms === undefined) return design;
  const list = rooms.list.map((room, n) => (n === i ? { ...room, door } : room));
  return varied({ ...design, rooms: { ...rooms, list } }, {});
}
