// How much hotter, or a little colder, a typical year may be made: limits and labels of its four numbers, the choices offered by name, and
// a design with one of them. What the numbers do to the hours stands in weather/hotter-year.ts.

import type { Design, Hotter } from './design.ts';

export interface HotterLimit {
  readonly key: keyof Hotter;
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: true;
}

/** The coldest a year is made against the typical one: colder than nearly all of a record. House rule. */
const COLDER_K = -3;

/** Within the warming of this century's scenarios for land, high ones included; waves as long as any on record. House rules. */
export const HOTTER_LIMITS: readonly HotterLimit[] = [
  { key: 'winterK', label: 'Warmer in winter', min: COLDER_K, max: 8 },
  { key: 'summerK', label: 'Warmer in summer', min: COLDER_K, max: 8 },
  { key: 'waveDays', label: 'Days of the heat wave', min: 3, max: 30, whole: true },
  { key: 'waveK', label: 'Height of the heat wave', min: 0, max: 12 },
];

/** A heat wave of middling length; its height must be chosen. */
export const NO_CHANGE: Hotter = { winterK: 0, summerK: 0, waveDays: 10, waveK: 0 };

/** The design in a hotter year; nothing added gives back the typical year. */
export function withHotter(design: Design, hotter: Hotter | undefined): Design {
  const { hotter: _, ...plain } = design;
  const isChange = hotter !== undefined && (hotter.winterK !== 0 || hotter.summerK !== 0 || hotter.waveK > 0);
  return isChange ? { ...plain, hotter } : plain;
}

/** What to call it: a year no part of which is warmer is a colder one. */
export function hotterName({ winterK, summerK, waveK }: Hotter): 'hotter' | 'colder' {
  return winterK <= 0 && summerK <= 0 && waveK === 0 ? 'colder' : 'hotter';
}
