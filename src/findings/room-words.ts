// How findings name a room of a divided house. A worst place or a design in, figures out; nothing for an undivided house.

import type { Design } from '../design/design.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { WorstPlace } from './context.ts';

/** The room's name and floor among the figures of a finding; none of an undivided house. */
export function roomFigure({ room }: WorstPlace): { readonly room?: string } {
  return room === null ? {} : { room: room.name };
}

/** Ids of the rooms with a heater. */
export function heatedRooms(design: Design): readonly string[] {
  const rooms = roomPlanOf(design)?.rooms ?? [];
  return rooms.flatMap(({ id, room }) => (room.heated ? [id] : []));
}
