import { expect, test } from 'vitest';
import {
  clearestDay,
  dailyClearnessOfMonth,
  distributionShape,
  hourlyClearness,
} from '../../../src/weather/synthetic/daily-clearness.ts';

/** Herzog's fit to the distribution's parameter, Duffie and Beckman, equations 2.9.6 and 2.9.7 (from memory, high). */
function herzog(mean: number): number {
  const [low, high] = [0.05, clearestDay(mean)];
  const xi = (high - low) / (high - mean);
  return -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (high - low);
}

test.each([0.3, 0.4, 0.5, 0.6, 0.7])(
  'the exact parameter agrees with the published fit at mean clearness %f',
  (mean) => {
    // The fit was made for 0.3 to 0.7; its own error in γ is a few per cent of the span of −6 to 20.
    expect(Math.abs(distributionShape(mean) - herzog(mean))).toBeLessThan(0.8);
  },
);

test.each([0.12, 0.3, 0.45, 0.6, 0.72])(
  'thirty days at mean clearness %f average to it and none is clearer than the clearest',
  (mean) => {
    const order = Float64Array.from({ length: 30 }, (_, i) => Math.sin(7 * i));
    const days = dailyClearnessOfMonth(mean, order);
    expect(Math.abs(days.reduce((a, b) => a + b, 0) / 30 - mean)).toBeLessThan(0.012);
    expect(Math.max(...days)).toBeLessThanOrEqual(clearestDay(mean));
    expect(Math.min(...days)).toBeGreaterThanOrEqual(0.05);
  },
);

test('the day with the highest order gets the clearest sky', () => {
  const days = dailyClearnessOfMonth(0.5, Float64Array.from([0.3, -1, 2, 0]));
  expect(Array.from(days).indexOf(Math.max(...days))).toBe(2);
  expect(Array.from(days).indexOf(Math.min(...days))).toBe(1);
});

test('clearness of a clear day rises with the sun; a half-clear day scatters most', () => {
  const clear = hourlyClearness(0.75);
  expect(clear.mean(0.9)).toBeGreaterThan(clear.mean(0.2));
  expect(hourlyClearness(0.4).deviation(0.7)).toBeGreaterThan(hourlyClearness(0.75).deviation(0.7));
  expect(hourlyClearness(0.4).deviation(0.7)).toBeGreaterThan(hourlyClearness(0.05).deviation(0.7));
});
