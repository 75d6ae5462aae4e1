// Air past saturation drops the excess on the coldest surfaces, from where it drains: most of it within the moisture
// balance, as an exchange in the mean of the step with air that ends it saturated, so that what comes in from next door knows
// of it, the last thousandth after it.

import type { MoistureState } from './moisture-state.ts';

/** Holds the air at saturation in the balance: this many times the air's own water capacity a step. */
export const SATURATION_EXCHANGE = 1000;

/** What drains from a zone in a step that ends at this humidity ratio [kg]. */
export function drainedInStep(
  { airKg, heldAtSaturation, saturationRatio, endByMean }: MoistureState['zone'],
  zone: number,
  ratio: number,
): number {
  const over = ratio - saturationRatio[zone]!;
  return Math.max(
    0,
    airKg[zone]! *
      ((heldAtSaturation[zone] === 1 ? (SATURATION_EXCHANGE * over) / endByMean[zone]! : 0) +
        Math.max(0, over)),
  );
}
