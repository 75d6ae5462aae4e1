import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sunPosition, sunVector } from '../../src/physics/sun-position.ts';

const JUNE_SOLSTICE = Date.UTC(2025, 5, 21, 2, 42);

test('the direction vector has length one and points up by the sine of the elevation', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 360, noNaN: true }),
      (h, a) => {
        const { east, north, up } = sunVector(h, a);
        expect(Math.hypot(east, north, up)).toBeCloseTo(1, 12);
        expect(up).toBeCloseTo(Math.sin((h * Math.PI) / 180), 12);
      },
    ),
  );
});

test('at the June solstice the noon sun is overhead at the tropic and 90° − latitude + 23.44° elsewhere', () => {
  // Astronomical obliquity 23.44° (2025); noon searched minute by minute.
  for (const latitude of [23.44, 40, 60, -34]) {
    let highest = -90;
    for (let minute = 0; minute < 1440; minute++) {
      const instant = Date.UTC(2025, 5, 21) + minute * 60_000;
      highest = Math.max(highest, sunPosition(instant, latitude, 0).elevationDeg);
    }
    expect(highest).toBeCloseTo(90 - Math.abs(latitude - 23.44), 0.9);
    expect(Math.abs(highest - (90 - Math.abs(latitude - 23.44)))).toBeLessThan(0.15);
  }
});

test('at the pole the sun keeps its elevation all day', () => {
  const north = [0, 6, 12, 18].map((h) => sunPosition(JUNE_SOLSTICE + h * 3_600_000, 90, 0).elevationDeg);
  expect(Math.max(...north) - Math.min(...north)).toBeLessThan(0.01);
  expect(sunPosition(JUNE_SOLSTICE, -90, 0).elevationDeg).toBeCloseTo(-north[0]!, 1);
});

test('the true elevation passes smoothly through the horizon, where refraction is taken off in two ways', () => {
  let before = sunPosition(Date.UTC(2025, 2, 20, 5, 30), 0, 0).elevationDeg;
  for (let second = 5; second < 3600; second += 5) {
    const now = sunPosition(Date.UTC(2025, 2, 20, 5, 30, second), 0, 0).elevationDeg;
    expect(now - before).toBeCloseTo((15 * 5) / 3600, 3);
    before = now;
  }
});

test('a latitude beyond the pole is refused', () => {
  expect(() => sunPosition(0, 90.1, 0)).toThrow(RangeError);
  expect(() => sunPosition(Number.NaN, 0, 0)).toThrow(RangeError);
});
