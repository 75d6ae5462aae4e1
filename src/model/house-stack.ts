// Where air may pass a divided house one way: the windows and cracks of each room at their height, and the doors and stairs
// that join the rooms. A room plan and the openings made of it in; null for a house of one storey. Doors lead towards
// one room, so between any two there is one way.

import type { PlacedRoom, RoomPlan } from '../design/room-plan.ts';
import type { HouseStack, Opening, StackPlace } from './model.ts';
import { wayId } from './openings-of-rooms.ts';

/** The stack of a divided house. */
export function houseStack(
  { rooms, ways, storeyM }: RoomPlan,
  openings: readonly Opening[],
): HouseStack | null {
  const storeys = new Set(rooms.flatMap(({ boxes }) => boxes.map(({ storey }) => storey)));
  if (storeys.size < 2) return null;
  const idOf = (kind: Opening['kind'], zone: string) =>
    openings.find((opening) => opening.kind === kind && opening.zone === zone)?.id ?? null;
  const places = rooms.flatMap(({ id, boxes }: PlacedRoom): StackPlace[] =>
    boxes.map(({ storey }) => ({
      zone: id,
      heightM: (storey + 0.5) * storeyM,
      windows: idOf('vent', id),
      cracks: idOf('cracks', id),
      share: 1 / boxes.length,
    })),
  );
  return {
    places,
    ways: ways.map(({ room, to }) => ({
      zone: rooms[room]!.id,
      to: rooms[to]!.id,
      opening: wayId(rooms[room]!),
    })),
  };
}
