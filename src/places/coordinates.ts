// A position as people type it: "46.2, 7.4", "46.2 N 7.4 E", "S 33.9 W 18.4", "46°12'N 7°24'E", "46,2; 7,4". Latitude comes
// first where no letters say otherwise.

import type { Position } from './earth.ts';

const NUMBER = String.raw`[+\-−]?\d{1,3}(?:[.,]\d+)?`;
const ANGLE = String.raw`(${NUMBER})\s*(?:[°º]\s*(?:(\d{1,2}(?:[.,]\d+)?)\s*['′’]\s*(?:(\d{1,2}(?:[.,]\d+)?)\s*(?:["″”]|''))?)?)?`;
const LETTER = '[NSEWO]';
const BETWEEN = String.raw`(?:\s*[;,]\s*|\s+)`;
/** Letters behind the numbers, or none. */
const LETTERS_BEHIND = new RegExp(
  String.raw`^\s*${ANGLE}\s*(${LETTER})?(?:${BETWEEN}|(?<=[NSEWO°º'′"″]))${ANGLE}\s*(${LETTER})?\s*$`,
  'iu',
);
const LETTERS_BEFORE = new RegExp(
  String.raw`^\s*(${LETTER})\s*${ANGLE}(?:${BETWEEN}|(?=${LETTER}))(${LETTER})\s*${ANGLE}\s*$`,
  'iu',
);

export type CoordinatesResult = Position | { readonly fault: string } | null;

/**
 * Read a pair of coordinates.
 *
 * @param text what was typed
 * @returns the position; what is wrong with it; or null where it is no pair of coordinates at all
 */
export function coordinatesIn(text: string): CoordinatesResult {
  if (text.length > 80) return null;
  const pair = angles(text);
  if (pair === null) return null;
  const [first, second] = pair;
  const turned = first.axis === 'longitude' || second.axis === 'latitude';
  if (first.axis !== null && first.axis === second.axis) {
    return { fault: `${text.trim()}: two of one kind; allowed: a latitude (N, S) and a longitude (E, W)` };
  }
  const [latitude, longitude] = turned ? [second, first] : [first, second];
  if (Math.abs(latitude.degrees) > 90) return { fault: `latitude ${latitude.degrees}; allowed: −90 to 90` };
  if (Math.abs(longitude.degrees) > 180)
    return { fault: `longitude ${longitude.degrees}; allowed: −180 to 180` };
  return { latitudeDeg: latitude.degrees, longitudeDeg: longitude.degrees };
}

function angles(text: string): readonly [Angle, Angle] | null {
  const behind = LETTERS_BEHIND.exec(text);
  if (behind !== null) {
    const [, d1, m1, s1, l1, d2, m2, s2, l2] = behind;
    return [angle(l1, d1!, m1, s1), angle(l2, d2!, m2, s2)];
  }
  const before = LETTERS_BEFORE.exec(text);
  if (before === null) return null;
  const [, l1, d1, m1, s1, l2, d2, m2, s2] = before;
  return [angle(l1, d1!, m1, s1), angle(l2, d2!, m2, s2)];
}

interface Angle {
  readonly degrees: number;
  readonly axis: 'latitude' | 'longitude' | null;
}

function angle(letter: string | undefined, degrees: string, minutes?: string, seconds?: string): Angle {
  const number = (text = '0') => Number(text.replace(',', '.').replace('−', '-'));
  const side = (letter ?? '').toUpperCase();
  const size = Math.abs(number(degrees)) + number(minutes) / 60 + number(seconds) / 3600;
  const isMinus = /^[-−]/.test(degrees) !== (side === 'S' || side === 'W');
  const axis = side === '' ? null : side === 'N' || side === 'S' ? 'latitude' : 'longitude';
  return { degrees: Number(((isMinus ? -1 : 1) * size).toFixed(5)) + 0, axis };
}
