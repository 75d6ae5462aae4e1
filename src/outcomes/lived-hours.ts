// The hours of a day in which a room's heat and cold count: bedrooms by night, others while people are awake, a spare room
// never. A use in, a test of the hour out. Night as CIBSE TM59 has it, 22:00 to 07:00; the rest common practice, no source.

import type { RoomUse } from '../design/room.ts';
import { ROOM_USE_ROWS } from '../design/room-uses.ts';
import { isAwake } from '../model/household.ts';

export interface LivedHours {
  /** of a day, 0…24 */
  readonly hours: number;
  /** hour of the year, 0 the first of 1 January */
  readonly counts: (hour: number) => boolean;
}

/** A house of one room is lived in at all hours, since some part of it is. */
export const ALL_HOURS: LivedHours = { hours: 24, counts: () => true };

/** Hours of a room. */
export function livedHoursOf(use: RoomUse): LivedHours {
  const { comfort } = ROOM_USE_ROWS[use];
  if (comfort === 'never') return { hours: 0, counts: () => false };
  const counts = (hour: number) => isAwake(hour % 24) === (comfort === 'awake');
  return { hours: Array.from({ length: 24 }, (_, hour) => counts(hour)).filter(Boolean).length, counts };
}
