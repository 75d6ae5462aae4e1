// The hours too hot of a run, which several rules and the reasons of a figure ask for.

import { type HotLimits, hotLimits } from '../outcomes/hot-limits.ts';
import type { Context } from './context.ts';
import { oncePer } from './once-per.ts';

/** Limits of the rooms and of the sunspace, by hour. */
export const houseLimits = oncePer(
  ({ design, houseYear, climate }: Context): HotLimits => hotLimits(design, houseYear, climate.year),
);
export const sunspaceLimits = oncePer(
  ({ design, sunspaceYear, climate }: Context): HotLimits => hotLimits(design, sunspaceYear!, climate.year),
);
