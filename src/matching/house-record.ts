// What is held against a house: its drawing, the weather of its days, what was measured in which zone, what is known of
// windows, stove and people; and one run of it with unknowns at some values. Small plain data, so that it travels to
// threads once and every run is a few numbers there and a few hundred back.

import { type PeriodSeries, runPeriod } from '../daystone.ts';
import type { Design, Habit } from '../design/design.ts';
import { modelWith, type UnknownValues } from '../model/unknowns.ts';
import type { ZonePeriod } from '../outcomes/period.ts';
import { HOUR_MS } from '../weather/moments.ts';
import type { WeatherRecord } from '../weather/real/weather-record.ts';
import { rowOfHour } from '../weather/typical-year.ts';

/** A logger in a zone. */
export interface Target {
  /** how a person calls it: the room, or the file's column */
  readonly name: string;
  readonly zone: string;
  readonly kind: 'temperature' | 'humidity';
  /** a logger on a shelf sees the walls too: of its reading so much is their radiation, 0…1 */
  readonly radiantShare: number;
  /** it was read so often [h]; absent where `measured` are means in truth */
  readonly stepH?: number;
  /** by hour of the period, °C or %; NaN where not known */
  readonly measured: Float64Array;
}

/** What is known of what people opened: nothing was, every move was written down, or it is guessed. */
export type Windows = 'shut' | 'known' | 'guessed';

export interface HouseRecord {
  readonly design: Design;
  readonly weather: WeatherRecord;
  /** first moment [ms since 1970 UTC], and hours */
  readonly startMs: number;
  readonly hours: number;
  readonly targets: readonly Target[];
  readonly series: readonly PeriodSeries[];
  /** days run before the first hour */
  readonly warmUpDays: number;
}

export interface MatchJob {
  readonly values: UnknownValues;
  /** who opens the windows; absent as drawn */
  readonly habit?: Habit;
  /** by target, the zone it hung in; absent as it was said */
  readonly zones?: readonly string[];
}

/** By target, what it would have read, by hour. */
export type MatchResult = readonly Float64Array[];

/** What a fit knows of machinery: something that runs many jobs on one record. */
export interface MatchRunner {
  run(jobs: readonly MatchJob[]): Promise<readonly MatchResult[]>;
}

/** Hours of weather before the first hour of the period. */
export function hoursBefore({ weather, startMs }: HouseRecord): number {
  return Math.round((startMs - weather.startMs) / HOUR_MS);
}

/** The row of the weather in which an hour of the period stands; hours before it are below 0. */
export function rowOf(record: HouseRecord, hour: number): number {
  return rowOfHour(record.weather.firstRow, hoursBefore(record) + hour);
}

/** One run. */
export function runMatch(record: HouseRecord, { values, habit, zones: hung }: MatchJob): MatchResult {
  const { design, weather, startMs, hours, series, warmUpDays, targets } = record;
  const vents = habit === undefined ? design.vents : { ...design.vents, habit };
  const { zones } = runPeriod({ ...design, vents }, weather, {
    from: startMs,
    until: startMs + hours * HOUR_MS,
    series: firesTimes(series, values.fires ?? 1),
    warmUpDays,
    lend: true,
    model: (drawn) => modelWith(drawn, values),
  });
  return targets.map((target, t) => readingOf({ ...target, zone: hung?.[t] ?? target.zone }, zones));
}

/** Series with what was written down as burnt times so much. */
function firesTimes(series: readonly PeriodSeries[], times: number): readonly PeriodSeries[] {
  if (times === 1) return series;
  return series.map((one) =>
    one.kind === 'heat' || one.kind === 'wood'
      ? { ...one, values: Float64Array.from(one.values, (value) => value * times) }
      : one,
  );
}

/** What a logger reads of a zone, by hour. */
function readingOf(target: Target, zones: readonly ZonePeriod[]): Float64Array {
  const meant = feltBy(target, zones);
  return target.stepH === undefined ? meant : asJoined(meant, target.stepH);
}

/**
 * Means of hours as they come out when readings of a moment are joined by straight lines: the trapezoidal rule's error,
 * step²/12 times the second difference (textbook). Hourly readings blunt every peak by it, which a fit would take for mass.
 */
export function asJoined(means: Float64Array, stepH: number): Float64Array {
  const blunts = stepH ** 2 / 12;
  const last = means.length - 1;
  return means.map((mean, hour) => {
    const [before, after] = [means[Math.max(0, hour - 1)]!, means[Math.min(last, hour + 1)]!];
    return mean + blunts * (before - 2 * mean + after);
  });
}

/** Air and the radiation of its walls, or humidity in %. */
function feltBy({ zone, kind, radiantShare }: Target, zones: readonly ZonePeriod[]): Float64Array {
  const { airC, operativeC, relativeHumidity } = zones.find(({ id }) => id === zone)!;
  if (kind === 'humidity') return relativeHumidity.map((share) => 100 * share);
  // The operative temperature is half air, half mean radiant.
  return airC.map((air, hour) => air + 2 * radiantShare * (operativeC[hour]! - air));
}
