// Which stretch of time a table's stamps stand for, settled from its radiation: whether a stamp is the start, the
// end or the moment of its value, and whether it is UTC or local time. What the person says is taken first.

import { clearDayMinute } from './sun-clock.ts';
import { hourlyMeans } from './table-bins.ts';
import type { RowTimes } from './table-time.ts';
import type { Site } from './typical-year.ts';

export type StampMeaning = 'start' | 'end' | 'instant';

export interface ClockChoices {
  readonly stamp?: StampMeaning;
  readonly utc?: boolean;
}

export interface TableClock {
  /** to add to every stamp [min] */
  readonly shiftMin: number;
  readonly sunMinute: 'mean' | number;
  readonly notes: readonly string[];
}

/** How far the clear days may be from where a meaning puts them [min]; the method is good to 4, clouds add. */
const TOLERANCE = 14;

interface Candidate {
  readonly stamp: StampMeaning;
  readonly utc: boolean;
  /** where clear days are centred when this is right [min after the hour's start] */
  readonly centre: number;
}

const WORDS: Readonly<Record<StampMeaning, string>> = {
  start: 'the start of what it covers',
  end: 'the end of what it covers',
  instant: 'the moment of its reading',
};

/** Settle the clock of a table. */
export function settleTableClock(
  sunlight: Float64Array,
  times: RowTimes,
  site: Site,
  monthYears: readonly number[],
  choices: ClockChoices,
): TableClock {
  const found = new Map<boolean, number | null>();
  const measured = (utc: boolean): number | null => {
    if (!found.has(utc)) {
      const hourly = hourlyMeans(sunlight, times, utc ? site.utcOffsetH * 60 : 0).map((value) => value || 0);
      const year = {
        site,
        monthYears,
        globalHorizontal: hourly,
        beamNormal: hourly,
        diffuseHorizontal: hourly,
      };
      found.set(utc, clearDayMinute(year));
    }
    return found.get(utc)!;
  };
  const options = candidates(times, site, choices);
  const distance = (option: Candidate): number => {
    const minute = measured(option.utc);
    return minute === null ? Number.POSITIVE_INFINITY : Math.abs(minute - option.centre);
  };
  const first = options[0]!;
  const best = options.reduce((a, b) => (distance(b) < distance(a) - 1 ? b : a));
  const fits = distance(best) <= TOLERANCE;
  const chosen = fits ? best : first;
  const notes: string[] = [];
  const zone = chosen.utc ? 'UTC, turned into local standard time' : 'local standard time';
  const why = fits
    ? 'which fits the sun of clear days'
    : 'which the sun of the table neither shows nor denies';
  notes.push(`A stamp is taken as ${WORDS[chosen.stamp]}, in ${zone}, ${why}.`);
  const minute = measured(chosen.utc);
  if (!fits && minute !== null) {
    const off = Math.round(minute - chosen.centre);
    notes[0] = `A stamp is taken as ${WORDS[chosen.stamp]}, in ${zone}, but clear days are centred ${Math.abs(off)} minutes ${off > 0 ? 'early' : 'late'}: check the time zone and the place.`;
  }
  const offset = times.minutes.find((value) => !Number.isNaN(value))! % times.stepMin;
  const back = chosen.stamp === 'end' ? -times.stepMin : 0;
  const instant = 30 - times.stepMin / 2 + offset;
  return {
    shiftMin: (chosen.utc ? site.utcOffsetH * 60 : 0) + back,
    sunMinute: chosen.stamp === 'instant' ? Math.min(instant, 59.5) : 'mean',
    notes,
  };
}

/** What is possible, the likeliest first. */
function candidates(times: RowTimes, site: Site, choices: ClockChoices): Candidate[] {
  const zones = choices.utc === undefined ? [times.saysUtc, !times.saysUtc] : [choices.utc];
  const utcs = times.saysUtc && choices.utc === undefined ? [true] : zones;
  const offset = times.minutes.find((value) => !Number.isNaN(value))! % times.stepMin;
  const all: StampMeaning[] = offset === 0 ? ['start', 'end', 'instant'] : ['instant', 'start'];
  const stamps = times.countsFromOne
    ? (['start'] as const)
    : choices.stamp === undefined
      ? all
      : [choices.stamp];
  const centre: Readonly<Record<StampMeaning, number>> = {
    start: 30,
    end: 30 - times.stepMin,
    instant: 30 - times.stepMin / 2 + offset,
  };
  return utcs
    .filter((utc, i) => i === 0 || site.utcOffsetH !== 0 || !utc)
    .flatMap((utc) => stamps.map((stamp) => ({ stamp, utc, centre: centre[stamp] })));
}
