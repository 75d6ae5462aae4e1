// Mould in the coldest corner of a zone, hour by hour. In: the corner's temperature and the zone's vapour. Out:
// the VTT mould index (physics/mould-index.ts). The corner counts as the "sensitive" class whatever the wall is
// made of, since paint, wood trim, cardboard and furniture backs stand in every corner. The year is run twice on
// end from a clean start, so that a damp winter is not cut in two at new year.

import type { ZoneYear } from '../network/year.ts';
import { saturationPressure } from '../physics/moist-air.ts';
import { cleanSurface, MOULD_CLASSES, mouldStep } from '../physics/mould-index.ts';
import { HOURS } from '../weather/typical-year.ts';

/** The class every corner is judged by. */
export const CORNER_CLASS = MOULD_CLASSES[1];

export interface MouldYear {
  /** highest index of the two years, 0…6 */
  readonly max: number;
  /** index by hour of the second year */
  readonly index: Float64Array;
  /** relative humidity at the corner, 0…1 (1 = dew) */
  readonly cornerHumidity: Float64Array;
}

/**
 * Mould index of a zone's coldest corner.
 *
 * @param zone hourly outcome of one zone
 * @returns index and corner humidity by hour
 */
export function mouldOfYear(zone: ZoneYear): MouldYear {
  const cornerHumidity = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const vapour = zone.relativeHumidity[hour]! * saturation(zone.airC[hour]!);
    cornerHumidity[hour] = Math.min(vapour / saturation(zone.cornerC[hour]!), 1);
  }
  const state = cleanSurface();
  const index = new Float64Array(HOURS);
  let max = 0;
  for (let round = 0; round < 2; round++) {
    for (let hour = 0; hour < HOURS; hour++) {
      index[hour] = mouldStep(state, zone.cornerC[hour]!, cornerHumidity[hour]!, 1, CORNER_CLASS);
      max = Math.max(max, index[hour]!);
    }
  }
  return { max, index, cornerHumidity };
}

/** Saturation pressure held to the formula's range; mould grows well inside it. */
function saturation(tempC: number): number {
  return saturationPressure(Math.min(Math.max(tempC, -45), 60));
}
