import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  combinedQuadrature,
  combinedStronger,
  crossWindFlow,
  effectiveArea,
  hingedFlapArea,
  inletWindFlow,
  neutralLevelFlow,
  singleSidedStackFlow,
  singleSidedWindFlow,
  stackFlow,
  stackGoverns,
} from '../../src/physics/openings.ts';

const temp = fc.double({ min: -30, max: 60, noNaN: true });
const area = fc.double({ min: 0, max: 20, noNaN: true });
const height = fc.double({ min: 0, max: 8, noNaN: true });

test('nothing flows without a temperature difference, a height, an area or wind', () => {
  expect(stackFlow(1, 2, 20, 20, 0.61)).toBe(0);
  expect(stackFlow(1, 0, 30, 20, 0.61)).toBe(0);
  expect(stackFlow(0, 2, 30, 20, 0.61)).toBe(0);
  expect(singleSidedStackFlow(1, 2, 20, 20, 0.61)).toBe(0);
  expect(neutralLevelFlow(1, 2, 20, 20, 0.61)).toBe(0);
  expect(singleSidedWindFlow(1, 0)).toBe(0);
  expect(crossWindFlow(1, 0, 1, 0.61)).toBe(0);
  expect(crossWindFlow(1, 3, 0, 0.61)).toBe(0);
  expect(inletWindFlow(1, 0, 0.5)).toBe(0);
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

test('both conventions of stack flow agree for equal vents once the temperature below the line does', () => {
  fc.assert(
    fc.property(area, height, temp, fc.double({ min: 0, max: 30, noNaN: true }), (a, h, out, rise) => {
      const pair = stackFlow(effectiveArea(a, a), h, out + rise, out, 0.65);
      const one = neutralLevelFlow(a, h / 2, out + rise, out, 0.65);
      const mean = out + rise / 2 + 273.15;
      expect(pair).toBeCloseTo(one * Math.sqrt((out + rise + 273.15) / mean), 9);
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
      const stronger = combinedStronger(stack, wind);
      expect(stronger).toBe(Math.max(stack, wind));
      expect(combinedQuadrature(stack, wind)).toBeGreaterThanOrEqual(stronger * (1 - 1e-12));
      expect(combinedQuadrature(stack, wind)).toBeLessThanOrEqual(stronger * (Math.SQRT2 + 1e-12));
    }),
  );
});

test('for equal areas the printed switch takes the stronger flow, but for the rounding of its 0.26', () => {
  for (const wind of [0.2, 0.5, 1, 2.5, 5, 9]) {
    for (const rise of [0.5, 2, 4, 8, 20]) {
      const stack = stackFlow(1, 3, 10 + rise, 10, 0.61);
      const through = crossWindFlow(1, wind, 0.4, 0.61);
      expect(Math.abs(stack / through - 1)).toBeGreaterThan(0.01); // √(2g/T̄) is 0.26 to within 1 %
      expect(stackGoverns(wind, rise, 1, 1, 3, 0.4)).toBe(stack > through);
    }
  }
});

test('a flap shut gives no area, and open it never gives more than its hole', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 3, noNaN: true }),
      fc.double({ min: 0.1, max: 2, noNaN: true }),
      fc.double({ min: 0, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 90, noNaN: true }),
      (w, h, one, two) => {
        expect(hingedFlapArea(w, h, 0)).toBe(0);
        expect(hingedFlapArea(w, h, 90)).toBe(w * h);
        const [less, more] = one < two ? [one, two] : [two, one];
        expect(hingedFlapArea(w, h, less)).toBeLessThanOrEqual(hingedFlapArea(w, h, more) * (1 + 1e-12));
      },
    ),
  );
});

test('a flap of 1.0 by 0.6 m at 30 degrees is as free as its geometry says', () => {
  const gap = 2 * 0.6 * Math.sin(Math.PI / 12);
  const triangle = 0.5 * 0.6 * 0.6 * Math.sin(Math.PI / 6);
  expect(hingedFlapArea(1, 0.6, 30)).toBeCloseTo(gap + 2 * triangle, 12);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => hingedFlapArea(1, 0.6, 120)).toThrow(/openingDeg is 120/);
  expect(() => hingedFlapArea(-1, 0.6, 20)).toThrow(/widthM is -1/);
  expect(() => stackGoverns(3, 10, 1, 0, 3, 0.4)).toThrow(/windAreaM2 is 0/);
});
