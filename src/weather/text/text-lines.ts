// Text of unknown origin into lines, cells and numbers: byte-order mark, the three line endings, quotes, and
// numbers read strictly (a word or an empty cell is NaN, never 0).

import { withoutByteOrderMark } from './byte-order-mark.ts';

/** Lines of a text without their endings; a byte-order mark is dropped. */
export function linesOf(text: string): string[] {
  const plain = withoutByteOrderMark(text);
  return plain.split(/\r\n|\n|\r/);
}

/** Cells of one line; double quotes may hold separators, and a doubled quote inside them is one. */
export function cellsOf(line: string, separator = ','): string[] {
  if (!line.includes('"')) return line.split(separator);
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const character = line[i]!;
    if (quoted) {
      if (character !== '"') cell += character;
      else if (line[i + 1] === '"') cell += line[++i]!;
      else quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === separator) {
      cells.push(cell);
      cell = '';
    } else cell += character;
  }
  cells.push(cell);
  return cells;
}

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

/** A number with a decimal point, NaN for anything else. Minus zero comes back as zero. */
export function numberOf(text: string | undefined): number {
  const trimmed = text?.trim() ?? '';
  if (!NUMBER.test(trimmed)) return Number.NaN;
  const value = Number(trimmed);
  return Number.isFinite(value) ? value + 0 : Number.NaN;
}

/** A short stable id of a–z, 0–9 and single hyphens. */
export function idOf(name: string): string {
  const plain = name.normalize('NFKD').replace(/[\u0300-\u036f]/g, '');
  const id = plain
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 48)
    .replace(/-+$/, '');
  return id === '' ? 'site' : id;
}
