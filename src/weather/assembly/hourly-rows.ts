// The walk through a file that has one row an hour in order: each row's stamp is checked against the hour it must be,
// so that a missing, doubled or misplaced row is named by its line. What a row holds is the caller's business.

import { type Fault, MOST_FAULTS } from '../read-result.ts';
import { HOURS, monthOfHour } from '../typical-year.ts';
import { dateOfHour } from './assembled-year.ts';

/** Calendar years the sun is computed for. */
const FIRST_YEAR = 1900;
const LAST_YEAR = 2100;

export interface RowStamp {
  /** hour of the year 0…8759, 'leap day' for rows to leave out, null when the stamp is none */
  readonly hour: number | 'leap day' | null;
  readonly year: number;
  /** as printed, for messages */
  readonly text: string;
}

export interface NumberedRow<Row> {
  /** line of the file, first is 1 */
  readonly line: number;
  readonly row: Row;
}

export interface WalkedRows {
  readonly lineOfHour: Int32Array;
  readonly monthYears: readonly number[];
  /** at most MOST_FAULTS; empty when all 8760 hours were there */
  readonly faults: readonly Fault[];
}

/** Report a cell of the row being read. */
export type MissCell = (column: string, value: string, expected?: string) => void;

/**
 * Walk rows that must be the 8760 hours of a year in order.
 *
 * @param stampColumn name of the stamp's column for messages
 * @param example how a stamp looks in this format, for messages
 * @param read takes one row's values for its hour; `miss` notes a bad cell and goes on
 */
export function walkHourlyRows<Row>(
  rows: Iterable<NumberedRow<Row>>,
  stampColumn: string,
  example: string,
  stampOf: (row: Row) => RowStamp,
  read: (row: Row, hour: number, miss: MissCell) => void,
): WalkedRows {
  const lineOfHour = new Int32Array(HOURS);
  const monthYears = new Array<number>(12).fill(0);
  const faults: Fault[] = [];
  let hour = 0;
  let lastLine: number | null = null;
  for (const { line, row } of rows) {
    const stamp = stampOf(row);
    lastLine = line;
    if (stamp.hour === 'leap day') continue;
    if (hour >= HOURS || stamp.hour !== hour || !(stamp.year >= FIRST_YEAR && stamp.year <= LAST_YEAR)) {
      const wanted =
        hour < HOURS ? `the hour that starts ${dateOfHour(hour)}, as in ${example}` : 'no more rows';
      faults.push({ line, column: stampColumn, value: stamp.text, expected: wanted });
      break;
    }
    monthYears[monthOfHour(hour)] ||= stamp.year;
    lineOfHour[hour] = line;
    read(row, hour, (column, value, expected = 'a number') => faults.push({ line, column, value, expected }));
    if (faults.length >= MOST_FAULTS) break;
    hour++;
  }
  if (faults.length === 0 && hour < HOURS) {
    const value = `the file ends after ${hour} hours`;
    faults.push({ line: lastLine, column: stampColumn, value, expected: `${HOURS} hours` });
  }
  return { lineOfHour, monthYears, faults: faults.slice(0, MOST_FAULTS) };
}

/** Lines from one on, numbered, blank ones left out. */
export function* numberedLines(lines: readonly string[], from: number): Iterable<NumberedRow<string>> {
  for (let i = from; i < lines.length; i++) {
    if (lines[i]!.trim() !== '') yield { line: i + 1, row: lines[i]! };
  }
}

/** The same, cut into cells. */
export function* numberedCells(
  lines: readonly string[],
  from: number,
  cut: (line: string) => string[],
): Iterable<NumberedRow<readonly string[]>> {
  for (const { line, row } of numberedLines(lines, from)) yield { line, row: cut(row) };
}
