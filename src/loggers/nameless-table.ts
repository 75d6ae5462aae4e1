// A logger's table that begins with its first reading and has no line of names. Its columns are named where they can be told
// beyond doubt: one or two that are dates and times, a running number at most, and one or two numbers whose units stand in the
// cells, or which no room's air could have the other way round. Else what is missing is said; nothing throws.

import Papa from 'papaparse';
import { withoutByteOrderMark } from '../weather/text/byte-order-mark.ts';
import { numberOf } from '../weather/text/text-lines.ts';

export type NamelessTable =
  /** the text with a line of names before it, which is no line of the file */
  | { readonly ok: true; readonly text: string; readonly note: string }
  | { readonly ok: false; readonly found: string; readonly expected: string };

const SEPARATORS = [';', '\t', '|', ','] as const;
/** Lines looked at. */
const SAMPLE = 500;
/** Of them so many must be alike. */
const ALIKE = 0.98;
const LEAST_ROWS = 3;
const DATE = String.raw`(\d{4}[-/.]\d{1,2}[-/.]\d{1,2}|\d{1,2}[-/.]\d{1,2}[-/.]\d{2,4}|\d{1,2}[-. ][A-Za-z]{3}[-. ]\d{4})`;
const CLOCK = String.raw`(\d{1,2}:\d{2}(:\d{2}(\.\d+)?)?(\s*[AaPp][Mm])?(Z|\s*[+-]\d{2}:?\d{2})?)`;
const KINDS = {
  time: new RegExp(`^(${DATE}[T ,]+${CLOCK}|1[0-8]\\d{8}(\\d{3})?)$`),
  date: new RegExp(`^${DATE}$`),
  clock: new RegExp(`^${CLOCK}$`),
} as const;
const CELSIUS = /\d\s*°?\s*C$/;
const FAHRENHEIT = /\d\s*°?\s*F$/;
const PERCENT = /\d\s*%(\s*r\.?[hf]\.?)?$/i;
/** No room's air stays above this for half its readings, and a room's humidity stays above it where people live [°C, %]. */
const BETWEEN = 35;
const NAMES = 'a line of names above the first row, as “time,temperature [°C],humidity [%]”';

type Name = 'time' | 'date' | 'clock' | 'no.' | 'temperature [°C]' | 'temperature [°F]' | 'humidity [%]';

/** Name the columns; null for a text that is no table of readings at all. */
export function namelessTable(text: string): NamelessTable | null {
  const plain = withoutByteOrderMark(text);
  for (const separator of SEPARATORS) {
    const rows = Papa.parse<string[]>(plain, {
      delimiter: separator,
      preview: SAMPLE,
      skipEmptyLines: 'greedy',
    })
      .data.map((row) => row.map((cell) => cell.trim()))
      // A row may end in a separator.
      .map((row) => (row.at(-1) === '' ? row.slice(0, -1) : row));
    const width = rows[0]?.length ?? 0;
    const alike = rows.filter((row) => row.length === width);
    if (width < 2 || alike.length < Math.max(LEAST_ROWS, ALIKE * rows.length)) continue;
    const columns = Array.from({ length: width }, (_, i) => alike.map((row) => row[i]!));
    const times = columns.map(timeOf);
    if (times.every((one) => one === null)) continue;
    const refuse = (expected: string): NamelessTable => ({
      ok: false,
      found: rows[0]!.join(separator === '\t' ? '  ' : `${separator} `),
      expected: `${NAMES}: ${expected}`,
    });
    const found = times
      .filter((one) => one !== null)
      .sort()
      .join(' and ');
    if (found !== 'time' && found !== 'clock and date')
      return refuse(`without one, a date with its year and a time of day is needed in each row, once`);
    const names: (Name | null)[] = times.map((one, i) => one ?? (isCount(columns[i]!) ? 'no.' : null));
    const open = [...names.keys()].filter((i) => names[i] === null);
    const told = readingsOf(
      open.map((i) => columns[i]!),
      open.map((i) => i + 1),
      separator,
    );
    if (typeof told === 'string') return refuse(told);
    open.forEach((i, k) => {
      names[i] = told[k]!;
    });
    const said = open.map((i) => `column ${i + 1} as ${words(names[i]!)}`).join(' and ');
    return {
      ok: true,
      text: `${names.join(separator)}\n${plain}`,
      note: `The file has no line of names; columns were taken for what their numbers look like: ${said}. If that is wrong, write such a line above the first row.`,
    };
  }
  return null;
}

function timeOf(cells: readonly string[]): 'time' | 'date' | 'clock' | null {
  for (const kind of ['time', 'date', 'clock'] as const)
    if (cells.filter((cell) => KINDS[kind].test(cell)).length >= ALIKE * cells.length) return kind;
  return null;
}

/** Whole numbers that go up by one. */
function isCount(cells: readonly string[]): boolean {
  return cells.every(
    (cell, i) => /^\d+$/.test(cell) && (i === 0 || Number(cell) === Number(cells[i - 1]) + 1),
  );
}

/** What one or two columns of readings are; or in words why that cannot be told. */
function readingsOf(
  columns: readonly (readonly string[])[],
  at: readonly number[],
  separator: string,
): Name[] | string {
  if (columns.length === 0 || columns.length > 2)
    return `without one, one or two columns of numbers can be told, and here are ${columns.length}`;
  if (
    separator === ',' &&
    columns.length === 2 &&
    columns.every((cells) => cells.every((cell) => /^-?\d*$/.test(cell)))
  )
    return `whether the commas of columns ${at.join(' and ')} part two readings or are decimal commas cannot be told`;
  const names: (Name | null)[] = [];
  for (const [i, cells] of columns.entries()) {
    const most = (pattern: RegExp) =>
      cells.filter((cell) => pattern.test(cell)).length >= ALIKE * cells.length;
    const said = most(CELSIUS)
      ? 'temperature [°C]'
      : most(FAHRENHEIT)
        ? 'temperature [°F]'
        : most(PERCENT)
          ? 'humidity [%]'
          : null;
    const numbers = cells
      .map((cell) => numberOf(cell.replace(/\s*(°?\s*[CF]|%.*)$/i, '').replace(',', '.')))
      .filter((value) => !Number.isNaN(value))
      .sort((a, b) => a - b);
    if (numbers.length < (1 - 2 * (1 - ALIKE)) * cells.length)
      return `what is in column ${at[i]} is no number`;
    const [low, middle, high] = [numbers[0]!, numbers[numbers.length >> 1]!, numbers.at(-1)!];
    if (said !== null) names.push(said);
    else if (low >= -40 && high <= 60 && middle < BETWEEN) names.push('temperature [°C]');
    else if (i === 1 && low >= 0 && high <= 100) names.push('humidity [%]');
    else if (low >= 0 && high <= 120)
      return `whether column ${at[i]}, ${low} to ${high}, is °F or % cannot be told`;
    else return `column ${at[i]}, ${low} to ${high}, is neither a room’s temperature nor its humidity`;
  }
  if (names.length === 2 && names[0] === names[1] && !columns.flat().every((cell) => /[CF%]$/i.test(cell)))
    return `whether columns ${at.join(' and ')} are two temperatures, or one of them is humidity, cannot be told`;
  return names as Name[];
}

const words = (name: Name) => name.replace(' [', ' in ').replace(']', '');
