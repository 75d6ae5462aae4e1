import fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitGlobal } from '../../src/physics/diffuse-split.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('beam and diffuse add up to the global they came from, whatever the sun', () => {
  fc.assert(
    fc.property(real(0, 1300), real(-1, 1), (global, cosZenith) => {
      const { beamNormal, diffuse } = splitGlobal(global, cosZenith, 1366.1);
      expect(beamNormal * Math.max(cosZenith, 0) + diffuse).toBeCloseTo(global, 9);
      expect(beamNormal).toBeGreaterThanOrEqual(0);
      expect(beamNormal).toBeLessThanOrEqual(1366.1);
      expect(diffuse).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});

test('light of a low or absent sun is all diffuse', () => {
  expect(splitGlobal(30, 0.03, 1366)).toEqual({ beamNormal: 0, diffuse: 30 });
  expect(splitGlobal(5, -0.1, 1366)).toEqual({ beamNormal: 0, diffuse: 5 });
});

test('a clear noon is mostly beam, an overcast one all but none', () => {
  const clear = splitGlobal(900, 0.85, 1350);
  expect(clear.diffuse / 900).toBeLessThan(0.25);
  const overcast = splitGlobal(120, 0.85, 1350);
  expect(overcast.diffuse / 120).toBeGreaterThan(0.98);
});

test('negative global irradiance is refused', () => {
  expect(() => splitGlobal(-1, 0.5, 1366)).toThrow(RangeError);
});
