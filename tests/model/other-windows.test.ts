// Windows, bare wall and earth on the three other sides against the gross walls of a plain box.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { otherPanes, otherSides } from '../../src/model/other-windows.ts';
import { anyDesign } from './any-design.ts';
import { NORTH } from './sites.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const withWindows = (otherShareOfFloor: number, bermShare: number): Design => ({
  ...MODEST,
  glass: { ...MODEST.glass, otherShareOfFloor },
  envelope: { ...MODEST.envelope, bermShare },
});

test('windows, bare wall and earth make up each wall in any design', () => {
  let runs = 0;
  fc.assert(
    fc.property(anyDesign, (design) => {
      for (const { grossM2, windowM2, bareM2, bermedM2 } of otherSides(design, NORTH)) {
        expect(windowM2 + bareM2 + bermedM2).toBeCloseTo(grossM2, 6);
        expect(Math.min(windowM2, bareM2, bermedM2)).toBeGreaterThanOrEqual(0);
      }
      runs++;
    }),
    { numRuns: 200, seed: 11 },
  );
  expect(runs).toBe(200);
});

test('in a wall wholly in earth a window is let into the earth', () => {
  for (const { windowM2, bareM2, bermedM2, grossM2 } of otherSides(withWindows(0.05, 1), NORTH)) {
    expect(windowM2).toBeGreaterThan(0);
    expect(bareM2).toBe(0);
    expect(bermedM2).toBeCloseTo(grossM2 - windowM2, 9);
  }
});

test('windows that ask for more than the walls get nine tenths of them', () => {
  const low: Design = {
    ...withWindows(0.3, 0),
    house: { ...MODEST.house, floorAreaM2: 2000, equatorWallM: 40 },
  };
  const sides = otherSides(low, NORTH);
  for (const { windowM2, grossM2 } of sides) expect(windowM2).toBeCloseTo(0.9 * grossM2, 9);
  expect(otherPanes(low, NORTH, sides)).toHaveLength(3);
});

test('no other windows make no panes', () => {
  const blind = withWindows(0, 0);
  expect(otherPanes(blind, NORTH, otherSides(blind, NORTH))).toEqual([]);
});
