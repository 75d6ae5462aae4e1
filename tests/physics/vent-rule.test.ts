import fc from 'fast-check';
import { expect, test } from 'vitest';
import { effectiveArea, stackFlow } from '../../src/physics/openings.ts';
import { flowForRise, ventAreaForRise, ventedRise } from '../reference/vent-rule.ts';

const heat = fc.double({ min: 100, max: 5e4, noNaN: true });
const height = fc.double({ min: 0.5, max: 6, noNaN: true });

test('area for a rise and rise for an area undo each other', () => {
  fc.assert(
    fc.property(heat, height, fc.double({ min: 0.5, max: 40, noNaN: true }), (q, h, rise) => {
      const area = ventAreaForRise(q, rise, h, 0.61, 308);
      expect(ventedRise(q, area, h, 0.61, 308)).toBeCloseTo(rise, 8);
    }),
  );
});

test('at the rise it names, the stack flow of the two vents carries the heat off', () => {
  const rise = ventedRise(6720, 1.5, 2.5, 0.61, 308);
  const warm = 308 - 273.15 + rise / 2;
  const flow = stackFlow(effectiveArea(1.5, 1.5), 2.5, warm, warm - rise, 0.61);
  expect(flow).toBeCloseTo(flowForRise(6720, rise), 9);
});

test('more vent or more height means less rise, more heat means more', () => {
  fc.assert(
    fc.property(heat, height, fc.double({ min: 0.1, max: 5, noNaN: true }), (q, h, area) => {
      const rise = ventedRise(q, area, h, 0.61, 308);
      expect(ventedRise(q, area * 1.5, h, 0.61, 308)).toBeLessThan(rise);
      expect(ventedRise(q, area, h * 1.5, 0.61, 308)).toBeLessThan(rise);
      expect(ventedRise(q * 1.5, area, h, 0.61, 308)).toBeGreaterThan(rise);
    }),
  );
});

test('no heat means no rise, and a vent that is not there is refused', () => {
  expect(ventedRise(0, 1, 2.5, 0.61, 308)).toBe(0);
  expect(() => ventedRise(5000, 0, 2.5, 0.61, 308)).toThrow(/ventAreaM2 is 0/);
  expect(() => ventAreaForRise(5000, 0, 2.5, 0.61, 308)).toThrow(/riseK is 0/);
  expect(() => ventedRise(5000, 1, 2.5, 0.61, 35)).toThrow(/airTempK is 35/);
});
