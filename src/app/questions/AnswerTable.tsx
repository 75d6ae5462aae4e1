// A table of an answer, in the units on screen.

import type { Table } from '../../questions/question.ts';
import { isAdvised } from '../../questions/run-table.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { cellText, unitShown } from './answer-units.ts';

interface AnswerTableProps {
  readonly table: Table;
  readonly system: UnitSystem;
  /** draws the house of a run; null where none can be drawn */
  readonly drawerOf: (run: string) => (() => void) | null;
}

export function AnswerTable({ table, system, drawerOf }: AnswerTableProps) {
  const { columns, rowUnits, rowDigits, rowRuns } = table;
  const drawers = table.rows.map((_, r) => {
    const run = rowRuns?.[r] ?? null;
    return run === null ? null : drawerOf(run);
  });
  const hasDrawers = drawers.some((draw) => draw !== null);
  return (
    <ScrollTable label={table.title}>
      <table>
        <caption>{table.title}</caption>
        <thead>
          <tr>
            {columns.map(({ label, unit }, i) => (
              <th key={`${i} ${label}`} scope="col">
                {label}
                {unit === '' ? '' : `, ${unitShown(unit, system).sign}`}
              </th>
            ))}
            {hasDrawers && <th scope="col">on the sheet</th>}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, r) => {
            const rowUnit = rowUnits?.[r];
            return (
              <tr key={row.join(' ')}>
                {row.map((cell, i) => {
                  const column = columns[i]!;
                  const text =
                    typeof cell === 'number'
                      ? cellText(
                          cell,
                          {
                            ...column,
                            unit: rowUnit ?? column.unit,
                            digits: rowDigits?.[r] ?? column.digits,
                          },
                          system,
                        )
                      : rowUnit
                        ? cell?.replace(`, ${rowUnit}`, `, ${unitShown(rowUnit, system).sign}`)
                        : cell;
                  return (
                    <td
                      key={`${i} ${column.label}`}
                      class={typeof cell === 'string' ? 'is-words' : undefined}
                    >
                      {i === 0 && isAdvised(table, r) ? <strong>{text} (advised)</strong> : (text ?? '—')}
                    </td>
                  );
                })}
                {hasDrawers && (
                  <td>
                    {drawers[r] && (
                      <button
                        type="button"
                        data-ask="draw"
                        aria-label={`Draw it: ${row[0]}`}
                        onClick={drawers[r]}
                      >
                        Draw it
                      </button>
                    )}
                  </td>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollTable>
  );
}
