// Source: US National Weather Service heat index: its chart, and four rows in °C computed from its regression.
import { test } from 'vitest';
import { heatIndex } from '../../src/physics/heat-index.ts';
import { check } from './ledger.ts';

const SOURCE = 'US National Weather Service';

test('the chart says 121 °F at 96 °F and 65 %', () => {
  const ours = heatIndex((96 - 32) / 1.8, 0.65) * 1.8 + 32;
  check({
    source: SOURCE,
    case: '96 °F, 65 %',
    quantity: 'heat index',
    reference: 121,
    ours,
    allowed: 0.5,
    unit: '°F',
    mark: 'document',
  });
});

test('four states of damp heat', () => {
  const rows = [
    [35, 0.5, 105.2, 40.7],
    [32, 0.6, 98.7, 37.1],
    [32, 0.8, 111.9, 44.4],
    [38, 0.4, 110.2, 43.4],
  ] as const;
  for (const [airTempC, humidity, fahrenheit, celsius] of rows) {
    const ours = heatIndex(airTempC, humidity);
    const row = {
      source: SOURCE,
      case: `${airTempC} °C, ${100 * humidity} %`,
      quantity: 'heat index',
      allowed: 0.1,
      mark: 'computed',
    } as const;
    check({ ...row, reference: celsius, ours, unit: '°C' });
    check({ ...row, reference: fahrenheit, ours: ours * 1.8 + 32, unit: '°F' });
  }
});
