// Which stretch of time a table's stamps stand for, settled from its radiation: whether a stamp is the start, the
// end or the moment of its value, and whether it is UTC or local time. What the person says is taken first.

import { clearDayMinute } from '../assembly/radiation-timing.ts';
import type { Site } from '../typical-year.ts';
import { hourlyMeans } from './table-hours.ts';
import type { RowTimes } from './table-time.ts';

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
  /** to add to every stamp for it [min] */
  readonly moveMin: number;
}

const WORDS: Readonly<Record<StampMeaning, string>> = {
  start: 'the start of what it covers',
  end: 'the end of what it covers',
  instant: 'the moment of its reading',
};

/**
 * Settle the clock of a table.
 *
 * @param sunlight by row, global or beam [W/m²]; where clear days are centred tells which meaning of the stamps is right
 * @param monthYears calendar year of each month, January first
 */
export function resolveTableClock(
  sunlight: Float64Array,
  times: RowTimes,
  site: Site,
  monthYears: readonly number[],
  choices: ClockChoices,
): TableClock {
  const offsetMin = site.utcOffsetH * 60;
  const inZone = (utc: boolean): number | null => {
    const hourly = hourlyMeans(sunlight, times, utc ? offsetMin : 0).map((value) => value || 0);
    const light = { globalHorizontal: hourly, beamNormal: hourly, diffuseHorizontal: hourly };
    return clearDayMinute({ site, monthYears, ...light });
  };
  const options = candidates(times, site, choices);
  const measured = new Map([...new Set(options.map(({ utc }) => utc))].map((utc) => [utc, inZone(utc)]));
  const early = (option: Candidate): number => (measured.get(option.utc) ?? Number.NaN) - option.centre;
  const distance = (option: Candidate): number => {
    const minutes = Math.abs(early(option));
    return Number.isNaN(minutes) ? Number.POSITIVE_INFINITY : minutes;
  };
  const best = options.reduce((a, b) => (distance(b) < distance(a) - 1 ? b : a));
  const fits = distance(best) <= TOLERANCE;
  const chosen = fits ? best : options[0]!;
  return {
    shiftMin: (chosen.utc ? offsetMin : 0) + chosen.moveMin,
    sunMinute: chosen.stamp === 'instant' ? Math.min(instantMinute(times), 59.5) : 'mean',
    notes: [noteOf(chosen, early(chosen))],
  };
}

function noteOf({ stamp, utc }: Candidate, earlyMin: number): string {
  const zone = utc ? 'UTC, turned into local standard time' : 'local standard time';
  const taken = `A stamp is taken as ${WORDS[stamp]}, in ${zone}`;
  if (Number.isNaN(earlyMin)) return `${taken}, which the sun of the table neither shows nor denies.`;
  if (Math.abs(earlyMin) <= TOLERANCE) return `${taken}, which fits the sun of clear days.`;
  const off = Math.round(earlyMin);
  return `${taken}, but clear days are centred ${Math.abs(off)} minutes ${off > 0 ? 'early' : 'late'}: check the time zone and the place.`;
}

/** Minutes by which the first stamp passes a full step. */
function stampOffset(times: RowTimes): number {
  return times.minutes.find((value) => !Number.isNaN(value))! % times.stepMin;
}

/** Minute of the hour at which readings of the moment are centred. */
function instantMinute(times: RowTimes): number {
  return 30 - times.stepMin / 2 + stampOffset(times);
}

/** What is possible, the likeliest first. */
function candidates(times: RowTimes, site: Site, choices: ClockChoices): Candidate[] {
  const zones = choices.utc === undefined ? [times.saysUtc, !times.saysUtc] : [choices.utc];
  const utcs = times.saysUtc && choices.utc === undefined ? [true] : zones;
  const all: StampMeaning[] = stampOffset(times) === 0 ? ['start', 'end', 'instant'] : ['instant', 'start'];
  // Hours counted from 1 to 24 each end at their number, and rowTimes has put them at their start already.
  const counted = times.countsFromOne;
  const stamps = choices.stamp !== undefined ? [choices.stamp] : counted ? (['end'] as const) : all;
  const moveMin: Readonly<Record<StampMeaning, number>> = counted
    ? { start: 60, end: 0, instant: 60 }
    : { start: 0, end: -times.stepMin, instant: 0 };
  const middle: Readonly<Record<StampMeaning, number>> = {
    start: 30,
    end: 30,
    instant: instantMinute(times),
  };
  return utcs
    .filter((utc, i) => i === 0 || site.utcOffsetH !== 0 || !utc)
    .flatMap((utc) =>
      stamps.map((stamp) => ({
        stamp,
        utc,
        centre: middle[stamp] + moveMin[stamp],
        moveMin: moveMin[stamp],
      })),
    );
}
