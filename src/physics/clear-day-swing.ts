// A hand check on the hourly result: how far a room swings on a clear day. In: sun absorbed in the room and its diurnal
// heat capacity. Out: swing of the air, peak to trough. Method: the diurnal-heat-capacity method of a US national
// laboratory, 1983; from memory, medium confidence. Capacities of slabs come from the periodic wall response.
import { requireRange } from './require-range.ts';

/** Share of the day's absorbed sun that has to be stored at the peak [–]: 1983 method, memory, medium confidence. */
const STORED_SHARE = 0.61;

/** Swing a lived-in room should keep to on a clear January (southern: July) day, K: guideline series, 13 °F; memory, medium. */
export const COMFORT_SWING_K = 7;

/** What a lightweight, air-coupled surface's capacity counts for [–]; range 0.4–0.6; memory, low confidence. */
export const LIGHT_COUPLING = 0.5;

/**
 * Swing of a room's air over a clear day: 0.61 · Q / C.
 *
 * @param absorbedWh sun absorbed in the room over the day [Wh]; ≥ 0
 * @param capacityWhPerK sum of area × diurnal heat capacity [Wh/K]; > 0
 * @returns swing, peak to trough [K]
 */
export function clearDaySwing(absorbedWh: number, capacityWhPerK: number): number {
  requireRange('absorbedWh', absorbedWh, 0, 1e7, 'Wh');
  requireRange('capacityWhPerK', capacityWhPerK, 1e-3, 1e8, 'Wh/K');
  return (STORED_SHARE * absorbedWh) / capacityWhPerK;
}

/** Diurnal heat capacity [Wh/K] that keeps the swing [K; > 0] with so much sun absorbed [Wh]: the inverse of `clearDaySwing`. */
export function capacityForSwing(absorbedWh: number, swingK: number): number {
  requireRange('absorbedWh', absorbedWh, 0, 1e7, 'Wh');
  requireRange('swingK', swingK, 1e-3, 100, 'K');
  return (STORED_SHARE * absorbedWh) / swingK;
}
