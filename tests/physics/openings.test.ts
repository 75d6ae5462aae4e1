import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  combinedQuadrature,
  effectiveArea,
  singleSidedStackFlow,
  stackFlow,
} from '../../src/physics/openings.ts';

const temp = fc.double({ min: -30, max: 60, noNaN: true });
const area = fc.double({ min: 0, max: 20, noNaN: true });
const height = fc.double({ min: 0, max: 8, noNaN: true });

test('nothing flows without a temperature difference, a height or an area', () => {
  expect(stackFlow(1, 2, 20, 20, 0.61)).toBe(0);
  expect(stackFlow(1, 0, 30, 20, 0.61)).toBe(0);
  expect(stackFlow(0, 2, 30, 20, 0.61)).toBe(0);
  expect(singleSidedStackFlow(1, 2, 20, 20, 0.61)).toBe(0);
});

test('stack flow is the same when inside and outside trade places', () => {
  fc.assert(
    fc.property(area, height, temp, temp, (a, h, t1, t2) => {
      expect(stackFlow(a, h, t1, t2, 0.61)).toBe(stackFlow(a, h, t2, t1, 0.61));
      expect(singleSidedStackFlow(a, h, t1, t2, 0.61)).toBe(singleSidedStackFlow(a, h, t2, t1, 0.61));
    }),
  );
});

test('stack flow grows with the warmth inside, the height and the area', () => {
  const more = fc.double({ min: 0, max: 10, noNaN: true });
  fc.assert(
    fc.property(area, height, temp, more, more, (a, h, out, rise, extra) => {
      const flow = stackFlow(a, h, out + rise, out, 0.61);
      expect(stackFlow(a, h, out + rise + extra, out, 0.61)).toBeGreaterThanOrEqual(flow);
      expect(stackFlow(a, h + extra, out + rise, out, 0.61)).toBeGreaterThanOrEqual(flow);
      expect(stackFlow(a + extra, h, out + rise, out, 0.61)).toBeGreaterThanOrEqual(flow);
    }),
  );
});

test('two openings in series pass less than the smaller and nothing when one is shut', () => {
  expect(effectiveArea(0, 0)).toBe(0);
  expect(effectiveArea(0, 3)).toBe(0);
  fc.assert(
    fc.property(
      fc.double({ min: 1e-3, max: 20, noNaN: true }),
      fc.double({ min: 1e-3, max: 20, noNaN: true }),
      (a, b) => {
        expect(effectiveArea(a, b)).toBe(effectiveArea(b, a));
        expect(effectiveArea(a, b)).toBeLessThanOrEqual(Math.min(a, b));
        expect(1 / effectiveArea(a, b) ** 2).toBeCloseTo(
          1 / a ** 2 + 1 / b ** 2,
          3 - Math.log10(a ** -2 + b ** -2),
        );
      },
    ),
  );
});

test('stack and wind together are at least the stronger and at most 41 % more', () => {
  const flow = fc.double({ min: 1e-6, max: 10, noNaN: true });
  fc.assert(
    fc.property(flow, flow, (stack, wind) => {
      const stronger = Math.max(stack, wind);
      expect(combinedQuadrature(stack, wind)).toBeGreaterThanOrEqual(stronger * (1 - 1e-12));
      expect(combinedQuadrature(stack, wind)).toBeLessThanOrEqual(stronger * (Math.SQRT2 + 1e-12));
    }),
  );
});
