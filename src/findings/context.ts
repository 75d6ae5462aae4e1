// What a rule sees of one run: the design, the model, the weather, the hourly year and the outcome. Rules
// read; nothing here changes.

import type { Design } from '../design/design.ts';
import { type Geometry, geometryOf } from '../design/geometry.ts';
import type { Year, ZoneYear } from '../network/year.ts';
import { judgedHouse, type Respect, worstIn } from '../outcomes/judged-house.ts';
import { ALL_HOURS, type LivedHours, livedHoursOf } from '../outcomes/lived-hours.ts';
import type { OutcomeFigures, RoomOutcome, ZoneOutcome } from '../outcomes/outcome.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { type Units, type Wording, wordingOf } from './wording.ts';

export interface Run {
  readonly design: Design;
  readonly climate: PreparedClimate;
  readonly year: Year;
  readonly outcome: OutcomeFigures;
  /** units of the sentences; metric when absent */
  readonly units?: Units;
}

export interface Context {
  readonly design: Design;
  readonly climate: PreparedClimate;
  readonly year: Year;
  readonly outcome: OutcomeFigures;
  readonly geometry: Geometry;
  /** as it is judged: of several rooms the worst in each respect */
  readonly house: ZoneOutcome;
  readonly houseYear: ZoneYear;
  /** the hours of the worst room in a respect, and of the rooms as a subject; of one room the house */
  readonly worst: (respect: Respect) => WorstPlace;
  /** null where the design has no sunspace */
  readonly sunspace: ZoneOutcome | null;
  readonly sunspaceYear: ZoneYear | null;
  readonly units: Units;
  readonly words: Wording;
}

/** A room, or the rooms of an undivided house, as findings speak of it. */
export interface WorstPlace {
  /** the room; null for an undivided house */
  readonly room: RoomOutcome | null;
  readonly year: ZoneYear;
  readonly lived: LivedHours;
  /** "the rooms", or the room by its name, within a sentence and at its start */
  readonly the: string;
  readonly atStart: string;
  /** the plural of a verb for the rooms, the singular for one */
  readonly verb: (plural: string, singular: string) => string;
}

/** The context of one run. */
export function contextOf({ design, climate, year, outcome, units = 'metric' }: Run): Context {
  const houseYear = year.zones.find(({ id }) => id === 'house');
  if (houseYear === undefined) throw new RangeError("zones of the year lack 'house'");
  return {
    design,
    climate,
    year,
    outcome,
    geometry: geometryOf(design),
    house: judgedHouse(outcome),
    houseYear,
    worst: (respect) => worstPlace({ design, climate, year, outcome }, houseYear, respect),
    sunspace: outcome.zones.sunspace ?? null,
    sunspaceYear: year.zones.find(({ id }) => id === 'sunspace') ?? null,
    units,
    words: wordingOf(units),
  };
}

function worstPlace({ year, outcome }: Run, houseYear: ZoneYear, respect: Respect): WorstPlace {
  const room = worstIn(outcome, respect);
  if (room === null) {
    return {
      room,
      year: houseYear,
      lived: ALL_HOURS,
      the: 'the rooms',
      atStart: 'The rooms',
      verb: (plural) => plural,
    };
  }
  return {
    room,
    year: year.rooms!.find(({ id }) => id === room.id)!,
    lived: livedHoursOf(room.use),
    the: `the room "${room.name}"`,
    atStart: `The room "${room.name}"`,
    verb: (_, singular) => singular,
  };
}
