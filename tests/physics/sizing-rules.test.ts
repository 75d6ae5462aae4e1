import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  glassLimits,
  glassNeedingMass,
  glassServed,
  HISTORICAL_GLASS_SHARES,
  massForGlass,
  projectedGlass,
  SIZING_RULES,
  SUNLIT_FLOOR_CAP,
} from '../../src/physics/sizing-rules.ts';

test('every rule has its own id, a range in order, a source and a mark', () => {
  expect(SIZING_RULES).toHaveLength(17);
  expect(new Set(SIZING_RULES.map((rule) => rule.id)).size).toBe(17);
  for (const { low, high, source, mark } of SIZING_RULES) {
    expect(low).toBeLessThanOrEqual(high);
    expect(source.length).toBeGreaterThan(8);
    expect(mark.length).toBeGreaterThan(5);
  }
});

test('rules of practice without a source say so word for word', () => {
  const practice = SIZING_RULES.filter((rule) => rule.mark === 'common practice, no source');
  expect(practice.map((rule) => rule.source)).toEqual(['common practice, no source']);
});

test('old shares ask for more glass in the cold than in temperate climates', () => {
  expect(HISTORICAL_GLASS_SHARES).toHaveLength(4);
  for (const { coldClimate, temperateClimate } of HISTORICAL_GLASS_SHARES) {
    expect(coldClimate[0]).toBeGreaterThan(temperateClimate[0]);
    expect(coldClimate[1]).toBeGreaterThan(temperateClimate[1]);
  }
});

test('glass up to 7 % of the floor needs no mass', () => {
  expect(glassNeedingMass(glassLimits(120).sunTemperedM2, 120)).toBe(0);
  expect(glassNeedingMass(5, 120)).toBe(0);
  expect(glassNeedingMass(20, 120)).toBeCloseTo(11.6, 12);
});

test('mass asked for at one place serves the glass it was asked for', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (extra) => {
      const none = { 'sunlit-floor': 0, 'unlit-floor': 0, 'wall-or-ceiling': 0 };
      for (const location of ['unlit-floor', 'wall-or-ceiling'] as const) {
        expect(glassServed({ ...none, [location]: massForGlass(extra, location) }, 100)).toBeCloseTo(
          extra,
          9,
        );
      }
    }),
  );
});

test('floor beyond 1.5 times the glass counts as floor out of the sun', () => {
  const floor = (area: number) =>
    glassServed({ 'sunlit-floor': area, 'unlit-floor': 0, 'wall-or-ceiling': 0 }, 10);
  expect(floor(SUNLIT_FLOOR_CAP * 10)).toBeCloseTo(15 / 5.5, 12);
  expect(floor(55)).toBeCloseTo(15 / 5.5 + 40 / 40, 12);
});

test('leaning glass counts by its upright projection', () => {
  expect(projectedGlass(20, 90)).toBeCloseTo(20, 12);
  expect(projectedGlass(20, 30)).toBeCloseTo(10, 12);
  expect(projectedGlass(20, 0)).toBe(0);
  expect(() => projectedGlass(20, 120)).toThrow(/tiltDeg is 120/);
});
