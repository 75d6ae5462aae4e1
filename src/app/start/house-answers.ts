// The five answers as the page offers them: the words of each choice, and where the answers begin.

import type { Join } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import { type Build, type HouseAnswers, usualHouse } from '../../design/usual-house.ts';

/** How much glass is said: as a share of the floor, or all that the front holds. */
export const GLASS_AMOUNTS = [
  ['little', 'little: a twelfth of the floor', 1 / 12],
  ['some', 'some: an eighth', 1 / 8],
  ['much', 'much: a fifth', 1 / 5],
  ['front', 'a whole front of it', Number.POSITIVE_INFINITY],
] as const;

export type GlassAmount = (typeof GLASS_AMOUNTS)[number][0];

export const TILTS = [
  [90, 'upright'],
  [75, 'leaning a little, 75°'],
  [60, 'leaning, 60°'],
  [45, 'leaning far, 45°'],
] as const;

export const JOINS: readonly (readonly [Join, string])[] = [
  ['none', 'none: the sun shines straight into the rooms'],
  ['closed', 'one behind a wall with a door'],
  ['open', 'one open to the rooms'],
];

export const BUILDS: readonly (readonly [Build, string])[] = [
  ['framed', 'a timber frame, plasterboard inside'],
  ['masonry', 'brick or block, insulated outside'],
  ['earth', 'adobe or rammed earth, insulated outside'],
  ['straw', 'straw bales, earth plaster'],
  ['earth-tyres', 'earth-rammed tyres, earth against the back'],
];

export const STOREYS = [
  [1, 'one storey'],
  [2, 'two'],
  [3, 'three'],
] as const;

/** Answers as they are given. */
export interface Given extends Omit<HouseAnswers, 'glassM2' | 'climate'> {
  readonly glass: GlassAmount;
}

export const FIRST_GIVEN: Given = {
  floorAreaM2: 100,
  storeys: 1,
  glass: 'some',
  tiltDeg: 90,
  join: 'none',
  build: 'framed',
};

/** The house of the answers so far. */
export function houseOf({ glass, ...given }: Given, climate: string) {
  const [, , share] = GLASS_AMOUNTS.find(([id]) => id === glass)!;
  const whole = usualHouse({ ...given, climate, glassM2: given.floorAreaM2 });
  const most = Math.floor(10 * geometryOf(whole).largestGlassM2) / 10;
  const glassM2 = Math.min(most, Math.round(10 * share * given.floorAreaM2) / 10);
  return usualHouse({ ...given, climate, glassM2 });
}
