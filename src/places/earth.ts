// Distances on the earth.

import { asin, cos, sin, square } from '../physics/elementary.ts';

export interface Position {
  /** [°] north positive */
  readonly latitudeDeg: number;
  /** [°] east positive */
  readonly longitudeDeg: number;
}

/** Mean radius of the earth [km]; IUGG. */
const RADIUS_KM = 6371.0;

/** Great-circle distance [km] by the haversine formula; within 0.5 % of the distance on the ellipsoid. */
export function distanceKm(a: Position, b: Position): number {
  const rad = Math.PI / 180;
  const half = (degrees: number) => square(sin((degrees * rad) / 2));
  const h =
    half(a.latitudeDeg - b.latitudeDeg) +
    cos(a.latitudeDeg * rad) * cos(b.latitudeDeg * rad) * half(a.longitudeDeg - b.longitudeDeg);
  return 2 * RADIUS_KM * asin(Math.sqrt(Math.min(h, 1)));
}
