import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soilVapour } from '../../src/physics/bed-soil.ts';
import { saturationPressure, saturationSlope } from '../../src/physics/moist-air.ts';
import { beamPast, diffusePast, leafResistance, leafVapour } from '../../src/physics/transpiration.ts';
import { canopyEvaporation } from '../reference/whole-formulas.ts';

const temp = fc.double({ min: 6, max: 40, noNaN: true });
const deficit = fc.double({ min: 0, max: 900, noNaN: true });
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
  expect(canopyEvaporation(20, 0, 0, 2, 275)).toBeCloseTo(0, 9);
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

test('chilled leaves close by degrees, and frozen ground gives nothing', () => {
  const at = (tempC: number) => leafVapour(2, tempC, 275, 200);
  expect(at(0)).toBe(0);
  expect(at(2.5)).toBeCloseTo(at(5) / 2, 15);
  expect(soilVapour(2, -1, 'bare')).toBe(0);
  expect(soilVapour(2, 5, 'mulched')).toBeLessThan(soilVapour(2, 5, 'bare'));
});

test('less light passes more leaves, and least of a low sun', () => {
  expect(diffusePast(0)).toBe(1);
  expect(beamPast(0, 0)).toBe(1);
  fc.assert(
    fc.property(leaf, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (lai, sine) => {
      expect(beamPast(lai, sine)).toBeLessThan(beamPast(lai, sine + 0.05));
      expect(diffusePast(lai + 0.1)).toBeLessThan(diffusePast(lai));
    }),
  );
});
