// Source: EN 16798-1:2019 annex B (comfort temperature, bands, running mean) and ASHRAE 55 (adaptive band); formulas from
// memory, high confidence; numbers computed from them.
import { test } from 'vitest';
import {
  ashraeBand,
  ashraeComfortTemperature,
  enBand,
  enComfortTemperature,
  runningMeanStart,
} from '../../src/physics/adaptive-comfort.ts';
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
    ['I', 21.74, 26.74],
    ['II', 20.74, 27.74],
    ['III', 19.74, 28.74],
  ] as const;
  for (const [category, lower, upper] of rows) {
    const band = enBand(18, category);
    check({ ...row, quantity: `lower limit ${category}`, reference: lower, ours: band.lowerC });
    check({ ...row, quantity: `upper limit ${category}`, reference: upper, ours: band.upperC });
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

test('ASHRAE 55 at a prevailing mean of 20 °C', () => {
  const row = {
    source: 'ASHRAE 55',
    case: 'prevailing mean 20 °C',
    allowed: EXACT,
    unit: '°C',
    mark: 'computed',
  } as const;
  check({ ...row, quantity: 'comfort temperature', reference: 24, ours: ashraeComfortTemperature(20) });
  check({ ...row, quantity: 'lower limit 80 %', reference: 20.5, ours: ashraeBand(20, 80).lowerC });
  check({ ...row, quantity: 'upper limit 80 %', reference: 27.5, ours: ashraeBand(20, 80).upperC });
  check({ ...row, quantity: 'lower limit 90 %', reference: 21.5, ours: ashraeBand(20, 90).lowerC });
  check({ ...row, quantity: 'upper limit 90 %', reference: 26.5, ours: ashraeBand(20, 90).upperC });
});
