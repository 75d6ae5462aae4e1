// What a person changes about the columns of a table, gathered into choices for the reader. Each quantity belongs to
// one column: giving it to another takes it from the first.

import type { TableChoices } from '../../weather/table/hourly-table.ts';
import type { ColumnGuess } from '../../weather/table/table-columns.ts';
import type { Role } from '../../weather/table/table-roles.ts';

/** The choices with one column given a role, or left out with null. */
export function withRole(
  choices: TableChoices,
  columns: readonly ColumnGuess[],
  header: string,
  role: Role | null,
): TableChoices {
  const roles = { ...choices.roles, [header]: role };
  for (const column of columns) {
    if (column.header !== header && role !== null && column.role === role) roles[column.header] = null;
  }
  // A unit chosen for what the column was before says nothing about what it is now.
  const { [header]: _, ...units } = choices.units ?? {};
  return { ...choices, roles, units };
}

/** The choices with one column read in a unit. */
export function withUnit(choices: TableChoices, header: string, unit: string): TableChoices {
  return { ...choices, units: { ...choices.units, [header]: unit } };
}
