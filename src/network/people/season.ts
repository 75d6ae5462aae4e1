// What people know of the season: the running mean of the air outdoors and, by it, how far it is summer, when they have put
// the heater out of their minds. Outdoor air in, hour by hour; a share of summer out. It looks back and never ahead.
// Source of the running mean: EN 16798-1, each day counting 0.8 of the next. Where summer begins: common practice, no source
// (heating limits in use lie between 12 and 16 °C).

import { clamp01 } from '../../physics/clamp.ts';
import { exp, log } from '../../physics/elementary.ts';

/** Of a mean whose days count 0.8 of the next [h]. */
const MEMORY_H = 24 / -log(0.8);
/** Running mean below which it is no summer, and above which it is nothing else [°C]. */
const HEATING_C = 10;
const SUMMER_C = 14;
/** Running mean up to which warmth is still welcome to rooms that are not warm, and above which it is not [°C]. */
const WELCOME_C = 14;
const UNWELCOME_C = 18;

/** How fast the heat of a day is forgotten: by the next morning it still counts [K/h]. */
const FORGETS_K_AN_HOUR = 0.15;

export interface Season {
  /** of the air outdoors [°C]; NaN before the first hour */
  runningMeanC: number;
  /** 0 in the heating season … 1 in summer */
  summer: number;
  /** 1 while the warmth of a zone beside is welcome to rooms that are not warm … 0 in high summer */
  welcomes: number;
  /** highest of the last day [°C], forgotten by a kelvin in some hours after it */
  recentHighC: number;
}

/** A season of which nothing is known yet. */
export function blankSeason(): Season {
  return { runningMeanC: Number.NaN, summer: 0, welcomes: 1, recentHighC: Number.NEGATIVE_INFINITY };
}

/** Live through so many hours of this air outdoors [°C]. */
export function passHours(season: Season, dryBulbC: number, hours: number): void {
  const before = Number.isNaN(season.runningMeanC) ? dryBulbC : season.runningMeanC;
  season.runningMeanC = before + (dryBulbC - before) * (1 - exp(-hours / MEMORY_H));
  season.recentHighC = Math.max(dryBulbC, season.recentHighC - hours * FORGETS_K_AN_HOUR);
  season.welcomes = clamp01((UNWELCOME_C - season.runningMeanC) / (UNWELCOME_C - WELCOME_C));
  season.summer = clamp01((season.runningMeanC - HEATING_C) / (SUMMER_C - HEATING_C));
}
