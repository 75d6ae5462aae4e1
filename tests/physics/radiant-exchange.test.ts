import fc from 'fast-check';
import { expect, test } from 'vitest';
import { radiantConductances } from '../../src/physics/radiant-exchange.ts';

const black = (count: number) => new Array<number>(count).fill(1);

test('six equal black walls of a cube exchange as the method says: F = 6/5', () => {
  for (const g of radiantConductances([9, 9, 9, 9, 9, 9], black(6))) expect(g).toBeCloseTo(9 * 1.2, 9);
});

test('two facing grey planes exchange by the closed form A/(1/ε₁ + 1/ε₂ − 1)', () => {
  const [a, b] = radiantConductances([10, 10], [0.9, 0.3]);
  expect(1 / (1 / a! + 1 / b!)).toBeCloseTo(10 / (1 / 0.9 + 1 / 0.3 - 1), 12);
});

test('a small grey body in a big enclosure exchanges by A₁/(1/ε₁ + (A₁/A₂)(1/ε₂ − 1))', () => {
  const [a, b] = radiantConductances([2, 50], [0.8, 0.5]);
  expect(1 / (1 / a! + 1 / b!)).toBeCloseTo(2 / (1 / 0.8 + (2 / 50) * (1 / 0.5 - 1)), 12);
});

test('a room of ordinary proportions satisfies the defining equations', () => {
  const areas = [48, 48, 21.6, 21.6, 16.2, 16.2];
  const af = radiantConductances(areas, black(6));
  const sum = af.reduce((a, b) => a + b);
  for (const [i, x] of af.entries()) expect(x).toBeCloseTo(areas[i]! / (1 - x / sum), 9);
});

test('a lean-to of floor and glass, where one surface nearly equals the others, has its answer too', () => {
  const areas = [10, 6, 5.5];
  const af = radiantConductances(areas, black(3));
  const sum = af.reduce((a, b) => a + b);
  for (const [i, x] of af.entries()) expect(x).toBeCloseTo(areas[i]! / (1 - x / sum), 8);
});

test('a surface larger than all others together does not run away and the rest keeps about its own area', () => {
  const g = radiantConductances([1000, 3, 2, 1], black(4));
  for (const x of g) expect(Number.isFinite(x)).toBe(true);
  const toBig = 1 / (1 / g[0]! + 1 / (g[1]! + g[2]! + g[3]!));
  // Nothing can give the big surface more than a black 6 m², and the node gives at least nine tenths of it.
  expect(toBig).toBeLessThanOrEqual(6.6);
  expect(toBig).toBeGreaterThan(5.4);
});

test('any areas and emissivities give finite exchange areas that grow with emissivity', () => {
  const surface = fc.record({
    area: fc.double({ min: 0.01, max: 500, noNaN: true }),
    emissivity: fc.double({ min: 0.02, max: 0.9, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(surface, { minLength: 1, maxLength: 10 }), (surfaces) => {
      const areas = surfaces.map((s) => s.area);
      const g = radiantConductances(
        areas,
        surfaces.map((s) => s.emissivity),
      );
      const brighter = radiantConductances(
        areas,
        surfaces.map((s) => s.emissivity + 0.1),
      );
      for (const [i, x] of g.entries()) {
        expect(x).toBeGreaterThan(0);
        expect(Number.isFinite(x)).toBe(true);
        expect(brighter[i]!).toBeGreaterThan(x);
      }
    }),
  );
});

test('one surface alone and none at all are harmless; mismatched lists are refused', () => {
  expect(radiantConductances([12], [0.9])).toEqual([10.8]);
  expect(radiantConductances([], [])).toEqual([]);
  expect(() => radiantConductances([1, 2], [0.9])).toThrow(RangeError);
  expect(() => radiantConductances([1, 0], [0.9, 0.9])).toThrow(RangeError);
});
