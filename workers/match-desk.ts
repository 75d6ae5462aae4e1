// The desk at which a house is held against its record, in a thread of its own: files are read here, and here the fit
// plans its runs, which whoever asked makes on other threads. Loaded when first asked for.

import { type RealHours, recordOf } from '../src/daystone.ts';
import type { Design } from '../src/design/design.ts';
import type { HouseRecord, MatchJob, MatchResult } from '../src/matching/house-record.ts';
import { judgedHours, split } from '../src/matching/judged-hours.ts';
import { keptDesign } from '../src/matching/kept-design.ts';
import { type Match, matchHouse } from '../src/matching/match.ts';
import { daysOf, type FilesOfDays, recordOfFiles } from '../src/matching/record-of-files.ts';
import { type FileChoices, type TakenFile, takenFile } from '../src/matching/taken-file.ts';
import type { TypicalYear } from '../src/weather/typical-year.ts';

/** What a match is asked of. */
export interface MatchOrder extends Omit<FilesOfDays, 'weather'> {
  readonly real: RealHours;
  /** for what was not measured, and for the time before */
  readonly typical: TypicalYear;
}

/** A record as it is held against the house, and by target which of its hours are judged, and kept unseen. */
export interface DaysHeld {
  readonly record: HouseRecord;
  readonly judged: readonly Uint8Array[];
  readonly unseen: readonly Uint8Array[];
}

export interface MatchAnswer {
  readonly match: Match;
  /** of how the record was made and of its weather */
  readonly notes: readonly string[];
  /** what makes it doubtful */
  readonly cautions: readonly string[];
  /** the drawing as it was found; null where the record cannot correct it */
  readonly kept: Design | null;
}

export interface MatchHands {
  /** told first: what will be held against what */
  readonly onStart: (held: DaysHeld) => unknown;
  readonly run: (jobs: readonly MatchJob[]) => Promise<readonly MatchResult[]>;
  readonly onRound: (readings: MatchResult, drawn: MatchResult) => unknown;
}

export interface MatchDesk {
  take(bytes: Uint8Array, choices: FileChoices): Promise<TakenFile>;
  /** Rejects with RangeError for days that tell too little. */
  match(order: MatchOrder, hands: MatchHands): Promise<MatchAnswer>;
  /** End the search of the match under way; it is judged by what was found. */
  endSearch(): void;
}

/** A desk with nothing on it. */
export function createMatchDesk(): MatchDesk {
  let isEnough = false;
  return {
    take: takenFile,
    async match({ real, typical, ...files }, { onStart, run, onRound }) {
      isEnough = false;
      const { record, windows, notes } = recordOfFiles({ ...files, weather: recordOf(real, typical) });
      const judged = judgedHours(record);
      await onStart({ record, judged, unseen: split(judged, 'last', true) });
      const match = await matchHouse(record, { run }, { windows, onRound, isEnough: () => isEnough });
      const kept = match.verdict === 'no-better' ? null : keptDesign(record.design, match, daysOf(record));
      const { notes: ofWeather } = record.weather;
      return {
        match,
        notes: [...notes, ...ofWeather],
        cautions: match.notes.filter((note) => !ofWeather.includes(note)),
        kept,
      };
    },
    endSearch() {
      isEnough = true;
    },
  };
}
