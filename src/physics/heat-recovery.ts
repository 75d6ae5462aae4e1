// Ventilation with heat recovery: what its exchanger gives back, when its bypass lets cool air straight in, and what it
// does in frost. Temperatures in; shares and rises out. The temperature ratio is that of EN 308 and EN 13141-7, on the
// supply side: supply = outdoor + ratio · (extract − outdoor), with equal flows and dry air.

import { clamp01 } from './clamp.ts';
import { requireRange } from './require-range.ts';

/** Outdoors this cold, an exchanger would freeze [°C]: a maker's sheet of a unit for cold places, 23 °F, medium confidence. */
const FROST_C = -5;
/** A unit that thaws by turning its own air round does so for a third of the time from here on [°C]; common practice, no source. */
const LONGEST_THAW_C = -27;
const LONGEST_THAW_SHARE = 1 / 3;
/** The bypass opens over this much warmth of the room [K]; common practice, no source. */
const BYPASS_BAND_K = 2;
/** Outdoors below the first it stays shut, above the second it may open in full [°C]: two makers' rules for cooling by night, medium confidence. */
const BYPASS_COLD_C = 10;
const BYPASS_MILD_C = 12;

/**
 * Rise of the air before the exchanger by a heater against frost [K].
 *
 * @param outdoorC −60…60 °C
 */
export function preheatRise(outdoorC: number): number {
  requireRange('outdoorC', outdoorC, -90, 90, '°C');
  return Math.max(0, FROST_C - outdoorC);
}

/**
 * Share of the time for which a unit without such a heater turns its own air round to thaw, bringing none in: none down to
 * −5 °C, a third at −27 °C and colder, on a straight line between.
 *
 * @param outdoorC −90…90 °C
 */
export function thawShare(outdoorC: number): number {
  requireRange('outdoorC', outdoorC, -90, 90, '°C');
  return LONGEST_THAW_SHARE * clamp01((FROST_C - outdoorC) / (FROST_C - LONGEST_THAW_C));
}

/**
 * Share of the flow that goes round the exchanger, 0…1: in a room that has grown warm, while outdoors is cooler but mild.
 *
 * @param indoorC of the extract air [°C]
 * @param outdoorC [°C]
 * @param aboveC where the bypass begins to open [°C]
 */
export function bypassShare(indoorC: number, outdoorC: number, aboveC: number): number {
  if (outdoorC >= indoorC) return 0;
  const byRoom = (indoorC - aboveC) / BYPASS_BAND_K;
  const byOutdoors = (outdoorC - BYPASS_COLD_C) / (BYPASS_MILD_C - BYPASS_COLD_C);
  return clamp01(Math.min(byRoom, byOutdoors));
}
