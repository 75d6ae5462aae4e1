// What a house that stands was found to be: the block a design carries once it was held against a record of its days. Of
// the unknowns, those that are numbers of the design were set there; the rest have no number, and count from here.

export const UNKNOWN_IDS = [
  'airtightness',
  'sun',
  'insulation',
  'mass',
  'gains',
  'stove',
  'fires',
  'opensAbove',
  'ventArea',
  'moisture',
  'ground',
  'wind',
] as const;
export type UnknownId = (typeof UNKNOWN_IDS)[number];

/** Unknowns of which the design has no number of its own. */
export const WITHOUT_NUMBER: readonly UnknownId[] = ['sun', 'mass', 'gains', 'moisture', 'ground', 'wind'];

/** Unknowns that are shifts in K; the others are factors. */
export const SHIFTS: readonly UnknownId[] = ['stove', 'opensAbove', 'ground'];

export interface FoundNumber {
  readonly id: UnknownId;
  /** a factor of the drawing (1 as drawn), or a shift [K] (0 as drawn), and where it likely lies */
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface AsFound {
  /** days of the record, first and one after the last, as 2026-01-12 */
  readonly from: string;
  readonly until: string;
  /** rms of air temperature, on days fitted and on days kept unseen [K] */
  readonly misfitK: number;
  readonly unseenMisfitK: number;
  readonly unknowns: readonly FoundNumber[];
}

/** What a value may be: generous, for records can be strange. */
export const FOUND_LIMITS = { factor: [0.05, 20], shift: [-15, 15], misfitK: [0, 50] } as const;
