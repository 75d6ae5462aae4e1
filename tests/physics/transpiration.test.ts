import fc from 'fast-check';
import { expect, test } from 'vitest';
import { saturationPressure, saturationSlope } from '../../src/physics/moist-air.ts';
import {
  canopyCoefficients,
  canopyEvaporation,
  canopyRadiation,
  leafResistance,
  priestleyTaylor,
  twoTermTranspiration,
} from '../../src/physics/transpiration.ts';

const temp = fc.double({ min: 0, max: 45, noNaN: true });
const deficit = fc.double({ min: 0, max: 4000, noNaN: true });
const radiation = fc.double({ min: 0, max: 600, noNaN: true });
const leaf = fc.double({ min: 0.1, max: 6, noNaN: true });

test('the straight line meets the whole formula at the deficit its stomata were set by', () => {
  fc.assert(
    fc.property(temp, deficit, radiation, leaf, (t, vpd, net, lai) => {
      const { constantW, perPascalW } = canopyCoefficients(t, net, lai, 275, vpd);
      expect(constantW + perPascalW * vpd).toBeCloseTo(canopyEvaporation(t, vpd, net, lai, 275), 9);
      expect(constantW).toBeGreaterThanOrEqual(0);
      expect(perPascalW).toBeGreaterThan(0);
    }),
  );
});

test('more radiation on the canopy means more water', () => {
  fc.assert(
    fc.property(temp, deficit, fc.double({ min: 1, max: 600, noNaN: true }), leaf, (t, vpd, net, lai) => {
      expect(canopyEvaporation(t, vpd, net * 1.1, lai, 275)).toBeGreaterThan(
        canopyEvaporation(t, vpd, net, lai, 275),
      );
    }),
  );
});

test('in saturated air without light a canopy gives nothing, and in the dark its stomata close', () => {
  expect(canopyEvaporation(20, 0, 0, 2, 275)).toBe(0);
  expect(leafResistance(0, 2, 0)).toBeGreaterThan(leafResistance(300, 2, 0));
});

test('dry air closes the stomata, and no further than the cap', () => {
  expect(leafResistance(200, 2, 1500)).toBeGreaterThan(leafResistance(200, 2, 500));
  expect(leafResistance(200, 2, 4000)).toBe(leafResistance(200, 2, 3000));
});

test('the slope is that of the saturation curve', () => {
  for (const t of [0, 10, 22, 40]) {
    const chord = (saturationPressure(t + 0.001) - saturationPressure(t - 0.001)) / 0.002;
    expect(saturationSlope(t)).toBeCloseTo(chord, 5);
  }
});

test('at altitude the thinner air changes canopy evaporation through both its constants', () => {
  const [sea, high] = [101325, 75000].map((p) => canopyCoefficients(22, 200, 2, 275, 800, p)) as [
    ReturnType<typeof canopyCoefficients>,
    ReturnType<typeof canopyCoefficients>,
  ];
  expect(high.constantW).toBeGreaterThan(sea.constantW);
  expect(high.perPascalW).toBeLessThan(sea.perPascalW);
});

test('a canopy absorbs nothing without leaves and no more than falls on it', () => {
  expect(canopyRadiation(400, 0, 0.2)).toBe(0);
  fc.assert(
    fc.property(radiation, leaf, (g, lai) => {
      expect(canopyRadiation(g, lai, 0.2)).toBeLessThanOrEqual(0.8 * g);
    }),
  );
});

test('the two-term form is a sum of what light and dry air do alone', () => {
  const whole = twoTermTranspiration(300, 800, 2, 0.5, 20);
  expect(twoTermTranspiration(300, 0, 2, 0.5, 20) + twoTermTranspiration(0, 800, 2, 0.5, 20)).toBeCloseTo(
    whole,
    10,
  );
});

test('warm air turns more of the radiation into vapour', () => {
  expect(priestleyTaylor(30, 100)).toBeGreaterThan(priestleyTaylor(10, 100));
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => canopyCoefficients(22, 150, 0, 275, 800)).toThrow(/leafAreaIndex is 0/);
  expect(() => canopyCoefficients(22, 150, 2, 0, 800)).toThrow(/boundaryResistance is 0/);
  expect(() => canopyCoefficients(Number.NaN, 150, 2, 275, 800)).toThrow(/tempC is NaN/);
});
