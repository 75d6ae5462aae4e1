// The hours too hot of a run, which several rules and the reasons of a figure ask for.

import { type HotLimits, hotLimits } from '../outcomes/hot-limits.ts';
import type { Context } from './context.ts';
import { oncePer } from './once-per.ts';

/** Limits of the rooms, of several the hottest, in the hours it is lived in, and of the sunspace, by hour. */
export const houseLimits = oncePer(({ design, worst, climate }: Context): HotLimits => {
  const { year, lived } = worst('hot');
  return hotLimits(design, year, climate.year, lived);
});
export const sunspaceLimits = oncePer(
  ({ design, sunspaceYear, climate }: Context): HotLimits => hotLimits(design, sunspaceYear!, climate.year),
);
