// What a rule sees of one run: the design, the model, the weather, the hourly year and the outcome. Rules
// read; nothing here changes.

import type { Design } from '../design/design.ts';
import { type Geometry, geometryOf } from '../design/geometry.ts';
import type { Year, ZoneYear } from '../network/year.ts';
import type { OutcomeFigures, ZoneOutcome } from '../outcomes/outcome.ts';
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
  readonly house: ZoneOutcome;
  readonly houseYear: ZoneYear;
  /** null where the design has no sunspace */
  readonly sunspace: ZoneOutcome | null;
  readonly sunspaceYear: ZoneYear | null;
  readonly units: Units;
  readonly words: Wording;
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
    house: outcome.zones.house,
    houseYear,
    sunspace: outcome.zones.sunspace ?? null,
    sunspaceYear: year.zones.find(({ id }) => id === 'sunspace') ?? null,
    units,
    words: wordingOf(units),
  };
}
