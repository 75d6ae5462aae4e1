import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosIncidence, planeNormal } from '../../src/physics/incidence.ts';
import { sunVector } from '../../src/physics/sun-position.ts';

/** Incidence on a plane by the angles of the sun and of the plane [°]. */
const incidence = (elevation: number, sun: number, tilt: number, facing: number) => {
  const { east, north, up } = sunVector(elevation, sun);
  return cosIncidence(planeNormal(tilt, facing), east, north, up);
};

const angle = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('a flat plane sees the sine of the elevation whatever it is said to face', () => {
  fc.assert(
    fc.property(angle(-90, 90), angle(0, 360), angle(0, 360), (h, sun, plane) => {
      expect(incidence(h, sun, 0, plane)).toBeCloseTo(Math.sin((h * Math.PI) / 180), 12);
    }),
  );
});

test('the cosine is that of spherical trigonometry, and so never beyond one', () => {
  const rad = Math.PI / 180;
  fc.assert(
    fc.property(angle(-90, 90), angle(0, 360), angle(0, 180), angle(0, 360), (h, sun, tilt, plane) => {
      const facing = Math.cos((sun - plane) * rad);
      const [up, along] = [Math.sin(h * rad), Math.cos(h * rad)];
      const spherical = up * Math.cos(tilt * rad) + along * Math.sin(tilt * rad) * facing;
      expect(incidence(h, sun, tilt, plane)).toBeCloseTo(spherical, 12);
    }),
  );
});

test('a plane turned to the sun takes it square on; an upright one facing away has it behind', () => {
  expect(incidence(35, 200, 55, 200)).toBeCloseTo(1, 12);
  expect(incidence(30, 180, 90, 0)).toBeCloseTo(-Math.cos(Math.PI / 6), 12);
});
