// How a place lies to the wind, in words, with the yearly mean at 10 m that stands for it where nothing was measured. The
// mean of the middle one, and that of the coast, are the half and nine tenths point of 2,643 US stations (climates/places/README.md);
// a sheltered valley and a ridge are common practice, no source. A local figure is worth more than any of them.

export interface WindExposure {
  readonly id: string;
  readonly words: string;
  /** yearly mean at 10 m [m/s] */
  readonly meanMs: number;
}

export const WIND_EXPOSURES = [
  { id: 'sheltered', words: 'sheltered valley, or among trees and houses', meanMs: 2 },
  { id: 'open', words: 'open plain', meanMs: 4 },
  { id: 'ridge', words: 'ridge, hilltop or pass', meanMs: 6 },
  { id: 'coast', words: 'open coast', meanMs: 5.2 },
] as const satisfies readonly WindExposure[];

export type ExposureId = (typeof WIND_EXPOSURES)[number]['id'];

/** What stands in where nobody has said how the place lies [m/s]: between sheltered and open. */
export const UNSAID_WIND_MS = 3.2;
