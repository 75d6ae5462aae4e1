// Text of a table of unknown origin into cells: separator, decimal comma, where the header is, and what the lines
// above it say about the site. Cells stay text here; nothing is guessed about their meaning.
import Papa from 'papaparse';
import { withoutByteOrderMark } from '../text/byte-order-mark.ts';
import { numberOf } from '../text/text-lines.ts';

/** Rows looked at: a leap year of ten-minute rows and a long preamble. More is no single year. */
const MOST_ROWS = 53_000;

const SEPARATORS = [',', ';', '\t', '|'] as const;

export interface TableText {
  readonly separator: string;
  /** numbers are written 3,5 */
  readonly decimalComma: boolean;
  readonly header: readonly string[];
  /** line of the header, first is 1 */
  readonly headerLine: number;
  /** cells below the header, empty lines left out */
  readonly rows: readonly (readonly string[])[];
  /** line of each row */
  readonly lines: readonly number[];
  /** what the lines above the header state */
  readonly latitudeDeg: number | null;
  readonly longitudeDeg: number | null;
  readonly elevationM: number | null;
  readonly tooLong: boolean;
}

/**
 * Cut a text into a table; null when no separator gives a header of names above rows of numbers.
 *
 * @param mostRows rows looked at; a year of ten-minute rows unless said
 */
export function tableTextOf(text: string, mostRows: number = MOST_ROWS): TableText | null {
  const head = text.slice(0, 20_000);
  for (const separator of bySuccess(head)) {
    const sample = cut(head, separator, 60).slice(0, -1);
    const headerAt = headerRow(sample);
    if (headerAt < 0) continue;
    const all = cut(text, separator, mostRows + headerAt + 1);
    const rows: string[][] = [];
    const lines: number[] = [];
    for (let i = headerAt + 1; i < all.length; i++) {
      if (all[i]!.every((cell) => cell.trim() === '')) continue;
      rows.push(all[i]!);
      lines.push(i + 1);
    }
    const decimalComma = separator !== ',' && commaCells(rows.slice(0, 50)) > 0;
    return {
      separator,
      decimalComma,
      header: distinct(headerCells(all, headerAt)),
      headerLine: headerAt + 1,
      rows,
      lines,
      ...placeAbove(all.slice(0, headerAt)),
      tooLong: all.length > mostRows,
    };
  }
  return null;
}

/** A number as this table writes it; NaN for anything else. */
export function tableNumber(cell: string | undefined, decimalComma: boolean): number {
  return numberOf(decimalComma ? cell?.replace(',', '.') : cell);
}

function cut(text: string, delimiter: string, preview: number): string[][] {
  const plain = withoutByteOrderMark(text);
  return Papa.parse<string[]>(plain, { delimiter, preview, header: false, skipEmptyLines: false }).data;
}

/** Separators by how many cells they make in the lines of the sample that have the most. */
function bySuccess(head: string): string[] {
  const lines = head.split(/\r\n|\n|\r/).slice(0, 60);
  const most = (separator: string) => Math.max(...lines.map((line) => line.split(separator).length));
  return [...SEPARATORS]
    .filter((s) => most(s) >= 2)
    .sort((a, b) => steadiness(lines, b) - steadiness(lines, a));
}

/** Number of lines that share the commonest count of cells above one, a little more for more cells. */
function steadiness(lines: readonly string[], separator: string): number {
  const counts = new Map<number, number>();
  for (const line of lines) {
    const cells = line.split(separator).length;
    if (cells > 1) counts.set(cells, (counts.get(cells) ?? 0) + 1);
  }
  return Math.max(0, ...[...counts].map(([cells, count]) => count + Math.min(cells, 30) / 100));
}

/** Names, with the units of a second header line in brackets behind them. */
function headerCells(all: readonly (readonly string[])[], headerAt: number): string[] {
  const cells = all[headerAt]!.map((cell) => cell.trim());
  const above = all[headerAt - 1] ?? [];
  const isPair =
    above.length === cells.length && above.every((cell) => cell.trim() !== '' && !isNumberLike(cell));
  if (!isPair) return cells;
  return cells.map((unit, i) => (unit === '' ? above[i]!.trim() : `${above[i]!.trim()} [${unit}]`));
}

/** Every column by a name of its own: unnamed ones by their place, a name that comes again with its place behind it. */
function distinct(names: readonly string[]): string[] {
  return names.map((name, i) => {
    if (name === '') return `column ${i + 1}`;
    return names.indexOf(name) === i ? name : `${name} (column ${i + 1})`;
  });
}

/** Last row of names (no numbers) of at least two cells with rows of mostly numbers below it, as wide. */
function headerRow(rows: readonly (readonly string[])[]): number {
  return rows.findLastIndex((row, i) => {
    const below = rows.slice(i + 1).find((cells) => cells.some((cell) => cell.trim() !== ''));
    if (row.filter((cell) => cell.trim() !== '').length < 2 || below === undefined) return false;
    const later = rows.slice(i + 1).filter((cells) => cells.length > 1);
    const widths = later.filter((cells) => Math.abs(cells.length - row.length) <= 1).length;
    return row.every((cell) => !isNumberLike(cell)) && widths > later.length * 0.8 && someNumbers(later);
  });
}

/** A number, with a decimal comma or point, bare or with the unit behind it that loggers write. */
function isNumberLike(cell: string): boolean {
  const bare = cell.replace(/\s*(°\s*[CF]|%)$/, '');
  return !Number.isNaN(numberOf(bare.replace(',', '.')));
}

function someNumbers(rows: readonly (readonly string[])[]): boolean {
  return rows.slice(0, 5).some((cells) => cells.some(isNumberLike));
}

function commaCells(rows: readonly (readonly string[])[]): number {
  const cells = rows.flat().map((cell) => cell.trim());
  const comma = cells.filter((cell) => /^-?\d+,\d+$/.test(cell)).length;
  const point = cells.filter((cell) => /^-?\d+\.\d+$/.test(cell)).length;
  return comma > point ? comma : 0;
}

/** "Latitude: 45.0" on one line, or a line of names above a line of values. */
function placeAbove(
  rows: readonly (readonly string[])[],
): Pick<TableText, 'latitudeDeg' | 'longitudeDeg' | 'elevationM'> {
  const find = (words: RegExp, low: number, high: number): number | null => {
    for (const [i, row] of rows.entries()) {
      const at = row.findIndex((cell) => words.test(cell.trim()));
      if (at < 0) continue;
      const inCell = /[-−+]?\d+(?:\.\d+)?/.exec(row[at]!.replace(words, ''));
      const candidates = [inCell?.[0], row[at + 1], rows[i + 1]?.[at]];
      const value = candidates
        .map((cell) => numberOf(cell?.replace('−', '-')))
        .find((n) => n >= low && n <= high);
      if (value !== undefined) return value;
    }
    return null;
  };
  return {
    latitudeDeg: find(/^[#"\s]*lat(?:itude)?\b/i, -90, 90),
    longitudeDeg: find(/^[#"\s]*lon(?:g|gitude)?\b/i, -180, 180),
    elevationM: find(/^[#"\s]*(?:elev(?:ation)?|alt(?:itude)?)\b/i, -500, 9000),
  };
}
