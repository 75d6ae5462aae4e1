import fc from 'fast-check';
import { expect, test } from 'vitest';
import { glassAtAngle, glassDiffuse } from '../../src/physics/glass-transmittance.ts';

const pane = fc.record({
  refractiveIndex: fc.double({ min: 1.3, max: 1.7, noNaN: true }),
  extinctionPerM: fc.double({ min: 0, max: 60, noNaN: true }),
  thicknessM: fc.double({ min: 0.0005, max: 0.01, noNaN: true }),
});

test('no light is lost: transmitted, reflected and absorbed add up to one at every angle', () => {
  fc.assert(
    fc.property(
      fc.array(pane, { minLength: 1, maxLength: 4 }),
      fc.double({ min: 0, max: 90, noNaN: true }),
      (panes, angle) => {
        const { transmittance, reflectance, absorptance } = glassAtAngle(panes, angle);
        expect(transmittance + reflectance + absorptance.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
        expect(Math.min(transmittance, reflectance, ...absorptance)).toBeGreaterThanOrEqual(-1e-15);
      },
    ),
  );
});

test('one pane without absorption at normal incidence gives 2n/(n² + 1)', () => {
  // Closed form of the sum over reflections: (1 − r)/(1 + r), r = ((n − 1)/(n + 1))².
  const { transmittance } = glassAtAngle(
    [{ refractiveIndex: 1.526, extinctionPerM: 0, thicknessM: 0.004 }],
    0,
  );
  expect(transmittance).toBeCloseTo((2 * 1.526) / (1.526 ** 2 + 1), 12);
});

test('at the polarising angle half the light meets no reflection', () => {
  // Brewster: tan θ = n; the part along the plane passes whole, so the pane reflects at most half.
  const brewster = (Math.atan(1.526) * 180) / Math.PI;
  const { reflectance } = glassAtAngle(
    [{ refractiveIndex: 1.526, extinctionPerM: 0, thicknessM: 0.004 }],
    brewster,
  );
  const across = ((1 - 1.526 ** 2) / (1 + 1.526 ** 2)) ** 2;
  expect(reflectance).toBeCloseTo(across / (1 + across), 12);
});

test('light passes a stack of unlike panes alike in both directions', () => {
  const a = { refractiveIndex: 1.5, extinctionPerM: 30, thicknessM: 0.006 };
  const b = { refractiveIndex: 1.6, extinctionPerM: 4, thicknessM: 0.003 };
  expect(glassAtAngle([a, b], 50).transmittance).toBeCloseTo(glassAtAngle([b, a], 50).transmittance, 12);
  expect(glassDiffuse([a, b]).transmittance).toBeCloseTo(glassDiffuse([b, a]).transmittance, 12);
});
