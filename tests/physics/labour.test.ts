import { expect, test } from 'vitest';
import { EARTH_WORK, TYRE_PRACTICE } from '../../src/physics/labour.ts';

test('every kind of work has a range, low before high', () => {
  expect(EARTH_WORK).toHaveLength(5);
  for (const [low, high] of [...EARTH_WORK.map((row) => row.hoursPerM3), TYRE_PRACTICE.tyresPerDayRange]) {
    expect(low).toBeGreaterThan(0);
    expect(low).toBeLessThan(high);
  }
});
