import { expect, test } from 'vitest';
import {
  designMoisture,
  householdMoisture,
  MOISTURE_ACTIVITIES,
  MOISTURE_HABITS,
  steadyVapour,
  vapourExcess,
} from '../../src/physics/household-moisture.ts';

test('every activity has a rate inside its range, and every row its source', () => {
  expect(MOISTURE_ACTIVITIES).toHaveLength(11);
  expect(MOISTURE_HABITS).toHaveLength(8);
  expect(new Set(MOISTURE_ACTIVITIES.map((row) => row.id)).size).toBe(11);
  for (const { gramsPerHour, range, source } of MOISTURE_ACTIVITIES) {
    expect(gramsPerHour).toBeGreaterThanOrEqual(range[0]);
    expect(gramsPerHour).toBeLessThanOrEqual(range[1]);
    expect(source.length).toBeGreaterThan(10);
  }
  for (const { grams, source } of MOISTURE_HABITS) {
    expect(grams).toBeGreaterThan(0);
    expect(source.length).toBeGreaterThan(10);
  }
});

test('more people and wetter habits never release less', () => {
  for (let people = 1; people <= 10; people++) {
    const [dry, moist, wet] = (['dry', 'moist', 'wet'] as const).map((living) =>
      householdMoisture(people, living),
    );
    expect(dry!).toBeLessThan(moist!);
    expect(moist!).toBeLessThan(wet!);
    expect(householdMoisture(people + 1, 'moist')).toBeGreaterThan(moist!);
  }
  expect(householdMoisture(0, 'wet')).toBe(0);
});

test('the vapour excess falls in a straight line to nothing at 20 °C', () => {
  expect(vapourExcess(3, -10)).toBe(810);
  expect(vapourExcess(3, 10)).toBeCloseTo(405, 12);
  expect(vapourExcess(3, 20)).toBe(0);
  expect(vapourExcess(3, 30)).toBe(0);
});

test('twice the airflow halves what a household adds to the air', () => {
  expect(steadyVapour(6, 400, 200) - 6).toBeCloseTo((steadyVapour(6, 400, 100) - 6) / 2, 12);
});

test('what only a bug can pass in is refused with its value', () => {
  expect(() => householdMoisture(2.5, 'dry')).toThrow(/people is 2.5/);
  expect(() => designMoisture(0)).toThrow(/bedrooms is 0/);
  expect(() => steadyVapour(6, 400, 0)).toThrow(/airflow is 0/);
});
