import { expect, test } from 'vitest';
import {
  BECQUEREL_PER_PICOCURIE,
  RADON_DECAY_PER_H,
  RADON_LEVELS,
  radonLevelsReached,
  steadyRadon,
} from '../../src/physics/radon.ts';

test('without any air change only decay limits radon', () => {
  expect(steadyRadon(1000, 250, 0)).toBeCloseTo(1000 / (250 * RADON_DECAY_PER_H), 9);
});

test('the decay constant is that of a half-life of 3.82 days', () => {
  expect(RADON_DECAY_PER_H).toBeCloseTo(Math.LN2 / (3.82 * 24), 4);
});

test('more air and less entry mean less radon', () => {
  expect(steadyRadon(20000, 250, 0.6)).toBeLessThan(steadyRadon(20000, 250, 0.3));
  expect(steadyRadon(10000, 250, 0.3)).toBeCloseTo(steadyRadon(20000, 250, 0.3) / 2, 9);
  expect(steadyRadon(0, 250, 0.3)).toBe(0);
});

test('levels are ascending, and a house at 160 Bq/m³ has reached four of nine', () => {
  expect(RADON_LEVELS).toHaveLength(9);
  const levels = RADON_LEVELS.map(({ level }) => level);
  expect(levels).toEqual([...levels].sort((a, b) => a - b));
  expect(radonLevelsReached(160)).toHaveLength(4);
  expect(radonLevelsReached(50)).toEqual([]);
});

test('the US levels are 2 and 4 picocuries a litre', () => {
  const us = RADON_LEVELS.filter(({ body }) => body === 'US EPA').map(
    ({ level }) => level / BECQUEREL_PER_PICOCURIE,
  );
  expect(us).toEqual([2, 4]);
});

test('a house without volume is refused', () => {
  expect(() => steadyRadon(1000, 0, 0.3)).toThrow(/volumeM3 is 0/);
});
