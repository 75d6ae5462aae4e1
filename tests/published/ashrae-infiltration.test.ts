// Source: ASHRAE Fundamentals, residential infiltration: blower-door power law, effective leakage area at 4 Pa and
// the basic superposition model. Inputs of the worked house are remembered (medium confidence); the other rows are
// computed from the formulas as printed.
import { test } from 'vitest';
import type { ShelterClass, Storeys } from '../../src/physics/leakage.ts';
import {
  crackFlow,
  leakageAreaM2,
  leakageFlow,
  stackCoefficient,
  windCoefficient,
} from '../../src/physics/leakage.ts';
import { check } from './ledger.ts';

const SOURCE = 'ASHRAE Fundamentals, infiltration';

/** L/s, cm², m³/s: half of the last digit of the reference, and 0.2 L/s where its inputs are remembered. */
const ALLOWED = { exampleLs: 0.2, flowLs: 0.1, areaCm2: 0.5, flowM3S: 0.00005 };

function litresPerSecond(
  storeys: Storeys,
  shelter: ShelterClass,
  areaCm2: number,
  deltaK: number,
  wind: number,
) {
  return (
    1000 * crackFlow(areaCm2, stackCoefficient(storeys), windCoefficient(storeys, shelter), deltaK, wind)
  );
}

test('the worked house of two storeys leaks 73.6 L/s, 0.78 air changes', () => {
  const ours = litresPerSecond(2, 3, 500, 39, 6.7);
  const row = {
    source: SOURCE,
    case: '2 storeys, 500 cm², shelter 3, 39 K, 6.7 m/s',
    mark: 'memory',
  } as const;
  check({ ...row, quantity: 'infiltration', reference: 73.6, ours, allowed: ALLOWED.exampleLs, unit: 'L/s' });
  check({
    ...row,
    quantity: 'air change',
    reference: 0.78,
    ours: (ours * 3.6) / 340,
    allowed: 0.005,
    unit: '1/h',
  });
});

test('the basic model meets its hand-computed rows', () => {
  const rows = [
    { storeys: 1, reference: 37.7 },
    { storeys: 2, reference: 48.7 },
  ] as const;
  for (const { storeys, reference } of rows) {
    check({
      source: SOURCE,
      case: `${storeys} storeys, 500 cm², shelter 3, 20 K, 4 m/s`,
      quantity: 'infiltration',
      reference,
      ours: litresPerSecond(storeys, 3, 500, 20, 4),
      allowed: ALLOWED.flowLs,
      unit: 'L/s',
      mark: 'computed',
    });
  }
});

test('a blower-door number becomes flow at 50 and 4 Pa and a leakage area', () => {
  const row = { source: SOURCE, case: '250 m³, 5 ACH50, n 0.65', mark: 'computed' } as const;
  const flow = (pressurePa: number) => leakageFlow(250, 5, 0.65, pressurePa);
  check({
    ...row,
    quantity: 'flow at 50 Pa',
    reference: 0.3472,
    ours: flow(50),
    allowed: ALLOWED.flowM3S,
    unit: 'm³/s',
  });
  check({
    ...row,
    quantity: 'flow at 4 Pa',
    reference: 0.0672,
    ours: flow(4),
    allowed: ALLOWED.flowM3S,
    unit: 'm³/s',
  });
  check({
    ...row,
    quantity: 'leakage area',
    reference: 260.4,
    ours: 1e4 * leakageAreaM2(250, 5, 0.65),
    allowed: ALLOWED.areaCm2,
    unit: 'cm²',
  });
});
