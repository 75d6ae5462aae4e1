// The one door to the engine: a design and a typical year in, the model, the climate it stood in, the hourly year and
// its outcome out. The page, the questions and the command line run every year through here, so none of them can
// forget the hotter year a design asks for or hand out an outcome without its findings.

import type { Design } from './design/design.ts';
import { findingsOf } from './findings/findings.ts';
import type { Units } from './findings/wording.ts';
import type * as Loggers from './loggers/logger-file.ts';
import { climateOfDesign } from './model/design-climate.ts';
import { modelOf } from './model/from-design.ts';
import type { Model } from './model/model.ts';
import type { OpeningEvent, RowSeries } from './network/given-series.ts';
import { type SimulateOptions, simulate } from './network/simulate.ts';
import type { Year } from './network/year.ts';
import type { Outcome, OutcomeFigures } from './outcomes/outcome.ts';
import { type PeriodOutcome, summarisePeriod, type ZonePeriod, zonesOfPeriod } from './outcomes/period.ts';
import { summarise } from './outcomes/summarise.ts';
import { withWholeHouse } from './outcomes/whole-house.ts';
import { dateOfMoment, HOUR_MS, momentOfDate } from './weather/moments.ts';
import { type PreparedClimate, preparedOnce } from './weather/prepared/prepared-climate.ts';
import type { ReadResult } from './weather/read-result.ts';
import type * as Reader from './weather/reader.ts';
import type * as RealTable from './weather/real/real-table.ts';
import type { WeatherRecord } from './weather/real/weather-record.ts';
import { HOURS, rowOfHour, type TypicalYear } from './weather/typical-year.ts';

export type { Design } from './design/design.ts';
export { EXAMPLES } from './design/examples.ts';
export type { LoggerFile } from './loggers/logger-file.ts';
export type { Model } from './model/model.ts';
export type { Year, ZoneYear } from './network/year.ts';
export { hourlyFile } from './outcomes/hourly-file.ts';
export { ImpossibleYear } from './outcomes/impossible-year.ts';
export type { Finding, Outcome, ZoneOutcome } from './outcomes/outcome.ts';
export type { PeriodOutcome, ZonePeriod } from './outcomes/period.ts';
export { readBundle } from './weather/formats/bundle-form.ts';
export { type PreparedClimate, prepareClimate } from './weather/prepared/prepared-climate.ts';
export type { Fault, ReadResult } from './weather/read-result.ts';
export { type RealHours, recordOf, type WeatherRecord } from './weather/real/weather-record.ts';
export type { TypicalYear } from './weather/typical-year.ts';

/** How a year is run; absent for a run as the page makes it. */
export interface RunYearOptions extends SimulateOptions {
  /** units of the findings' sentences; metric unless said */
  readonly units?: Units;
  /** what is known of the period's days, of the model's own zones and gains */
  readonly seriesOf?: (model: Model) => readonly RowSeries[];
}

/** A design's year: 8760 rows of hourly means, row 0 the first hour of January in local standard time. */
export interface YearRun {
  readonly model: Model;
  /** the climate the design stood in: the site's, made hotter where the design asks for it */
  readonly climate: PreparedClimate;
  /** hour by hour; lent columns (`lend`) hold until the thread's next run */
  readonly year: Year;
  /** the outcome without its findings, for runs that only compare; worked out when first read */
  readonly figures: OutcomeFigures;
  /** the outcome, findings and all; worked out when first read. Throws ImpossibleYear for rooms no house can have */
  readonly outcome: Outcome;
}

/**
 * Run a design through a year.
 *
 * @param design a checked design (src/design/schema.ts checks one)
 * @param typicalYear the site's weather as a reader hands it out, prepared once and remembered; or prepared already
 * @param options steps an hour and days of warm-up for convergence checks, history of elements, units of sentences
 * @returns the run; throws RangeError for a model that is none
 * Error: how far a year is from one of finer steps is told in docs/convergence.md, how far from published cases in
 *   docs/checks.md.
 */
export function runYear(
  design: Design,
  typicalYear: TypicalYear | PreparedClimate,
  options: RunYearOptions = {},
): YearRun {
  const { units = 'metric', seriesOf, ...simulation } = options;
  const climate = climateOfDesign(design, 'year' in typicalYear ? typicalYear : preparedOnce(typicalYear));
  const model = modelOf(design, climate.year.site, climate.ground);
  const series = seriesOf && { series: seriesOf(model) };
  const year = withWholeHouse(design, simulate(model, climate, { ...simulation, ...series }));
  let figures: OutcomeFigures | null = null;
  let outcome: Outcome | null = null;
  return {
    model,
    climate,
    year,
    get figures() {
      figures ??= summarise(design, model, climate, year);
      return figures;
    },
    get outcome() {
      outcome ??= {
        ...this.figures,
        findings: findingsOf({ design, climate, year, outcome: this.figures, units }),
      };
      return outcome;
    },
  };
}

/** A date in local standard time, as 2021-03-14 or 2021-03-14 05:30, or a moment [ms since 1970 UTC]. */
export type DateText = string | number;

/** What was measured or counted, in place of a schedule or rule: by hour from the start of the period, NaN where not known. */
export type PeriodSeries =
  /** heat of one of a zone's gains, by its id [W] */
  | {
      readonly kind: 'gain';
      readonly zone: string;
      readonly gain: string;
      readonly values: ArrayLike<number>;
    }
  /** water given off by one of a zone's causes [g/h] */
  | {
      readonly kind: 'moisture';
      readonly zone: string;
      readonly cause: string;
      readonly values: ArrayLike<number>;
    }
  /** people there; air held [°C]; heat of the zone's heater [W, 0 or more]; wood put on its stove in the hour [kg, 0 or more] */
  | {
      readonly kind: 'people' | 'held' | 'heat' | 'wood';
      readonly zone: string;
      readonly values: ArrayLike<number>;
    }
  | {
      readonly kind: 'opening';
      readonly opening: string;
      /** share open from each moment on, 0…1; NaN for as its rule has it from there */
      readonly events: readonly { readonly at: DateText; readonly open: number }[];
    };

/** Which days are run, and what is known of them. */
export interface RunPeriodOptions
  extends Pick<SimulateOptions, 'stepsPerHour' | 'warmUpDays' | 'startC' | 'water' | 'lend'> {
  /** first hour, and the one after the last; the whole record unless said */
  readonly from?: DateText;
  readonly until?: DateText;
  readonly series?: readonly PeriodSeries[];
  /** what is changed about the model the drawing means, or another in its place */
  readonly model?: (drawn: Model) => Model;
}

/** A design's real days, hour by hour. */
export interface PeriodRun {
  readonly model: Model;
  readonly climate: PreparedClimate;
  /** columns of the climate's rows; those outside the period say nothing */
  readonly year: Year;
  /** moment at which the period starts [ms since 1970 UTC], its hours, and its first row in `year` */
  readonly startMs: number;
  readonly hours: number;
  readonly firstRow: number;
  /** hour by hour over the period */
  readonly zones: readonly ZonePeriod[];
  readonly outcome: PeriodOutcome;
}

/** Days run before a period starts to count; the weather before the record is the typical year's, moved to meet it. */
const DAYS_BEFORE = 28;

/**
 * Run a design through real days.
 *
 * @param design a checked design; what it says of hotter years is left out, for these days were as they were
 * @param record weather of real days (`recordOf`)
 * @param options the days, after 28 days of warm-up unless said; what was measured or counted in them
 * @returns the run; throws RangeError for days the record does not have, and for a series of what the model does not have
 */
export function runPeriod(design: Design, record: WeatherRecord, options: RunPeriodOptions = {}): PeriodRun {
  const { from, until, series = [], model: change = (drawn) => drawn, ...simulation } = options;
  const first = hourOfRecord(record, 'from', from ?? record.startMs);
  const end = hourOfRecord(record, 'until', until ?? record.startMs + record.hours * HOUR_MS);
  const hours = end - first;
  if (hours < 1) throw new RangeError(`until is '${until}'; allowed: after '${from ?? 'the first hour'}'`);
  const climate = preparedOnce(record.year);
  const model = change(modelOf(design, record.year.site, climate.ground));
  const firstRow = rowOfHour(record.firstRow, first);
  const startMs = record.startMs + first * HOUR_MS;
  const run = simulate(model, climate, {
    warmUpDays: simulation.startC === undefined ? DAYS_BEFORE : 0,
    ...simulation,
    period: { firstRow, hours },
    series: series.map((one) => seriesByRow(one, firstRow, startMs, record.year.site.utcOffsetH)),
  });
  const year = withWholeHouse(design, run);
  const zones = zonesOfPeriod(year, firstRow, hours);
  // Rooms of a divided house behind the house, which is all of them.
  const rooms = zonesOfPeriod({ ...year, zones: year.rooms ?? [] }, firstRow, hours);
  return {
    model,
    climate,
    year,
    startMs,
    hours,
    firstRow,
    zones: [...zones, ...rooms],
    outcome: summarisePeriod(zones, year.books),
  };
}

/** Hours from the record's start to a date. */
function hourOfRecord(record: WeatherRecord, name: string, date: DateText): number {
  const ms = momentOf(date, record.year.site.utcOffsetH);
  const hour = (ms - record.startMs) / HOUR_MS;
  if (Number.isInteger(hour) && hour >= 0 && hour <= record.hours) return hour;
  const day = (moment: number) => dateOfMoment(moment, record.year.site.utcOffsetH);
  throw new RangeError(
    `${name} is '${date}'; allowed: a full hour from ${day(record.startMs)} to ${day(record.startMs + record.hours * HOUR_MS)}`,
  );
}

function momentOf(date: DateText, utcOffsetH: number): number {
  return typeof date === 'number' ? date : momentOfDate(date, utcOffsetH);
}

function seriesByRow(one: PeriodSeries, firstRow: number, startMs: number, utcOffsetH: number): RowSeries {
  if (one.kind === 'opening') {
    const events = one.events.map(({ at, open }): OpeningEvent => {
      const hour = (momentOf(at, utcOffsetH) - startMs) / HOUR_MS;
      if (Number.isNaN(hour))
        throw new RangeError(`moment of '${one.opening}' is '${at}'; allowed: a date as 2021-03-14 05:30`);
      if (open < 0 || open > 1) throw new RangeError(`'${one.opening}' is open by ${open}; allowed: 0 to 1`);
      return { hour, open };
    });
    return { kind: 'opening', opening: one.opening, events };
  }
  const values = new Float64Array(HOURS).fill(Number.NaN);
  for (let hour = 0; hour < Math.min(HOURS, one.values.length); hour++)
    values[rowOfHour(firstRow, hour)] = one.values[hour]!;
  return { ...one, values };
}

/**
 * Read a weather file of any known form. The reader is loaded when the first file is read: it brings a library for
 * tables that nobody else needs.
 *
 * @param content the file as bytes, gzipped or not, or as text
 * @returns the typical year with notes of what was filled or doubted, or the faults, a line each; never throws on a file
 */
export async function readWeather(...file: Parameters<typeof Reader.readWeather>): Promise<ReadResult> {
  const reader = await import('./weather/reader.ts');
  return reader.readWeather(...file);
}

/**
 * Read a table of dated weather, a part of a year or a whole one, as hourly readings for `recordOf`.
 *
 * @returns the readings with notes, or the faults; never throws on a file
 */
export async function readRealWeather(
  ...table: Parameters<typeof RealTable.readRealWeather>
): Promise<RealTable.RealTableResult> {
  const reader = await import('./weather/real/real-table.ts');
  return reader.readRealWeather(...table);
}

/**
 * Read a logger's file: any table of time, temperature and humidity.
 *
 * @returns hourly means by column with what was left out and why, or the faults; never throws on a file
 */
export async function readLogger(
  ...file: Parameters<typeof Loggers.readLogger>
): Promise<Loggers.LoggerResult> {
  const reader = await import('./loggers/logger-file.ts');
  return reader.readLogger(...file);
}
