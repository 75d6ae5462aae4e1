// What a house was found to be, in words: one sentence an unknown, with where it likely lies.

import { type FoundNumber, SHIFTS, type UnknownId } from '../design/as-found.ts';
import type { Wording } from './wording.ts';

export const UNKNOWN_WORDS: Readonly<Record<UnknownId, string>> = {
  airtightness: 'air that leaks in',
  sun: 'sun let in',
  insulation: 'insulation of walls and roof',
  mass: 'mass of furniture and inner walls',
  gains: 'heat of people and appliances',
  stove: 'warmth that is heated to',
  fires: 'heat of what was written down as burnt',
  opensAbove: 'warmth at which windows are opened',
  ventArea: 'size of what is opened',
  moisture: 'water given off by living',
  ground: 'warmth of the deep ground',
  wind: 'wind at the house',
};

/** As "20 % more, likely 5 % more to 40 % more" against the drawing. */
export function foundWords({ id, value, low, high }: FoundNumber, words: Wording): string {
  const say = (one: number) => (SHIFTS.includes(id) ? shiftWords(one, words) : factorWords(one));
  return `${say(value)}, likely ${say(low)} to ${say(high)}`;
}

/** A factor on the drawing, to the per cent: "20 % more", "as drawn". */
export function factorWords(factor: number): string {
  const percent = Math.round(100 * (factor - 1));
  if (percent === 0) return 'as drawn';
  return percent > 0 ? `${percent} % more` : `${-percent} % less`;
}

function shiftWords(value: number, { degrees }: Wording): string {
  if (Math.abs(value) < 0.05) return 'as drawn';
  return `${degrees(Math.abs(value))} ${value < 0 ? 'lower' : 'higher'}`;
}
