// Source: ASHRAE Handbook - Fundamentals 2017, chapter 1, tables psychrometrics.csv (62 states at 0, 1600 and 2500 m)
// and saturation-pressure.csv (27 temperatures), computed with an independent library. The run saturates over water by
// the shorter formula of WMO-No. 8; its error against the handbook is what the first test bounds.
import { expect, test } from 'vitest';
import { standardPressure } from '../../src/physics/altitude.ts';
import {
  airDensity,
  dewPointFromVapourPressure,
  humidityRatio,
  saturationPressure,
  vapourPressureFromRatio,
} from '../../src/physics/moist-air.ts';
import { check } from './ledger.ts';
import { readTable } from './reference-table.ts';

const SOURCE = 'ASHRAE Fundamentals 2017 ch. 1';

/** What the docstring of saturationPressure states, against IAPWS-IF97 from 0 to 60 °C. */
const SATURATION_REL = 0.0032;
/** A saturation pressure wrong by that much is a dew point wrong by up to this [K]. */
const DEW_POINT_K = 0.06;
/** To this temperature the formula was fitted. */
const FITTED_TO_C = 60;

test('saturation over water follows the rows from −40 to 60 °C', () => {
  const rows = readTable('saturation-pressure.csv').filter((row) => row.number('t_c') <= FITTED_TO_C);
  expect(rows).toHaveLength(23);
  for (const row of rows) {
    const isIce = row.text('phase') === 'ice';
    check({
      source: SOURCE,
      case: `${row.text('t_c')} °C`,
      quantity: 'saturation pressure over water',
      kind: 'rel',
      reference: row.number(isIce ? 'pws_other_phase_pa' : 'pws_pa'),
      ours: saturationPressure(row.number('t_c')),
      allowed: SATURATION_REL,
      unit: 'Pa',
      mark: 'computed',
    });
  }
});

test('all 62 states of moist air agree, from −20 to 40 °C and up to 2500 m', () => {
  const rows = readTable('psychrometrics.csv');
  expect(rows).toHaveLength(62);
  let dewPoints = 0;
  for (const row of rows) {
    const pressure = row.number('pressure_pa');
    const vapour = row.number('pw_pa');
    const ratio = row.number('humidity_ratio');
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
        mark: 'computed',
      });
    enter('standard pressure', 'pressure_pa', standardPressure(row.number('altitude_m')), 'rel', 1e-7, 'Pa');
    enter('humidity ratio', 'humidity_ratio', humidityRatio(vapour, pressure), 'rel', 1e-6, 'kg/kg');
    enter('vapour pressure', 'pw_pa', vapourPressureFromRatio(ratio, pressure), 'rel', 1e-6, 'Pa');
    enter('density', 'density_kg_m3', airDensity(row.number('tdb_c'), ratio, pressure), 'rel', 1e-6, 'kg/m³');
    // Below the triple point the table has the frost point, which the run does not use.
    if (row.number('dewpoint_c') > 0.01) {
      dewPoints++;
      enter('dew point', 'dewpoint_c', dewPointFromVapourPressure(vapour), 'abs', DEW_POINT_K, '°C');
    }
  }
  expect(dewPoints).toBeGreaterThan(30);
});
