// Carbon dioxide people breathe out, as a measure of stale air. In: activity and body. Out: release.
// It says nothing of carbon monoxide: any fire in the house needs its own air, a flue and an alarm, by local code.
// Source: ASHRAE Fundamentals (release by metabolism); from memory, medium confidence.
import { requireRange } from './require-range.ts';

/** Respiratory quotient of a person at rest to light work [–]. */
const RESPIRATORY_QUOTIENT = 0.83;

/** Stale air [ppm]: EN 16798-1 category III, 1350 ppm over outdoors (425 ppm); from memory, medium confidence. */
export const STALE_AIR_PPM = 1775;

/**
 * Carbon dioxide one person releases.
 *
 *   G [L/s] = RQ · 0.00276 · A · M / (0.23 · RQ + 0.77), at room conditions
 *
 * @param activityMet [met]; 0.6…8
 * @param skinM2 body surface [m²]; 0.3…3; 1.8 an adult, about 1.1 a child of ten
 * @returns release [L/h]
 * Source: ASHRAE Fundamentals, thermal comfort: oxygen consumption.
 */
export function carbonDioxideRelease(activityMet: number, skinM2: number): number {
  requireRange('activityMet', activityMet, 0.6, 8, 'met');
  requireRange('skinM2', skinM2, 0.3, 3, 'm²');
  const oxygen = (0.00276 * skinM2 * activityMet) / (0.23 * RESPIRATORY_QUOTIENT + 0.77);
  return 3600 * RESPIRATORY_QUOTIENT * oxygen;
}
