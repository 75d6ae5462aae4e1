// A cell of a comma-separated file that a spreadsheet will open. Numbers pass as they are; text that a spreadsheet
// would compute or run is marked as text.
// Source: OWASP, CSV injection (cells that begin with = + - @, tab or carriage return), RFC 4180 for the quotes.

/**
 * One cell.
 *
 * @param value a finite number, or any text
 * @returns the cell, quoted where it must be; text that begins like a formula has an apostrophe before it
 */
export function csvCell(value: number | string): string {
  if (typeof value === 'number') return String(value);
  // Full-width signs count too: some spreadsheets fold them to the plain ones. So does one behind blanks.
  const isFormula = /^[\s\u00a0\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r]/.test(value);
  const text = isFormula && !isNumber(value) ? `'${value}` : value;
  return /[",\r\n;\t']/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A plain decimal number, such as "-3.25" or "1e-7", which is what it looks like. */
function isNumber(text: string): boolean {
  return /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?$/i.test(text);
}
