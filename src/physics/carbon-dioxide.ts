// Carbon dioxide people breathe out, as a measure of stale air. In: activity, airflow. Out: release, concentration.
// It says nothing of carbon monoxide: any fire in the house needs its own air, a flue and an alarm, by local code.
// Sources: ASHRAE Fundamentals (release by metabolism) and EN 16798-1 (excess over outdoors); from memory, medium confidence.
import { requireRange } from './require-range.ts';

/** Outdoor air, ppm: mid 2020s average. */
export const OUTDOOR_CARBON_DIOXIDE_PPM = 425;

/** Body surface of an average adult, m²: ASHRAE Fundamentals. */
export const ADULT_SKIN_M2 = 1.8;

/** Respiratory quotient of a person at rest to light work [–]. */
const RESPIRATORY_QUOTIENT = 0.83;

/** Metabolic rates [met] of what people do at home: ASHRAE 55, from memory, high confidence. */
export const HOME_ACTIVITIES: Readonly<
  Record<'asleep' | 'seated' | 'lightWork' | 'housework' | 'heavyWork', number>
> = {
  asleep: 0.7,
  seated: 1.0,
  lightWork: 1.2,
  housework: 2.0,
  heavyWork: 3.5,
};

/** Excess over outdoors that EN 16798-1 gives its categories of living rooms, ppm: I 550, II 800, III 1350. */
export const EXCESS_LIMITS_PPM: Readonly<Record<'I' | 'II' | 'III', number>> = { I: 550, II: 800, III: 1350 };

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

/**
 * Steady concentration: C = C_out + 1000 · G / Q.
 *
 * @param outdoorPpm [ppm]; 300…1000
 * @param releaseLH G of everybody [L/h]; ≥ 0
 * @param airflowM3H Q of outdoor air [m³/h]; > 0
 * @returns [ppm]
 */
export function steadyCarbonDioxide(outdoorPpm: number, releaseLH: number, airflowM3H: number): number {
  requireRange('outdoorPpm', outdoorPpm, 300, 1000, 'ppm');
  requireRange('releaseLH', releaseLH, 0, 1e5, 'L/h');
  requireRange('airflowM3H', airflowM3H, 1e-3, 1e6, 'm³/h');
  return outdoorPpm + (1000 * releaseLH) / airflowM3H;
}

/** Outdoor airflow [m³/h] that keeps the excess over outdoors [ppm; > 0] with so much release [L/h; ≥ 0]. */
export function airflowForExcess(releaseLH: number, excessPpm: number): number {
  requireRange('releaseLH', releaseLH, 0, 1e5, 'L/h');
  requireRange('excessPpm', excessPpm, 1, 1e5, 'ppm');
  return (1000 * releaseLH) / excessPpm;
}

/**
 * Concentration some hours after a change, on its way to the steady one: C∞ + (C₀ − C∞)·e^(−n·t).
 *
 * @param startPpm C₀ [ppm]; ≥ 0
 * @param steadyPpm C∞ from `steadyCarbonDioxide` [ppm]; ≥ 0
 * @param airChangePerH n [1/h]; ≥ 0
 * @param hours t [h]; ≥ 0
 * @returns [ppm]
 */
export function carbonDioxideAfter(
  startPpm: number,
  steadyPpm: number,
  airChangePerH: number,
  hours: number,
): number {
  requireRange('startPpm', startPpm, 0, 1e6, 'ppm');
  requireRange('steadyPpm', steadyPpm, 0, 1e9, 'ppm');
  requireRange('airChangePerH', airChangePerH, 0, 1000, '1/h');
  requireRange('hours', hours, 0, 1e5, 'h');
  return steadyPpm + (startPpm - steadyPpm) * Math.exp(-airChangePerH * hours);
}
