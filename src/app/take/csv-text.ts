// Rows as comma-separated text for a spreadsheet, its cells marked as text where they look like formulas: a name may
// come from a link or a file of somebody else.

import { csvCell } from '../../outcomes/csv-cell.ts';

/**
 * The text of a table, by RFC 4180 but with line feeds alone.
 *
 * @param rows cells; numbers are written with a point and never quoted, one that is not finite as nothing
 */
export function csvText(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\n`).join('');
}

function cellText(cell: string | number): string {
  return typeof cell === 'number' && !Number.isFinite(cell) ? '' : csvCell(cell);
}
