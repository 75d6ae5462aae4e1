// Air for people: hours with stale air and hours with less outdoor air than dwellings are asked to have. Hourly zone
// in, counts out. A house that is dry because it is never shut, and a tight one that is stuffy, differ here.

import type { ZoneYear } from '../network/year.ts';
import { STALE_AIR_PPM } from '../physics/carbon-dioxide.ts';

/**
 * Outdoor air below which the cautions on radon and combustion appliances bite [1/h]: what ASHRAE 62-1989 asked of
 * dwellings; from memory, high confidence.
 */
const LEAST_AIR_CHANGES = 0.35;

export interface FreshAir {
  readonly meanAirChanges: number;
  readonly belowVentilationHours: number;
  readonly ventilationFloorAch: number;
  readonly staleAirHours: number;
  readonly maxCo2Ppm: number;
}

/** Count a zone's hours of too little air. */
export function freshAir(zone: ZoneYear): FreshAir {
  let sum = 0;
  let below = 0;
  let stale = 0;
  let max = 0;
  for (let hour = 0; hour < zone.ventAch.length; hour++) {
    const changes = zone.ventAch[hour]!;
    const ppm = zone.co2Ppm[hour]!;
    sum += changes;
    if (changes < LEAST_AIR_CHANGES) below++;
    if (ppm > STALE_AIR_PPM) stale++;
    if (ppm > max) max = ppm;
  }
  return {
    meanAirChanges: sum / zone.ventAch.length,
    belowVentilationHours: below,
    ventilationFloorAch: LEAST_AIR_CHANGES,
    staleAirHours: stale,
    maxCo2Ppm: max,
  };
}
