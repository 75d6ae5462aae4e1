// The two-dimensional reference against closed forms, itself on a finer grid and in a larger domain, and the stored
// answers against their maker. Closed forms: a wave into a half-space through a film (Carslaw and Jaeger, Conduction of
// Heat in Solids, from memory, high confidence); a strip of floor with a linear temperature under the wall (integral of
// the half-plane's Green's function, worked by hand; ISO 13370's slab formula comes within 1 % of it); a half-plane
// half held and half shut (Sommerfeld, in its diffusive form: ∫ erfc √(kx) dx = 1/2k); a wave under undisturbed ground.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bermSection, slabSection } from './ground-cases.ts';
import { type Complex, FINE, type Section, type Surface, solveSection } from './ground-section.ts';
import { type StoredSection, sectionAnswer, storedSections, YEAR_S } from './ground-stored.ts';

const CLAY = { conductivity: 1.5, heatCapacity: 3e6 };
const STEADY = Number.POSITIVE_INFINITY;
const DELTA = Math.sqrt((CLAY.conductivity * YEAR_S) / (Math.PI * CLAY.heatCapacity));
const VERY_FINE = { finestM: 0.005, growth: 0.12 };

const size = (a: Complex) => Math.hypot(a.re, a.im);
const days = (a: Complex) => (Math.atan2(a.im, a.re) * 365) / (2 * Math.PI);

function ground(surfaces: readonly Surface[], farM = 60): Section {
  return { widthM: farM, depthM: farM, soil: CLAY, blocks: [], voids: [], surfaces };
}

function top(
  part: string,
  span: readonly [number, number],
  resistance: number,
  share: (x: number) => number,
) {
  return { part, lies: 'level', at: 0, span, resistance, indoorShare: share } as const;
}

test('a floor as wide as the domain answers a year and a day as a half-space behind its film', () => {
  const floor = { ...ground([top('floor', [0, 2], 0.17, () => 1)], 40), widthM: 2 };
  for (const periodS of [YEAR_S, 86_400]) {
    const depth = Math.sqrt((CLAY.conductivity * periodS) / (Math.PI * CLAY.heatCapacity));
    // 1/(R + δ/(λ (1 + i)))
    const half = depth / (2 * CLAY.conductivity);
    const square = (0.17 + half) ** 2 + half ** 2;
    const exact = { re: (2 * (0.17 + half)) / square, im: (2 * half) / square };
    const ours = solveSection(floor, periodS, VERY_FINE).indoor.floor!;
    expect(size(ours) / size(exact)).toBeCloseTo(1, 2);
    expect(Math.atan2(ours.im, ours.re)).toBeCloseTo(Math.atan2(exact.im, exact.re), 2);
  }
});

test('a strip of floor with a linear temperature under the wall loses what the integral says', () => {
  const [half, wall] = [3, 0.6];
  const surfaces = [
    top('floor', [0, half], 0, () => 1),
    top('under the wall', [half, half + wall], 0, (x) => 1 - (x - half) / wall),
    top('ground', [half + wall, 400], 0, () => 0),
  ];
  const ours = solveSection(ground(surfaces, 400), STEADY, VERY_FINE).indoor.floor!.re;
  const t = (x: number) => x * Math.log(x);
  // both halves of the floor: (2λ/πw) [(2a + w) ln(2a + w) − 2a ln 2a − w ln w]
  const both = ((2 * CLAY.conductivity) / (Math.PI * wall)) * (t(2 * half + wall) - t(2 * half) - t(wall));
  expect(ours / (both / 2)).toBeCloseTo(1, 2);
});

test('under a thick floor without a wall the outdoor wave brings λδ/(2√2 d) at an eighth of a year', () => {
  const resistance = 200;
  const surfaces = [top('floor', [0, 30], resistance, () => 1), top('ground', [30, 60], 0, () => 0)];
  const ours = solveSection(ground(surfaces), YEAR_S, VERY_FINE).outdoor.floor!;
  expect(Math.abs((size(ours) * resistance * 2 * Math.SQRT2) / DELTA - 1)).toBeLessThan(0.01);
  expect(Math.abs(days({ re: -ours.re, im: -ours.im }) + 365 / 8)).toBeLessThan(0.5);
});

test('far from the house the ground swings as undisturbed soil does', () => {
  const { at } = solveSection(
    slabSection({ dimensionM: 6, wallThicknessM: 0.3, soil: CLAY, layers: [] }),
    YEAR_S,
    VERY_FINE,
  );
  for (const depth of [1, 2.5]) {
    const { outdoor } = at(25, depth);
    // the cell's middle lies within half a cell of the place
    expect(Math.abs(size(outdoor) / Math.exp(-depth / DELTA) - 1)).toBeLessThan(0.06);
    expect(Math.abs(-days(outdoor) - (depth / DELTA) * (365 / (2 * Math.PI)))).toBeLessThan(6);
  }
});

test('steady heat in equals heat out, and what comes in per kelvin outdoors goes out per kelvin indoors', () => {
  const berm = { dimensionM: 6, wallThicknessM: 0.3, soil: CLAY, layers: [], heightM: 2, wallLayers: [] };
  const wall = { thicknessM: 0.3, conductivity: 0.7, heatCapacity: 1.5e6 };
  const section = bermSection({ ...berm, wallLayers: [wall] });
  const { indoor } = solveSection(section, STEADY);
  const parts = Object.values(indoor);
  const largest = Math.max(...parts.map(({ re }) => re));
  expect(parts.reduce((sum, { re }) => sum + re, 0) / largest).toBeCloseTo(0, 9);
  const yearly = solveSection(section, YEAR_S);
  const inward = yearly.outdoor.floor!.re + yearly.outdoor.wall!.re;
  expect(yearly.indoor.ground!.re).toBeCloseTo(inward, 9);
});

test('half the grid moves no answer by more than 1.3 % or half a day, twice the domain by more than 0.4 %', () => {
  const layers = [{ thicknessM: 0.1, conductivity: 1.75, heatCapacity: 2.3e6 }];
  for (const dimensionM of [3, 12]) {
    const slab = { dimensionM, wallThicknessM: 0.3, soil: CLAY, layers };
    for (const periodS of [STEADY, YEAR_S]) {
      const usual = solveSection(slabSection(slab), periodS);
      const finer = solveSection(slabSection(slab), periodS, {
        finestM: FINE.finestM / 2,
        growth: FINE.growth / 2,
      });
      const wider = solveSection(slabSection(slab, 2), periodS);
      for (const side of ['indoor', 'outdoor'] as const) {
        const [a, b, c] = [usual, finer, wider].map((solved) => solved[side].floor!);
        expect(Math.abs(size(b!) / size(a!) - 1), `grid, B ${dimensionM}, ${side}`).toBeLessThan(0.013);
        expect(Math.abs(days(b!) - days(a!))).toBeLessThan(0.5);
        expect(Math.abs(size(c!) / size(a!) - 1), `domain, B ${dimensionM}, ${side}`).toBeLessThan(0.004);
      }
    }
  }
});

test('the stored answers are the maker’s', () => {
  const path = new URL('../data/ground-sections.json', import.meta.url);
  const stored = JSON.parse(readFileSync(path, 'utf8')) as (StoredSection & { answer: unknown })[];
  const made = storedSections();
  expect(stored.map(({ answer: _, ...section }) => section)).toEqual(made);
  for (let n = 0; n < made.length; n += 45) expect(sectionAnswer(made[n]!)).toEqual(stored[n]!.answer);
});
