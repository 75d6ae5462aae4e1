// Source: EN 16798-1:2019 annex B (comfort temperature, bands, running mean); formulas from memory, high confidence; numbers
// computed from them.
import { test } from 'vitest';
import { enComfortTemperature, enUpperLimit, runningMeanStart } from '../../src/physics/adaptive-comfort.ts';
import { check } from './ledger.ts';

const EXACT = 1e-9;

test('EN 16798-1 at a running mean of 18 °C', () => {
  const row = {
    source: 'EN 16798-1:2019',
    case: 'running mean 18 °C',
    allowed: EXACT,
    unit: '°C',
    mark: 'computed',
  } as const;
  check({ ...row, quantity: 'comfort temperature', reference: 24.74, ours: enComfortTemperature(18) });
  const rows = [
    ['I', 26.74],
    ['II', 27.74],
    ['III', 28.74],
  ] as const;
  for (const [category, upper] of rows) {
    check({
      ...row,
      quantity: `upper limit ${category}`,
      reference: upper,
      ours: enUpperLimit(18, category),
    });
  }
});

test('running mean of seven days', () => {
  check({
    source: 'EN 16798-1:2019',
    case: 'days 20, 22, 24, 23, 21, 19, 18 °C',
    quantity: 'running mean',
    reference: 21.37,
    ours: runningMeanStart([20, 22, 24, 23, 21, 19, 18]),
    allowed: 0.01,
    unit: '°C',
    mark: 'computed',
  });
});
