// Source: NORDTEST project on moisture buffering of building materials (2005): buffer value, its classes and the Fourier
// sum behind its 0.00568; from memory, medium confidence. The scale of a room is computed.
import { expect, test } from 'vitest';
import { airWater, bufferClass, bufferedWater, idealBufferValue } from '../../src/physics/moisture-buffer.ts';
import { isoSaturationPressure, vapourDensity } from '../../src/physics/surface-humidity.ts';
import { check } from './ledger.ts';

const SOURCE = 'NORDTEST moisture buffering (2005)';

test('the class limits lie at 0.2, 0.5, 1 and 2', () => {
  const values = [0.1, 0.199, 0.2, 0.499, 0.5, 0.999, 1, 2, 2.001];
  expect(values.map(bufferClass)).toEqual([
    'negligible',
    'negligible',
    'limited',
    'limited',
    'moderate',
    'moderate',
    'good',
    'good',
    'excellent',
  ]);
});

test('the 0.00568 of the ideal value is the Fourier sum of a wave high for a third of its day', () => {
  let sum = 0;
  for (let n = 200000; n >= 1; n--) sum += Math.sin((n * Math.PI) / 3) ** 2 / n ** 1.5;
  const fourier = ((2 / Math.PI) * sum) / (100 * Math.sqrt(Math.PI));
  const [permeability, capacity, saturation, period] = [2e-11, 30, 2643, 86400];
  const effusivity = Math.sqrt((permeability * capacity) / saturation);
  const ours =
    idealBufferValue(permeability, capacity, saturation, period) /
    (1000 * saturation * effusivity * Math.sqrt(period));
  check({
    source: SOURCE,
    case: 'square wave 8 h of 24 h',
    quantity: 'factor of the ideal value',
    reference: fourier,
    ours,
    allowed: 0.00002,
    unit: '',
    mark: 'computed',
  });
});

test('60 m² of clay plaster hold more over a 20 % swing than 250 m³ of air', () => {
  const row = { source: SOURCE, case: '20 % swing of humidity', mark: 'computed' } as const;
  check({
    ...row,
    quantity: '60 m² at 1.0 g/(m²·%RH)',
    reference: 1.2,
    ours: bufferedWater(60, 1, 0.2) / 1000,
    allowed: 1e-9,
    unit: 'kg',
  });
  const saturated = vapourDensity(isoSaturationPressure(20), 20);
  check({
    ...row,
    quantity: '250 m³ of air at 20 °C',
    reference: 0.86,
    ours: airWater(250, saturated, 0.2) / 1000,
    allowed: 0.005,
    unit: 'kg',
  });
});
