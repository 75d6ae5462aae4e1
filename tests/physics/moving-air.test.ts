import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingEffect, coolingTable, STILL_AIR_MS } from '../../src/physics/moving-air.ts';
import { standardEffectiveTemperature } from '../../src/physics/standard-effective-temperature.ts';

/** quantity → allowed, with the reason */
const ALLOWED = {
  /** rooms people live in: straight lines between entries a kelvin and a tenth of humidity apart [K] */
  usual: 0.05,
  /** where sweat no longer all dries the effect bends sharply [K] */
  hotAndDamp: 0.4,
  /** the body is followed by whole minutes, so its answer has grains [K] */
  grain: 0.02,
} as const;

const usual = { tempC: [25, 30], humidity: [0.1, 0.8] } as const;
const between = ([min, max]: readonly [number, number]) => fc.double({ min, max, noNaN: true });

describe('the cooling effect of moving air', () => {
  test('is what makes both rooms feel the same, by its own definition (ASHRAE 55)', () => {
    fc.assert(
      fc.property(
        between(usual.tempC),
        between(usual.humidity),
        between([0.2, 1.2]),
        (tempC, humidity, speed) => {
          const feels = (airTempC: number, airSpeed: number) =>
            standardEffectiveTemperature({
              airTempC,
              meanRadiantTempC: airTempC,
              airSpeed,
              relativeHumidity: humidity,
              activityMet: 1.1,
              clothingClo: 0.5,
            });
          const cooler = coolingEffect(tempC, humidity, speed, STILL_AIR_MS);
          expect(feels(tempC - cooler, STILL_AIR_MS)).toBeCloseTo(feels(tempC, speed), 3);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('grows with the speed, and is none in still air', () => {
    fc.assert(
      fc.property(
        between(usual.tempC),
        between(usual.humidity),
        between([0.15, 1.1]),
        (tempC, humidity, speed) => {
          const at = (airSpeed: number) => coolingEffect(tempC, humidity, airSpeed, STILL_AIR_MS);
          expect(at(speed + 0.1)).toBeGreaterThan(at(speed));
          expect(at(STILL_AIR_MS)).toBe(0);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('is read from a table within what the table says of itself', () => {
    const table = coolingTable(0.8, STILL_AIR_MS);
    const off = (tempC: number, humidity: number) =>
      Math.abs(table(tempC, humidity) - coolingEffect(tempC, humidity, 0.8, STILL_AIR_MS));
    for (let tempC = 25.2; tempC < 30; tempC += 0.9)
      for (let humidity = 0.07; humidity < 0.8; humidity += 0.13)
        expect(off(tempC, humidity), `${tempC} °C, ${humidity}`).toBeLessThan(ALLOWED.usual);
    for (const [tempC, humidity] of [
      [31.4, 0.95],
      [33.6, 0.85],
      [34.5, 0.75],
      [34.6, 0.2],
    ] as const)
      expect(off(tempC, humidity), `${tempC} °C, ${humidity}`).toBeLessThan(ALLOWED.hotAndDamp);
    // Outside the table its edge holds.
    expect(table(20, 0.5)).toBe(table(25, 0.5));
    expect(table(40, 1.2)).toBe(table(35, 1));
  });
});

describe('the standard effective temperature', () => {
  const room = {
    airTempC: 27,
    meanRadiantTempC: 27,
    airSpeed: 0.1,
    relativeHumidity: 0.5,
    activityMet: 1.1,
    clothingClo: 0.5,
  };

  test('rises with air, surfaces, damp, clothes and work', () => {
    const set = standardEffectiveTemperature(room);
    for (const more of [
      { airTempC: 28 },
      { meanRadiantTempC: 28 },
      { relativeHumidity: 0.7 },
      { clothingClo: 0.8 },
      { activityMet: 1.4 },
    ])
      expect(standardEffectiveTemperature({ ...room, ...more })).toBeGreaterThan(set + ALLOWED.grain);
  });

  test('refuses what only a bug can pass in', () => {
    expect(() => standardEffectiveTemperature({ ...room, relativeHumidity: 50 })).toThrow(
      /relativeHumidity is 50/,
    );
    expect(() => standardEffectiveTemperature({ ...room, airTempC: Number.NaN })).toThrow(/airTempC is NaN/);
  });
});
