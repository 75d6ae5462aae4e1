import { expect, test } from 'vitest';
import { sunPosition } from '../../src/physics/sun-position.ts';
import { sunlitMinute } from '../../src/physics/sunlit-hour.ts';

const HOUR = 3_600_000;

/** Slow reference: middle of the longest run of sunlit minutes, sampled every 6 s. */
function slowMiddle(start: number, latitude: number, longitude: number): number | null {
  let best = { from: 0, length: 0 };
  let from: number | null = null;
  for (let i = 0; i <= 600; i++) {
    const up = sunPosition(start + i * 6000, latitude, longitude).elevationDeg > 0;
    if (up && from === null) from = i;
    if (from !== null && (!up || i === 600)) {
      const length = i - from;
      if (length > best.length) best = { from, length };
      if (!up) from = null;
    }
  }
  return best.length === 0 ? null : (best.from + best.length / 2) / 10;
}

test('a whole hour of sun is represented by its middle', () => {
  expect(sunlitMinute(Date.UTC(2025, 5, 21, 12), 40, 0)).toBe(30);
});

test('an hour of night has no sunlit minute', () => {
  expect(sunlitMinute(Date.UTC(2025, 5, 21, 0), 40, 0)).toBeNull();
});

test.each([
  ['sunrise at 40 N', Date.UTC(2025, 2, 20, 6), 40, 0],
  ['sunset at 40 N', Date.UTC(2025, 2, 20, 18), 40, 0],
  ['sunrise at 40 S', Date.UTC(2025, 0, 10, 4), -40, 0],
])('the hour of %s is cut at the horizon', (_, start, latitude, longitude) => {
  const ours = sunlitMinute(start, latitude, longitude);
  const slow = slowMiddle(start, latitude, longitude);
  expect(slow).not.toBeNull();
  expect(slow).not.toBeCloseTo(30, 1);
  expect(Math.abs(ours! - slow!)).toBeLessThan(0.11);
});

test('polar hours with sunrise and sunset in one hour, polar day and polar night agree with a slow scan', () => {
  let both = 0;
  let dips = 0;
  for (let latitude = 66; latitude <= 68; latitude += 0.25) {
    for (const month of [0, 5, 11]) {
      for (let day = 1; day <= 28; day += 3) {
        for (const hour of [11, 23]) {
          const start = Date.UTC(2025, month, day, hour, 30);
          const slow = slowMiddle(start, latitude, 0);
          const ours = sunlitMinute(start, latitude, 0);
          const ends = [0, HOUR].map((ms) => sunPosition(start + ms, latitude, 0).elevationDeg > 0);
          if (!ends[0] && !ends[1] && slow !== null) both++;
          if (ends[0] && ends[1] && slow !== 30) dips++;
          if (slow === null || ours === null) {
            const highest = sunPosition(start + 30 * 60_000, latitude, 0).elevationDeg;
            if (slow !== ours) expect(highest).toBeLessThan(0.02);
          } else {
            expect(Math.abs(ours - slow)).toBeLessThan(0.2);
          }
        }
      }
    }
  }
  expect(both).toBeGreaterThan(5);
  expect(dips).toBeGreaterThan(2);
  expect(sunlitMinute(Date.UTC(2025, 5, 21, 0), 78, 15)).toBe(30);
  expect(sunlitMinute(Date.UTC(2025, 11, 21, 12), 78, 15)).toBeNull();
});

test('at the equinox the two hemispheres see the sun rise together', () => {
  const north = sunlitMinute(Date.UTC(2025, 2, 20, 6), 50, 0)!;
  const south = sunlitMinute(Date.UTC(2025, 2, 20, 6), -50, 0)!;
  expect(north).toBeGreaterThan(30);
  expect(south).toBeGreaterThan(30);
  expect(Math.abs(north - south)).toBeLessThan(1.5);
});
