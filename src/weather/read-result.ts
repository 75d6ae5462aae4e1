// What every reader of a person's file returns: a typical year, or the list of what is wrong with the file.
// A reader never throws on a file's content; a fault says where, what was found and what was expected.
import type { TypicalYear } from './typical-year.ts';

/** One thing wrong with a file, located as well as it can be. */
export interface Fault {
  /** line of the file, first is 1; null when the fault is not on one line */
  readonly line: number | null;
  /** column's name as the file prints it, or the name of what is missing; '' when it is no column */
  readonly column: string;
  /** what was found, as text; '' when nothing was */
  readonly value: string;
  /** what is allowed, in plain words */
  readonly expected: string;
}

export type ReadResult =
  | { readonly ok: true; readonly year: TypicalYear }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** What a person can say about a file that does not say it itself; readers use it only for what is missing. */
export interface SiteHints {
  readonly name?: string;
  /** [°] north positive */
  readonly latitudeDeg?: number;
  /** [°] east positive */
  readonly longitudeDeg?: number;
  /** [m] */
  readonly elevationM?: number;
  /** local standard time minus UTC [h] */
  readonly utcOffsetH?: number;
  /** the file's name: coordinates in it are used when the content has none, and the year's id is made from it */
  readonly fileName?: string;
}

/** Faults listed per file; more would bury the first. */
export const MOST_FAULTS = 20;

/** Longest piece of a file's text repeated in a message. */
const MOST_CHARACTERS = 60;

/** A fault as one sentence for the person who brought the file. */
export function describeFault(fault: Fault): string {
  const where = fault.line === null ? '' : `line ${fault.line}`;
  const column = fault.column === '' ? '' : `column "${fault.column}"`;
  const place = [where, column].filter((part) => part !== '').join(', ');
  const found = fault.value === '' ? 'nothing found' : `found "${shorten(fault.value)}"`;
  return `${place === '' ? 'the file' : place}: ${found}; expected ${fault.expected}`;
}

/** The refusal of a whole file for one reason. */
export function refuse(line: number | null, column: string, value: string, expected: string): ReadResult {
  return { ok: false, faults: [{ line, column, value: shorten(value), expected }] };
}

function shorten(text: string): string {
  const printable = [...text.slice(0, 2 * MOST_CHARACTERS)].map(printed).join('').trim();
  return printable.length > MOST_CHARACTERS ? `${printable.slice(0, MOST_CHARACTERS)}…` : printable;
}

function printed(character: string): string {
  const code = character.codePointAt(0)!;
  return code < 32 || (code > 126 && code < 160) || code === 0xfffd ? '·' : character;
}
