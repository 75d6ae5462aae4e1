import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groundOnPlane, perezCoefficients, skyFromCoefficients } from '../../src/physics/sky-on-plane.ts';
import { skyOnPlane } from '../reference/whole-formulas.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const DEG = Math.PI / 180;

test('on the horizontal the sky gives back the diffuse it was told, sun above 5°', () => {
  fc.assert(
    fc.property(real(0, 900), real(1, 500), real(0, 84.9), (beamNormal, diffuseHorizontal, zenithDeg) => {
      const cosIncidence = Math.cos(zenithDeg * DEG);
      const input = { beamNormal, diffuseHorizontal, extraNormal: 1366, zenithDeg, cosIncidence, tiltDeg: 0 };
      const { isotropic, circumsolar, horizon } = skyOnPlane(input);
      expect(isotropic + circumsolar + horizon).toBeCloseTo(diffuseHorizontal, 9);
    }),
  );
});

test('no sky gives negative light, and the parts are finite', () => {
  fc.assert(
    fc.property(real(0, 1000), real(0, 500), real(0, 180), real(-1, 1), real(0, 180), (b, d, z, c, tilt) => {
      const light = skyOnPlane({
        beamNormal: b,
        diffuseHorizontal: d,
        extraNormal: 1366,
        zenithDeg: z,
        cosIncidence: c,
        tiltDeg: tilt,
      });
      const sum = light.isotropic + light.circumsolar + light.horizon;
      expect(sum).toBeGreaterThanOrEqual(0);
      expect(Number.isFinite(sum)).toBe(true);
      expect(light.circumsolar).toBeGreaterThanOrEqual(0);
    }),
  );
});

test('without diffuse light or with the sun down the sky is even', () => {
  expect(perezCoefficients(500, 0, 1366, 30)).toEqual({ f1: 0, f2: 0 });
  expect(perezCoefficients(0, 20, 1366, 95)).toEqual({ f1: 0, f2: 0 });
});

test('where the model would go below zero, all three parts are nothing', () => {
  expect(skyFromCoefficients(100, 0.9, -0.5, -0.2, 0.8, 90)).toEqual({
    isotropic: 0,
    circumsolar: 0,
    horizon: 0,
  });
});

test('upright glass sees half the ground, flat glass none, and snow shines four times as much as soil', () => {
  expect(groundOnPlane(600, 0.2, 90)).toBeCloseTo(60, 12);
  expect(groundOnPlane(600, 0.2, 0)).toBe(0);
  expect(groundOnPlane(600, 0.8, 90)).toBeCloseTo(240, 12);
});
