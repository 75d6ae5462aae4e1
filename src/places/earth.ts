// Distances on the earth.

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
  const half = (degrees: number) => Math.sin((degrees * rad) / 2) ** 2;
  const h =
    half(a.latitudeDeg - b.latitudeDeg) +
    Math.cos(a.latitudeDeg * rad) * Math.cos(b.latitudeDeg * rad) * half(a.longitudeDeg - b.longitudeDeg);
  return 2 * RADIUS_KM * Math.asin(Math.sqrt(Math.min(h, 1)));
}
