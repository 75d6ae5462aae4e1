import { expect, test } from 'vitest';
import { keptLight, overhangSkyView } from '../../src/physics/shade-view.ts';

const WINDOW = { widthM: 2, heightM: 1.5 };

test('a long overhang as deep as the window is high, without gap, hides the closed-form view of a right-angled corner', () => {
  // Two equal plates at a right angle, common edge: F = 1 − 1/√2; an upright window sees sky with 1/2.
  expect(overhangSkyView(2, 90, 2, 0)).toBeCloseTo(1 - 2 * (1 - Math.SQRT1_2), 12);
  expect(overhangSkyView(2, 90, 0, 0.3)).toBe(1);
});

test.each([
  [90, 0.6, 0.2],
  [90, 1.5, 0],
  [60, 1, 0.3],
  [45, 0.8, 0.1],
])(
  'the sum over rays meets the closed form of a long overhang: tilt %i°, depth %f m, gap %f m',
  (tilt, depthM, gapM) => {
    const { sky, ground } = keptLight({ ...WINDOW, overhang: { depthM, gapM, extendM: 10_000 } }, tilt);
    expect(Math.abs(sky - overhangSkyView(WINDOW.heightM, tilt, depthM, gapM))).toBeLessThan(0.003);
    expect(ground).toBe(1);
  },
);

test('deep fins on both sides meet the closed form of a tall slot', () => {
  // Very tall fins of depth D beside a window W wide: the slot's mouth is seen with F = (√(W² + D²) − D)/W.
  const fins = { depthM: 1, gapM: 0, aboveM: 10_000, belowM: 10_000 };
  const { sky, ground } = keptLight({ ...WINDOW, fins }, 90);
  const expected = (Math.hypot(2, 1) - 1) / 2;
  expect(Math.abs(sky - expected)).toBeLessThan(0.003);
  expect(Math.abs(ground - expected)).toBeLessThan(0.003);
});

test('a finite overhang hides less than a long one, and fins added hide more, from the ground too', () => {
  const overhang = { depthM: 1, gapM: 0.3, extendM: 0 };
  const short = keptLight({ ...WINDOW, overhang }, 90);
  const long = keptLight({ ...WINDOW, overhang: { ...overhang, extendM: Number.POSITIVE_INFINITY } }, 90);
  const both = keptLight({ ...WINDOW, overhang, fins: { depthM: 0.5, gapM: 0.05 } }, 90);
  expect(short.sky).toBeGreaterThan(long.sky);
  expect(both.sky).toBeLessThan(short.sky);
  expect(both.ground).toBeLessThan(1);
  expect(keptLight(WINDOW, 60)).toEqual({ sky: 1, ground: 1 });
});
