import { describe, expect, it } from 'vitest';
import {
  dailyMeans,
  dateOfHour,
  hoursByMonth,
  indexOfLargest,
  monthlySums,
} from '../../src/outcomes/calendar.ts';
import { hourly } from './made-year.ts';

describe('the calendar of the typical year', () => {
  it('starts at 1 January midnight and ends at 31 December 23:00', () => {
    expect(dateOfHour(0)).toEqual({ month: 1, day: 1, hour: 0 });
    expect(dateOfHour(8759)).toEqual({ month: 12, day: 31, hour: 23 });
  });

  it('has no 29 February', () => {
    expect(dateOfHour(58 * 24 + 23)).toEqual({ month: 2, day: 28, hour: 23 });
    expect(dateOfHour(59 * 24)).toEqual({ month: 3, day: 1, hour: 0 });
  });

  it('agrees with the platform calendar of a common year in every hour', () => {
    for (let hour = 0; hour < 8760; hour++) {
      const date = new Date(Date.UTC(2025, 0, 1, hour));
      const expected = { month: date.getUTCMonth() + 1, day: date.getUTCDate(), hour: date.getUTCHours() };
      expect(dateOfHour(hour)).toEqual(expected);
    }
  });

  it('averages days and sums months', () => {
    const means = dailyMeans(hourly((hour) => hour % 24));
    expect(means).toHaveLength(365);
    for (const mean of means) expect(mean).toBeCloseTo(11.5, 12);
    expect(monthlySums(hourly(1))).toEqual([744, 672, 744, 720, 744, 720, 744, 744, 720, 744, 720, 744]);
    expect(
      hoursByMonth(
        hourly((hour) => hour),
        (value) => value < 744 + 5,
      ),
    ).toEqual([744, 5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
  });

  it('takes the first of equal largest values', () => {
    expect(indexOfLargest([1, 3, 3, 2])).toBe(1);
  });
});
