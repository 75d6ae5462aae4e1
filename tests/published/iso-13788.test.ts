// Source: ISO 13788:2012, hygrothermal performance: saturation pressure, dew point, vapour content. Formulas from
// memory, high confidence; check values computed from them independently.
import { expect, test } from 'vitest';
import { vapourConcentration } from '../../src/physics/moist-air.ts';
import { dewPointIso13788, saturationPressureIso13788 } from '../../src/physics/saturation-pressure.ts';
import { check } from './ledger.ts';

const SOURCE = 'ISO 13788:2012';

test('saturation pressure at five temperatures', () => {
  const rows = [
    [-10, 259.3],
    [0, 610.5],
    [10, 1227.3],
    [20, 2337.0],
    [30, 4240.5],
  ] as const;
  expect(rows).toHaveLength(5);
  for (const [tempC, reference] of rows) {
    check({
      source: SOURCE,
      case: `${tempC} °C`,
      quantity: 'saturation pressure',
      reference,
      ours: saturationPressureIso13788(tempC),
      allowed: 1,
      unit: 'Pa',
      mark: 'memory',
    });
  }
});

test('dew point of air at 20 °C', () => {
  for (const [humidity, reference] of [
    [0.5, 9.27],
    [0.6, 12.0],
    [0.4, 6.0],
  ] as const) {
    check({
      source: SOURCE,
      case: `20 °C, ${humidity * 100} %`,
      quantity: 'dew point',
      reference,
      ours: dewPointIso13788(humidity * saturationPressureIso13788(20)),
      allowed: 0.02,
      unit: '°C',
      mark: 'computed',
    });
  }
});

test('vapour content of saturated air', () => {
  for (const [tempC, reference] of [
    [20, 17.27],
    [5, 6.79],
  ] as const) {
    check({
      source: SOURCE,
      case: `saturated at ${tempC} °C`,
      quantity: 'vapour content',
      reference,
      ours: vapourConcentration(saturationPressureIso13788(tempC), tempC),
      allowed: 0.01,
      unit: 'g/m³',
      mark: 'computed',
    });
  }
});
