// Hourly means of readings of a moment against means in truth: the trapezoidal rule blunts a wave, and the computed house is
// blunted alike. The truth is a wave whose mean over each hour is known from its integral.
import { expect, test } from 'vitest';
import { asJoined } from '../../src/matching/house-record.ts';
import { hourlyFromMoments } from '../../src/weather/real/hourly-means.ts';

const HOUR = 3_600_000;
const hours = 96;

/** A wave of so many hours: its value at a time [h], and its mean from one time to another. */
function wave(period: number) {
  const turn = (2 * Math.PI) / period;
  return {
    at: (time: number) => Math.sin(turn * time + 0.4),
    mean: (from: number, to: number) =>
      (Math.cos(turn * from + 0.4) - Math.cos(turn * to + 0.4)) / (turn * (to - from)),
  };
}

test.each([
  [12, 60, 0],
  [12, 60, 30],
  [6, 60, 0],
  [6, 30, 10],
  [6, 10, 5],
])('a wave of %d h read every %d minutes from minute %d on', (period, stepMin, fromMin) => {
  const { at, mean } = wave(period);
  const count = (hours * 60) / stepMin;
  const ms = Float64Array.from({ length: count }, (_, i) => (fromMin + i * stepMin) * 60_000);
  const joined = hourlyFromMoments(
    ms,
    ms.map((moment) => at(moment / HOUR)),
    stepMin * 60_000,
    { startMs: 0, hours },
  );
  const means = Float64Array.from({ length: hours }, (_, hour) => mean(hour, hour + 1));
  const computed = asJoined(means, stepMin / 60);
  const worst = (of: Float64Array) =>
    Math.max(...Array.from({ length: hours - 6 }, (_, i) => Math.abs(joined[i + 3]! - of[i + 3]!)));
  // What is left is of the fourth order in step and wave.
  expect(worst(computed)).toBeLessThan(0.15 * worst(means) + 2e-4);
});
