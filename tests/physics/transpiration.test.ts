import fc from 'fast-check';
import { expect, test } from 'vitest';
import { saturationPressure, saturationSlope } from '../../src/physics/moist-air.ts';
import {
  canopyConstant,
  canopyPerPascal,
  canopyRadiation,
  leafResistance,
  priestleyTaylor,
} from '../../src/physics/transpiration.ts';
import { canopyEvaporation } from '../reference/whole-formulas.ts';

const temp = fc.double({ min: 0, max: 45, noNaN: true });
const deficit = fc.double({ min: 0, max: 4000, noNaN: true });
const radiation = fc.double({ min: 0, max: 600, noNaN: true });
const leaf = fc.double({ min: 0.1, max: 6, noNaN: true });

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
  const inner = leafResistance(200, 2, 800);
  const [sea, high] = [101_325, 75_000];
  expect(canopyConstant(22, 200, 275, inner, high)).toBeGreaterThan(canopyConstant(22, 200, 275, inner, sea));
  expect(canopyPerPascal(22, 2, 275, inner, high)).toBeLessThan(canopyPerPascal(22, 2, 275, inner, sea));
});

test('a canopy absorbs nothing without leaves and no more than falls on it', () => {
  expect(canopyRadiation(400, 0, 0.2)).toBe(0);
  fc.assert(
    fc.property(radiation, leaf, (g, lai) => {
      expect(canopyRadiation(g, lai, 0.2)).toBeLessThanOrEqual(0.8 * g);
    }),
  );
});

test('warm air turns more of the radiation into vapour', () => {
  expect(priestleyTaylor(30, 100)).toBeGreaterThan(priestleyTaylor(10, 100));
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => priestleyTaylor(Number.NaN, 100)).toThrow(/tempC is NaN/);
});
