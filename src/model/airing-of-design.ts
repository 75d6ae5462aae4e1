// When and how long people air: a design in; hours of the day and minutes out, of the rooms and of the sunspace.
// Source: German advice on airing in winter, three or four times a day for five to ten minutes, as collected by mould helps and
// window builders; which hours, and that a sunspace is aired at noon, when it is warm: common practice, no source.

import type { Design } from '../design/design.ts';
import type { Airing } from './model.ts';

const MINUTES = 10;
/** Getting up, midday, evening, before bed. */
const HOURS = [7, 12, 18, 21];
/** Who forgets thinks of it in the evening alone. */
const FORGETFUL_HOURS = [18];
const SUNSPACE_HOURS = [12];

/** What a habit of opening windows means for airing the rooms. */
export function roomAiring({ vents }: Design): Airing {
  return { minutes: MINUTES, hours: vents.habit === 'forgetful' ? FORGETFUL_HOURS : HOURS, byHabit: false };
}

/** A planted sunspace is rid of its damp once a day. */
export function sunspaceAiring(): Airing {
  return { minutes: MINUTES, hours: SUNSPACE_HOURS, byHabit: false };
}
