// Latitude and longitude as people type them, north and east positive: one angle ("39.5° S", "71°12' W", "W 71.2") or a pair
// ("46.2, 7.4", "46.2 N 7.4 E", "S 33.9 W 18.4", "46°12'N 7°24'E", "46,2; 7,4"). Of a pair latitude comes first where no letters
// say otherwise.

import type { Position } from './earth.ts';

const NUMBER = String.raw`[+\-−–]?\d{1,3}(?:[.,]\d*)?`;
const PART = String.raw`\d{1,2}(?:[.,]\d+)?`;
const ANGLE = String.raw`(${NUMBER})\s*(?:(?:[°º]|deg\b)\s*(?:(${PART})\s*['′’]\s*(?:(${PART})\s*(?:["″”]|''))?)?)?`;
const SIDE = '(?:north|south|east|west|[NSEWO])';
const BETWEEN = String.raw`(?:\s*[;,]\s*|\s+)`;
/** The side behind the number, or none. */
const BEHIND = String.raw`${ANGLE}\s*(${SIDE})?`;
const BEFORE = String.raw`(${SIDE})\s*${ANGLE}`;
const ONE_BEHIND = new RegExp(String.raw`^\s*${BEHIND}\s*$`, 'iu');
const ONE_BEFORE = new RegExp(String.raw`^\s*${BEFORE}\s*$`, 'iu');
const PAIR_BEHIND = new RegExp(String.raw`^\s*${BEHIND}(?:${BETWEEN}|(?<=[NSEWO°º'′"″]))${BEHIND}\s*$`, 'iu');
const PAIR_BEFORE = new RegExp(String.raw`^\s*${BEFORE}(?:${BETWEEN}|(?=${SIDE}))${BEFORE}\s*$`, 'iu');
const MOST_DEG = { latitude: 90, longitude: 180 } as const;
/** Longer text is no place. */
const MOST_CHARACTERS = 80;

type Axis = keyof typeof MOST_DEG;

interface Angle {
  readonly degrees: number;
  /** null where no side is named */
  readonly axis: Axis | null;
}

/**
 * Read one angle.
 *
 * @param text what was typed
 * @returns degrees, −90…90 or −180…180; null for what is none, is beyond the globe or names a side of the other axis
 */
export function degreesIn(text: string, axis: Axis): number | null {
  if (text.length > MOST_CHARACTERS) return null;
  const found = angleOf(ONE_BEHIND.exec(text), 'behind') ?? angleOf(ONE_BEFORE.exec(text), 'before');
  if (found === null || (found.axis ?? axis) !== axis) return null;
  return Math.abs(found.degrees) <= MOST_DEG[axis] ? found.degrees : null;
}

export type CoordinatesResult = Position | { readonly fault: string } | null;

/**
 * Read a pair of coordinates.
 *
 * @param text what was typed
 * @returns the position, to 1e-5 degrees; what is wrong with it; or null where it is no pair of coordinates at all
 */
export function coordinatesIn(text: string): CoordinatesResult {
  if (text.length > MOST_CHARACTERS) return null;
  const pair = anglesIn(text);
  if (pair === null) return null;
  const [first, second] = pair;
  const turned = first.axis === 'longitude' || second.axis === 'latitude';
  if (first.axis !== null && first.axis === second.axis) {
    return { fault: `${text.trim()}: two of one kind; allowed: a latitude (N, S) and a longitude (E, W)` };
  }
  const [latitudeDeg, longitudeDeg] = (turned ? [second, first] : [first, second]).map(
    ({ degrees }) => Number(degrees.toFixed(5)) + 0,
  ) as [number, number];
  if (Math.abs(latitudeDeg) > MOST_DEG.latitude)
    return { fault: `latitude ${latitudeDeg}; allowed: −90 to 90` };
  if (Math.abs(longitudeDeg) > MOST_DEG.longitude)
    return { fault: `longitude ${longitudeDeg}; allowed: −180 to 180` };
  return { latitudeDeg, longitudeDeg };
}

function anglesIn(text: string): readonly [Angle, Angle] | null {
  for (const [form, side] of [
    [PAIR_BEHIND, 'behind'],
    [PAIR_BEFORE, 'before'],
  ] as const) {
    const match = form.exec(text);
    const [first, second] = [angleOf(match, side), angleOf(match?.slice(4) ?? null, side)];
    if (first !== null && second !== null) return [first, second];
  }
  return null;
}

/** An angle out of a match's next four groups; null for no match, minutes or seconds of 60, or a minus beside a side. */
function angleOf(match: readonly (string | undefined)[] | null, side: 'behind' | 'before'): Angle | null {
  if (match === null) return null;
  const [, ...groups] = match;
  const [degrees = '', minutes, seconds, letter] =
    side === 'behind' ? groups : [groups[1], groups[2], groups[3], groups[0]];
  const number = (part = '0') => Number(part.replace(',', '.').replace(/[−–]/, '-'));
  const [whole, ...parts] = [number(degrees), number(minutes), number(seconds)] as [number, number, number];
  if (parts.some((part) => part >= 60)) return null;
  const size = Math.abs(whole) + parts[0] / 60 + parts[1] / 3600;
  const isMinus = /^[-−–]/.test(degrees);
  const initial = (letter ?? '').slice(0, 1).toUpperCase();
  if (initial === '') return { degrees: isMinus ? -size : size, axis: null };
  if (isMinus) return null;
  const axis = initial === 'N' || initial === 'S' ? 'latitude' : 'longitude';
  return { degrees: initial === 'S' || initial === 'W' ? -size : size, axis };
}
