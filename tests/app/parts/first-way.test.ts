import { expect, test } from 'vitest';
import { firstWay, isAlong } from '../../../src/app/parts/first-way.ts';

test('a trembling finger has not decided; then the longer way counts', () => {
  expect(firstWay(3, 4)).toBeNull();
  expect(firstWay(7, 4)).toBe('across');
  expect(firstWay(-4, -7)).toBe('up');
});

test('a move within 45° of a line goes along it, either way; a line of no length turns nobody away', () => {
  const line = { x: 1, y: 1 };
  expect(isAlong({ x: 1, y: 2 }, line)).toBeNull();
  expect(isAlong({ x: 10, y: 1 }, line)).toBe(true);
  expect(isAlong({ x: -10, y: -8 }, line)).toBe(true);
  expect(isAlong({ x: 10, y: -1 }, line)).toBe(false);
  expect(isAlong({ x: 10, y: -1 }, { x: 0, y: 0 })).toBe(true);
});
