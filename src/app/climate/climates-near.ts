// Climates to stand in that lie near a place: those that come with the page, and the files kept in this browser.

import { distanceKm, type Position } from '../../places/earth.ts';
import { keptClimates } from '../keeping/own-climates.ts';
import { BUNDLED_CLIMATES } from './bundled-climates.ts';

export interface NearClimate {
  readonly key: string;
  readonly name: string;
  readonly kind: 'bundled' | 'kept';
  readonly distanceKm: number;
}

/** Farther off than this it is another climate [km]. */
const NEAR_KM = 300;
const MOST = 4;

export async function climatesNear(at: Position): Promise<readonly NearClimate[]> {
  const kept = await keptClimates();
  const all = [
    ...BUNDLED_CLIMATES.map((climate) => ({ ...climate, key: climate.id, kind: 'bundled' as const })),
    ...kept.map(({ key, site }) => ({ ...site, key, kind: 'kept' as const })),
  ];
  return all
    .map((climate) => ({
      key: climate.key,
      name: climate.name,
      kind: climate.kind,
      distanceKm: distanceKm(at, climate),
    }))
    .filter((climate) => climate.distanceKm <= NEAR_KM)
    .sort((a, b) => a.distanceKm - b.distanceKm)
    .slice(0, MOST);
}
