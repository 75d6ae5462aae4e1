// Reads the reference tables in tests/data/: CSV files whose first lines start with '#' and give source and units.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const DATA = join(import.meta.dirname, '../data');

/** One row of a reference table: text by column name, and `number` for numeric columns (throws on anything else). */
export interface TableRow {
  readonly text: (column: string) => string;
  readonly number: (column: string) => number;
}

/** All rows of tests/data/<name>. */
export function readTable(name: string): readonly TableRow[] {
  const lines = readFileSync(join(DATA, name), 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'));
  const columns = lines[0]!.split(',');
  return lines.slice(1).map((line) => {
    const cells = line.split(',');
    const text = (column: string): string => {
      const cell = cells[columns.indexOf(column)];
      if (cell === undefined) throw new Error(`${name} has no column ${column}`);
      return cell;
    };
    const number = (column: string): number => {
      const value = Number(text(column));
      if (text(column) === '' || Number.isNaN(value))
        throw new Error(`${name}: ${column} is '${text(column)}'`);
      return value;
    };
    return { text, number };
  });
}

/** A JSON reference file of tests/data/. */
export function readJson<T>(name: string): T {
  return JSON.parse(readFileSync(join(DATA, name), 'utf8')) as T;
}
