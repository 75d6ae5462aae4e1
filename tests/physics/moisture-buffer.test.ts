import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  BUFFER_FINISHES,
  bufferCapacity,
  bufferedWater,
  idealBufferValue,
  penetrationDepth,
} from '../../src/physics/moisture-buffer.ts';

test('every finish names a value inside its range, and its source', () => {
  expect(BUFFER_FINISHES).toHaveLength(9);
  for (const { value, range, source } of BUFFER_FINISHES) {
    expect(value).toBeGreaterThanOrEqual(range[0]);
    expect(value).toBeLessThanOrEqual(range[1]);
    expect(source.length).toBeGreaterThan(10);
  }
});

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

test('depth and ideal value describe one diffusion: their ratio does not depend on the material', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-12, max: 1e-10, noNaN: true }),
      fc.double({ min: 1, max: 100, noNaN: true }),
      (permeability, capacity) => {
        const depth = penetrationDepth(permeability, capacity, 2337, 86400);
        const value = idealBufferValue(permeability, capacity, 2337, 86400);
        expect(value / (1000 * 0.01 * capacity * depth)).toBeCloseTo(0.568 * Math.sqrt(Math.PI), 9);
      },
    ),
  );
});

test('a slower cycle reaches deeper and a larger area holds more', () => {
  expect(penetrationDepth(2e-11, 30, 2337, 7 * 86400)).toBeCloseTo(
    Math.sqrt(7) * penetrationDepth(2e-11, 30, 2337, 86400),
    9,
  );
  expect(bufferedWater(20, 1.5, 0.4)).toBeCloseTo(2 * bufferedWater(10, 1.5, 0.4), 9);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => bufferedWater(10, 1, 20)).toThrow(/humiditySwing is 20/);
  expect(() => bufferCapacity(1, 0)).toThrow(/timeConstantH is 0/);
  expect(() => penetrationDepth(0, 30, 2337, 86400)).toThrow(/permeability is 0/);
});
