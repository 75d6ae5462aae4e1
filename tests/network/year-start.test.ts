// A year begins as the years before would leave it: 365 real days of warm-up change next to nothing. Our own start against
// our own longer one; what the ground itself does over a year is checked in tests/published/ground-section.test.ts.
import { expect, test } from 'vitest';
import { climateAt, differences, housesWith, measureYear } from '../converge/houses.ts';

/** Of heat, of itself or of 1000 kWh where there is less [%]; of January's mean air [K]; of hot hours [h]. */
const MOST = { heatPercent: 1, januaryK: 0.1, hotHours: 5 };

// One house in each place, the heavy one in three; `npm run converge` has all in all, with openers and with people at home.
test.each([
  ['heavy', 'madrid', 'automatic'],
  ['heavy', 'denver', 'away'],
  ['modest', 'burlington', 'automatic'],
  ['closed', 'anchorage', 'automatic'],
  ['leaning', 'santa-fe', 'automatic'],
  ['heavy', 'southern-chile', 'attentive'],
] as const)('the %s house in %s, its vents %s, starts as after a year', (house, place, habit) => {
  const [, design] = housesWith(habit).find(([name]) => name === house)!;
  const climate = climateAt(place);
  const off = differences(measureYear(design, climate), measureYear(design, climate, { warmUpDays: 365 }));
  expect(off.heatPercent).toBeLessThan(MOST.heatPercent);
  expect(off.januaryK).toBeLessThan(MOST.januaryK);
  expect(Math.abs(off.hotHours)).toBeLessThanOrEqual(MOST.hotHours);
});
