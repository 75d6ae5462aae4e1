import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  crackFlow,
  leakageAreaM2,
  leakageFlow,
  type ShelterClass,
  type Storeys,
  stackCoefficient,
  windCoefficient,
} from '../../src/physics/leakage.ts';

const STOREYS: readonly Storeys[] = [1, 2, 3];
const SHELTERS: readonly ShelterClass[] = [1, 2, 3, 4, 5];

test('at 50 Pa the power law returns the blower-door number itself', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      (volume, ach50, exponent) => {
        expect((leakageFlow(volume, ach50, exponent, 50) * 3600) / volume).toBeCloseTo(ach50, 9);
        expect(leakageFlow(volume, ach50, exponent, -50)).toBe(leakageFlow(volume, ach50, exponent, 50));
      },
    ),
  );
});

test('a leakage area with discharge coefficient 1 leaks at 4 Pa what the power law says', () => {
  const area = leakageAreaM2(250, 5, 0.65);
  expect(area * Math.sqrt((2 * 4) / 1.2)).toBeCloseTo(leakageFlow(250, 5, 0.65, 4), 12);
});

test('cracks pass nothing without wind and temperature difference', () => {
  expect(crackFlow(500, 0.00029, 0.000231, 0, 0)).toBe(0);
  expect(crackFlow(0, 0.00029, 0.000231, 30, 8)).toBe(0);
});

test('infiltration is the same whichever side is warm, and grows with wind and temperature difference', () => {
  const amount = fc.double({ min: 0, max: 60, noNaN: true });
  fc.assert(
    fc.property(amount, amount, amount, (deltaTemp, wind, more) => {
      const flow = crackFlow(400, 0.000145, 0.000174, deltaTemp, wind);
      expect(crackFlow(400, 0.000145, 0.000174, -deltaTemp, wind)).toBe(flow);
      expect(crackFlow(400, 0.000145, 0.000174, deltaTemp + more, wind)).toBeGreaterThanOrEqual(flow);
      expect(crackFlow(400, 0.000145, 0.000174, deltaTemp, wind + more)).toBeGreaterThanOrEqual(flow);
    }),
  );
});

test('a taller house leaks more by both causes and each step of shelter takes wind away', () => {
  let compared = 0;
  for (const shelter of SHELTERS) {
    for (const storeys of STOREYS) {
      if (storeys > 1) {
        const lower = (storeys - 1) as Storeys;
        expect(windCoefficient(storeys, shelter)).toBeGreaterThan(windCoefficient(lower, shelter));
        expect(stackCoefficient(storeys)).toBeGreaterThan(stackCoefficient(lower));
        compared += 1;
      }
      if (shelter > 1) {
        const open = windCoefficient(storeys, (shelter - 1) as ShelterClass);
        expect(windCoefficient(storeys, shelter)).toBeLessThan(open);
        compared += 1;
      }
    }
  }
  expect(compared).toBe(22);
});

test('the stack coefficient is proportional to the number of storeys, as the stack pressure is', () => {
  for (const storeys of STOREYS) expect(stackCoefficient(storeys)).toBeCloseTo(0.000145 * storeys, 12);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => leakageAreaM2(-1, 5, 0.65)).toThrow(/volumeM3 is -1/);
  expect(() => leakageAreaM2(250, 5, 0.4)).toThrow(/exponent is 0.4/);
  expect(() => leakageFlow(250, Number.NaN, 0.65, 4)).toThrow(/ach50 is NaN/);
  expect(() => stackCoefficient(4 as Storeys)).toThrow(/storeys is 4/);
  expect(() => windCoefficient(1, 0 as ShelterClass)).toThrow(/shelter is 0/);
});
