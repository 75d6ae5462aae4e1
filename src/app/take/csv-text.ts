// Rows as comma-separated text for a spreadsheet. A cell that a spreadsheet would run as a formula is written as text:
// a name may come from a link or a file of somebody else.

/** What a spreadsheet takes for the start of a formula (OWASP, CSV injection). */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * The text of a table, by RFC 4180 but with line feeds alone.
 *
 * @param rows cells; numbers are written with a point and never quoted
 */
export function csvText(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\n`).join('');
}

function cellText(cell: string | number): string {
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const safe = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
