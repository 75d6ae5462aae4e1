import fc from 'fast-check';
import { expect, test } from 'vitest';
import { doorwayExchange } from '../../src/physics/doorway.ts';
import { singleSidedStackFlow } from '../../src/physics/openings.ts';

const temp = fc.double({ min: -20, max: 60, noNaN: true });

test('a doorway between equally warm zones exchanges nothing', () => {
  expect(doorwayExchange(0.9, 2, 21, 21, 0.61)).toBe(0);
});

test('it does not matter which side of a doorway is the warm one', () => {
  fc.assert(
    fc.property(temp, temp, (t1, t2) => {
      expect(doorwayExchange(0.9, 2, t1, t2, 0.61)).toBe(doorwayExchange(0.9, 2, t2, t1, 0.61));
    }),
  );
});

test('doorway flow is the integral of Bernoulli speed over the upper half of the door', () => {
  const [width, height, warm, cool] = [0.9, 2.0, 28, 18];
  const mean = (warm + cool) / 2 + 273.15;
  const strips = 20000;
  let flow = 0;
  for (let i = 0; i < strips; i++) {
    const z = ((i + 0.5) / strips) * (height / 2);
    flow += 0.61 * width * Math.sqrt((2 * 9.81 * z * (warm - cool)) / mean) * (height / 2 / strips);
  }
  expect(doorwayExchange(width, height, warm, cool, 0.61)).toBeCloseTo(flow, 5);
});

test('a doorway is a single tall opening', () => {
  expect(doorwayExchange(0.9, 2, 27, 19, 0.61)).toBeCloseTo(singleSidedStackFlow(1.8, 2, 27, 19, 0.61), 12);
});

test('doorway heat grows as the temperature difference to the power 1.5', () => {
  const heatAt = (rise: number) => rise * doorwayExchange(0.9, 2, 20 + rise / 2, 20 - rise / 2, 0.61);
  expect(heatAt(8) / heatAt(2)).toBeCloseTo(8, 9);
});
