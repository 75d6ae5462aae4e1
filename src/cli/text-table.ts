// Columns of text for a terminal: rows of cells in, aligned lines out. A column that holds a number anywhere is
// set to the right, its heading too; other columns to the left.

export type Cell = string | number;

/**
 * Align rows in columns two spaces apart.
 *
 * @param rows cells; rows may differ in length
 * @param digits decimals of numeric cells, default 1; whole numbers print without
 */
export function textTable(rows: readonly (readonly Cell[])[], digits = 1): string {
  const widths: number[] = [];
  const numeric: boolean[] = [];
  const printed = rows.map((row) =>
    row.map((cell, column) => {
      const text = printedCell(cell, digits);
      widths[column] = Math.max(widths[column] ?? 0, text.length);
      numeric[column] = numeric[column] === true || typeof cell === 'number' || /^-?\d+(\.\d+)?$/.test(cell);
      return text;
    }),
  );
  return printed
    .map((row) =>
      row
        .map((text, column) =>
          numeric[column] ? text.padStart(widths[column]!) : text.padEnd(widths[column]!),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function printedCell(cell: Cell, digits: number): string {
  if (typeof cell === 'string') return cell;
  return Number.isInteger(cell) ? String(cell) : cell.toFixed(digits);
}
