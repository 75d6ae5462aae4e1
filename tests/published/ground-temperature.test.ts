// Source: Kusuda and Achenbach 1965 (from memory, high confidence): damping and lag at six depths, computed independently
// for 0.05 m²/day.
import { expect, test } from 'vitest';
import { annualDampingDepth, annualWave } from '../../src/physics/ground-temperature.ts';
import { check } from './ledger.ts';

const DIFFUSIVITY = 0.05;

test('damping and lag at six depths', () => {
  const rows = [
    [0, 1.0, 0],
    [1, 0.6604, 24.1],
    [2, 0.4361, 48.2],
    [3, 0.288, 72.3],
    [5, 0.1256, 120.5],
    [10, 0.0158, 241.0],
  ] as const;
  expect(rows).toHaveLength(6);
  const base = { source: 'Kusuda-Achenbach 1965', mark: 'computed' } as const;
  check({
    ...base,
    case: 'clay',
    quantity: 'damping depth',
    reference: 2.41,
    ours: annualDampingDepth(DIFFUSIVITY),
    allowed: 0.001,
    unit: 'm',
  });
  for (const [depth, damping, lag] of rows) {
    const wave = annualWave(DIFFUSIVITY, depth);
    check({
      ...base,
      case: `${depth} m`,
      quantity: 'damping',
      reference: damping,
      ours: wave.damping,
      allowed: 0.0001,
      unit: '',
    });
    check({
      ...base,
      case: `${depth} m`,
      quantity: 'lag',
      reference: lag,
      ours: wave.lagDays,
      allowed: 0.06,
      unit: 'day',
    });
  }
});
