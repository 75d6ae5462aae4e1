import { expect, test } from 'vitest';
import { BECQUEREL_PER_PICOCURIE, RADON_LEVELS } from '../../src/physics/radon.ts';

test('levels are ascending', () => {
  expect(RADON_LEVELS).toHaveLength(9);
  const levels = RADON_LEVELS.map(({ level }) => level);
  expect(levels).toEqual([...levels].sort((a, b) => a - b));
});

test('the US levels are 2 and 4 picocuries a litre', () => {
  const us = RADON_LEVELS.filter(({ body }) => body === 'US EPA').map(
    ({ level }) => level / BECQUEREL_PER_PICOCURIE,
  );
  expect(us).toEqual([2, 4]);
});
