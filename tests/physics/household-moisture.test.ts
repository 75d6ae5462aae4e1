import { expect, test } from 'vitest';
import { householdMoisture, MOISTURE_ACTIVITIES } from '../../src/physics/household-moisture.ts';

test('every activity has a rate inside its range, and every row its source', () => {
  expect(MOISTURE_ACTIVITIES).toHaveLength(11);
  expect(new Set(MOISTURE_ACTIVITIES.map((row) => row.id)).size).toBe(11);
  for (const { gramsPerHour, range, source } of MOISTURE_ACTIVITIES) {
    expect(gramsPerHour).toBeGreaterThanOrEqual(range[0]);
    expect(gramsPerHour).toBeLessThanOrEqual(range[1]);
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

test('what only a bug can pass in is refused with its value', () => {
  expect(() => householdMoisture(2.5, 'dry')).toThrow(/people is 2.5/);
});
