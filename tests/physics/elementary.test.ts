// Sine, exponential and their kin beside the engine's own functions, which are within a unit or so of the last digit.
import { expect, test } from 'vitest';
import { acos, asin, atan2, cos, exp, expm1, log, power, sin, tan } from '../../src/physics/elementary.ts';

const SAMPLES = 20_000;

/** Largest error over an interval: of the value itself, or beside 1. */
function worst(
  ours: (x: number) => number,
  theirs: (x: number) => number,
  [low, high]: readonly [number, number],
  beside: 'itself' | 'one' = 'itself',
): number {
  let most = 0;
  for (let i = 0; i <= SAMPLES; i++) {
    // Steps of the golden section fill an interval and meet no period.
    const x = low + (high - low) * ((i * 0.6180339887498949) % 1);
    const reference = theirs(x);
    const error =
      Math.abs(ours(x) - reference) / (beside === 'one' || reference === 0 ? 1 : Math.abs(reference));
    // A value that is no number is no small error.
    if (!(error <= most)) most = error;
  }
  return most;
}

test('sine and cosine are within 3e-16 of the engine’s, near nothing and after a hundred thousand turns', () => {
  for (const range of [
    [-7, 7],
    [-1e6, 1e6],
  ] as const) {
    expect(worst(sin, Math.sin, range, 'one')).toBeLessThan(3e-16);
    expect(worst(cos, Math.cos, range, 'one')).toBeLessThan(3e-16);
  }
  expect(worst(sin, Math.sin, [-1e-3, 1e-3])).toBeLessThan(3e-16);
  expect(worst(tan, Math.tan, [-1.5, 1.5])).toBeLessThan(6e-16);
  expect(() => sin(2e6)).toThrow('angle is 2000000 rad');
});

test('arcs are within 1e-15 of the engine’s, in every quadrant and at its edges', () => {
  expect(worst(asin, Math.asin, [-1, 1])).toBeLessThan(1e-15);
  expect(worst(acos, Math.acos, [-1, 1])).toBeLessThan(1e-15);
  for (const x of [-2, -0.3, 0.3, 2]) {
    const ours = (y: number) => atan2(y, x);
    expect(worst(ours, (y) => Math.atan2(y, x), [-3, 3])).toBeLessThan(1e-15);
  }
  for (const [y, x] of [
    [0, 1],
    [1, 0],
    [0, -1],
    [-1, 0],
    [0, 0],
  ] as const)
    expect(atan2(y, x)).toBeCloseTo(Math.atan2(y, x), 15);
  expect(acos(-1)).toBe(Math.PI);
  expect(asin(1)).toBe(Math.PI / 2);
});

test('exponential and logarithm are within a few units of the last digit over all that a double holds', () => {
  expect(worst(exp, Math.exp, [-40, 40])).toBeLessThan(4e-16);
  expect(worst(exp, Math.exp, [-700, 709])).toBeLessThan(4e-16);
  expect(worst(expm1, Math.expm1, [-5, 5])).toBeLessThan(7e-16);
  expect(worst(expm1, Math.expm1, [-1e-6, 1e-6])).toBeLessThan(5e-16);
  expect(worst(log, Math.log, [1e-12, 1e3])).toBeLessThan(4e-16);
  expect(worst(log, Math.log, [0.5, 2])).toBeLessThan(4e-16);
  for (const x of [5e-324, 1e-310, 2.3e-308, 1, 1.7e308]) expect(log(x)).toBeCloseTo(Math.log(x), 12);
});

test('what has no finite answer says so as the engine does', () => {
  expect([exp(-1000), exp(Number.NEGATIVE_INFINITY), exp(1000)]).toEqual([0, 0, Number.POSITIVE_INFINITY]);
  // The smallest powers of e that are told at all are those of the smallest doubles.
  expect(exp(-743.9)).toBeGreaterThan(0);
  expect(exp(-744.9)).toBe(0);
  expect([log(0), log(Number.POSITIVE_INFINITY)]).toEqual([
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ]);
  for (const none of [log(-1), log(Number.NaN), exp(Number.NaN), sin(Number.NaN)]) expect(none).toBeNaN();
});

test('powers are as near as their logarithm lets them be, and whole ones are products', () => {
  for (const exponent of [0.2, 1 / 3, 4 / 3, 1.1, -1.6364, 3.4]) {
    const allowed = 3e-16 * (1 + Math.abs(exponent * Math.log(1e-3)));
    expect(
      worst(
        (x) => power(x, exponent),
        (x) => x ** exponent,
        [1e-3, 1e3],
      ),
    ).toBeLessThan(allowed);
  }
  expect(power(-3, 3)).toBe(-27);
  expect(power(2, -4)).toBe(1 / 16);
  expect([power(0, 0.3), power(0, 0), power(7, 0)]).toEqual([0, 1, 1]);
});
