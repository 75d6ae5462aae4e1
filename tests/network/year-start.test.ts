// A year begins as the years before would leave it: 365 real days of warm-up change next to nothing. Our own start against
// our own longer one; what the ground itself does over a year is checked in tests/published/ground-section.test.ts.
import { describe, expect, test } from 'vitest';
import { climateAt, differences, housesWith, measureYear, PLACES } from '../converge/houses.ts';

/** Of heat, of itself or of 1000 kWh where there is less [%]; of January's mean air [K]; of hot hours [h]. */
const MOST = { heatPercent: 1, januaryK: 0.1, hotHours: 5 };

// Two houses in each place, so that every house stands in three; `npm run converge` has all in all.
describe.each(
  PLACES.map((place, p) => [place, housesWith('automatic').filter((_, h) => h % 2 === p % 2)] as const),
)('in %s', (place, houses) => {
  const climate = climateAt(place);
  test.each(houses)('the %s house starts as after a year', (_, design) => {
    const off = differences(measureYear(design, climate), measureYear(design, climate, { warmUpDays: 365 }));
    expect(off.heatPercent).toBeLessThan(MOST.heatPercent);
    expect(off.januaryK).toBeLessThan(MOST.januaryK);
    expect(Math.abs(off.hotHours)).toBeLessThanOrEqual(MOST.hotHours);
  });
});
