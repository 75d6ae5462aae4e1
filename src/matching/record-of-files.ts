// A drawing, the weather of its days, loggers' columns with their places and what was told of the days, as one record that a
// fit takes.

import type { LoggerFile, Model, WeatherRecord } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { DiaryLine } from '../loggers/diary-file.ts';
import type { LoggerColumn } from '../loggers/logger-file.ts';
import { modelOf } from '../model/from-design.ts';
import { dateOfMoment, HOUR_MS } from '../weather/moments.ts';
import { preparedOnce } from '../weather/prepared/prepared-climate.ts';
import type { HourGrid } from '../weather/real/hourly-means.ts';
import { notUsedWords, openedStretches } from './diary-openings.ts';
import { type HouseRecord, hoursBefore, type Target, type Windows } from './house-record.ts';
import { columnOver } from './shared-days.ts';
import { type ToldDays, toldSeries, windowsTold } from './told-days.ts';
import { toldHeat } from './told-fires.ts';

/** A logger on a shelf sees the walls: own choice, see docs/as-found.md. */
const RADIANT_SHARE = 0.3;
/** Weather before the first reading is run as it was, up to so many days. */
const DAYS_BEFORE = 28;

/** A column of a logger's file, and where it hung. */
export interface PlacedColumn {
  /** id of a zone of the model */
  readonly zone: string;
  readonly name: string;
  readonly file: HourGrid & Pick<LoggerFile, 'stepMin'>;
  readonly column: Pick<LoggerColumn, 'kind' | 'values'>;
}

export interface FilesOfDays {
  readonly design: Design;
  readonly weather: WeatherRecord;
  readonly period: HourGrid;
  readonly columns: readonly PlacedColumn[];
  readonly told: ToldDays;
  /** what was written down of openings and of heat */
  readonly diary?: readonly DiaryLine[];
}

export interface MadeRecord {
  readonly record: HouseRecord;
  readonly windows: Windows;
  /** what there is to say of it, a sentence each */
  readonly notes: readonly string[];
}

/** The model that a drawing means where these days were. */
export function modelOfDays(design: Design, { year }: WeatherRecord): Model {
  return modelOf(design, year.site, preparedOnce(year).ground);
}

/** All columns of a file that hung in one place. */
export function placedColumns(zone: string, fileName: string, file: LoggerFile): PlacedColumn[] {
  return file.columns.map((column) => ({
    zone,
    name: `${zone}, ${fileName} "${column.header}"`,
    file,
    column,
  }));
}

/** First moment of a record and the one after its last, as dates. */
export function daysOf({ startMs, hours, weather }: HouseRecord): {
  readonly from: string;
  readonly until: string;
} {
  const { utcOffsetH } = weather.year.site;
  return {
    from: dateOfMoment(startMs, utcOffsetH),
    until: dateOfMoment(startMs + hours * HOUR_MS, utcOffsetH),
  };
}

/** The record. */
export function recordOfFiles({
  design,
  weather,
  period,
  columns,
  told,
  diary = [],
}: FilesOfDays): MadeRecord {
  const all = columns.map(({ zone, name, file, column }): Target => {
    const { kind, values } = column;
    return {
      name,
      zone,
      kind,
      radiantShare: kind === 'temperature' ? RADIANT_SHARE : 0,
      stepH: file.stepMin / 60,
      measured: columnOver(values, file.startMs, period),
    };
  });
  const targets = all.filter(({ measured }) => !measured.every(Number.isNaN));
  const notes = all
    .filter((target) => !targets.includes(target))
    .map(({ name }) => `${name} has no reading in these days and is not used; check its year and clock.`);
  const model = modelOfDays(design, weather);
  const isInDays = ({ fromMs, untilMs }: DiaryLine) =>
    Math.max(untilMs, fromMs + 1) > period.startMs && fromMs < period.startMs + period.hours * HOUR_MS;
  const fires = diary.filter(({ amount }) => amount !== undefined);
  const openings = diary.filter(({ amount }) => amount === undefined);
  for (const [what, lines] of [
    ['the diary', openings],
    ['the heat written down', fires],
  ] as const) {
    const others = lines.filter((line) => !isInDays(line)).length;
    if (others > 0)
      notes.push(`Of ${what} ${others} of ${lines.length} lines are of other days and are not used.`);
  }
  const heat = toldHeat(
    design,
    model,
    fires.some(isInDays) ? fires : [],
    period,
    weather.year.site.utcOffsetH,
  );
  notes.push(...heat.notes);
  const { opened, strange } = openedStretches(design, model, openings.filter(isInDays));
  notes.push(...strange.map(notUsedWords));
  const whole = { ...told, opened };
  const record: HouseRecord = {
    design,
    weather,
    startMs: period.startMs,
    hours: period.hours,
    targets,
    series: [...toldSeries(model, whole, period), ...heat.series],
    warmUpDays: DAYS_BEFORE,
  };
  const before = hoursBefore(record);
  if (before < 24 * DAYS_BEFORE)
    notes.push(
      `The weather begins ${Math.floor(before / 24)} days before the readings; ${DAYS_BEFORE} are better, for the house remembers.`,
    );
  return { record, windows: windowsTold(whole, period), notes };
}
