// Source: ASHRAE Handbook - Fundamentals 2017, chapter 1, tables psychrometrics.csv (62 states at 0, 1600 and 2500 m)
// and saturation-pressure.csv (27 temperatures), computed with an independent library and again by hand.
import { expect, test } from 'vitest';
import { standardPressure } from '../../src/physics/altitude.ts';
import {
  airDensity,
  enthalpy,
  humidityRatio,
  vapourPressureFromRatio,
  wetBulb,
} from '../../src/physics/moist-air.ts';
import { dewPointAshrae, saturationPressureAshrae } from '../../src/physics/saturation-pressure.ts';
import { check } from './ledger.ts';
import { readTable } from './reference-table.ts';

const SOURCE = 'ASHRAE Fundamentals 2017 ch. 1';

test('saturation over ice and water follows all 27 rows', () => {
  const rows = readTable('saturation-pressure.csv');
  expect(rows).toHaveLength(27);
  for (const row of rows) {
    check({
      source: SOURCE,
      case: `${row.text('t_c')} °C over ${row.text('phase')}`,
      quantity: 'saturation pressure',
      // The table prints five decimals: 4e-7 of the smallest value, 1e-7 of those above 50 Pa.
      reference: row.number('pws_pa'),
      ours: saturationPressureAshrae(row.number('t_c')),
      allowed: Math.max(row.number('pws_pa') * 1e-7, 0.000006),
      unit: 'Pa',
      mark: 'document',
    });
  }
});

test('all 62 states of moist air agree, from −20 to 40 °C and up to 2500 m', () => {
  const rows = readTable('psychrometrics.csv');
  expect(rows).toHaveLength(62);
  for (const row of rows) {
    const tempC = row.number('tdb_c');
    const pressure = row.number('pressure_pa');
    const vapour = row.number('rh') * saturationPressureAshrae(tempC);
    const ratio = humidityRatio(vapour, pressure);
    const enter = (
      quantity: string,
      column: string,
      ours: number,
      kind: 'abs' | 'rel',
      allowed: number,
      unit: string,
    ) =>
      check({
        source: SOURCE,
        case: `${row.text('altitude_m')} m, ${row.text('tdb_c')} °C, ${row.text('rh')}`,
        quantity,
        kind,
        reference: row.number(column),
        ours,
        allowed,
        unit,
        mark: 'document',
      });
    enter('standard pressure', 'pressure_pa', standardPressure(row.number('altitude_m')), 'rel', 1e-7, 'Pa');
    enter('saturation pressure', 'pws_pa', saturationPressureAshrae(tempC), 'rel', 1e-7, 'Pa');
    enter('vapour pressure', 'pw_pa', vapourPressureFromRatio(ratio, pressure), 'rel', 1e-6, 'Pa');
    enter('humidity ratio', 'humidity_ratio', ratio, 'rel', 1e-6, 'kg/kg');
    enter('dew point', 'dewpoint_c', dewPointAshrae(vapour), 'abs', 0.001, '°C');
    enter('wet bulb', 'wetbulb_c', wetBulb(tempC, ratio, pressure), 'abs', 0.002, '°C');
    enter('enthalpy', 'enthalpy_j_per_kg', enthalpy(tempC, ratio), 'abs', 1, 'J/kg');
    enter('density', 'density_kg_m3', airDensity(tempC, ratio, pressure), 'rel', 1e-6, 'kg/m³');
  }
});
