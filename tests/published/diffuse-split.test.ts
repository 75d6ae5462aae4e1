// Source: Erbs 1982 hourly correlation, table diffuse-split.csv, computed and checked against an independent library.
import { expect, test } from 'vitest';
import { erbsDiffuseFraction } from '../../src/physics/diffuse-split.ts';
import { check } from './ledger.ts';
import { readTable } from './reference-table.ts';

test('the diffuse fraction follows all 58 values of the published curve', () => {
  const rows = readTable('diffuse-split.csv');
  expect(rows).toHaveLength(58);
  for (const row of rows) {
    check({
      source: 'Erbs 1982 diffuse fraction',
      case: `clearness ${row.text('kt')}`,
      quantity: 'diffuse fraction',
      reference: row.number('diffuse_fraction'),
      ours: erbsDiffuseFraction(row.number('kt')),
      allowed: 1e-7,
      unit: '',
      mark: 'computed',
    });
  }
});
