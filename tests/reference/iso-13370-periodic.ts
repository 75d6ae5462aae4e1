// The yearly periodic coefficients of ISO 13370:2017's annex, for slabs evenly insulated or not at all: floor and ground
// in, heat per kelvin of the swing and its phase out. From memory, high confidence, no printed value found.
//
//   H_pi = A λ/d_f · √(2/((1 + δ/d_f)² + 1)), lead 1.5 − (12/2π) arctan(d_f/(d_f + δ)) months
//   H_pe = 0.37 P λ ln(δ/d_f + 1), lag 1.5 − 0.42 ln(δ/d_f + 1) months

import { type FloorPlan, type Ground, periodicDepth } from '../../src/physics/ground-floor.ts';

export interface PeriodicCoupling {
  /** per kelvin of the indoor swing [W/K] */
  readonly insideWPerK: number;
  /** heat flow ahead of the indoor swing [days] */
  readonly insideLeadDays: number;
  /** per kelvin of the outdoor swing [W/K] */
  readonly outsideWPerK: number;
  /** heat flow behind the outdoor swing [days] */
  readonly outsideLagDays: number;
}

const DAYS_A_MONTH = 365 / 12;
/** Films inside and outside [m²K/W]. */
const FILMS = 0.17 + 0.04;

export function periodicCoupling(floor: FloorPlan, ground: Ground): PeriodicCoupling {
  const delta = periodicDepth(ground);
  const depth = floor.wallThicknessM + ground.conductivity * (floor.floorResistance + FILMS);
  const { conductivity } = ground;
  const edge = Math.log(delta / depth + 1);
  return {
    insideWPerK: ((floor.areaM2 * conductivity) / depth) * Math.sqrt(2 / ((1 + delta / depth) ** 2 + 1)),
    insideLeadDays: (1.5 - (12 / (2 * Math.PI)) * Math.atan(depth / (depth + delta))) * DAYS_A_MONTH,
    outsideWPerK: 0.37 * floor.perimeterM * conductivity * edge,
    outsideLagDays: (1.5 - 0.42 * edge) * DAYS_A_MONTH,
  };
}
