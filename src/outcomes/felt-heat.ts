// Heat that can harm: hours in which warm air, the damper the more, feels so hot that the US weather service warns of
// it. Hourly zone in, counts out. Heat index, in the shade: src/physics/heat-index.ts.

import type { ZoneYear } from '../network/year.ts';
import { EXTREME_CAUTION_C, HEAT_INDEX_CHART_END_C, heatIndex } from '../physics/heat-index.ts';

/** Cooler air feels no hotter than the limit at any humidity [°C]. */
const COOL_C = 25;
/** Warmest air the index takes [°C]. */
const WARMEST_C = 60;

export interface FeltHeat {
  /** where "extreme caution" begins [°C] */
  readonly limitC: number;
  /** hours that feel like the limit or more */
  readonly hours: number;
  /** how the worst hour feels, held to the end of the service's chart, and which it is; null where the air stays cool */
  readonly maxC: number | null;
  readonly maxHour: number | null;
}

/** Count a zone's hours of heat stress. */
export function feltHeat({ airC, relativeHumidity }: ZoneYear): FeltHeat {
  let count = 0;
  let max = Number.NEGATIVE_INFINITY;
  let maxHour = -1;
  for (let hour = 0; hour < airC.length; hour++) {
    const air = airC[hour]!;
    if (air < COOL_C) continue;
    const index = heatIndex(Math.min(air, WARMEST_C), Math.min(Math.max(relativeHumidity[hour]!, 0), 1));
    if (index >= EXTREME_CAUTION_C) count++;
    if (index > max) {
      max = index;
      maxHour = hour;
    }
  }
  return {
    limitC: EXTREME_CAUTION_C,
    hours: count,
    maxC: maxHour < 0 ? null : Math.min(max, HEAT_INDEX_CHART_END_C),
    maxHour: maxHour < 0 ? null : maxHour,
  };
}
