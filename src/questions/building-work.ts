// What an amount of mass means on a building site: pieces, weight, days of one person, for each way to build it. All
// of it is common practice, no source, and is to be shown as such; hours for earth and masonry from physics/labour.ts.

import { materialById } from '../design/materials.ts';
import { EARTH_WORK, type EarthWork, TYRE_PRACTICE } from '../physics/labour.ts';
import type { Words } from './words.ts';

export interface WayToBuild {
  /** the material, with what is built thinner than usual told apart */
  readonly id: string;
  readonly material: string;
  /** thickness tried [m]: what is usually built, near where a day's heat turns back */
  readonly thicknessM: number;
  /** what is carried, in the plural */
  readonly piece: (words: Pick<Words, 'weight'>) => string;
  /** [m³] in place */
  readonly pieceM3: number;
  /** low and high [h/m³] */
  readonly hoursPerM3: readonly [number, number];
}

/** Hours of one person a day. Common practice, no source. */
const HOURS_PER_DAY = 8;
/** A steel or plastic drum filled to 0.2 m³ stands 0.57 m wide and 0.88 m high: as a wall of drums 0.4 m thick. */
const DRUM_M3 = 0.2;
const TYRE_WALL_M = 0.7;
const TYRE_M3 = TYRE_PRACTICE.rammedDiameterM * TYRE_PRACTICE.courseHeightM * TYRE_WALL_M;
const [TYRES_LOW, TYRES_HIGH] = TYRE_PRACTICE.tyresPerDayRange;

const hoursFor = (start: string) =>
  (EARTH_WORK.find(({ work }) => work.startsWith(start)) as EarthWork).hoursPerM3;

/** Common practice, no source, all of it. */
export const WAYS_TO_BUILD: readonly WayToBuild[] = [
  {
    id: 'rammed-earth',
    material: 'rammed-earth',
    thicknessM: 0.3,
    piece: () => 'barrows of damp earth',
    pieceM3: 0.05,
    hoursPerM3: hoursFor('rammed earth'),
  },
  {
    id: 'concrete',
    material: 'concrete',
    thicknessM: 0.15,
    piece: () => 'barrows of concrete',
    pieceM3: 0.06,
    hoursPerM3: hoursFor('concrete'),
  },
  {
    id: 'adobe',
    material: 'adobe',
    thicknessM: 0.25,
    piece: () => 'adobe bricks',
    pieceM3: 0.011,
    hoursPerM3: hoursFor('adobe'),
  },
  {
    id: 'stone',
    material: 'stone',
    thicknessM: 0.3,
    piece: (words) => `stones of ${words.weight(50)}`,
    pieceM3: 0.02,
    hoursPerM3: [15, 30],
  },
  {
    id: 'water',
    material: 'water',
    thicknessM: 0.4,
    piece: () => 'drums of 200 litres (53 gallons)',
    pieceM3: DRUM_M3,
    hoursPerM3: [1, 3],
  },
  {
    id: 'earth-tyres',
    material: 'earth-tyres',
    thicknessM: TYRE_WALL_M,
    piece: () => 'tyres',
    pieceM3: TYRE_M3,
    hoursPerM3: [HOURS_PER_DAY / TYRES_HIGH / TYRE_M3, HOURS_PER_DAY / TYRES_LOW / TYRE_M3],
  },
];

const thinner = (material: string, thicknessM: number): WayToBuild => ({
  ...WAYS_TO_BUILD.find((way) => way.material === material)!,
  id: `${material}, thin`,
  thicknessM,
});

/** The same by a thinner wall, as a facing or a half-brick skin is built: more face for less weight. Common practice, no source. */
const THIN_WAYS: readonly WayToBuild[] = [
  thinner('concrete', 0.08),
  thinner('adobe', 0.12),
  thinner('stone', 0.1),
];

/** Every way of which the least is sought. */
export const ALL_WAYS: readonly WayToBuild[] = [...WAYS_TO_BUILD, ...THIN_WAYS];

export interface BuildingWork {
  readonly volumeM3: number;
  readonly weightKg: number;
  readonly pieces: number;
  /** low and high, of one person */
  readonly days: readonly [number, number];
}

/**
 * Pieces, weight and work in a face area of mass.
 *
 * @param way one of ALL_WAYS
 * @param areaM2 face [m²]; ≥ 0
 */
export function buildingWork(way: WayToBuild, areaM2: number): BuildingWork {
  const volumeM3 = areaM2 * way.thicknessM;
  const pieces = Math.max(0, Math.ceil(volumeM3 / way.pieceM3 - 1e-9));
  const [low, high] = way.hoursPerM3;
  const tyres = way.material === 'earth-tyres';
  return {
    volumeM3,
    weightKg: tyres ? pieces * TYRE_PRACTICE.earthKg : volumeM3 * materialById(way.material).density,
    pieces,
    days: [(volumeM3 * low) / HOURS_PER_DAY, (volumeM3 * high) / HOURS_PER_DAY],
  };
}
