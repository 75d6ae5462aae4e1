import { describe, expect, it } from 'vitest';
import type { ZoneYear } from '../../src/network/year.ts';
import { mouldOfSurface, vapourOf } from '../../src/outcomes/mould.ts';
import { madeZone } from './made-year.ts';

const mouldOfYear = (zone: ZoneYear) => mouldOfSurface(zone.cornerC, vapourOf(zone));

describe('mould in the coldest corner', () => {
  it('does not grow in a corner as dry as the room', () => {
    const year = mouldOfYear(madeZone('house', { airC: 20, relativeHumidity: 0.5, cornerC: 20 }));
    expect(year.max).toBe(0);
    expect(year.humidity[0]).toBeCloseTo(0.5, 12);
  });

  it('finds dew where the corner is colder than the dew point of the room', () => {
    // 20 °C at 60 % has its dew point at 12.0 °C (trade table, computed from the Magnus form, ±0.05 K)
    const wet = mouldOfYear(madeZone('house', { airC: 20, relativeHumidity: 0.6, cornerC: 11.9 }));
    const dry = mouldOfYear(madeZone('house', { airC: 20, relativeHumidity: 0.6, cornerC: 12.1 }));
    expect(wet.humidity[0]).toBe(1);
    expect(dry.humidity[0]).toBeLessThan(1);
    expect(dry.humidity[0]).toBeGreaterThan(0.98);
  });

  it('levels off at the limit of the sensitive class in a corner at 20 °C and 97 % all year', () => {
    // VTT sensitivity classes (2010, from memory, high confidence): limit A + B·x − C·x² with A 0.3, B 6, C 1 and
    // x = (97 − 80)/(100 − 80) = 0.85, so 0.3 + 5.1 − 0.7225 = 4.6775.
    const year = mouldOfYear(madeZone('house', { airC: 20, cornerC: 20, relativeHumidity: 0.97 }));
    expect(year.max).toBeCloseTo(4.6775, 2);
  });

  it('carries a damp December over new year', () => {
    const damp = (hour: number) => (hour >= 8760 - 45 * 24 || hour < 45 * 24 ? 0.97 : 0.3);
    const halfDamp = (hour: number) => (hour < 45 * 24 ? 0.97 : 0.3);
    const whole = mouldOfYear(madeZone('house', { airC: 20, cornerC: 20, relativeHumidity: damp }));
    const half = mouldOfYear(madeZone('house', { airC: 20, cornerC: 20, relativeHumidity: halfDamp }));
    expect(whole.max).toBeGreaterThan(half.max + 0.5);
  });

  it('stays a number in a sunspace hotter and a corner colder than any room', () => {
    const year = mouldOfYear(madeZone('sunspace', { airC: (hour) => (hour % 2 ? 75 : -50), cornerC: -50 }));
    expect(year.index.every(Number.isFinite)).toBe(true);
    expect(year.max).toBe(0);
  });
});
