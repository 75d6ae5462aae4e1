// Sources: Alamdari and Hammond 1983. Formulas from memory, high confidence; values computed from them independently for a difference of 5 K.
// Leaning faces: ASHRAE Fundamentals, surface conductances of still air at 45°, less the radiation of 0.9 · 5.7 W/(m²K)
// in them; ISO 15099, 8.3.2.2, a warm plate facing down. Both from memory, high confidence.
import { expect, test } from 'vitest';
import { alamdariHammond, inclinedConvection } from '../../src/physics/convection.ts';
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

/** A table of one figure for all sizes and differences, against a rule that knows both. */
const STILL_AIR_REL = 0.25;
/** Laminar in the standard; partly turbulent here, where the angle counts a little more. */
const PLATE_REL = 0.03;

test('convection of leaning faces', () => {
  const at = (tilt: number, difference: number) => inclinedConvection(tilt, difference, 2.5, 4);
  const radiation = 0.9 * 5.7;
  const still = { flatUp: 9.26, leaningUp: 9.09, upright: 8.29, leaningDown: 7.5 };
  const up = (still.leaningUp - radiation) / (still.flatUp - radiation);
  const down = (still.leaningDown - radiation) / (still.upright - radiation);
  const sine = (tilt: number) => Math.sin((tilt * Math.PI) / 180) ** 0.25;
  const rows = [
    ['ASHRAE Fundamentals, still air', '45°, heat up, to level', up, at(45, 5.5) / at(0, 5.5), STILL_AIR_REL],
    [
      'ASHRAE Fundamentals, still air',
      '45°, heat down, to upright',
      down,
      at(135, 5.5) / at(90, 5.5),
      STILL_AIR_REL,
    ],
    ['ISO 15099:2003', 'warm, facing down at 120°, to upright', sine(120), at(120, 5) / at(90, 5), PLATE_REL],
    ['ISO 15099:2003', 'warm, facing down at 135°, to upright', sine(135), at(135, 5) / at(90, 5), PLATE_REL],
  ] as const;
  expect(rows).toHaveLength(4);
  for (const [source, name, reference, ours, allowed] of rows) {
    check({
      source,
      case: name,
      quantity: 'convective coefficient, ratio',
      reference,
      ours,
      allowed,
      kind: 'rel',
      unit: '',
      mark: 'memory',
    });
  }
});
