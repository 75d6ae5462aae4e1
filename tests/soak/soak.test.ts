// The short form of the soak: twelve random designs in six climates. The long form is `npm run soak`.
import { expect, test } from 'vitest';
import { soakHouses } from './house-soak.ts';

test('12 random designs in six climates: no crash, no fault, books closed, nothing carried from run to run', () => {
  const soak = soakHouses(12, 2026);
  expect(soak.told).toEqual([]);
  expect(soak).toMatchObject({ runs: 12, crashes: 0, faulty: 0, repeats: true });
  // Most designs, even at the ends of their limits, have a year.
  expect(soak.refused).toBeLessThan(4);
  // The heap settles; a year kept by mistake would be some megabytes each.
  expect(soak.heapLastMB - soak.heapFirstMB).toBeLessThan(20);
});
