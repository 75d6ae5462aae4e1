// Temperature factor of corners against ISO 13788's plain-area values (fRsi = 1 − U · 0.25), less the junction's penalty.
import { expect, test } from 'vitest';
import { cornerFactor } from '../../src/model/corner-factor.ts';

/** U-value → plain fRsi, worked by hand. */
const PLAIN = [
  [0.3, 0.925],
  [0.5, 0.875],
  [1.0, 0.75],
] as const;

test('a corner is a tenth colder than the plain wall', () => {
  for (const [uValue, plain] of PLAIN) expect(cornerFactor(1 / uValue - 0.17)).toBeCloseTo(plain - 0.1, 9);
});

test('no wall makes a corner better than 0.95 or worse than 0.5', () => {
  expect(cornerFactor(0)).toBe(0.5);
  expect(cornerFactor(1000)).toBeCloseTo(0.9, 3);
  expect(cornerFactor(1000)).toBeLessThanOrEqual(0.95);
});
