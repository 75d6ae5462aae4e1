import { expect, test } from 'vitest';
import { createTemperatureSearch } from '../../../src/network/air/temperature-search.ts';
import { USUAL_CAPACITY } from '../../../src/network/layout/engine-capacity.ts';

/** Trials until the search agrees with itself, and where. */
function search(zones: number, startC: readonly number[], answer: (trialC: Float64Array) => number[]) {
  const trialC = Float64Array.from(startC);
  const answerC = new Float64Array(zones);
  const found = createTemperatureSearch(USUAL_CAPACITY, trialC, answerC);
  found.load(zones);
  found.begin();
  for (let trials = 1; trials <= 60; trials++) {
    answerC.set(answer(trialC));
    if (found.converged()) return { trials, trialC };
  }
  throw new Error(`no agreement; last trial ${[...trialC]}`);
}

test('a zone whose air leaves by buoyancy: the root of a closed form', () => {
  // Warm by 10 K less what leaves, over outdoors at 0 °C: the trial t must meet t + 2 t^1.5 = 10.
  const { trialC } = search(1, [12], ([t]) => [10 - 2 * Math.max(0, t!) ** 1.5]);
  const t = trialC[0]!;
  expect(t + 2 * t ** 1.5).toBeCloseTo(10, 1);
  expect(Math.abs(10 - 2 * t ** 1.5 - t)).toBeLessThan(1e-3);
});

test('two zones that share a doorway agree in both', () => {
  const answer = (trial: Float64Array) => {
    const flow = 3 * Math.sqrt(Math.abs(trial[0]! - trial[1]!));
    // Both relax toward their own 30 and 18 °C and toward each other by the flow: a two by two system, solved exactly.
    const [a, b, c, d] = [1 + flow, -flow, -flow, 1 + flow];
    const determinant = a * d - b * c;
    return [(30 * d - b * 18) / determinant, (a * 18 - c * 30) / determinant];
  };
  const { trialC, trials } = search(2, [28, 20], answer);
  answer(trialC).forEach((value, z) => {
    // What the search calls agreement [K].
    expect(Math.abs(value - trialC[z]!)).toBeLessThan(1e-2);
  });
  // Both ends lose and gain alike: their mean stays.
  expect((trialC[0]! + trialC[1]!) / 2).toBeCloseTo(24, 2);
  expect(trials).toBeLessThan(12);
});

test('an opener so strong that a trial overshoots tenfold still comes to rest', () => {
  const { trialC } = search(1, [20], ([t]) => [40 - 25 * Math.min(1, Math.max(0, t! - 26))]);
  expect(trialC[0]).toBeCloseTo(26 + 14 / 26, 2);
});
