// What an amount of mass means on a building site, for each way to build it: pieces, weight, days of one person, by the norms
// of the bill of quantities (quantities/norms.ts).

import { massWork } from '../quantities/items.ts';
import { HOURS_PER_DAY } from '../quantities/norms.ts';
import type { Words } from './words.ts';

export interface WayToBuild {
  /** the material, with what is built thinner than usual told apart */
  readonly id: string;
  readonly material: string;
  /** thickness tried [m]: what is usually built, near where a day's heat turns back */
  readonly thicknessM: number;
  /** what is carried, in the plural */
  readonly piece: (words: Pick<Words, 'weight'>) => string;
  /** of one, where the bill does not count them [m³] */
  readonly barrowM3?: number;
}

/** Common practice, no source, all of it. */
export const WAYS_TO_BUILD: readonly WayToBuild[] = [
  {
    id: 'rammed-earth',
    material: 'rammed-earth',
    thicknessM: 0.3,
    piece: () => 'barrows of damp earth',
    barrowM3: 0.05,
  },
  {
    id: 'concrete',
    material: 'concrete',
    thicknessM: 0.15,
    piece: () => 'barrows of concrete',
    barrowM3: 0.06,
  },
  { id: 'adobe', material: 'adobe', thicknessM: 0.25, piece: () => 'adobe bricks' },
  { id: 'stone', material: 'stone', thicknessM: 0.3, piece: (words) => `stones of ${words.weight(50)}` },
  { id: 'water', material: 'water', thicknessM: 0.4, piece: () => 'drums of 200 litres (53 gallons)' },
  { id: 'earth-tyres', material: 'earth-tyres', thicknessM: 0.7, piece: () => 'tyres' },
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
  /** low and high, of one person who does it for the first time */
  readonly days: readonly [number, number];
}

/**
 * Pieces, weight and work in a face area of mass.
 *
 * @param way one of ALL_WAYS
 * @param areaM2 face [m²]; ≥ 0
 */
export function buildingWork({ material, thicknessM, barrowM3 }: WayToBuild, areaM2: number): BuildingWork {
  const { volumeM3, weightKg, pieces, firstTimerHours } = massWork(material, areaM2, thicknessM);
  const [low, high] = firstTimerHours;
  return {
    volumeM3,
    weightKg,
    pieces: barrowM3 === undefined ? pieces : Math.max(0, Math.ceil(volumeM3 / barrowM3 - 1e-9)),
    days: [low / HOURS_PER_DAY, high / HOURS_PER_DAY],
  };
}
