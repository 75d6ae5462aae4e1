import { expect, test } from 'vitest';
import { penetrationDepth, type WallLayer } from '../../src/physics/wall-response.ts';
import { modulus } from '../reference/complex.ts';
import { diurnalHeatCapacity, wallTransfer } from '../reference/wall-transfer.ts';

const DAY = 86_400;
const CONCRETE: WallLayer = { thicknessM: 0.2, conductivity: 1.75, density: 2300, specificHeat: 1000 };
const WOOL: WallLayer = { thicknessM: 0.1, conductivity: 0.04, density: 30, specificHeat: 1030 };

test('a layer of no thickness changes nothing', () => {
  const plain = wallTransfer([CONCRETE], 0.13, 0.04, DAY);
  const padded = wallTransfer([CONCRETE, { ...WOOL, thicknessM: 0 }], 0.13, 0.04, DAY);
  expect(padded.decrement).toBeCloseTo(plain.decrement, 12);
  expect(padded.kappa1).toBeCloseTo(plain.kappa1, 6);
});

test('cutting a layer in two changes nothing, and the matrix keeps determinant one', () => {
  const whole = wallTransfer([CONCRETE], 0.13, 0.04, DAY);
  const half = { ...CONCRETE, thicknessM: 0.1 };
  const halves = wallTransfer([half, half], 0.13, 0.04, DAY);
  expect(halves.y12.re).toBeCloseTo(whole.y12.re, 10);
  const { z11, z12, z21, z22 } = whole.matrix;
  const re = z11.re * z22.re - z11.im * z22.im - (z12.re * z21.re - z12.im * z21.im);
  const im = z11.re * z22.im + z11.im * z22.re - (z12.re * z21.im + z12.im * z21.re);
  expect(re).toBeCloseTo(1, 9);
  expect(im).toBeCloseTo(0, 9);
});

test('over a very long period a wall behaves as in steady state', () => {
  const { decrement, y11, uValue } = wallTransfer([CONCRETE, WOOL], 0.13, 0.04, 1e9);
  expect(decrement).toBeCloseTo(1, 5);
  // What remains is the capacity's share, 2πκ/P squared: 1.1e-5.
  expect(modulus(y11)).toBeCloseTo(uValue, 4);
});

test('turning a wall round swaps its two sides and keeps what gets through', () => {
  const a = wallTransfer([CONCRETE, WOOL], 0.13, 0.04, DAY);
  const b = wallTransfer([WOOL, CONCRETE], 0.04, 0.13, DAY);
  expect(b.kappa2).toBeCloseTo(a.kappa1, 6);
  expect(b.decrement).toBeCloseTo(a.decrement, 12);
  expect(b.timeShiftH).toBeCloseTo(a.timeShiftH, 9);
});

test('mass inside insulation holds more than insulation inside mass', () => {
  const massInside = wallTransfer([CONCRETE, WOOL], 0.13, 0.04, DAY);
  const massOutside = wallTransfer([WOOL, CONCRETE], 0.13, 0.04, DAY);
  expect(massInside.kappa1).toBeGreaterThan(5 * massOutside.kappa1);
  expect(massInside.uValue).toBeCloseTo(massOutside.uValue, 12);
});

test('the diurnal capacity peaks at 1.18 penetration depths', () => {
  const depth = penetrationDepth(CONCRETE, DAY);
  const at = (share: number) => diurnalHeatCapacity({ ...CONCRETE, thicknessM: share * depth });
  expect(at(1.18)).toBeGreaterThan(at(1.1));
  expect(at(1.18)).toBeGreaterThan(at(1.26));
  expect(diurnalHeatCapacity({ ...WOOL, density: 0 })).toBe(0);
});

test('a wall without thickness in sense is refused', () => {
  expect(() => wallTransfer([{ ...CONCRETE, conductivity: 0 }], 0.13, 0.04, DAY)).toThrow(RangeError);
  expect(() => wallTransfer([{ ...CONCRETE, thicknessM: -1 }], 0.13, 0.04, DAY)).toThrow(RangeError);
  expect(() => wallTransfer([CONCRETE], 0.13, 0.04, 1)).toThrow(RangeError);
});
