import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  doorwayExchange,
  exchangeHeat,
  exchangeVapour,
  pairedVentExchange,
} from '../../src/physics/doorway.ts';
import { effectiveArea, singleSidedStackFlow, stackFlow } from '../../src/physics/openings.ts';

const temp = fc.double({ min: -20, max: 60, noNaN: true });

test('a doorway between equally warm zones exchanges nothing', () => {
  expect(doorwayExchange(0.9, 2, 21, 21, 0.61)).toBe(0);
  expect(pairedVentExchange(0.3, 0.4, 2.4, 21, 21, 0.61)).toBe(0);
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

test('paired vents exchange what a two-opening stack passes', () => {
  expect(pairedVentExchange(0.3, 0.4, 2.4, 30, 20, 0.61)).toBe(
    stackFlow(effectiveArea(0.3, 0.4), 2.4, 30, 20, 0.61),
  );
});

test('doorway heat grows as the temperature difference to the power 1.5', () => {
  const heatAt = (rise: number) =>
    exchangeHeat(
      doorwayExchange(0.9, 2, 20 + rise / 2, 20 - rise / 2, 0.61),
      20 + rise / 2,
      20 - rise / 2,
      1206,
    );
  expect(heatAt(8) / heatAt(2)).toBeCloseTo(8, 9);
});

test('heat and vapour leave the fuller zone and the two zones agree on how much', () => {
  fc.assert(
    fc.property(temp, temp, (t1, t2) => {
      const flow = doorwayExchange(0.9, 2, t1, t2, 0.61);
      expect(exchangeHeat(flow, t1, t2, 1206)).toBeCloseTo(-exchangeHeat(flow, t2, t1, 1206), 9);
      expect(exchangeHeat(flow, t1, t2, 1206) * (t1 - t2)).toBeGreaterThanOrEqual(0);
    }),
  );
  expect(exchangeVapour(0.2, 15, 9)).toBeCloseTo(1.2, 12);
  expect(exchangeVapour(0.2, 9, 15)).toBeCloseTo(-1.2, 12);
});
