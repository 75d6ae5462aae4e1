import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';

const leaning = EXAMPLES.find(({ id }) => id === 'leaning')!.design;
const withFront = (tiltDeg: number, depthM: number): Design => ({
  ...leaning,
  house: { ...leaning.house, ceilingHeightM: 3, storeys: 1 },
  glass: { ...leaning.glass, tiltDeg },
  sunspace: { ...leaning.sunspace, join: 'open', depthM, lengthM: 10 },
});

test('upright glass makes a box: end wall and volume by height and depth', () => {
  const box = geometryOf(withFront(90, 2));
  expect(box.sunspaceEndM2).toBeCloseTo(6, 9);
  expect(box.sunspaceVolumeM3).toBeCloseTo(60, 8);
  expect(box.largestGlassM2).toBeCloseTo(30, 9);
});

test('glass at 45° over a depth of its own height leaves a triangle and no roof', () => {
  const wedge = geometryOf(withFront(45, 3));
  expect(wedge.sunspaceEndM2).toBeCloseTo(4.5, 9);
  expect(wedge.sunspaceRoofM2).toBeCloseTo(0, 9);
  expect(wedge.largestGlassM2).toBeCloseTo(10 * 3 * Math.SQRT2, 8);
});

test('glass that would lean past the wall stands on a knee that makes up the height', () => {
  // 45° over 1 m of depth rises 1 m; the other 2 m stand upright.
  const knee = geometryOf(withFront(45, 1));
  expect(knee.sunspaceEndM2).toBeCloseTo((2 + 3) / 2, 9);
  expect(knee.largestGlassM2).toBeCloseTo(10 * (2 + Math.SQRT2), 8);
});

test('shares are the glass over the gross wall and over the heated floor', () => {
  const { glassM2, shareOfWall, shareOfFloor } = geometryOf(leaning);
  expect(shareOfWall).toBeCloseTo(glassM2 / (13.5 * 2.6), 12);
  expect(shareOfFloor).toBeCloseTo(glassM2 / 110, 12);
});
