// Which way the house looks and which months are warm, for either hemisphere. Site and turn in; azimuths in degrees
// clockwise from north and month lists out.

import { equatorAzimuth } from '../weather/prepared/prepared-climate.ts';
import type { Site } from '../weather/typical-year.ts';

export interface Compass {
  readonly equatorDeg: number;
  readonly poleDeg: number;
  readonly eastDeg: number;
  readonly westDeg: number;
}

/**
 * Azimuths of the four sides.
 *
 * @param site its latitude chooses the side that faces the equator
 * @param turnDeg house turned clockwise seen from above [°]
 * @returns azimuths 0…360 [°]; a house in the south looks north, its east stays east
 */
export function compassOf(site: Site, turnDeg: number): Compass {
  const equator = equatorAzimuth(site.latitudeDeg) + turnDeg;
  return {
    equatorDeg: turned(equator),
    poleDeg: turned(equator + 180),
    eastDeg: turned(90 + turnDeg),
    westDeg: turned(270 + turnDeg),
  };
}

/** May to October: the six months centred a month after the June solstice. */
const NORTHERN_WARM = [0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 0, 0];

/**
 * The warm half-year, in which a summer shade hangs and a night fan may run.
 *
 * @returns 1 for each of the six months centred about a month after the summer solstice, else 0; January first
 */
export function warmMonths(site: Site): readonly number[] {
  return site.latitudeDeg >= 0 ? NORTHERN_WARM : NORTHERN_WARM.map((_, month) => 1 - NORTHERN_WARM[month]!);
}

function turned(azimuthDeg: number): number {
  return ((azimuthDeg % 360) + 360) % 360;
}
