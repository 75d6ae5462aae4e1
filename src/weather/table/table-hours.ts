// Rows of a table into hours: values read in their unit, averaged over the rows of each hour, NaN where an hour has
// none. Codes for missing are holes; any other word is a fault with its line.

import { type Fault, MOST_FAULTS } from '../read-result.ts';
import { HOURS } from '../typical-year.ts';
import type { ColumnGuess } from './table-columns.ts';
import type { Role, Unit } from './table-roles.ts';
import { type TableText, tableNumber } from './table-text.ts';
import type { RowTimes } from './table-time.ts';

/** What files write where there is no value. */
const MISSING_WORD = /^(|na|n\/a|nan|null|none|nil|-+|m|missing|\?|\*+)$/i;
const MISSING_NUMBER = /^-(99|999|9999|99999|9900|8888)(\.0*|\.9+)?$/;

const YEAR_MIN = HOURS * 60;
/** Units of amounts in a row, not of rates. */
const AMOUNT = /h\/m²$|J\/(m²|cm²)$|^mm$|^in$/;

/** Numbers of one column, row by row, in our unit; NaN where missing. */
export function columnNumbers(
  table: TableText,
  column: ColumnGuess,
  stepMin: number,
  faults: Fault[],
): Float64Array {
  const scale = column.unit === null ? 1 : rowScale(column.unit, stepMin);
  const offset = column.unit?.offset ?? 0;
  return Float64Array.from(table.rows, (row, i) => {
    const cell = row[column.index]?.trim() ?? '';
    if (MISSING_WORD.test(cell) || MISSING_NUMBER.test(cell)) return Number.NaN;
    const value = tableNumber(cell, table.decimalComma);
    if (Number.isNaN(value) && faults.length < MOST_FAULTS) {
      faults.push({ line: table.lines[i]!, column: column.header, value: cell, expected: 'a number' });
    }
    return value * scale + offset;
  });
}

/** Energies belong to one row: half an hour's 100 Wh/m² are 200 W/m². */
function rowScale(unit: Unit, stepMin: number): number {
  return AMOUNT.test(unit.name) ? (unit.factor * 60) / stepMin : unit.factor;
}

/**
 * Mean of a column over each hour of the year.
 *
 * @param shiftMin added to every stamp: the step back of labels at the end, the hours from UTC to local time
 */
export function hourlyMeans(values: Float64Array, times: RowTimes, shiftMin: number): Float64Array {
  const sums = new Float64Array(HOURS);
  const counts = new Float64Array(HOURS);
  for (const [row, value] of values.entries()) {
    const hour = hourOfRow(times.minutes[row]!, shiftMin);
    if (Number.isNaN(hour) || Number.isNaN(value)) continue;
    sums[hour]! += value;
    counts[hour]! += 1;
  }
  return sums.map((sum, hour) => (counts[hour] === 0 ? Number.NaN : sum / counts[hour]!));
}

/** The reading of the last row of each hour, for what has no mean (directions). */
export function hourlyLast(values: Float64Array, times: RowTimes, shiftMin: number): Float64Array {
  const last = new Float64Array(HOURS).fill(Number.NaN);
  for (const [row, value] of values.entries()) {
    const hour = hourOfRow(times.minutes[row]!, shiftMin);
    if (!Number.isNaN(hour) && !Number.isNaN(value)) last[hour] = value;
  }
  return last;
}

/** Hour of the year a stamp falls in; NaN for rows without a place in the year. */
function hourOfRow(minute: number, shiftMin: number): number {
  return Math.floor(((((minute + shiftMin) % YEAR_MIN) + YEAR_MIN) % YEAR_MIN) / 60);
}

/** Line of the file for each hour; of hours without a row, the line before the hole. */
export function linesOfHours(table: TableText, times: RowTimes, shiftMin: number): Int32Array {
  const lines = new Int32Array(HOURS);
  for (const [row, minute] of times.minutes.entries()) {
    const hour = hourOfRow(minute, shiftMin);
    if (!Number.isNaN(hour)) lines[hour] = table.lines[row]!;
  }
  return lines;
}

/** Calendar year of each month: the first row's that has one, else a plain year. */
export function yearsOfMonths(times: RowTimes, monthOf: (hour: number) => number): number[] {
  const years = new Array<number>(12).fill(0);
  for (const [row, minute] of times.minutes.entries()) {
    if (!Number.isNaN(minute)) years[monthOf(hourOfRow(minute, 0))] ||= times.years[row]!;
  }
  const known = years.find((year) => year >= 1900 && year <= 2100) ?? 2021;
  return years.map((year) => (year >= 1900 && year <= 2100 ? year : known));
}

/** Two rows for one moment: a second year, or the hour that summer time repeats. */
export function doubledRow(table: TableText, times: RowTimes): Fault | null {
  const seen = new Map<number, number>();
  const doubled: number[] = [];
  for (const [row, minute] of times.minutes.entries()) {
    if (Number.isNaN(minute)) continue;
    if (seen.has(minute)) doubled.push(row);
    else seen.set(minute, row);
  }
  if (doubled.length === 0) return null;
  const line = table.lines[doubled[0]!]!;
  const perDay = 1440 / times.stepMin;
  const value = `${doubled.length} moments twice, the first also in line ${table.lines[seen.get(times.minutes[doubled[0]!]!)!]}`;
  const expected =
    doubled.length <= perDay / 12
      ? 'every hour once: standard time all year, without summer time'
      : 'one year of hours';
  return { line, column: 'time', value, expected };
}

/** Columns by role. */
export function byRole(columns: readonly ColumnGuess[]): ReadonlyMap<Role, ColumnGuess> {
  return new Map(columns.filter((column) => column.role !== null).map((column) => [column.role!, column]));
}
