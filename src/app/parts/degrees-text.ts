// Latitude and longitude as people write them: "39.5° S", "−39.5", "71°12' W", "W 71.2". Text in, degrees out, north and
// east positive; nothing for what is neither.

import { typedNumber } from './number-text.ts';

const SIGNS = { latitude: { N: 1, S: -1 }, longitude: { E: 1, O: 1, W: -1 } } as const;

/** One of the two; null for what is none, or beyond the globe. */
export function typedDegrees(text: string, which: 'latitude' | 'longitude'): number | null {
  const most = which === 'latitude' ? 90 : 180;
  const upper = text.trim().toUpperCase();
  const letter = /[A-Z]/.exec(upper.replace(/(NORTH|SOUTH|EAST|WEST)/, (word) => word[0]!))?.[0];
  const bare = upper.replace(/NORTH|SOUTH|EAST|WEST|[NSEOW]/, '');
  const signs: Readonly<Record<string, number>> = SIGNS[which];
  if (letter !== undefined && signs[letter] === undefined) return null;
  const parts = bare
    .split(/[°º'′’"″”]|\bDEG\b/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length === 0 || parts.length > 3) return null;
  const numbers = parts.map(typedNumber);
  if (numbers.some((number) => number === null)) return null;
  const [degrees, minutes = 0, seconds = 0] = numbers as number[];
  if (minutes < 0 || minutes >= 60 || seconds < 0 || seconds >= 60) return null;
  const isBelow = /^[-\u2212\u2013]/.test(parts[0]!);
  if (letter !== undefined && isBelow) return null;
  const size = Math.abs(degrees!) + minutes / 60 + seconds / 3600;
  const value = (letter === undefined ? (isBelow ? -1 : 1) : signs[letter]!) * size;
  return Math.abs(value) <= most ? value : null;
}

/** Both in one text, latitude first, a comma or a space between: "39.5 S, 71.2 W"; null for what is none. */
export function typedPlace(
  text: string,
): { readonly latitudeDeg: number; readonly longitudeDeg: number } | null {
  const trimmed = text.trim();
  const halves =
    /^(.*[\d°'′"″\s](?:N|S|north|south))[,;\s]+(\S.*)$/i.exec(trimmed)?.slice(1) ??
    (/[,;]/.test(trimmed) ? trimmed.split(/[,;]\s*/) : trimmed.split(/\s+/));
  if (halves.length !== 2) return null;
  const latitudeDeg = typedDegrees(halves[0]!, 'latitude');
  const longitudeDeg = typedDegrees(halves[1]!, 'longitude');
  return latitudeDeg === null || longitudeDeg === null ? null : { latitudeDeg, longitudeDeg };
}
