// Source: Alamdari and Hammond 1983. Formulas from memory, high confidence; values computed from them independently for a difference of 5 K.
import { expect, test } from 'vitest';
import { alamdariHammond } from '../../src/physics/convection.ts';
import { check } from './ledger.ts';

test('convection at 5 K', () => {
  const rows = [
    ['Alamdari-Hammond 1983', 'vertical, L 2.5 m', 2.217, alamdariHammond('vertical', 5, 2.5)],
    ['Alamdari-Hammond 1983', 'unstable, D 4 m', 2.798, alamdariHammond('unstable', 5, 4)],
    ['Alamdari-Hammond 1983', 'stable, D 4 m', 0.475, alamdariHammond('stable', 5, 4)],
  ] as const;
  expect(rows).toHaveLength(3);
  for (const [source, name, reference, ours] of rows) {
    check({
      source,
      case: name,
      quantity: 'convective coefficient',
      reference,
      ours,
      allowed: 0.002,
      unit: 'W/m²K',
      mark: 'computed',
    });
  }
});
