import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  enUpperLimit,
  runningMeanNext,
  runningMeanStart,
  runningMeans,
} from '../../src/physics/adaptive-comfort.ts';

const temp = fc.double({ min: -20, max: 40, noNaN: true });

test('steady weather is its own running mean', () => {
  fc.assert(
    fc.property(temp, (t) => {
      expect(runningMeanStart(Array.from({ length: 7 }, () => t))).toBeCloseTo(t, 9);
      expect(runningMeanNext(t, t, 0.8)).toBeCloseTo(t, 9);
    }),
  );
});

test('the running mean of a year starts from its own last week and takes each day in a day late', () => {
  const days = Array.from(
    { length: 365 },
    (_, day) => 10 + 8 * Math.sin((day / 365) * 2 * Math.PI) + (day % 5),
  );
  const means = runningMeans(days);
  expect(means).toHaveLength(365);
  expect(means[0]).toBeCloseTo(runningMeanStart(days.slice(-7).reverse()), 12);
  expect(means[1]).toBeCloseTo(0.2 * days[0]! + 0.8 * means[0]!, 12);
  const changed = [...days];
  changed[100] = 60;
  expect(runningMeans(changed)[100]).toBe(means[100]);
  expect(runningMeans(changed)[101]).toBeGreaterThan(means[101]!);
});

test('the start weights are the powers of 0.8 as the standard rounds them', () => {
  const one = (i: number) => runningMeanStart(Array.from({ length: 7 }, (_, k) => (k === i ? 3.8 : 0)));
  [1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2].forEach((weight, i) => {
    expect(one(i)).toBeCloseTo(weight, 12);
    expect(Math.abs(weight - 0.8 ** i)).toBeLessThan(0.065);
  });
});

test('stricter categories have lower limits', () => {
  fc.assert(
    fc.property(temp, (t) => {
      expect(enUpperLimit(t, 'I')).toBeLessThan(enUpperLimit(t, 'II'));
      expect(enUpperLimit(t, 'II')).toBeLessThan(enUpperLimit(t, 'III'));
    }),
  );
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => runningMeanStart([20, 21])).toThrow(/previousDaysC.length is 2/);
});
