import { describe, expect, it } from 'vitest';
import { hoursAbove, hoursBelow, meanDailySwing, overheating } from '../../src/outcomes/comfort-hours.ts';
import { extremesOf, weekAround } from '../../src/outcomes/extremes.ts';
import { hourly } from './made-year.ts';

const DEG = Math.PI / 12;

describe('hours outside fixed limits', () => {
  it('counts hours strictly above the limit and sums the excess', () => {
    const year = hourly((hour) => (hour < 10 ? 28.5 : hour < 15 ? 26 : 20));
    expect(overheating(year, 26)).toEqual({ hours: 10, degreeHours: 25 });
  });

  it('counts an hour at the limit as comfortable on both sides', () => {
    expect(hoursBelow(hourly(16), 16)).toBe(0);
    expect(hoursAbove(hourly(0.7), 0.7)).toBe(0);
  });

  it('finds as many hours above as below the mean of a sine', () => {
    const sine = hourly((hour) => 20 + 5 * Math.sin((hour + 0.5) * DEG));
    expect(hoursAbove(sine, 20)).toBe(4380);
    expect(hoursBelow(sine, 20)).toBe(4380);
  });

  it('gives the peak-to-peak swing of a daily wave', () => {
    const wave = hourly((hour) => 20 + 3 * Math.cos((hour - 15) * DEG));
    expect(meanDailySwing(wave)).toBeCloseTo(6, 12);
    expect(meanDailySwing(hourly(21))).toBe(0);
  });
});

describe('extremes', () => {
  it('names the hours of the highest and lowest value', () => {
    const year = hourly((hour) => (hour === 5000 ? 40 : hour === 300 ? -5 : 20));
    expect(extremesOf(year)).toEqual({
      mean: expect.closeTo(20 - 5 / 8760, 9),
      max: 40,
      min: -5,
      maxHour: 5000,
      minHour: 300,
    });
  });

  it('puts an hour into the middle day of its week, inside the year', () => {
    expect(weekAround(5000)).toBe((208 - 3) * 24);
    expect([weekAround(0), weekAround(8759)]).toEqual([0, 8760 - 168]);
  });
});
