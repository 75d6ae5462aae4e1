// How a divided house is told: its choices in words, where a room stands, and the room a finding is about. Designs, rooms or a
// worst place in; words and figures out, nothing for an undivided house.

import type { Design } from '../design/design.ts';
import type { Partition, Room, RoomDoor, RoomUse, WindowSide } from '../design/room.ts';
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

export const USE_WORDS: Readonly<Record<RoomUse, string>> = {
  living: 'living room',
  kitchen: 'kitchen',
  bath: 'bath',
  bedroom: 'bedroom',
  spare: 'spare room',
};

/** How its door towards the stove stands. */
export const DOOR_WORDS: Readonly<Record<RoomDoor, string>> = {
  open: 'open',
  'by-day': 'open by day, shut by night',
  'by-night': 'open by night, shut by day',
  ajar: 'ajar',
  shut: 'shut',
  wide: 'none, a wide opening',
  grille: 'shut, with a low and a high grille',
};

export const PARTITION_WORDS: Readonly<Record<Partition, string>> = {
  light: 'boards on studs',
  masonry: 'brick',
  earth: 'earth',
};

export const WINDOW_SIDE_WORDS: Readonly<Record<WindowSide, string>> = {
  equator: 'equator-facing side',
  pole: 'pole-facing side',
  east: 'east side',
  west: 'west side',
};

const STOREY_WORDS = ['on the ground', 'upstairs', 'on the top floor'] as const;

/** Where a room stands: "in front, on the ground". */
export function placeWords({ row, storey }: Room): string {
  return `${row === 'front' ? 'in front' : 'at the back'}, ${STOREY_WORDS[storey] ?? `on floor ${storey}`}`;
}

const STOREY_TITLES = ['Ground floor', 'Upstairs', 'Top floor'] as const;

/** What a plan of a storey is headed. */
export function storeyTitle(storey: number): string {
  return STOREY_TITLES[storey] ?? `Floor ${storey}`;
}
