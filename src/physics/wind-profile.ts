// Wind at the house from the wind a weather station measured at 10 m over open land.
// Source: ASHRAE Fundamentals, airflow around buildings, power-law profile and terrain table (from memory, high
// confidence). A profile says nothing of hedges and neighbours: a sheltered wall sees 0.25–0.7 of the result.

import { power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** open: fields, airport; suburb: houses or woods all around; city: half of what stands is above 20 m. */
export type Terrain = 'open' | 'suburb' | 'city';

/** Exponent and boundary-layer height [m]. */
const PROFILES: Record<Terrain, { readonly exponent: number; readonly layerM: number }> = {
  open: { exponent: 0.14, layerM: 270 },
  suburb: { exponent: 0.22, layerM: 370 },
  city: { exponent: 0.33, layerM: 460 },
};

/** Height of the station's anemometer [m]. */
const STATION_HEIGHT_M = 10;

/**
 * Mean wind speed at a height over some terrain.
 *
 *   v(H) = v₁₀ · (270/10)^0.14 · (H/δ)^a
 *
 * @param stationSpeed at 10 m over open land [m/s]; 0…100
 * @param heightM height H above ground [m]; 0.5…100
 * @param terrain gives a and δ
 * @returns [m/s]
 */
export function windAtHeight(stationSpeed: number, heightM: number, terrain: Terrain): number {
  requireRange('stationSpeed', stationSpeed, 0, 100, 'm/s');
  requireRange('heightM', heightM, 0.5, 100, 'm');
  const station = PROFILES.open;
  const here = PROFILES[terrain];
  return (
    stationSpeed *
    power(station.layerM / STATION_HEIGHT_M, station.exponent) *
    power(heightM / here.layerM, here.exponent)
  );
}
