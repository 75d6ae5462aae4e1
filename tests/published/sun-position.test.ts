// Source: NREL solar position algorithm (Reda and Andreas 2004), table sun-position.csv: 12 latitudes from 78 N
// to 78 S in 2025, 187 daylight and 113 night rows, true elevation.
import { expect, test } from 'vitest';
import { sunPosition, sunVector } from '../../src/physics/sun-position.ts';
import { check } from './ledger.ts';
import { readTable } from './reference-table.ts';

/** [°] between unit vectors: what the library's short series can do, with its refraction removed. */
const ALLOWED_DEG = 0.02;

const rows = readTable('sun-position.csv');

test('the table has 300 rows, 187 of them by day', () => {
  expect(rows).toHaveLength(300);
  expect(rows.filter((row) => row.number('elevation_deg') > 0)).toHaveLength(187);
});

test('the sun stands within 0.02° of the solar position algorithm, by day and night, from pole to pole', () => {
  for (const row of rows) {
    const utc = row.text('utc');
    const ours = sunPosition(Date.parse(utc), row.number('lat'), row.number('lon'));
    const a = sunVector(ours.elevationDeg, ours.azimuthDeg);
    const b = sunVector(row.number('elevation_deg'), row.number('azimuth_deg'));
    const chord = Math.hypot(a.east - b.east, a.north - b.north, a.up - b.up);
    check({
      source: 'Solar position algorithm, Reda-Andreas 2004',
      case: `${row.text('site')} ${utc}`,
      quantity: 'angle to the true sun',
      reference: 0,
      ours: (2 * Math.asin(chord / 2) * 180) / Math.PI,
      allowed: ALLOWED_DEG,
      unit: '°',
      mark: 'computed',
    });
  }
});
