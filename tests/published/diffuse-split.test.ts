// Sources: Erbs 1982 hourly correlation, table diffuse-split.csv (checked against an independent library); DISC 1987,
// table disc-dni.csv (one library only).
import { expect, test } from 'vitest';
import { erbsDiffuseFraction } from '../../src/physics/diffuse-split.ts';
import { discBeamNormal } from '../../src/physics/disc.ts';
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
      mark: 'document',
    });
  }
});

test('the second-opinion beam model follows all 30 rows of its table', () => {
  const rows = readTable('disc-dni.csv');
  expect(rows).toHaveLength(30);
  for (const row of rows) {
    check({
      source: 'DISC 1987 direct normal',
      case: `zenith ${row.text('zenith_deg')}, global ${row.text('ghi')}, day ${row.text('day_of_year')}`,
      quantity: 'beam normal irradiance',
      reference: row.number('dni_disc'),
      ours: discBeamNormal(row.number('ghi'), row.number('zenith_deg'), row.number('day_of_year'), 101_325),
      allowed: 0.1,
      unit: 'W/m²',
      mark: 'document',
    });
  }
});
