import { expect, test } from 'vitest';
import { bufferCapacity } from '../../src/physics/moisture-buffer.ts';

test('the one-node buffer, driven by the wave of the test, swings by the buffer value', () => {
  for (const [value, timeConstant] of [
    [1, 3],
    [1.6, 6],
    [0.5, 1],
    [2.4, 12],
  ] as const) {
    const capacity = bufferCapacity(value, timeConstant);
    let humidity = 0.5;
    let [low, high] = [1, 0];
    for (let day = 0; day < 60; day++) {
      for (const [hours, room] of [
        [8, 0.75],
        [16, 0.33],
      ] as const) {
        humidity = room + (humidity - room) * Math.exp(-hours / timeConstant);
        if (day === 59) [low, high] = [Math.min(low, humidity), Math.max(high, humidity)];
      }
    }
    expect(capacity * (high - low)).toBeCloseTo(value * 42, 9);
  }
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => bufferCapacity(1, 0)).toThrow(/timeConstantH is 0/);
});
