// What mass means in days of work. In: a wall of earth-filled tyres or a volume of earth or masonry. Out: count, weight,
// worker-days. All of it is common practice, no source: rules builders tell each other, to be shown as such. Bermed walls
// above about 1.2 m of retained earth need an engineer in most codes, and lifting and ramming need fit, protected people.
import { requireRange } from './require-range.ts';

/** Common practice, no source. The page of one builder says over 136 kg (300 lb) of earth a tyre. */
export const TYRE_PRACTICE = {
  earthKg: 180,
  tyresPerDay: 8,
  tyresPerDayRange: [6, 10],
  tyresPerHouseRange: [1200, 1800],
  rammedDiameterM: 0.8,
  courseHeightM: 0.22,
  courseHeightRangeM: [0.2, 0.25],
} as const;

export interface TyreWork {
  readonly tyres: number;
  readonly earthKg: number;
  readonly workerDays: number;
}

/**
 * Earth and work in so many tyres.
 *
 * @param tyres whole or not [–]; 0…100 000
 * @param tyresPerDay one strong worker rams [1/day]; 1…20, 6–10 usual
 * Source: common practice, no source.
 */
export function tyreWork(tyres: number, tyresPerDay: number): TyreWork {
  requireRange('tyres', tyres, 0, 100000, '');
  requireRange('tyresPerDay', tyresPerDay, 1, 20, '1/day');
  return { tyres, earthKg: tyres * TYRE_PRACTICE.earthKg, workerDays: tyres / tyresPerDay };
}

/**
 * Tyres in a straight wall: whole tyres along, whole courses up, laid in running bond with half tyres counted whole.
 *
 * @param lengthM [m]; 0…1000
 * @param heightM [m]; 0…20
 * @param courseHeightM of a rammed course [m]; 0.15…0.3
 * Source: geometry with the tyre of common practice, no source.
 */
export function tyresInWall(lengthM: number, heightM: number, courseHeightM: number): number {
  requireRange('lengthM', lengthM, 0, 1000, 'm');
  requireRange('heightM', heightM, 0, 20, 'm');
  requireRange('courseHeightM', courseHeightM, 0.15, 0.3, 'm');
  return countOf(lengthM / TYRE_PRACTICE.rammedDiameterM) * countOf(heightM / courseHeightM);
}

/** Hours of one person for a cubic metre in place, own work with simple tools; low and high differ by skill and site. */
export interface EarthWork {
  readonly work: string;
  readonly hoursPerM3: readonly [number, number];
}

/** Common practice, no source; orders of size for a talk, not for a contract. */
export const EARTH_WORK: readonly EarthWork[] = [
  { work: 'concrete slab, ready-mixed, placed and finished', hoursPerM3: [2, 5] },
  { work: 'brick or block masonry', hoursPerM3: [8, 14] },
  { work: 'rammed earth with reused formwork, air rammers', hoursPerM3: [10, 20] },
  { work: 'adobe, bricks made on site and laid', hoursPerM3: [20, 35] },
  { work: 'cob, mixed and built by foot and fork', hoursPerM3: [20, 40] },
];

/**
 * Worker-days in a volume of earth or masonry: low and high.
 *
 * @param volumeM3 in place [m³]; 0…10 000
 * @param work a row of `EARTH_WORK`
 * @param hoursPerDay a person works [h]; 1…12
 * @returns [low, high] in days of one person
 */
export function earthWorkDays(
  volumeM3: number,
  work: EarthWork,
  hoursPerDay: number,
): readonly [number, number] {
  requireRange('volumeM3', volumeM3, 0, 10000, 'm³');
  requireRange('hoursPerDay', hoursPerDay, 1, 12, 'h');
  const [low, high] = work.hoursPerM3;
  return [(volumeM3 * low) / hoursPerDay, (volumeM3 * high) / hoursPerDay];
}

/** Whole pieces that cover a quotient, forgiving the last bits of a division. */
function countOf(quotient: number): number {
  return Math.max(Math.ceil(quotient - 1e-9), 0);
}
