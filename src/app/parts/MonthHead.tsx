// The head of a table by month: what its rows are, the twelve months, the year.

import { MONTH_NAMES, MONTH_SHORT } from './calendar-words.ts';

export function MonthHead({ rows }: { rows: string }) {
  return (
    <thead>
      <tr>
        <th scope="col">{rows}</th>
        {MONTH_SHORT.map((name, month) => (
          <th key={name} scope="col" aria-label={MONTH_NAMES[month]!}>
            {name}
          </th>
        ))}
        <th scope="col">year</th>
      </tr>
    </thead>
  );
}
