// What the flags of `as-found` bring, as one record: files read, clocks and places settled, the days that they share.

import { basename } from 'node:path';
import { type LoggerFile, readLogger, readRealWeather, recordOf, type WeatherRecord } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { Diary } from '../loggers/diary-file.ts';
import { OUTDOORS, withOutdoorLogger } from '../matching/outdoor-logger.ts';
import { type MadeRecord, modelOfDays, placedColumns, recordOfFiles } from '../matching/record-of-files.ts';
import { datesOf, LEAST_DAYS, sharedDays } from '../matching/shared-days.ts';
import type { Stretch } from '../matching/told-days.ts';
import { DAY_MS, momentOfDate } from '../weather/moments.ts';
import { describeFault } from '../weather/read-result.ts';
import type { HourGrid } from '../weather/real/hourly-means.ts';
import type { RowClock } from '../weather/real/row-clock.ts';
import type { ParsedArguments } from './arguments.ts';
import { textIn } from './files.ts';
import { climateById } from './site-weather.ts';

const CLOCKS = ['standard', 'summer', 'utc'] as const;

/** Everything the flags bring, as one record. */
export async function recordFrom(
  args: ParsedArguments,
  design: Design,
): Promise<MadeRecord | { readonly faults: readonly string[] }> {
  const weatherPath = args.values.get('weather');
  const loggers = args.lists.get('logger') ?? [];
  if (weatherPath === undefined) return { faults: ['as-found: no --weather; allowed: --weather FILE'] };
  if (loggers.length === 0) return { faults: ['as-found: no --logger; allowed: --logger house=FILE'] };
  const typical = await climateById(args.values.get('climate') ?? design.climate, 'climate of the design');
  if (!typical.ok) return { faults: typical.faults };
  const weatherFile = await textIn(weatherPath, 'a table of dated weather');
  if (!weatherFile.ok) return weatherFile;
  const clock = clockFrom(args, 'clock');
  const loggerClock = clockFrom(args, 'logger-clock');
  const plane = planeFrom(args);
  for (const fault of [clock, loggerClock, plane])
    if (typeof fault === 'object' && fault !== null && 'fault' in fault) return { faults: [fault.fault] };
  const weather = await readRealWeather(
    weatherFile.text,
    typical.year.site,
    { fileName: basename(weatherPath) },
    {
      clock: clock as RowClock,
      ...(plane !== null && { plane: plane as Exclude<typeof plane, { fault: string } | null> }),
    },
  );
  if (!weather.ok)
    return { faults: weather.faults.map((fault) => `${weatherPath}: ${describeFault(fault)}`) };
  const { site } = weather.real;
  const { utcOffsetH } = site;
  const notes = weather.notes.map((note) => `Weather: ${note}`);
  const files: { place: string; path: string; file: LoggerFile }[] = [];
  for (const text of loggers) {
    const [place, path] = [text.slice(0, text.indexOf('=')), text.slice(text.indexOf('=') + 1)];
    if (!text.includes('=')) return { faults: [`--logger: ${text}; allowed: PLACE=FILE`] };
    const content = await textIn(path, 'a logger’s file');
    if (!content.ok) return content;
    const logger = await readLogger(content.text, { utcOffsetH, clock: loggerClock as RowClock });
    if (!logger.ok) return { faults: logger.faults.map((fault) => `${path}: ${fault}`) };
    notes.push(...logger.file.notes.map((note) => `${basename(path)}: ${note}`));
    files.push({ place, path, file: logger.file });
  }
  const columns = files.flatMap(({ place, path, file }) => placedColumns(place, basename(path), file));
  const outdoors = columns.filter(({ zone }) => zone === OUTDOORS);
  const indoors = columns.filter(({ zone }) => zone !== OUTDOORS);
  const record = recordOf(withOutdoorLogger(weather.real, outdoors, site)!, typical.year);
  const places = modelOfDays(design, record).zones.map(({ id }) => id);
  const stray = indoors.find(({ zone }) => !places.some((one) => one === zone));
  if (stray !== undefined)
    return {
      faults: [
        `--logger: ${stray.zone}=…; allowed: PLACE=FILE, PLACE one of ${[...places, OUTDOORS].join(', ')}`,
      ],
    };
  if (indoors.length === 0)
    return { faults: [`--logger: ${OUTDOORS} only; allowed: one of ${places.join(', ')} beside it`] };
  const period = periodFrom(
    args,
    record,
    indoors.map(({ file }) => file),
  );
  if ('fault' in period) return { faults: [period.fault] };
  const shut = stretchesFrom(args, 'shut', utcOffsetH);
  if ('fault' in shut) return { faults: [shut.fault] };
  const away = stretchesFrom(args, 'away', utcOffsetH);
  if ('fault' in away) return { faults: [away.fault] };
  const written: Diary[] = [];
  for (const flag of ['diary', 'heat'] as const) {
    const diary = await diaryFrom(args, flag, utcOffsetH, loggerClock as RowClock);
    if ('faults' in diary) return diary;
    written.push(diary);
  }
  notes.push(...written.flatMap((diary) => diary.notes));
  const made = recordOfFiles({
    design,
    weather: record,
    period,
    columns: indoors,
    told: { shut, away },
    diary: written.flatMap(({ lines }) => lines),
  });
  return { ...made, notes: [...notes, ...made.notes] };
}

/** What was written down of openings and fires, or metered of heat, by the loggers' clock. */
async function diaryFrom(
  { values }: ParsedArguments,
  flag: 'diary' | 'heat',
  utcOffsetH: number,
  clock: RowClock,
): Promise<Diary | { readonly faults: readonly string[] }> {
  const path = values.get(flag);
  if (path === undefined) return { lines: [], notes: [] };
  const content = await textIn(path, flag === 'diary' ? 'a diary' : 'a table of heat');
  if (!content.ok) return content;
  // It brings a library for tables that nobody else needs.
  const readWritten =
    flag === 'diary'
      ? (await import('../loggers/diary-file.ts')).readDiary
      : (await import('../loggers/heat-file.ts')).readHeat;
  const read = readWritten(content.text, { utcOffsetH, clock });
  if (!read.ok) return { faults: read.faults.map((fault) => `${path}: ${fault}`) };
  return { ...read.diary, notes: read.diary.notes.map((note) => `${basename(path)}: ${note}`) };
}

function clockFrom(
  { values }: ParsedArguments,
  flag: 'clock' | 'logger-clock',
): RowClock | { fault: string } {
  const text = values.get(flag);
  if (text === undefined) return 'auto';
  const known = CLOCKS.find((one) => one === text);
  if (known !== undefined) return known;
  try {
    new Intl.DateTimeFormat('en', { timeZone: text });
    return { zone: text };
  } catch {
    return { fault: `--${flag}: ${text}; allowed: ${CLOCKS.join(', ')}, or a zone as Europe/Rome` };
  }
}

function planeFrom({ values }: ParsedArguments) {
  const text = values.get('plane');
  if (text === undefined) return null;
  const parts = text.split(',');
  const [tiltDeg, azimuthDeg] = parts.slice(-2).map(Number) as [number, number];
  const header = parts.slice(0, -2).join(',').trim();
  const isSound = header !== '' && tiltDeg >= 0 && tiltDeg <= 180 && azimuthDeg >= 0 && azimuthDeg <= 360;
  return isSound
    ? { header, tiltDeg, azimuthDeg }
    : { fault: `--plane: ${text}; allowed: HEADER,TILT,AZIMUTH with 0 to 180° and 0 to 360°` };
}

/** Days that weather and loggers share, or of them those asked for. */
function periodFrom(
  { values }: ParsedArguments,
  record: WeatherRecord,
  files: readonly HourGrid[],
): HourGrid | { fault: string } {
  const { utcOffsetH } = record.year.site;
  const within: { fromMs?: number; untilMs?: number } = {};
  for (const flag of ['from', 'until'] as const) {
    const text = values.get(flag);
    if (text === undefined) continue;
    const ms = momentOfDate(text, utcOffsetH);
    if (Number.isNaN(ms)) return { fault: `--${flag}: ${text}; allowed: a date as 2021-03-14` };
    if (flag === 'from') within.fromMs = ms;
    else within.untilMs = text.includes(':') ? ms : ms + DAY_MS;
  }
  const shared = sharedDays(record, utcOffsetH, files, within);
  if (shared.days >= LEAST_DAYS) return shared;
  const dates = (grid: HourGrid) => datesOf(grid, utcOffsetH);
  return {
    fault: `the days shared are ${shared.days}: weather ${dates(record)}, readings ${files.map(dates).join('; ')}; allowed: at least ${LEAST_DAYS} whole days`,
  };
}

/** Stretches that a repeated flag names. */
function stretchesFrom(
  { lists }: ParsedArguments,
  flag: 'shut' | 'away',
  utcOffsetH: number,
): readonly Stretch[] | { fault: string } {
  const stretches: Stretch[] = [];
  for (const text of lists.get(flag) ?? []) {
    const [from, until] = text.split('..').map((part) => momentOfDate(part, utcOffsetH));
    if (!(from! <= until!))
      return { fault: `--${flag}: ${text}; allowed: DATE..DATE, as 2021-01-10..2021-01-24` };
    const isDay = !text.split('..')[1]!.includes(':');
    stretches.push({ fromMs: from!, untilMs: until! + (isDay ? DAY_MS : 0) });
  }
  return stretches;
}
