// A table of an answer, in the units on screen.

import type { Table } from '../../questions/question.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { cellText, unitShown } from './answer-units.ts';

export function AnswerTable({ table, system }: { table: Table; system: UnitSystem }) {
  const { columns, rowUnits, rowDigits } = table;
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
                      {text ?? '—'}
                    </td>
                  );
                })}
              </tr>
            );
          })}
        </tbody>
      </table>
    </ScrollTable>
  );
}
