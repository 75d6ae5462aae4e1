import { expect, test } from 'vitest';
import { heatBand, heatIndex } from '../../src/physics/heat-index.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

test('bands begin at 80, 90, 103 and 125 °F', () => {
  const bands = [79.9, 80.1, 89.9, 90.1, 102.9, 103.1, 124.9, 125.1].map((f) => heatBand(celsius(f)));
  expect(bands).toEqual([
    'none',
    'caution',
    'caution',
    'extreme caution',
    'extreme caution',
    'danger',
    'danger',
    'extreme danger',
  ]);
});

test('damper air feels hotter from 27 to 43 °C', () => {
  let compared = 0;
  for (let temp = 28; temp <= 43; temp += 3) {
    for (let humidity = 0.4; humidity < 0.75; humidity += 0.05) {
      expect(heatIndex(temp, humidity + 0.05)).toBeGreaterThan(heatIndex(temp, humidity));
      compared += 1;
    }
  }
  expect(compared).toBe(42);
});

test('hotter air feels hotter at any humidity', () => {
  for (const humidity of [0.2, 0.4, 0.6]) {
    for (let temp = 5; temp < 43; temp += 1) {
      expect(heatIndex(temp + 1, humidity)).toBeGreaterThan(heatIndex(temp, humidity));
    }
  }
});

test('dry heat is corrected down, and in the cold the index is the air itself', () => {
  expect(heatIndex(38, 0.05)).toBeLessThan(38);
  expect(heatIndex(-10, 0.8)).toBe(-10);
  expect(() => heatIndex(30, 60)).toThrow(/relativeHumidity is 60/);
});
