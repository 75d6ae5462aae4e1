// The front in section against plain trigonometry.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { equatorFront } from '../../src/model/equator-front.ts';
import { equatorPanes } from '../../src/model/equator-glass.ts';
import { NORTH } from './sites.ts';

const exampleOf = (id: string): Design => EXAMPLES.find((example) => example.id === id)!.design;

test('glass at 60° hangs from the ceiling and ends where its length along the slope says', () => {
  const front = equatorFront(exampleOf('leaning'));
  const slant = 38 / 13.5;
  const sin60 = Math.sqrt(3) / 2;
  expect(front.headM).toBeCloseTo(2.6, 12);
  expect(front.sillM).toBeCloseTo(2.6 - slant * sin60, 12);
  // Foot of the slope at 2.4 m; the sill lies half the way along the slope's own run further in.
  expect(front.depthAtSillM).toBeCloseTo(2.4 - front.sillM / Math.sqrt(3), 9);
  expect(front.kneeM).toBe(0);
});

test('a sunspace too shallow for its slope stands on an upright part, which takes the glass that is left', () => {
  const leaning = exampleOf('leaning');
  const shallow: Design = {
    ...leaning,
    glass: { ...leaning.glass, tiltDeg: 45, value: 13.5 * 2 },
    sunspace: { ...leaning.sunspace, depthM: 1 },
  };
  const front = equatorFront(shallow);
  expect(front.kneeM).toBeCloseTo(1.6, 12);
  expect(front.slopeGlassM2).toBeCloseTo(13.5 * Math.SQRT2, 9);
  expect(front.kneeGlassM2).toBeCloseTo(13.5 * (2 - Math.SQRT2), 9);
  expect(front.slopeWallM2).toBeCloseTo(0, 9);
  expect(front.kneeWallM2 + front.kneeGlassM2).toBeCloseTo(13.5 * 1.6, 9);
  const panes = equatorPanes(shallow, NORTH);
  expect(panes.map(({ id, tiltDeg }) => [id, tiltDeg])).toEqual([
    ['front', 45],
    ['front knee', 90],
  ]);
});

test('no glass makes no pane, and the wall is whole', () => {
  const modest = exampleOf('modest');
  const blind = { ...modest, glass: { ...modest.glass, value: 0 } };
  expect(equatorPanes(blind, NORTH)).toEqual([]);
  expect(equatorFront(blind).slopeWallM2).toBeCloseTo(13.5 * 2.6, 9);
});

test('shade stands before the front only when the design has one', () => {
  const modest = exampleOf('modest');
  const pane = (design: Design) => equatorPanes(design, NORTH)[0]!;
  expect(pane(modest).shading).toMatchObject({
    widthM: 13.5,
    overhang: { depthM: 0.6, gapM: 0.3, extendM: 0.5 },
  });
  const bare = { ...modest, glass: { ...modest.glass, overhangM: 0 } };
  expect(pane(bare).shading).toBeNull();
  const cloth = pane({ ...bare, glass: { ...bare.glass, summerShade: 0.7 } }).shading!;
  expect(cloth.overhang).toBeUndefined();
  expect(Math.max(...cloth.seasonal!)).toBe(0.7);
});

test('sunlit mass across the whole back brings the lit plane to the middle of the house', () => {
  const modest = exampleOf('modest');
  const depth = 110 / 13.5;
  const at = (areaM2: number, place: 'sunlit' | 'shaded') =>
    equatorPanes({ ...modest, mass: { ...modest.mass, areaM2, place } }, NORTH)[0]!.lightRoom!.depthM;
  expect(at(0, 'sunlit')).toBeCloseTo(depth, 9);
  expect(at(20, 'shaded')).toBeCloseTo(depth, 9);
  expect(at(13.5 * 2.6, 'sunlit')).toBeCloseTo(depth / 2, 9);
});
