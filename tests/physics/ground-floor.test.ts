import { expect, test } from 'vitest';
import {
  basementWallUValue,
  edgeInsulationPsi,
  type FloorPlan,
  GROUNDS,
  slabUValue,
} from '../../src/physics/ground-floor.ts';

const FLOOR: FloorPlan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3, floorResistance: 0 };

test('the two branches of the slab formula meet to a few per cent where the insulation equals the dimension', () => {
  // B = 5 m; d_f = 5 m at R = (5 − 0.3)/2 − 0.21.
  const at = (change: number) =>
    slabUValue({ ...FLOOR, floorResistance: 4.7 / 2 - 0.21 + change }, GROUNDS.sand);
  expect(at(-1e-6) / at(1e-6)).toBeCloseTo(1, 1);
});

test('where the wall resists less than the floor, its own thickness stands in for the floor: no jump', () => {
  const wall = { depthM: 2, wallResistance: 1 };
  const same = 2 * (0.13 + 1 + 0.04);
  const at = (change: number) =>
    basementWallUValue({ ...FLOOR, floorResistance: (same + change - 0.3) / 2 - 0.21 }, GROUNDS.sand, wall);
  expect(at(1e-9)).toBeCloseTo(at(-1e-9), 8);
  expect(at(1)).toBeCloseTo(at(0), 12);
});

test('edge insulation saves heat, an upright strip as much as a flat one twice as wide, none for nothing', () => {
  const strip = { reachM: 0.5, resistance: 2, thicknessM: 0.07 };
  const upright = edgeInsulationPsi(FLOOR, GROUNDS.clay, { lies: 'upright', ...strip });
  expect(upright).toBeLessThan(0);
  expect(edgeInsulationPsi(FLOOR, GROUNDS.clay, { lies: 'flat', ...strip, reachM: 1 })).toBeCloseTo(
    upright,
    12,
  );
  expect(edgeInsulationPsi(FLOOR, GROUNDS.clay, { lies: 'flat', ...strip, resistance: 0 })).toBeCloseTo(
    0,
    12,
  );
});

test('a floor without perimeter is refused', () => {
  expect(() => slabUValue({ ...FLOOR, perimeterM: 0 }, GROUNDS.clay)).toThrow(RangeError);
});
