// Sources: Alamdari and Hammond 1983; turbulent ASHRAE correlations (US government manual, 1983). Formulas from memory,
// high confidence; values computed from them independently for a difference of 5 K.
import { expect, test } from 'vitest';
import { alamdariHammond, turbulentConvection } from '../../src/physics/convection.ts';
import { check } from './ledger.ts';

test('convection at 5 K, both sets', () => {
  const rows = [
    ['Alamdari-Hammond 1983', 'vertical, L 2.5 m', 2.217, alamdariHammond('vertical', 5, 2.5)],
    ['Alamdari-Hammond 1983', 'unstable, D 4 m', 2.798, alamdariHammond('unstable', 5, 4)],
    ['Alamdari-Hammond 1983', 'stable, D 4 m', 0.475, alamdariHammond('stable', 5, 4)],
    ['Turbulent convection, 1983', 'upright', 2.24, turbulentConvection(90, 5)],
    ['Turbulent convection, 1983', '60°, unstable', 2.406, turbulentConvection(60, 5)],
    ['Turbulent convection, 1983', '60°, stable', 1.645, turbulentConvection(60, -5)],
    ['Turbulent convection, 1983', '30°, unstable', 2.545, turbulentConvection(30, 5)],
    ['Turbulent convection, 1983', '30°, stable', 1.377, turbulentConvection(30, -5)],
    ['Turbulent convection, 1983', 'flat, unstable', 2.599, turbulentConvection(0, 5)],
    ['Turbulent convection, 1983', 'flat, stable', 1.299, turbulentConvection(0, -5)],
    ['Turbulent convection, 1983', 'warm ceiling', 1.299, turbulentConvection(180, 5)],
  ] as const;
  expect(rows).toHaveLength(11);
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
