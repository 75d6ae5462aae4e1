import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosIncidence } from '../../src/physics/incidence.ts';
import { sunVector } from '../../src/physics/sun-position.ts';

const angle = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('a flat plane sees the sine of the elevation whatever it is said to face', () => {
  fc.assert(
    fc.property(angle(-90, 90), angle(0, 360), angle(0, 360), (h, sun, plane) => {
      expect(cosIncidence(h, sun, 0, plane)).toBeCloseTo(Math.sin((h * Math.PI) / 180), 12);
    }),
  );
});

test('the cosine is the product of the sun vector and the normal, and so never beyond one', () => {
  fc.assert(
    fc.property(angle(-90, 90), angle(0, 360), angle(0, 180), angle(0, 360), (h, sun, tilt, plane) => {
      const s = sunVector(h, sun);
      const n = sunVector(90 - tilt, plane);
      const product = s.east * n.east + s.north * n.north + s.up * n.up;
      expect(cosIncidence(h, sun, tilt, plane)).toBeCloseTo(product, 12);
    }),
  );
});

test('a plane turned to the sun takes it square on; an upright one facing away has it behind', () => {
  expect(cosIncidence(35, 200, 55, 200)).toBeCloseTo(1, 12);
  expect(cosIncidence(30, 180, 90, 0)).toBeCloseTo(-Math.cos(Math.PI / 6), 12);
});
