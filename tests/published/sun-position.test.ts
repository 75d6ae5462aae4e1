// Source: NREL solar position algorithm (Reda and Andreas 2004), table sun-position.csv: 12 latitudes from 78 N
// to 78 S in 2025, 187 daylight and 113 night rows, true elevation. And suncalc 2.0.2, another hand's Meeus.
import { getPosition } from 'suncalc';
import { expect, test } from 'vitest';
import { sunPosition, sunVector } from '../../src/physics/sun-position.ts';
import { check } from './ledger.ts';
import { readTable } from './reference-table.ts';

/** [°] between unit vectors: what the short series can do. */
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

test('the sun stands where another hand\u2019s Meeus has it, from 1905 to 2140', () => {
  const DEG = Math.PI / 180;
  // Its altitude is raised by refraction (Meeus 16.4), and below the horizon by that of the horizon.
  const raised = (elevationDeg: number) => {
    const h = Math.max(0, elevationDeg * DEG);
    return elevationDeg + 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179)) / DEG;
  };
  for (const year of [1905, 1935, 1955, 1975, 1995, 2026, 2140])
    for (const [latitude, longitude] of [
      [69, 19],
      [40, -105],
      [-34, 151],
    ] as const) {
      const instant = Date.UTC(year, (year * 7) % 12, 1 + (year % 28), (year * 5) % 24, 17);
      const ours = sunPosition(instant, latitude, longitude);
      const { altitude, azimuth } = getPosition(new Date(instant), latitude, longitude);
      const row = {
        source: 'suncalc 2.0.2, registry library',
        case: `${latitude}, ${longitude} in ${year}`,
        allowed: 1e-6,
        unit: '°',
        mark: 'computed',
      } as const;
      check({ ...row, quantity: 'apparent elevation', reference: altitude, ours: raised(ours.elevationDeg) });
      check({ ...row, quantity: 'azimuth', reference: azimuth, ours: ours.azimuthDeg });
    }
});
