// Jumps of what a fit leaves: found where something nobody told of begins and ends, and not in what a logger drifts and jitters.
import { describe, expect, test } from 'vitest';
import type { HouseRecord } from '../../src/matching/house-record.ts';
import { jumpsOf } from '../../src/matching/jumps.ts';
import { randomNumbers } from '../../src/weather/synthetic/random-numbers.ts';

const record = {
  startMs: Date.UTC(2026, 0, 12, 7),
  weather: { year: { site: { utcOffsetH: -7 } } },
} as HouseRecord;
const HOURS = 336;

/** A drift of 0.3 K over six hours with 0.1 K of jitter on it, as cheap loggers have. */
function noise(seed: number): Float64Array {
  const { normal } = randomNumbers(seed);
  const kept = Math.exp(-1 / 6);
  let slow = 0.3 * normal();
  return new Float64Array(HOURS).map(() => {
    slow = kept * slow + 0.3 * Math.sqrt(1 - kept * kept) * normal();
    return slow + 0.1 * normal();
  });
}
const evening = (hour: number) => hour % 24 >= 18 && hour % 24 < 23 && Math.floor(hour / 24) % 3 !== 1;

describe('jumps', () => {
  test('none in drift and jitter, in a hundred records', () => {
    for (let seed = 1; seed <= 100; seed++) expect(jumpsOf(record, noise(seed))).toBeNull();
  });

  test('a stove in ten evenings is named with its size and its first evening', () => {
    const found = jumpsOf(
      record,
      noise(7).map((value, hour) => value + (evening(hour) ? 2.5 : 0)),
    )!;
    expect(found.rangeK).toBeGreaterThan(2);
    expect(found.rangeK).toBeLessThan(3);
    expect(found.words).toContain('first at 2026-01-12 18:00');
    // Lit and out on ten evenings, of which the noise may hide one end.
    expect(Number(/In (\d+) hours/.exec(found.words)![1])).toBeGreaterThanOrEqual(16);
  });

  test('a party of one evening is none, nor are jumps across holes', () => {
    expect(
      jumpsOf(
        record,
        noise(7).map((value, hour) => value + (hour >= 40 && hour < 44 ? 3 : 0)),
      ),
    ).toBeNull();
    const holes = noise(7).map((value, hour) =>
      hour % 24 === 18 || hour % 24 === 23 ? Number.NaN : value + (evening(hour) ? 2.5 : 0),
    );
    expect(jumpsOf(record, holes)).toBeNull();
    expect(jumpsOf(record, new Float64Array(HOURS).fill(Number.NaN))).toBeNull();
  });
});
