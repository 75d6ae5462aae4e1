// Source: BS 5925:1991, code of practice for ventilation principles and designing for natural ventilation; formulas
// from memory, high confidence. Worked numbers are computed from the formulas as printed, with g 9.81 m/s².
import { test } from 'vitest';
import { doorwayExchange } from '../../src/physics/doorway.ts';
import { effectiveArea, stackFlow } from '../../src/physics/openings.ts';
import { check } from './ledger.ts';

const SOURCE = 'BS 5925:1991';

/** Half of the last printed digit, except the rise, whose vent share of one sixth is itself a round number. */
const ALLOWED = { flow4: 0.00005, flow3: 0.0005, area2: 0.005, riseK: 0.1, percent: 0.5 };

test('stack flow through two openings meets its worked rows', () => {
  const rows = [
    { low: 1, high: 1, height: 2, inside: 30, outside: 20, area: Math.SQRT1_2, flow: 0.4948 },
    { low: 1, high: 2, height: 2, inside: 30, outside: 20, area: 0.8944, flow: 0.6259 },
    { low: 1, high: 1, height: 3, inside: 40, outside: 25, area: Math.SQRT1_2, flow: 0.7331 },
  ];
  for (const { low, high, height, inside, outside, area, flow } of rows) {
    const series = effectiveArea(low, high);
    const row = {
      source: SOURCE,
      case: `${low} and ${high} m², H ${height} m, ${inside}/${outside} °C, Cd 0.61`,
      allowed: ALLOWED.flow4,
      mark: 'computed',
    } as const;
    check({ ...row, quantity: 'effective area', reference: area, ours: series, unit: 'm²' });
    check({
      ...row,
      quantity: 'stack flow',
      reference: flow,
      ours: stackFlow(series, height, inside, outside, 0.61),
      unit: 'm³/s',
    });
  }
});

test('a doorway of 0.9 by 2.0 m exchanges air as tabled', () => {
  const rows = [
    { rise: 1, flow: 0.0947, slow: 0.0621 },
    { rise: 2, flow: 0.1339, slow: 0.0878 },
    { rise: 5, flow: 0.2117, slow: 0.1388 },
    { rise: 10, flow: 0.2994, slow: 0.1963 },
  ];
  for (const { rise, flow, slow } of rows) {
    const [warm, cool] = [20 + rise / 2, 20 - rise / 2];
    const ours = doorwayExchange(0.9, 2, warm, cool, 0.61);
    const row = {
      source: SOURCE,
      case: `doorway 0.9 × 2.0 m, ${rise} K about 20 °C`,
      mark: 'computed',
    } as const;
    check({
      ...row,
      quantity: 'exchange, Cd 0.61',
      reference: flow,
      ours,
      allowed: ALLOWED.flow4,
      unit: 'm³/s',
    });
    check({
      ...row,
      quantity: 'exchange, Cd 0.4',
      reference: slow,
      ours: doorwayExchange(0.9, 2, warm, cool, 0.4),
      allowed: ALLOWED.flow4,
      unit: 'm³/s',
    });
  }
});
