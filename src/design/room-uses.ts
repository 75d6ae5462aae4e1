// What each use of a room means: its part of people awake and asleep, of appliances and of each cause of moisture, whether
// the extract fan draws there, and when its comfort counts. A list of rooms in, shares by room out. Common practice, no
// source. Parts of all uses make one whole; a use that no room has is carried by another, as a living room that is
// kitchen and bedroom too.

import type { RoomUse } from './room.ts';
import type { PlacedRoom } from './room-plan.ts';

export const SHARED_CAUSES = [
  'awake',
  'asleep',
  'appliances',
  'cooking',
  'washing',
  'drying',
  'extract',
] as const;
export type SharedCause = (typeof SHARED_CAUSES)[number];

/** When heat and cold count: while people are awake, by night, or never. */
type ComfortHours = 'awake' | 'night' | 'never';

interface UseRow {
  readonly parts: Readonly<Record<SharedCause, number>>;
  readonly comfort: ComfortHours;
  /** uses that carry its part where no room has it, in order */
  readonly standIns: readonly RoomUse[];
}

const parts = (
  awake: number,
  asleep: number,
  appliances: number,
  cooking: number,
  washing: number,
  drying: number,
  extract: number,
) => ({ awake, asleep, appliances, cooking, washing, drying, extract });

export const ROOM_USE_ROWS: Readonly<Record<RoomUse, UseRow>> = {
  living: {
    parts: parts(0.6, 0, 0.45, 0, 0, 0.5, 0),
    comfort: 'awake',
    standIns: ['kitchen', 'bedroom', 'bath'],
  },
  kitchen: {
    parts: parts(0.25, 0, 0.45, 1, 0.3, 0, 0.5),
    comfort: 'awake',
    standIns: ['living', 'bedroom', 'bath'],
  },
  bath: {
    parts: parts(0.05, 0, 0.05, 0, 0.7, 0.3, 0.5),
    comfort: 'awake',
    standIns: ['kitchen', 'living', 'bedroom'],
  },
  bedroom: {
    parts: parts(0.1, 1, 0.05, 0, 0, 0.2, 0),
    comfort: 'night',
    standIns: ['living', 'kitchen', 'bath'],
  },
  spare: { parts: parts(0, 0, 0, 0, 0, 0, 0), comfort: 'never', standIns: [] },
};

const USES_WITH_PARTS = ['living', 'kitchen', 'bath', 'bedroom'] as const;

/**
 * Each room's share of a household's total; together 1. Rooms of one use share its part by floor area; a house of spare
 * rooms alone shares all by floor area.
 */
export function sharesOf(rooms: readonly PlacedRoom[], cause: SharedCause): number[] {
  const has = (use: RoomUse) => rooms.some(({ room }) => room.use === use);
  const carried = new Map<RoomUse, number>();
  for (const use of USES_WITH_PARTS) {
    const { parts, standIns } = ROOM_USE_ROWS[use];
    const by = has(use) ? use : standIns.find(has);
    if (by !== undefined) carried.set(by, (carried.get(by) ?? 0) + parts[cause]);
  }
  if (carried.size === 0) return rooms.map(({ floorM2 }) => floorM2 / floorOf(rooms));
  return rooms.map(({ room, floorM2 }) => {
    const alike = rooms.filter((other) => other.room.use === room.use);
    return ((carried.get(room.use) ?? 0) * floorM2) / floorOf(alike);
  });
}

function floorOf(rooms: readonly PlacedRoom[]): number {
  return rooms.reduce((sum, { floorM2 }) => sum + floorM2, 0);
}
