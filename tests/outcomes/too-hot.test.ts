import { describe, expect, test } from 'vitest';
import type { Design, TooHotChoice } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { adaptiveOverheatedHours } from '../../src/outcomes/adaptive-hours.ts';
import { overheating } from '../../src/outcomes/comfort-hours.ts';
import { hotLimits } from '../../src/outcomes/hot-limits.ts';
import { isTooHot, tooHot } from '../../src/outcomes/too-hot.ts';
import { madeClimate } from './made-climate.ts';
import { madeZone } from './made-year.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const withComfort = (
  comfort: Partial<Design['comfort']>,
  people: Partial<Design['people']> = {},
): Design => ({
  ...MODEST,
  comfort: { ...MODEST.comfort, ...comfort },
  people: { ...MODEST.people, ...people },
});
/** A year from 3 °C in winter to 29 °C in summer, days swinging by 10 K. */
const wavy = (hour: number) =>
  16 - 13 * Math.cos((2 * Math.PI * (hour - 500)) / 8760) + 5 * Math.sin((Math.PI * (hour - 9)) / 12);
const YEAR = madeClimate({ dryBulbC: wavy }).year;
const ROOMS = madeZone('house', { airC: (hour) => 23 + 0.6 * (wavy(hour) - 14) });

describe('hours too hot', () => {
  test('by one temperature are those above it, as they were always counted', () => {
    const { hours, limitC } = tooHot(withComfort({ criterion: 'fixed', overheatC: 25.5 }), ROOMS, YEAR);
    expect(hours).toBe(overheating(ROOMS.operativeC, 25.5).hours);
    expect(hours).toBeGreaterThan(100);
    expect(limitC).toBe(25.5);
  });

  test('by EN 16798-1 are those above its limits, and fewer people’s categories allow more', () => {
    const of = (criterion: TooHotChoice) => tooHot(withComfort({ criterion }), ROOMS, YEAR);
    expect(of('adaptive-II').hours).toBe(adaptiveOverheatedHours(ROOMS.operativeC, YEAR.dryBulbC));
    expect(of('adaptive-I').hours).toBeGreaterThan(of('adaptive-II').hours);
    expect(of('adaptive-II').hours).toBeGreaterThan(of('adaptive-III').hours);
    // 0.33 · 10 + 18.8 + 3 °C, at the lower end of the standard's range.
    expect(of('adaptive-II').lowestLimitC).toBeCloseTo(25.1, 9);
  });

  test('by CIBSE TM59 are those a degree over TM52’s limit from May to September, or November to March in the south', () => {
    const design = withComfort({ criterion: 'tm59-open' });
    // Outdoors always at 20 °C: 0.33 · 20 + 21.8 = 28.4 °C; an excess of 0.6 K rounds to 1 and counts, 0.4 K does not.
    const mild = (latitudeDeg: number) => madeClimate({ dryBulbC: 20, latitudeDeg }).year;
    const at = (tempC: number, latitudeDeg = 40) =>
      tooHot(design, madeZone('house', { airC: tempC }), mild(latitudeDeg)).hours;
    expect(at(28.8)).toBe(0);
    expect(at(29)).toBe(24 * 153);
    expect(at(29, -35)).toBe(24 * 151);
    const { limitC } = hotLimits(design, ROOMS, mild(40));
    expect(limitC[24 * 119]).toBe(Number.POSITIVE_INFINITY);
    expect(limitC[24 * 120]).toBeCloseTo(28.9, 9);
  });

  test('pass the limit only beyond what is allowed', () => {
    const counted = (hours: number) => ({
      tooHot: { ...tooHot(MODEST, ROOMS, YEAR), hours, limitHours: 262 },
    });
    expect([isTooHot(counted(262)), isTooHot(counted(263))]).toEqual([false, true]);
  });
});

describe('ceiling fans', () => {
  const warm = madeZone('house', { airC: 27, relativeHumidity: 0.5 });
  const fixed = { criterion: 'fixed', overheatC: 26 } as const;

  test('end the hours that are too hot by less than their cooling effect', () => {
    expect(tooHot(withComfort(fixed), warm, YEAR).hours).toBe(8760);
    const { hours, fans } = tooHot(withComfort({ ...fixed, airSpeedMs: 0.8 }), warm, YEAR);
    expect(hours).toBe(0);
    // ASHRAE 55's cooling effect is 3.1 K there, and nobody turns a fan past pleasant: 25 °C.
    expect(fans).toMatchObject({ hours: 8760, coolerK: 2, hottestFeelsC: 25 });
  });

  test('help nobody who is away, no sunspace, and nobody in air above 35 °C', () => {
    const fan = { ...fixed, airSpeedMs: 0.8 };
    const away = tooHot(withComfort(fan, { awayWorkdays: true }), warm, YEAR);
    // 1 January is a Monday: 261 workdays of nine hours away.
    expect(away.hours).toBe(9 * 261);
    expect(tooHot(withComfort(fan, { count: 0 }), warm, YEAR).hours).toBe(8760);
    expect(tooHot(withComfort(fan), madeZone('sunspace', { airC: 27 }), YEAR).hours).toBe(8760);
    expect(tooHot(withComfort(fan), madeZone('house', { airC: 35.5 }), YEAR).fans).toBeUndefined();
  });

  test('raise the limit that follows the weather by no more than EN 16798-1 says, 1.2 K at 0.6 m/s', () => {
    const mild = madeClimate({ dryBulbC: 20 }).year;
    const rooms = madeZone('house', { airC: 28, relativeHumidity: 0.5 });
    const limit = (airSpeedMs?: number) =>
      hotLimits(
        withComfort({ criterion: 'adaptive-II', ...(airSpeedMs !== undefined && { airSpeedMs }) }),
        rooms,
        mild,
      ).limitC[5000]!;
    expect(limit(0.6) - limit()).toBeGreaterThan(1.15);
    expect(limit(0.6) - limit()).toBeLessThan(1.25);
    // The limit holds for air at 0.3 m/s already.
    expect(limit(0.3)).toBe(limit());
  });

  test('never make a warmer room feel cooler, nor a faster fan a room warmer', () => {
    // A year that warms from 23 to 34.9 °C, hour by hour.
    const ramp = madeZone('house', { airC: (hour) => 23 + (11.9 * hour) / 8759 });
    let slower: Float64Array | null = null;
    for (const airSpeedMs of [0, 0.2, 0.4, 0.6, 0.8, 1, 1.2]) {
      const { limitC } = hotLimits(withComfort({ ...fixed, airSpeedMs }), ramp, YEAR);
      const feels = ramp.operativeC.map((tempC, hour) => tempC - (limitC[hour]! - 26));
      for (let hour = 1; hour < 8760; hour++) {
        if (feels[hour]! < feels[hour - 1]! - 1e-9) expect.fail(`${airSpeedMs} m/s, hour ${hour}`);
        if (slower !== null && feels[hour]! > slower[hour]! + 1e-9) expect.fail(`${airSpeedMs} m/s`);
      }
      slower = feels;
    }
    expect(slower![8759]).toBeLessThan(32);
  });

  test('leave air and every other figure alone', () => {
    const { fans: _, hours: __, limitC: ___, ...still } = tooHot(withComfort(fixed), warm, YEAR);
    expect(tooHot(withComfort({ ...fixed, airSpeedMs: 1 }), warm, YEAR)).toMatchObject(still);
  });
});
