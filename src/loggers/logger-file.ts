// A file that loggers write, in any form that is a table with a line of names: time, and one or more columns of temperature
// or humidity; one logger a file or several side by side; 1 minute to 1 hour apart. Hourly means with their dates out, what
// is suspicious left out and named. A fault names line, column, value and what is allowed; nothing throws.

import { dateOfMoment, HOUR_MS } from '../weather/moments.ts';
import { describeFault } from '../weather/read-result.ts';
import { gridOver, type HourGrid, hourlyFromMoments } from '../weather/real/hourly-means.ts';
import { lostClock } from '../weather/real/lost-clock.ts';
import { MOST_DATED_ROWS } from '../weather/real/real-table.ts';
import { type RowClock, rowMoments } from '../weather/real/row-clock.ts';
import { guessColumns } from '../weather/table/table-columns.ts';
import type { Role } from '../weather/table/table-roles.ts';
import { type TableText, tableNumber, tableTextOf } from '../weather/table/table-text.ts';
import { wallClocks } from '../weather/table/table-time.ts';
import { namelessTable } from './nameless-table.ts';
import { suspicious } from './suspicious.ts';

export interface LoggerColumn {
  readonly header: string;
  readonly kind: 'temperature' | 'humidity';
  /** hourly means, °C or %; NaN where nothing was read or what was read was left out */
  readonly values: Float64Array;
  /** readings of the file, and of them left out */
  readonly readings: number;
  readonly leftOut: number;
}

export interface LoggerFile extends HourGrid {
  readonly columns: readonly LoggerColumn[];
  readonly stepMin: number;
  /** the clock was neither said nor told by the file */
  readonly clockIsGuess: boolean;
  readonly notes: readonly string[];
}

export type LoggerResult =
  | { readonly ok: true; readonly file: LoggerFile }
  /** one line a fault */
  | { readonly ok: false; readonly faults: readonly string[] };

export interface LoggerChoices {
  /** local standard time minus UTC at the house [h] */
  readonly utcOffsetH: number;
  readonly clock?: RowClock;
  /** columns by header: what they are, or null to leave one out */
  readonly kinds?: Readonly<Record<string, LoggerColumn['kind'] | null>>;
}

const TIME_ROLES: readonly Role[] = ['time', 'date', 'clock', 'year', 'month', 'day', 'hour', 'minute'];
const HUMIDITY = /hum|feucht|\brh\b|^rf\b|r\.?h\.?|%/i;
const TEMPERATURE = /temp|°|\bdeg|celsius|fahrenheit|^t\d*$|\bt\d+\b|^ch(annel)? ?\d+|probe|sensor/i;
const OTHER =
  /dew|taupunkt|batter|volt|\bno\.?$|^#|index|serial|\bid\b|dpt|heat ?index|vpd|absolut|co2|lux|press/i;
/** Above this a room's reading without a unit is in °F; no living room's mean is 45 °C. */
const FAHRENHEIT_ABOVE = 45;
const MISSING = /^(|#.*|na|n\/a|nan|null|none|-+|\?|err(or)?|----|logged|end of file)$/i;

/** Read a logger's file. */
export function readLogger(text: string, choices: LoggerChoices): LoggerResult {
  const named = tableTextOf(text, MOST_DATED_ROWS);
  const nameless = named === null ? namelessTable(text) : null;
  const whole = named ?? (nameless?.ok ? withoutFirst(tableTextOf(nameless.text, MOST_DATED_ROWS)) : null);
  const refuse = (line: number | null, column: string, value: string, expected: string): LoggerResult => ({
    ok: false,
    faults: [describeFault({ line, column, value, expected })],
  });
  if (nameless?.ok === false) return refuse(1, '', nameless.found, nameless.expected);
  if (whole === null)
    return refuse(
      1,
      '',
      text.trim().slice(0, 60),
      'a line of column names, and below it rows of times and numbers',
    );
  if (whole.tooLong)
    return refuse(null, '', `more than ${MOST_DATED_ROWS} rows`, 'at most that many; cut the file');
  const guesses = guessColumns(whole).filter(({ role }) => role !== null && TIME_ROLES.includes(role));
  const timeAt = new Set(guesses.map(({ index }) => index));
  const { table: dated, note: strayNote } = withoutStray(whole, timeAt);
  const written = wallClocks(dated, guesses);
  if ('faults' in written) return { ok: false, faults: written.faults.map(describeFault) };
  const lost = lostClock(written.wallMs, dated.lines);
  const table = lost === null ? dated : onlyRows(dated, lost.kept);
  const walls = {
    ...written,
    wallMs: lost === null ? written.wallMs : Float64Array.from(lost.kept, (row) => written.wallMs[row]!),
  };
  const { clock, order, ms, stepMs } = rowMoments(walls, choices.clock, choices.utcOffsetH);
  if (!(stepMs >= 1000 && stepMs <= HOUR_MS))
    return refuse(
      table.lines[1] ?? null,
      'time',
      `rows ${stepMs / 60_000} minutes apart`,
      'readings up to 60 minutes apart',
    );
  const kinds = table.header.map((header, index) => (timeAt.has(index) ? null : kindOf(header, choices)));
  if (kinds.every((kind) => kind === null))
    return refuse(
      table.headerLine,
      'temperature',
      table.header.join(', '),
      'a column of temperature or humidity',
    );
  const grid = gridOver(ms, choices.utcOffsetH);
  if (grid.hours > 3 * 8784)
    return refuse(
      ...widestStep(walls.wallMs, table.lines),
      'stamps within three years of each other; check the clock, or cut the file there',
    );
  const notes = [
    clock.note,
    ...[nameless?.ok ? nameless.note : null, strayNote, lost?.note ?? null].filter((note) => note !== null),
  ];
  const dateOf = (moment: number) => dateOfMoment(moment, choices.utcOffsetH);
  const columns = kinds.flatMap((kind, index): LoggerColumn[] => {
    if (kind === null) return [];
    const header = table.header[index]!;
    const read = numbersOf(table, index);
    const raw = Float64Array.from(order, (row) => read[row]!);
    if (raw.every(Number.isNaN)) {
      notes.push(`"${header}" has no number in any row; not used.`);
      return [];
    }
    const { values, unitNote } = inUnits(kind, header, raw, table, index);
    if (unitNote !== null) notes.push(unitNote);
    const found = suspicious(kind, ms, values, dateOf);
    notes.push(...found.notes.map((note) => `"${header}": ${note}`));
    const kept = values.map((value, row) => (found.masked[row] === 1 ? Number.NaN : value));
    return [
      {
        header,
        kind,
        values: hourlyFromMoments(ms, kept, stepMs, grid),
        readings: raw.filter((value) => !Number.isNaN(value)).length,
        leftOut: found.masked.reduce((sum, one) => sum + one, 0),
      },
    ];
  });
  if (columns.length === 0)
    return refuse(table.headerLine, 'temperature', table.header.join(', '), 'a column with numbers');
  const gaps = gapHours(ms, stepMs);
  if (gaps > 0) notes.push(`${gaps} hours in all lie in gaps between readings; they stay gaps.`);
  return {
    ok: true,
    file: { ...grid, columns, stepMin: stepMs / 60_000, clockIsGuess: clock.isGuess, notes },
  };
}

/** Of lines, so many may be no readings, and a few of any file: a low battery, a heading within, what a table program made #### of. */
const STRAY_SHARE = 0.01;
const STRAY_LINES = 5;
const HAS_TIME = /\d{1,4}[-/.: ]\d|\d{9}/;

/** Lines without a time or without any reading are let go and counted, if they are few. */
function withoutStray(
  table: TableText,
  timeAt: ReadonlySet<number>,
): { readonly table: TableText; readonly note: string | null } {
  const isReading = (row: readonly string[]) =>
    row.some((cell, i) => timeAt.has(i) && HAS_TIME.test(cell)) &&
    row.some((cell, i) => !timeAt.has(i) && /\d/.test(cell));
  const kept = [...table.rows.keys()].filter((i) => isReading(table.rows[i]!));
  const stray = table.rows.length - kept.length;
  if (stray === 0 || stray > Math.max(STRAY_LINES, STRAY_SHARE * table.rows.length) || kept.length === 0)
    return { table, note: null };
  // The first that is missing among those kept, which are in order.
  const gap = kept.findIndex((row, i) => row !== i);
  const first = gap < 0 ? kept.length : gap;
  const words = table.rows[first]!.join(', ').replace(/[^\p{L}\p{N}\p{P}\p{S} ]/gu, '');
  const where = `line ${table.lines[first]}, “${words.slice(0, 40)}”`;
  return {
    table: onlyRows(table, kept),
    note:
      stray === 1
        ? `One line has no time or no reading and is passed over: ${where}.`
        : `${stray} lines have no time or no reading and are passed over, the first of them ${where}.`,
  };
}

const onlyRows = (table: TableText, kept: readonly number[]): TableText => ({
  ...table,
  rows: kept.map((i) => table.rows[i]!),
  lines: kept.map((i) => table.lines[i]!),
});

/** A table whose first line is none of the file's. */
function withoutFirst(table: TableText | null): TableText | null {
  return table && { ...table, headerLine: 1, lines: table.lines.map((line) => line - 1) };
}

/** Where the clock jumps farthest between two rows of the file: line, column, and both stamps. */
function widestStep(wallMs: Float64Array, lines: readonly number[]): [number, string, string] {
  let at = 1;
  const step = (row: number) => Math.abs(wallMs[row]! - wallMs[row - 1]!);
  for (let row = 2; row < wallMs.length; row++) if (step(row) > step(at)) at = row;
  const stamp = (row: number) => new Date(wallMs[row]!).toISOString().slice(0, 16).replace('T', ' ');
  return [lines[at]!, 'time', `${stamp(at)} after ${stamp(at - 1)}`];
}

function kindOf(header: string, { kinds = {} }: LoggerChoices): LoggerColumn['kind'] | null {
  if (Object.hasOwn(kinds, header)) return kinds[header]!;
  if (OTHER.test(header)) return null;
  if (HUMIDITY.test(header)) return 'humidity';
  return TEMPERATURE.test(header) ? 'temperature' : null;
}

/** Numbers of a column, "21,5 °C" and "55%" too; NaN for anything else. */
function numbersOf(table: TableText, index: number): Float64Array {
  return Float64Array.from(table.rows, (row) => {
    const cell = (row[index] ?? '').trim();
    if (MISSING.test(cell)) return Number.NaN;
    const bare = cell.replace(/\s*(°\s*[CF]?|[CF]|%( ?r\.?[hf]\.?)?)$/i, '');
    return tableNumber(bare, table.decimalComma || /^-?\d+,\d+$/.test(bare));
  });
}

function inUnits(
  kind: LoggerColumn['kind'],
  header: string,
  raw: Float64Array,
  table: TableText,
  index: number,
): { values: Float64Array; unitNote: string | null } {
  const known = [...raw].filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  const top = known.at(-1)!;
  if (kind === 'humidity') {
    return top <= 1.05
      ? {
          values: raw.map((value) => 100 * value),
          unitNote: `"${header}" is a share; it was taken times 100 as %.`,
        }
      : { values: raw, unitNote: null };
  }
  const cell = table.rows[0]?.[index] ?? '';
  const says = (pattern: RegExp) => pattern.test(header) || pattern.test(cell);
  const isSaidF = says(/°\s*F|\bdeg\.? ?F\b|fahrenheit|[([_ ]F[)\]]?$/i);
  const isSaidC = says(/°\s*C|\bdeg\.? ?C\b|celsius|[([_ ]C[)\]]?$/i);
  const middle = known[known.length >> 1]!;
  const isF = isSaidF || (!isSaidC && middle > FAHRENHEIT_ABOVE);
  if (!isF) return { values: raw, unitNote: null };
  const how = isSaidF ? 'as it says' : `as half its readings are above ${FAHRENHEIT_ABOVE}`;
  return {
    values: raw.map((value) => ((value - 32) * 5) / 9),
    unitNote: `"${header}" is in °F, ${how}; turned into °C.`,
  };
}

function gapHours(ms: Float64Array, stepMs: number): number {
  let gap = 0;
  for (let row = 1; row < ms.length; row++) {
    const step = ms[row]! - ms[row - 1]!;
    if (step > Math.max(2.5 * stepMs, HOUR_MS)) gap += step - stepMs;
  }
  return Math.round(gap / HOUR_MS);
}
