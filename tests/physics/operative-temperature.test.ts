import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  airWeight,
  operativeTemperature,
  sunOnPerson,
  weightedOperative,
} from '../../src/physics/operative-temperature.ts';

const temp = fc.double({ min: -10, max: 50, noNaN: true });

test('operative temperature lies between air and surfaces, and equal coefficients give their mean', () => {
  fc.assert(
    fc.property(temp, temp, fc.double({ min: 0.5, max: 10, noNaN: true }), (air, radiant, convection) => {
      const operative = operativeTemperature(air, radiant, convection, 4.7);
      expect(operative).toBeGreaterThanOrEqual(Math.min(air, radiant) - 1e-9);
      expect(operative).toBeLessThanOrEqual(Math.max(air, radiant) + 1e-9);
      expect(operativeTemperature(air, radiant, 4.7, 4.7)).toBeCloseTo((air + radiant) / 2, 9);
      expect(weightedOperative(air, radiant, 0.5)).toBeCloseTo((air + radiant) / 2, 9);
    }),
  );
});

test('the air weighs 0.5, 0.6 and 0.7 as it moves faster (ASHRAE 55)', () => {
  expect([0, 0.19, 0.2, 0.59, 0.6, 1].map(airWeight)).toEqual([0.5, 0.5, 0.6, 0.6, 0.7, 0.7]);
  expect(() => airWeight(2)).toThrow(/airSpeed is 2/);
});

test('no sun adds nothing, and full winter sun through glass adds several kelvin', () => {
  expect(sunOnPerson(0, 0, 0.25, 0.5)).toBe(0);
  const rise = sunOnPerson(500, 80, 0.25, 0.5);
  expect(rise).toBeGreaterThan(5);
  expect(rise).toBeLessThan(20);
  expect(sunOnPerson(800, 80, 0.25, 0.5)).toBeGreaterThan(rise);
  expect(() => sunOnPerson(500, 80, 0.9, 0.5)).toThrow(/projectedShare is 0.9/);
});
