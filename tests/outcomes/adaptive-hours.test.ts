import { describe, expect, it } from 'vitest';
import { adaptiveLimits, adaptiveOverheatedHours } from '../../src/outcomes/adaptive-hours.ts';
import { hourly } from './made-year.ts';

describe('hours above the adaptive limit', () => {
  it('takes 27.74 °C at a running mean of 18 °C', () => {
    // EN 16798-1 category II: 0.33·18 + 18.8 + 3 (formula from memory, high confidence)
    const outdoors = hourly(18);
    for (const limit of adaptiveLimits(outdoors)) expect(limit).toBeCloseTo(27.74, 10);
    expect(adaptiveOverheatedHours(hourly(27.7), outdoors)).toBe(0);
    expect(adaptiveOverheatedHours(hourly(27.8), outdoors)).toBe(8760);
  });

  it('holds the limit at the ends of the standard’s range, 10 and 30 °C', () => {
    for (const limit of adaptiveLimits(hourly(-15))) expect(limit).toBeCloseTo(0.33 * 10 + 21.8, 10);
    for (const limit of adaptiveLimits(hourly(38))) expect(limit).toBeCloseTo(0.33 * 30 + 21.8, 10);
  });

  it('rises over the days after a step in the weather, not at once', () => {
    const limits = adaptiveLimits(hourly((hour) => (hour < 24 * 180 ? 12 : 22)));
    expect(limits[180]).toBeCloseTo(0.33 * 12 + 21.8, 6);
    expect(limits[181]).toBeCloseTo(0.33 * 14 + 21.8, 6);
    expect(limits[182]).toBeCloseTo(0.33 * 15.6 + 21.8, 6);
  });
});
