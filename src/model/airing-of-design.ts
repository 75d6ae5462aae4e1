// When and how long people air: a design in; hours of the day and minutes out, of the rooms and of the sunspace.
// Which hours, and that a sunspace is aired at noon, when it is warm: common practice, no source.

import type { Design } from '../design/design.ts';
import type { Airing } from './model.ts';

/** Hours at which somebody thinks of it, by how often a day. */
const HOURS_BY_TIMES: readonly (readonly number[])[] = [
  [18],
  [7, 18],
  [7, 12, 18],
  [7, 12, 18, 21],
  [7, 10, 12, 18, 21],
  [7, 10, 12, 15, 18, 21],
];
/** Who forgets thinks of it in the evening alone. */
const FORGETFUL_HOURS = HOURS_BY_TIMES[0]!;
const SUNSPACE_HOURS = [12];

/** Airing of the rooms; null where they never are. */
export function roomAiring({ vents, ventilation }: Design): Airing | null {
  const { aired, airedMinutes, airedTimes } = ventilation;
  if (aired === 'never') return null;
  return {
    minutes: airedMinutes,
    hours: vents.habit === 'forgetful' ? FORGETFUL_HOURS : HOURS_BY_TIMES[airedTimes - 1]!,
    byHabit: aired === 'by-habit',
  };
}

/** A planted sunspace is rid of its damp once a day; null where nobody airs. */
export function sunspaceAiring({ ventilation }: Design): Airing | null {
  const { aired, airedMinutes } = ventilation;
  return aired === 'never' ? null : { minutes: airedMinutes, hours: SUNSPACE_HOURS, byHabit: false };
}
