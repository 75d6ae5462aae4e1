// `as-found DESIGN --weather FILE --logger PLACE=FILE …`: a drawing held against a logger's record of the house's days.
// What the house seems to be, how well that matches on days kept unseen, and what the record cannot tell; one JSON object
// with --json. That it does not match is a result too.

import { readFile, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename } from 'node:path';
import { createMatchPool } from '../../workers/match-pool.ts';
import type { KeptRuns } from '../../workers/run-service.ts';
import {
  type LoggerFile,
  type PeriodSeries,
  readLogger,
  readRealWeather,
  recordOf,
  type WeatherRecord,
} from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { HouseRecord, Target, Windows } from '../matching/house-record.ts';
import { keptDesign } from '../matching/kept-design.ts';
import { type Match, matchHouse } from '../matching/match.ts';
import { PROTOCOL } from '../matching/protocol.ts';
import { heatLossWords, heldWords, tieWords, unknownWords, verdictWords } from '../matching/words.ts';
import { modelOf } from '../model/from-design.ts';
import type { Model } from '../model/model.ts';
import { csvCell } from '../outcomes/csv-cell.ts';
import { VERSION } from '../outcomes/version.ts';
import { preparedOnce } from '../weather/prepared/prepared-climate.ts';
import { describeFault } from '../weather/read-result.ts';
import { dateOfMoment, HOUR_MS, momentOfDate } from '../weather/real/moments.ts';
import type { RowClock } from '../weather/real/row-clock.ts';
import { textOf } from '../weather/text/platform-streams.ts';
import type { ParsedArguments } from './arguments.ts';
import { type Command, type CommandResult, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { climateById } from './site-weather.ts';
import { textTable } from './text-table.ts';
import { startThread } from './threads.ts';

const CLOCKS = ['standard', 'summer', 'utc'] as const;
/** A logger on a shelf sees the walls: own choice, see docs/as-found.md. */
const RADIANT_SHARE = 0.3;
/** Weather before the first reading is run as it was, up to so many days. */
const DAYS_BEFORE = 28;

export const asFoundCommand: Command = {
  name: 'as-found',
  usage:
    'as-found DESIGN --weather FILE --logger PLACE=FILE [--climate ID] [--from DATE] [--until DATE] [--shut DATE..DATE] [--hourly OUT.csv] [--keep OUT.json] [--workers N] [--json]',
  line: 'what a house that stands seems to be, by a logger’s record of its days',
  valued: [
    'weather',
    'logger',
    'climate',
    'from',
    'until',
    'shut',
    'clock',
    'logger-clock',
    'plane',
    'hourly',
    'keep',
    'workers',
  ],
  repeated: ['logger', 'shut'],
  switches: ['json', 'protocol'],
  details: [
    '--weather FILE: a table of dated weather of those days, best with four weeks before them',
    '--logger PLACE=FILE: a logger’s file; PLACE is house, sunspace or a room; once for each',
    '--shut DATE..DATE: days on which windows, vents and doors stayed shut, first and last; the surest record',
    '--climate ID: the typical year for the time before and for what was not measured; that of the design unless said',
    '--clock, --logger-clock standard | summer | utc | ZONE (as Europe/Rome): which clock the tables go by',
    '--protocol: the page for the people of the house, what to hang where and what to write down; needs no design',
    '--keep OUT.json: the house as found as a design, with its intervals, for every other command and the page',
    '--plane HEADER,TILT,AZIMUTH: a column of the weather table that a sun meter on a plane wrote',
  ],
  positionals: [0, 1],
  run: async (args, console) => {
    if (args.switches.has('protocol')) return { ok: true, output: PROTOCOL.trimEnd() };
    const [place] = args.positionals;
    if (place === undefined)
      return refused('as-found: no DESIGN; allowed: a design file, or an example’s id');
    const read = await readDesign(place);
    if (!read.ok) return read;
    const { design } = read;
    const made = await recordFrom(args, design);
    if ('faults' in made) return { ok: false, faults: made.faults };
    const { record, windows, notes } = made;
    const workers = Number(args.values.get('workers') ?? availableParallelism());
    if (!Number.isInteger(workers) || workers < 1 || workers > 64)
      return refused(`--workers: ${args.values.get('workers')}; allowed: a whole number from 1 to 64`);
    const pool = createMatchPool(
      record,
      () => startThread<KeptRuns>(new URL('./simulation-thread.ts', import.meta.url)),
      workers,
    );
    let rounds = 0;
    try {
      const match = await matchHouse(record, pool, {
        windows,
        onRound: () => console.progress(++rounds, 24),
      });
      return await printed(args, design, record, match, notes);
    } catch (error) {
      if (error instanceof RangeError) return refused(`as-found: ${error.message}`);
      throw error;
    } finally {
      pool.close();
    }
  },
};

type Made =
  | { readonly record: HouseRecord; readonly windows: Windows; readonly notes: readonly string[] }
  | { readonly faults: readonly string[] };

/** Everything the flags bring, as one record. */
async function recordFrom(args: ParsedArguments, design: Design): Promise<Made> {
  const weatherPath = args.values.get('weather');
  const loggers = args.lists.get('logger') ?? [];
  if (weatherPath === undefined) return { faults: ['as-found: no --weather; allowed: --weather FILE'] };
  if (loggers.length === 0) return { faults: ['as-found: no --logger; allowed: --logger house=FILE'] };
  const typical = await climateById(args.values.get('climate') ?? design.climate, 'climate of the design');
  if (!typical.ok) return { faults: typical.faults };
  const weatherText = await textFrom(weatherPath);
  if (weatherText === null)
    return { faults: [`${weatherPath}: cannot be read; allowed: a table of dated weather`] };
  const clock = clockFrom(args, 'clock');
  const loggerClock = clockFrom(args, 'logger-clock');
  const plane = planeFrom(args);
  for (const fault of [clock, loggerClock, plane])
    if (typeof fault === 'object' && fault !== null && 'fault' in fault) return { faults: [fault.fault] };
  const weather = await readRealWeather(
    weatherText,
    typical.year.site,
    { fileName: basename(weatherPath) },
    {
      clock: clock as RowClock,
      ...(plane !== null && { plane: plane as Exclude<typeof plane, { fault: string } | null> }),
    },
  );
  if (!weather.ok)
    return { faults: weather.faults.map((fault) => `${weatherPath}: ${describeFault(fault)}`) };
  const record = recordOf(weather.real, typical.year);
  const { utcOffsetH } = record.year.site;
  const notes = weather.notes.map((note) => `Weather: ${note}`);
  const model = modelOf(design, record.year.site, preparedOnce(record.year).ground);
  const allowed = model.zones.map(({ id }) => id);
  const files: { place: string; path: string; file: LoggerFile }[] = [];
  for (const text of loggers) {
    const [place, path] = [text.slice(0, text.indexOf('=')), text.slice(text.indexOf('=') + 1)];
    if (!text.includes('=') || !allowed.some((one) => one === place))
      return { faults: [`--logger: ${text}; allowed: PLACE=FILE, PLACE one of ${allowed.join(', ')}`] };
    const content = await textFrom(path);
    if (content === null) return { faults: [`${path}: cannot be read; allowed: a logger’s file`] };
    const logger = await readLogger(content, { utcOffsetH, clock: loggerClock as RowClock });
    if (!logger.ok) return { faults: logger.faults.map((fault) => `${path}: ${fault}`) };
    notes.push(...logger.file.notes.map((note) => `${basename(path)}: ${note}`));
    files.push({ place, path, file: logger.file });
  }
  const period = periodFrom(
    args,
    record,
    files.map(({ file }) => file),
  );
  if ('fault' in period) return { faults: [period.fault] };
  const { startMs, hours } = period;
  const targets = files.flatMap(({ place, path, file }) =>
    file.columns.map(
      (column): Target => ({
        name: `${place}, ${basename(path)} "${column.header}"`,
        zone: place,
        kind: column.kind,
        radiantShare: column.kind === 'temperature' ? RADIANT_SHARE : 0,
        measured: onGrid(column.values, file.startMs, startMs, hours),
      }),
    ),
  );
  const shut = shutFrom(args, record, startMs, hours);
  if ('fault' in shut) return { faults: [shut.fault] };
  const first = Math.round((startMs - record.startMs) / HOUR_MS);
  if (first < 24 * DAYS_BEFORE)
    notes.push(
      `The weather begins ${Math.floor(first / 24)} days before the readings; ${DAYS_BEFORE} are better, for the house remembers.`,
    );
  return {
    windows: shut.covers ? 'shut' : 'guessed',
    notes,
    record: {
      design,
      weather: record,
      startMs,
      hours,
      targets,
      series: shutSeries(model, shut.stretches, startMs, hours),
      warmUpDays: DAYS_BEFORE,
    },
  };
}

async function textFrom(path: string): Promise<string | null> {
  try {
    return textOf(await readFile(path));
  } catch {
    return null;
  }
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
  files: readonly LoggerFile[],
): { startMs: number; hours: number } | { fault: string } {
  const { utcOffsetH } = record.year.site;
  const end = (one: { startMs: number; hours: number }) => one.startMs + one.hours * HOUR_MS;
  let from = Math.max(record.startMs, Math.min(...files.map(({ startMs }) => startMs)));
  let until = Math.min(end(record), Math.max(...files.map(end)));
  for (const flag of ['from', 'until'] as const) {
    const text = values.get(flag);
    if (text === undefined) continue;
    const ms = momentOfDate(text, utcOffsetH);
    if (Number.isNaN(ms)) return { fault: `--${flag}: ${text}; allowed: a date as 2021-03-14` };
    if (flag === 'from') from = Math.max(from, ms);
    else until = Math.min(until, text.includes(':') ? ms : ms + 24 * HOUR_MS);
  }
  const offset = utcOffsetH * HOUR_MS;
  const day = (ms: number, round: (value: number) => number) =>
    round((ms + offset) / (24 * HOUR_MS)) * 24 * HOUR_MS - offset;
  const startMs = day(from, Math.ceil);
  const hours = Math.floor((day(until, Math.floor) - startMs) / HOUR_MS);
  const dates = (one: { startMs: number; hours: number }) =>
    `${dateOfMoment(one.startMs, utcOffsetH)} to ${dateOfMoment(end(one), utcOffsetH)}`;
  if (hours >= 24 * 5) return { startMs, hours };
  return {
    fault: `the days shared are ${Math.max(0, Math.floor(hours / 24))}: weather ${dates(record)}, readings ${files.map(dates).join('; ')}; allowed: at least 5 whole days`,
  };
}

function onGrid(values: Float64Array, fromMs: number, startMs: number, hours: number): Float64Array {
  const shift = Math.round((startMs - fromMs) / HOUR_MS);
  return Float64Array.from({ length: hours }, (_, hour) => values[hour + shift] ?? Number.NaN);
}

interface Stretch {
  readonly fromMs: number;
  readonly untilMs: number;
}

function shutFrom(
  { lists }: ParsedArguments,
  record: WeatherRecord,
  startMs: number,
  hours: number,
): { stretches: readonly Stretch[]; covers: boolean } | { fault: string } {
  const stretches: Stretch[] = [];
  for (const text of lists.get('shut') ?? []) {
    const [from, until] = text.split('..').map((part) => momentOfDate(part, record.year.site.utcOffsetH));
    if (!(from! <= until!))
      return { fault: `--shut: ${text}; allowed: DATE..DATE, as 2021-01-10..2021-01-24` };
    const isDay = !text.split('..')[1]!.includes(':');
    stretches.push({ fromMs: from!, untilMs: until! + (isDay ? 24 * HOUR_MS : 0) });
  }
  const covers = Array.from({ length: hours }, (_, hour) => startMs + hour * HOUR_MS).every((ms) =>
    stretches.some(({ fromMs, untilMs }) => ms >= fromMs && ms < untilMs),
  );
  return { stretches, covers };
}

/** All that moves, shut in these stretches, and by its rule outside them. */
function shutSeries(
  { openings }: Model,
  stretches: readonly Stretch[],
  startMs: number,
  hours: number,
): PeriodSeries[] {
  if (stretches.length === 0) return [];
  const movable = openings.filter(
    (opening) => opening.kind === 'vent' || (opening.kind === 'door' && !opening.seeThrough),
  );
  const isShut = (ms: number) => stretches.some(({ fromMs, untilMs }) => ms >= fromMs && ms < untilMs);
  const edges = [
    ...new Set([startMs, ...stretches.flatMap(({ fromMs, untilMs }) => [fromMs, untilMs])]),
  ].filter((ms) => ms >= startMs && ms < startMs + hours * HOUR_MS);
  return movable.map(({ id }) => ({
    kind: 'opening',
    opening: id,
    events: edges.map((at) => ({ at, open: isShut(at) ? 0 : Number.NaN })),
  }));
}

async function printed(
  args: ParsedArguments,
  design: Design,
  record: HouseRecord,
  match: Match,
  notes: readonly string[],
): Promise<CommandResult> {
  const file = args.values.get('hourly');
  if (file !== undefined) {
    try {
      await writeFile(file, hourlyRows(record, match));
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      return refused(
        `--hourly: ${file} cannot be written (${code}); allowed: a file in a folder that exists`,
      );
    }
  }
  const keep = args.values.get('keep');
  if (keep !== undefined) {
    const { utcOffsetH: offset } = record.weather.year.site;
    const days = {
      from: dateOfMoment(record.startMs, offset),
      until: dateOfMoment(record.startMs + record.hours * HOUR_MS, offset),
    };
    if (match.verdict === 'no-better')
      return refused(`--keep: ${keep}; ${verdictWords(match)} Allowed: a record that corrects the drawing`);
    try {
      await writeFile(keep, `${JSON.stringify(keptDesign(design, match, days), null, 2)}\n`);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      return refused(`--keep: ${keep} cannot be written (${code}); allowed: a file in a folder that exists`);
    }
  }
  const { readings: _, ...figures } = match;
  const all = [...notes, ...match.notes];
  const { utcOffsetH } = record.weather.year.site;
  const period = {
    from: dateOfMoment(record.startMs, utcOffsetH),
    until: dateOfMoment(record.startMs + record.hours * HOUR_MS, utcOffsetH),
  };
  const words = {
    verdict: verdictWords(match),
    heatLoss: heatLossWords(match),
    unknowns: match.unknowns.map(unknownWords),
    held: match.held.map(heldWords),
    ties: match.ties.map(tieWords),
    patterns: match.patterns.map((pattern) => pattern.words),
  };
  if (args.switches.has('json'))
    return {
      ok: true,
      output: JSON.stringify({
        daystone: VERSION,
        design: design.name,
        period,
        ...figures,
        notes: all,
        words,
      }),
    };
  const section = (title: string, lines: readonly (string | null)[]) => {
    const said = lines.filter((line) => line !== null);
    return said.length === 0 ? [] : [title, ...said.map((line) => `  ${line}`), ''];
  };
  const table = textTable(
    [
      ['misfit of air', 'K'],
      ['days fitted', match.misfitK],
      ['days unseen, at the end', match.unseenMisfitK],
      ['days unseen, every fourth', match.otherUnseenMisfitK],
      ['as drawn, same days', match.drawnMisfitK],
      ['yesterday’s same hour', match.yesterdayMisfitK],
    ],
    2,
  );
  const lines = [
    `${design.name}, ${period.from} to ${period.until}`,
    '',
    words.verdict,
    '',
    ...section('What the house seems to be', [words.heatLoss, ...words.unknowns]),
    ...section('What the record could not tell', [...words.ties, ...words.held]),
    ...section('What is left', words.patterns),
    table,
    '',
    ...section('Notes', all),
  ];
  return { ok: true, output: lines.join('\n').trimEnd() };
}

/** Hours of the period: measured and computed, a pair of columns a logger. */
function hourlyRows({ startMs, hours, targets, weather }: HouseRecord, { readings }: Match): string {
  const head = ['time', ...targets.flatMap(({ name }) => [`${name} measured`, `${name} computed`])].map(
    csvCell,
  );
  const cell = (value: number) => (Number.isNaN(value) ? '' : value.toFixed(2));
  const rows = Array.from({ length: hours }, (_, hour) =>
    [
      dateOfMoment(startMs + hour * HOUR_MS, weather.year.site.utcOffsetH),
      ...targets.flatMap(({ measured }, t) => [cell(measured[hour]!), cell(readings[t]![hour]!)]),
    ].join(','),
  );
  return `${[head.join(','), ...rows].join('\n')}\n`;
}
