import { expect, test } from 'vitest';
import { cellsCoarseToFine, filledGrid, linesOf, strides } from '../../src/questions/glass-mass-grid.ts';

const SIDE = 21;
const axis = (most: number) => Array.from({ length: SIDE }, (_, i) => (most * i) / (SIDE - 1));
const GLASS = axis(40);
const MASS = axis(60);
const field = (f: (glass: number, mass: number) => number) =>
  MASS.flatMap((mass) => GLASS.map((glass) => f(glass, mass)));

test('every cell comes once, the four corners first, then the middles between them', () => {
  const cells = cellsCoarseToFine(SIDE);
  expect(strides(SIDE)).toEqual([20, 10, 5, 4, 2, 1]);
  expect(new Set(cells.map(String)).size).toBe(SIDE * SIDE);
  expect(new Set(cells.slice(0, 4).map(String))).toEqual(new Set(['0,0', '20,0', '0,20', '20,20']));
  expect(new Set(cells.slice(0, 9).map(String))).toEqual(
    new Set([0, 10, 20].flatMap((column) => [0, 10, 20].map((row) => `${column},${row}`))),
  );
});

test('a bilinear field is filled exactly from its four corners, and nothing is filled before', () => {
  const whole = field((glass, mass) => 3 + 2 * glass - mass + 0.5 * glass * mass);
  const part = new Array<number | null>(SIDE * SIDE).fill(null);
  const cells = cellsCoarseToFine(SIDE);
  for (const [i, [column, row]] of cells.slice(0, 4).entries()) {
    expect(filledGrid(part, SIDE), `${i} cells`).toBeNull();
    part[row * SIDE + column] = whole[row * SIDE + column]!;
  }
  filledGrid(part, SIDE)!.forEach((value, i) => {
    expect(value).toBeCloseTo(whole[i]!, 9);
  });
});

test('cells that are in keep their value', () => {
  const values = field((glass) => glass * glass);
  expect(filledGrid(values, SIDE)).toEqual(values);
});

test('lines of a field that rises with glass alone stand upright where it has their value', () => {
  const lines = linesOf(
    field((glass) => 20 * glass),
    GLASS,
    MASS,
    262,
  );
  expect(lines.map(({ hours, kind }) => `${hours} ${kind}`)).toEqual([
    '50 level',
    '100 level',
    '200 level',
    '500 level',
    '262 limit',
  ]);
  for (const { hours, paths } of lines) {
    expect(paths).toHaveLength(1);
    for (const [glass] of paths[0]!) expect(glass).toBeCloseTo(hours / 20, 9);
    const masses = paths[0]!.map(([, mass]) => mass);
    expect(Math.min(...masses)).toBeCloseTo(0, 9);
    expect(Math.max(...masses)).toBeCloseTo(60, 9);
  }
});

test('a hill inside the map gives a closed line round it, at its value', () => {
  const hill = (glass: number, mass: number) => 1000 - 10 * ((glass - 20) ** 2 + (mass - 30) ** 2);
  const [line] = linesOf(field(hill), GLASS, MASS, 500).filter(({ kind }) => kind === 'limit');
  const [path] = line!.paths;
  expect(path![0]).toEqual(path!.at(-1));
  // Linear between points 2 and 3 m² apart: off by the curvature over one cell, 10·(3²/4) at most.
  for (const [glass, mass] of path!) expect(Math.abs(hill(glass, mass) - 500)).toBeLessThan(10 * 2.25 + 1e-6);
});

test('where every cell is above or below, there is no limit line', () => {
  for (const hours of [0, 9000]) {
    const lines = linesOf(
      field(() => hours),
      GLASS,
      MASS,
      262,
    );
    expect(lines.filter(({ kind }) => kind === 'limit')).toEqual([]);
  }
});
