// A water store between a boiler and a heated floor: temperature and heat put in, in; temperature and what it gave, out. Mixed
// through and through, between a room and a slab that stand still meanwhile: exact for heat put in evenly.

import { expm1, power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** Water at 60 °C: 4.185 kJ/(kgK), 0.983 kg/L; tables. */
const WATER_J_PER_LK = 4114;
/**
 * Standing loss of a store of so many litres: 16.66 + 8.33 V^0.4 W at 45 K over the room, the upper bound of class C.
 * EU 812/2013, memory, medium confidence.
 */
const LOSS_W = [16.66, 8.33] as const;
const LOSS_POWER = 0.4;
const LOSS_AT_K = 45;

/** Heat capacity of a store [J/K]; litres above 0. */
export function storeCapacity(litres: number): number {
  requireRange('litres', litres, Number.MIN_VALUE, 1e6, 'L');
  return WATER_J_PER_LK * litres;
}

/**
 * What a store loses to its room for each kelvin it is warmer.
 *
 * @param litres above 0
 * @returns [W/K]
 * Source: EU 812/2013, upper bound of class C, memory.
 */
export function storeLoss(litres: number): number {
  requireRange('litres', litres, Number.MIN_VALUE, 1e6, 'L');
  return (LOSS_W[0] + LOSS_W[1] * power(litres, LOSS_POWER)) / LOSS_AT_K;
}

export interface StoreStep {
  readonly celsius: number;
  /** to the room, and through the pipes, means of the step [W] */
  readonly lossW: number;
  readonly pipesW: number;
}

/**
 * A store some time on.
 *
 * @param celsius before [°C]
 * @param inW put in, evenly [W]
 * @param capacity [J/K], above 0
 * @param loss to the room at roomC [W/K], above 0
 * @param pipes to the slab at slabC [W/K], 0 or more; heat does not come back that way
 * @param seconds above 0
 * Source: C dT/dt = P − L (T − T_room) − G (T − T_slab), closed form.
 */
export function storeAfter(
  celsius: number,
  inW: number,
  { capacity, loss }: { readonly capacity: number; readonly loss: number },
  room: { readonly roomC: number },
  { pipes, slabC }: { readonly pipes: number; readonly slabC: number },
  seconds: number,
): StoreStep {
  requireRange('capacity', capacity, Number.MIN_VALUE, Number.POSITIVE_INFINITY, 'J/K');
  requireRange('loss', loss, Number.MIN_VALUE, Number.POSITIVE_INFINITY, 'W/K');
  requireRange('seconds', seconds, Number.MIN_VALUE, Number.POSITIVE_INFINITY, 's');
  const both = loss + pipes;
  const endC = (inW + loss * room.roomC + pipes * slabC) / both;
  const rate = (both * seconds) / capacity;
  const left = -expm1(-rate);
  const after = celsius + (endC - celsius) * left;
  const meanC = endC + ((celsius - endC) * left) / rate;
  const pipesW = pipes * (meanC - slabC);
  if (pipesW < 0) return storeAfter(celsius, inW, { capacity, loss }, room, { pipes: 0, slabC }, seconds);
  return { celsius: after, lossW: loss * (meanC - room.roomC), pipesW };
}
