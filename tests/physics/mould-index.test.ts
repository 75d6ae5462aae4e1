import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cleanSurface, criticalHumidity, MOULD_CLASSES } from '../../src/physics/mould-index.ts';
import { mouldStep } from '../reference/whole-formulas.ts';

const weather = fc.array(
  fc.record({
    tempC: fc.double({ min: -20, max: 60, noNaN: true }),
    humidity: fc.double({ min: 0, max: 1.2, noNaN: true }),
    days: fc.integer({ min: 1, max: 20 }),
  }),
  { maxLength: 8 },
);

test('whatever the weather, the index stays within 0 and 6', () => {
  fc.assert(
    fc.property(weather, fc.integer({ min: 0, max: 3 }), (spells, i) => {
      const surface = cleanSurface();
      for (const { tempC, humidity, days } of spells) {
        for (let hour = 0; hour < days * 24; hour++) {
          const index = mouldStep(surface, tempC, humidity, 1, MOULD_CLASSES[i]!);
          if (!(index >= 0 && index <= 6)) throw new Error(`${index}`);
        }
      }
    }),
    { numRuns: 30 },
  );
});

test('growth needs more than the critical humidity, warmth above freezing and not above 50 °C', () => {
  const grows = (tempC: number, humidity: number) =>
    mouldStep(cleanSurface(), tempC, humidity, 1, MOULD_CLASSES[0]) > 0;
  expect(grows(20, 0.95)).toBe(true);
  expect(grows(20, 0.79)).toBe(false);
  expect(grows(0, 1)).toBe(false);
  expect(grows(-5, 1)).toBe(false);
  expect(grows(51, 0.95)).toBe(false);
});

test('cold surfaces need damper air before mould grows', () => {
  for (const t of [1, 5, 10, 15]) {
    expect(criticalHumidity(t, 0.8)).toBeGreaterThan(criticalHumidity(t + 3, 0.8));
  }
  expect(criticalHumidity(20, 0.85)).toBe(0.85);
});

test('a more resistant material grows less in the same air', () => {
  const after = MOULD_CLASSES.map((cls) => {
    const surface = cleanSurface();
    for (let hour = 0; hour < 60 * 24; hour++) mouldStep(surface, 20, 0.95, 1, cls);
    return surface.index;
  });
  expect(after).toEqual([...after].sort((a, b) => b - a));
  expect(after[0]).toBeGreaterThan(after[3]!);
});

test('dew counts as saturation', () => {
  const [dew, saturated] = [cleanSurface(), cleanSurface()];
  mouldStep(dew, 20, 1.3, 1, MOULD_CLASSES[1]);
  mouldStep(saturated, 20, 1, 1, MOULD_CLASSES[1]);
  expect(dew.index).toBe(saturated.index);
});

test('decline does not depend on how the dry hours are cut into steps', () => {
  const [coarse, fine] = [
    { index: 3, unfavourableHours: 0 },
    { index: 3, unfavourableHours: 0 },
  ];
  for (let i = 0; i < 10; i++) mouldStep(coarse, 20, 0.4, 5, MOULD_CLASSES[0]);
  for (let i = 0; i < 200; i++) mouldStep(fine, 20, 0.4, 0.25, MOULD_CLASSES[0]);
  expect(coarse.index).toBeCloseTo(fine.index, 12);
});

test('growth barely depends on the step: quarter hours and hours agree within 0.01 after two months', () => {
  const [hours, quarters] = [cleanSurface(), cleanSurface()];
  for (let i = 0; i < 60 * 24; i++) mouldStep(hours, 22, 0.93, 1, MOULD_CLASSES[0]);
  for (let i = 0; i < 60 * 96; i++) mouldStep(quarters, 22, 0.93, 0.25, MOULD_CLASSES[0]);
  expect(Math.abs(hours.index - quarters.index)).toBeLessThan(0.01);
});

test('a damp hour starts the count of dry hours anew', () => {
  const surface = cleanSurface();
  for (let hour = 0; hour < 10; hour++) mouldStep(surface, 20, 0.4, 1, MOULD_CLASSES[0]);
  expect(surface.unfavourableHours).toBe(10);
  mouldStep(surface, 20, 0.95, 1, MOULD_CLASSES[0]);
  expect(surface.unfavourableHours).toBe(0);
});
