// The outline of land: rings of longitude and latitude, for a small map and for the distance to the sea. The text in
// (climates/places/land.txt), rings out; they are coarse, some 20 km off.

import { cos, square } from '../physics/elementary.ts';
import type { Position } from './earth.ts';

/** Longitude and latitude [°] in turn, the first point again at the end. */
export type Ring = readonly number[];

const STEP_DEG = 0.1;

export function landRings(text: string): readonly Ring[] {
  return text
    .trim()
    .split('\n')
    .map((line) => {
      const at = [0, 0];
      return line.split(' ').map((step, i) => {
        at[i % 2]! += Number(step);
        return at[i % 2]! * STEP_DEG;
      });
    });
}

/** Distance to the nearest shore [km], on a map that is true in size at the place. */
export function shoreKm(rings: readonly Ring[], { latitudeDeg, longitudeDeg }: Position): number {
  const kmPerDeg = 111.2;
  const shrink = Math.max(cos((latitudeDeg * Math.PI) / 180), 0.02);
  let nearest = Number.POSITIVE_INFINITY;
  for (const ring of rings) {
    for (let i = 0; i + 3 < ring.length; i += 2) {
      const [x, y] = [eastward(ring[i]! - longitudeDeg) * shrink, ring[i + 1]! - latitudeDeg];
      const [dx, dy] = [(ring[i + 2]! - ring[i]!) * shrink, ring[i + 3]! - ring[i + 1]!];
      const along = Math.min(Math.max(-(x * dx + y * dy) / (dx * dx + dy * dy || 1), 0), 1);
      nearest = Math.min(nearest, Math.sqrt(square(x + along * dx) + square(y + along * dy)));
    }
  }
  return nearest * kmPerDeg;
}

/** A difference of longitudes the short way round [°]. */
function eastward(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}
