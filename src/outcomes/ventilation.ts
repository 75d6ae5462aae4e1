// What fans for fresh air cost and give back over a year. The model's fans, the weather and the year in, kilowatt hours out.
// Fans that move air for warmth or coolth are not counted: nothing is said of their power.

import type { FixedOpening, Model } from '../model/model.ts';
import { momentOf, scheduled } from '../network/hour/clock.ts';
import type { Year } from '../network/year.ts';
import { SPECIFIC_HEAT_AIR } from '../physics/constants.ts';
import { preheatRise } from '../physics/heat-recovery.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { heatByMonth } from './balances.ts';

export interface Ventilation {
  /** electricity of the extract fan and of a ventilation unit's fans */
  readonly fansKWh: number;
  /** electricity of the unit's heater against frost */
  readonly frostHeaterKWh: number;
  /** heat its exchanger gave back in the months in which it gave any */
  readonly recoveredKWh: number;
}

/** Sum the year. */
export function ventilation(model: Model, climate: PreparedClimate, year: Year): Ventilation {
  let fansWh = 0;
  let heaterWh = 0;
  for (const opening of model.openings) {
    if (opening.kind !== 'fixed' || (opening.fanWPerM3H === undefined && !opening.recovery)) continue;
    const moved = year.openings.find(({ id }) => id === opening.id)?.flow;
    for (let hour = 0; hour < HOURS; hour++) {
      // A unit's fans run on while it turns room air round.
      const flow = opening.recovery ? scheduled(opening.flow, momentOf(hour)) : (moved?.[hour] ?? 0);
      fansWh += 3600 * flow * (opening.fanWPerM3H ?? 0);
      heaterWh += flow * heaterJ(opening, climate, hour);
    }
  }
  const recovered = heatByMonth(year)
    .filter(({ cause }) => cause === 'heat recovered')
    .flatMap(({ months }) => months);
  return {
    fansKWh: fansWh / 1000,
    frostHeaterKWh: heaterWh / 1000,
    recoveredKWh: recovered.reduce((sum, kWh) => sum + Math.max(0, kWh), 0),
  };
}

/** Heat put into air on its way in [J/m³]. */
function heaterJ({ recovery }: FixedOpening, climate: PreparedClimate, hour: number): number {
  if (recovery?.frost !== 'preheat') return 0;
  return climate.airDensity[hour]! * SPECIFIC_HEAT_AIR * preheatRise(climate.year.dryBulbC[hour]!);
}
