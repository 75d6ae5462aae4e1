// The time of each row of a table of unknown origin: minutes since 1 January 00:00 of a year without leap day, from
// one column or several, in the usual ways of writing dates; or by counting rows where no column tells the time.

import { hourOfYear } from '../assembly/calendar-hour.ts';
import type { Fault } from '../read-result.ts';
import type { ColumnGuess } from './table-columns.ts';
import type { Role } from './table-roles.ts';
import { type TableText, tableNumber } from './table-text.ts';

export interface RowTimes {
  /** minute of the year at each row's stamp; NaN for rows of 29 February */
  readonly minutes: Float64Array;
  /** calendar year of each row, 0 where none is written */
  readonly years: Int32Array;
  /** the commonest step between rows [min] */
  readonly stepMin: number;
  /** hours are counted 1 to 24 instead of 0 to 23 */
  readonly countsFromOne: boolean;
  /** stamps end in Z or +00:00, or the header says UTC */
  readonly saysUtc: boolean;
  /** no column tells the time; rows were counted from 1 January */
  readonly counted: boolean;
}

interface Stamp {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Steps that are averaged into hours [min]. */
const STEPS: readonly number[] = [10, 15, 20, 30, 60];

/** Read the stamps of all rows, or say at which line they stop making sense. */
export function rowTimes(
  table: TableText,
  columns: readonly ColumnGuess[],
): RowTimes | { readonly faults: readonly Fault[] } {
  const at = new Map<Role, number>();
  for (const { role, index } of columns) if (role !== null) at.set(role, index);
  const header = (role: Role) => table.header[at.get(role) ?? -1] ?? '';
  const read = stampReader(table, at);
  if (read === null) return countedTimes(table);
  const minutes = new Float64Array(table.rows.length);
  const years = new Int32Array(table.rows.length);
  const stamps = table.rows.map(read);
  const bad = stamps.indexOf(null);
  const column = header('time') || header('date') || header('month') || 'time';
  if (bad >= 0) {
    const cells = ['time', 'date', 'clock', 'month', 'day', 'hour'] as const;
    const value = cells.map((role) => table.rows[bad]![at.get(role) ?? -1] ?? '').join(' ');
    return fault(table.lines[bad]!, column, value, 'a date and an hour, as in 2021-03-14 05:00');
  }
  const countsFromOne =
    stamps.some((stamp) => stamp!.hour === 24) && !stamps.some((stamp) => stamp!.hour === 0);
  for (const [row, stamp] of stamps.entries()) {
    const minute = minuteOfYear(stamp!, countsFromOne);
    if (minute === null) {
      const { month, day, hour } = stamp!;
      return fault(
        table.lines[row]!,
        column,
        `month ${month}, day ${day}, hour ${hour}`,
        'a real date and an hour',
      );
    }
    minutes[row] = minute;
    years[row] = stamp!.year;
  }
  const stepMin = commonStep(minutes);
  if (!STEPS.includes(stepMin)) {
    return fault(
      table.lines[1] ?? null,
      column,
      `rows ${stepMin} minutes apart`,
      'rows 60, 30, 20, 15 or 10 minutes apart',
    );
  }
  const first = table.rows[0]![at.get('time') ?? at.get('clock') ?? -1] ?? '';
  const saysUtc =
    /(Z|[+-]00:?00)$/.test(first.trim()) ||
    /utc|gmt/i.test(header('time') + header('clock') + header('hour'));
  return { minutes, years, stepMin, countsFromOne, saysUtc, counted: false };
}

/** What the clock on the wall showed at each row, as if it were UTC; and what the stamps say of the zone. */
export interface WallClocks {
  /** [ms since 1970 by the clock as written] */
  readonly wallMs: Float64Array;
  /** minutes the clock is ahead of UTC where the stamps or their header say so; null where they do not */
  readonly aheadMin: number | null;
}

/** Read the dated stamps of all rows, whatever their year and step; a row without a date is a fault with its line. */
export function wallClocks(
  table: TableText,
  columns: readonly ColumnGuess[],
): WallClocks | { readonly faults: readonly Fault[] } {
  const at = new Map<Role, number>();
  for (const { role, index } of columns) if (role !== null) at.set(role, index);
  const timeAt = at.get('time') ?? at.get('date') ?? at.get('clock') ?? -1;
  const column = table.header[timeAt] ?? 'time';
  const epoch = timeAt >= 0 && table.rows.every((row) => EPOCH.test(row[timeAt]?.trim() ?? ''));
  if (epoch) {
    const wallMs = Float64Array.from(table.rows, (row) => {
      const count = Number(row[timeAt]);
      return count > 1e11 ? count : 1000 * count;
    });
    return { wallMs, aheadMin: 0 };
  }
  const read = stampReader(table, at);
  if (read === null)
    return fault(table.headerLine, 'time', table.header.join(', '), 'a column of dates and times');
  const wallMs = new Float64Array(table.rows.length);
  for (const [row, cells] of table.rows.entries()) {
    const stamp = read(cells);
    const ms = stamp === null ? Number.NaN : wallOf(stamp);
    if (Number.isNaN(ms)) {
      const value = [timeAt, at.get('clock') ?? -1]
        .map((index) => cells[index] ?? '')
        .join(' ')
        .trim();
      return fault(
        table.lines[row]!,
        column,
        value,
        'a date with its year and a time, as in 2021-03-14 05:00',
      );
    }
    wallMs[row] = ms;
  }
  const said = zoneSaid(`${table.rows[0]?.[timeAt] ?? ''}`) ?? zoneSaid(column);
  return { wallMs, aheadMin: said };
}

/** Seconds or milliseconds since 1970, of the years 2001 to 2030: no compact date begins so. */
const EPOCH = /^1[0-8]\d{8}(\d{3})?$/;

function wallOf({ year, month, day, hour, minute }: Stamp): number {
  const ms = Date.UTC(year, month - 1, day, hour, minute);
  const isDate = new Date(Date.UTC(year, month - 1, day)).getUTCDate() === day && month >= 1 && month <= 12;
  return isDate && year >= 1900 && year <= 2100 && hour <= 24 && minute < 60 ? ms : Number.NaN;
}

/** Minutes ahead of UTC that a stamp or a header ends in: Z, +02:00, UTC, GMT-05:00; null for none. */
function zoneSaid(text: string): number | null {
  const bare = text.trim().replace(/\)$/, '');
  const named = /(?:UTC|GMT)\s*([+\-−])\s*(\d{1,2})(?::?(\d{2}))?$/i.exec(bare);
  const offset = named ?? /\d:\d{2}(?::\d{2}(?:\.\d+)?)?\s*([+\-−])(\d{2})(?::?(\d{2}))?$/.exec(bare);
  if (offset !== null) {
    const minutes = 60 * Number(offset[2]) + Number(offset[3] ?? 0);
    return offset[1] === '+' ? minutes : -minutes;
  }
  return /\dZ$|\b(UTC|GMT)$/i.test(bare) ? 0 : null;
}

function fault(line: number | null, column: string, value: string, expected: string) {
  return { faults: [{ line, column, value, expected }] };
}

/** Tables without a clock: exactly a year of rows, leap year or not. */
function countedTimes(table: TableText): RowTimes | { readonly faults: readonly Fault[] } {
  const count = table.rows.length;
  const stepMin = STEPS.find((step) => count === (365 * 1440) / step || count === (366 * 1440) / step);
  if (stepMin === undefined) {
    const expected = 'columns that tell the time, or exactly 8760 rows from 1 January on';
    return fault(table.headerLine, 'time', `${count} rows without a time`, expected);
  }
  const leap = count * stepMin > 365 * 1440;
  const minutes = Float64Array.from({ length: count }, (_, row) => {
    const minute = row * stepMin;
    if (!leap || minute < 59 * 1440) return minute;
    return minute < 60 * 1440 ? Number.NaN : minute - 1440;
  });
  return {
    minutes,
    years: new Int32Array(count),
    stepMin,
    countsFromOne: false,
    saysUtc: false,
    counted: true,
  };
}

/** Minute of the year; NaN on 29 February; null when there is no such moment. 24:00 is the next midnight. */
function minuteOfYear(stamp: Stamp, countsFromOne: boolean): number | null {
  const { month, day, hour, minute } = stamp;
  if (!(minute >= 0 && minute < 60) || hour > 24 || hour < 0) return null;
  const start = hourOfYear(month, day, 0);
  if (start === null) return null;
  if (start === 'leap day') return Number.NaN;
  return start * 60 + (countsFromOne ? hour - 1 : hour) * 60 + minute;
}

function commonStep(minutes: Float64Array): number {
  const counts = new Map<number, number>();
  for (let row = 1; row < minutes.length; row++) {
    const step = minutes[row]! - minutes[row - 1]!;
    if (step > 0) counts.set(step, (counts.get(step) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
}

function stampReader(
  table: TableText,
  at: ReadonlyMap<Role, number>,
): ((row: readonly string[]) => Stamp | null) | null {
  const cell = (row: readonly string[], role: Role) => row[at.get(role) ?? -1]?.trim() ?? '';
  const number = (row: readonly string[], role: Role) => tableNumber(cell(row, role), table.decimalComma);
  if (at.has('month') && at.has('day') && at.has('hour')) {
    return (row) => {
      const clock = cell(row, 'hour');
      const time = clock.includes(':')
        ? clockOf(clock)
        : wholeHour(number(row, 'hour'), at.has('minute') ? number(row, 'minute') : 0);
      const [month, day] = [number(row, 'month'), number(row, 'day')];
      const year = at.has('year') ? number(row, 'year') : 0;
      return time === null || Number.isNaN(month + day + year) ? null : { year, month, day, ...time };
    };
  }
  const text = (row: readonly string[]) => {
    if (at.has('time'))
      return at.has('date') ? `${cell(row, 'date')} ${cell(row, 'time')}` : cell(row, 'time');
    return `${cell(row, 'date')} ${at.has('clock') ? cell(row, 'clock') : at.has('hour') ? cell(row, 'hour') : ''}`;
  };
  if (!at.has('time') && !at.has('date')) return null;
  const dayFirst = isDayFirst(table.rows.map(text));
  return (row) => stampOf(text(row).trim(), dayFirst);
}

function wholeHour(hour: number, minute: number): { hour: number; minute: number } | null {
  return Number.isInteger(hour) && Number.isInteger(minute) ? { hour, minute } : null;
}

/** "5:30", "17:30:00", "5:30 PM", "5", "0530". */
function clockOf(text: string): { hour: number; minute: number } | null {
  const match =
    /^(\d{1,2})(?::?(\d{2}))?(?::\d{2}(?:\.\d+)?)?\s*(am|pm)?\s*(?:Z|UTC|GMT|[+-]\d{2}:?\d{2})?$/i.exec(
      text.trim(),
    );
  if (match === null) return null;
  const half = match[3]?.toLowerCase();
  const written = Number(match[1]);
  const hour = half === undefined ? written : (written % 12) + (half === 'pm' ? 12 : 0);
  return { hour, minute: Number(match[2] ?? 0) };
}

/** A date with its time: year first, or day and month in the order found for the whole table, or compact digits. */
function stampOf(written: string, dayFirst: boolean): Stamp | null {
  const text = inNumbers(written);
  const compact = /^(\d{4})(\d{2})(\d{2})[T: ]?(\d{2})?:?(\d{2})?(?:\d{2})?Z?$/.exec(text);
  if (compact !== null) {
    const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = compact
      .slice(1)
      .map((part) => Number(part ?? 0));
    return { year, month, day, hour, minute };
  }
  const match = /^(\d{1,4})[-/. ](\d{1,2})(?:[-/. ](\d{1,4}))?\.?(?:[T ,]+(.+))?$/.exec(text);
  if (match === null) return null;
  const [a, b, c] = [Number(match[1]), Number(match[2]), Number(match[3] ?? 0)];
  const time = match[4] === undefined ? { hour: 0, minute: 0 } : clockOf(match[4]);
  if (time === null) return null;
  if (match[1]!.length === 4) return { year: a, month: b, day: c, ...time };
  const year = c > 0 && c < 100 ? (c < 70 ? 2000 : 1900) + c : c;
  return dayFirst ? { year, month: b, day: a, ...time } : { year, month: a, day: b, ...time };
}

const MONTHS = /^(jan|feb|m[aä]r|mrz|apr|ma[yi]|jun|jul|aug|sep|o[ck]t|nov|de[cz])/i;
const MONTH_INITIALS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** A date with its month in letters, as 14-Mar-2021 or Mar 14, 2021, year first and in numbers; any other text as it is. */
function inNumbers(text: string): string {
  const dayFirst = /^(\d{1,2})[-. ]\s?([A-Za-zä]{3,9})\.?[-. ,]+(\d{4})(.*)$/.exec(text);
  const monthFirst = dayFirst ?? /^([A-Za-zä]{3,9})\.?[ -](\d{1,2}),?[ -](\d{4})(.*)$/.exec(text);
  if (monthFirst === null) return text;
  const [, a, b, year, rest] = monthFirst as unknown as [string, string, string, string, string];
  const [day, name] = dayFirst === null ? [b, a] : [a, b];
  const initials = MONTHS.exec(name)?.[1]?.toLowerCase().replace('ä', 'a').replace('mrz', 'mar');
  if (initials === undefined) return text;
  const month =
    1 + MONTH_INITIALS.indexOf(initials.replace('mai', 'may').replace('okt', 'oct').replace('dez', 'dec'));
  return `${year}-${String(month).padStart(2, '0')}-${day.padStart(2, '0')}${rest.replace(/^,\s*/, ' ')}`;
}

/** Day before month when some first number is above 12, or when points separate them as in 14.03.2021. */
function isDayFirst(stamps: readonly string[]): boolean {
  let first = 0;
  let second = 0;
  for (const stamp of stamps) {
    const match = /^(\d{1,2})[-/. ](\d{1,2})\b/.exec(stamp.trim());
    if (match === null) return false;
    first = Math.max(first, Number(match[1]));
    second = Math.max(second, Number(match[2]));
  }
  if (first > 12) return true;
  return second <= 12 && /^\d{1,2}\./.test(stamps[0] ?? '');
}
