// The ledger of outside checks. A test in tests/published/ calls check() once for each published number instead
// of expect(): the number is asserted, and, when the environment variable DAYSTONE_LEDGER names a file, the row
// is appended to it as one line of JSON. `npm run published` sets that variable and prints all rows as a table.
//
//   check({ source: 'ISO 6946:2017', case: 'wall, horizontal flow', quantity: 'inside film resistance',
//           reference: 0.13, ours: 1 / film, allowed: 0.002, unit: 'm²K/W', mark: 'memory' });
//
// kind 'rel' makes `allowed` a fraction of the reference; kind 'range' takes referenceMin and referenceMax (and
// noteAllowed for ranges recalled from memory). `use: 'reference only'` where no run reaches the code behind `ours`. A source with hundreds of rows simply calls check() for each.
import { appendFileSync } from 'node:fs';
import { expect } from 'vitest';
import { judge, oursOf, type Row } from './verdict.ts';

/** Assert a number of ours against another of ours; it is told in a table of its own and is no outside check. */
export function compareOwn(row: Row): void {
  check({ ...row, own: true });
}

/** Assert one outside number and enter it in the ledger. */
export function check(row: Row): void {
  const { verdict, deviation, limit } = judge(row);
  const file = process.env.DAYSTONE_LEDGER;
  if (file !== undefined && file !== '') appendFileSync(file, `${JSON.stringify(row)}\n`);
  const reference =
    row.kind === 'range' ? `${row.referenceMin} to ${row.referenceMax}` : row.reference.toString();
  // Soft: the test fails, but its other rows are still judged and entered.
  expect
    .soft(
      verdict,
      `${row.source}, ${row.case}, ${row.quantity}: ours ${oursOf(row, String)} ${row.unit}, reference ${reference}, ` +
        `off by ${deviation}, allowed ${limit} (${row.kind ?? 'abs'})`,
    )
    .not.toBe('FAIL');
}
