// Source: ASHRAE Handbook, HVAC Applications, natatoriums: evaporation from a pool; formula from memory, high confidence.
import { test } from 'vitest';
import { saturationPressure } from '../../src/physics/moist-air.ts';
import { openWaterEvaporation } from '../../src/physics/water-surface.ts';
import { check } from './ledger.ts';

test('water and air at 24 °C, 60 %, still air: 156 g/(m²h) before the activity factor', () => {
  const saturated = saturationPressure(24);
  check({
    source: 'ASHRAE Applications, natatoriums',
    case: '24 °C water, 24 °C 60 % air, 0 m/s',
    quantity: 'evaporation',
    reference: 156,
    ours: 3600 * openWaterEvaporation(saturated, 0.6 * saturated, 0, 1),
    allowed: 1,
    unit: 'g/(m²h)',
    mark: 'computed',
  });
});
