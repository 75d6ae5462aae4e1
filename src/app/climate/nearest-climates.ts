// Which bundled climates lie nearest to a place. A position in, climates with their distance out.

import { distanceKm, type Position } from '../../places/earth.ts';
import { BUNDLED_CLIMATES, type BundledClimate } from './bundled-climates.ts';

export interface NearClimate {
  readonly climate: BundledClimate;
  readonly distanceKm: number;
}

/** All of them, the nearest first. */
export function nearestClimates(at: Position): readonly NearClimate[] {
  return BUNDLED_CLIMATES.map((climate) => ({ climate, distanceKm: distanceKm(at, climate) })).toSorted(
    (one, other) => one.distanceKm - other.distanceKm,
  );
}
