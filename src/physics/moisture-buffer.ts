// How walls, furniture and earth plaster take up damp air and give it back. In: moisture buffer value of a finish. Out: a
// one-node capacity for an hourly balance.
// Method: the NORDTEST moisture buffer value (2005): 8 h at 75 % and 16 h at 33 % relative humidity, read in
// g per m² and per % of relative humidity. Humidity is a fraction 0–1 except in that unit.

import { exp } from './elementary.ts';
import { requireRange } from './require-range.ts';

const TEST_WET_H = 8;
const TEST_DRY_H = 16;

/**
 * Capacity of the one node that stands for a finish in an hourly balance. Driven by the test's wave through its time
 * constant τ, a node of capacity C swings by C · (1 − e^(−8/τ)) · (1 − e^(−16/τ)) / (1 − e^(−24/τ)) in a settled day;
 * that is set equal to the buffer value. Its conductance is then C/τ.
 *
 * @param bufferValue [g/(m²·%RH)]; ≥ 0
 * @param timeConstantH τ of the exchange with the room [h]; 0.1…48; a few hours for plaster
 * @returns capacity [g/m² per unit of relative humidity]
 * Source: own derivation; the wave is the NORDTEST one.
 */
export function bufferCapacity(bufferValue: number, timeConstantH: number): number {
  requireRange('bufferValue', bufferValue, 0, 20, 'g/(m²·%RH)');
  requireRange('timeConstantH', timeConstantH, 0.1, 48, 'h');
  const up = 1 - exp(-TEST_WET_H / timeConstantH);
  const down = 1 - exp(-TEST_DRY_H / timeConstantH);
  const day = 1 - exp(-(TEST_WET_H + TEST_DRY_H) / timeConstantH);
  return (100 * bufferValue * day) / (up * down);
}
