/** Common practice, no source. */
export const TYRE_PRACTICE = {
  earthKg: 180,
  tyresPerDayRange: [6, 10],
  rammedDiameterM: 0.8,
  courseHeightM: 0.22,
} as const;

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
