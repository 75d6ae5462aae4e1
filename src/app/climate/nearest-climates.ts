// Which bundled climates lie nearest to a place. Degrees in, climates with their distance out. Great circle on a sphere of
// the Earth's mean radius, 6371 km (IUGG).

import { BUNDLED_CLIMATES, type BundledClimate } from './bundled-climates.ts';

const EARTH_KM = 6371;
const RAD = Math.PI / 180;

export interface NearClimate {
  readonly climate: BundledClimate;
  readonly distanceKm: number;
}

/** All of them, the nearest first. */
export function nearestClimates(latitudeDeg: number, longitudeDeg: number): readonly NearClimate[] {
  return BUNDLED_CLIMATES.map((climate) => ({
    climate,
    distanceKm: greatCircleKm(latitudeDeg, longitudeDeg, climate.latitudeDeg, climate.longitudeDeg),
  })).toSorted((one, other) => one.distanceKm - other.distanceKm);
}

/** By the haversine. */
export function greatCircleKm(latA: number, lonA: number, latB: number, lonB: number): number {
  const a =
    Math.sin(((latB - latA) * RAD) / 2) ** 2 +
    Math.cos(latA * RAD) * Math.cos(latB * RAD) * Math.sin(((lonB - lonA) * RAD) / 2) ** 2;
  return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(a)));
}
