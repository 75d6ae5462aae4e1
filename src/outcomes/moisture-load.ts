// Water vapour released in a zone, by cause: kilograms a month from the year, kilograms a day in the outcome.

import type { ZoneYear } from '../network/year.ts';
import { DAYS } from './calendar.ts';

export interface MoistureLoad {
  /** all causes, mean over the year [kg/day] */
  readonly kgPerDay: number;
  /** largest cause first */
  readonly byCause: readonly { readonly cause: string; readonly kgPerDay: number }[];
}

/**
 * Mean daily moisture load of a zone.
 *
 * @param zone hourly outcome of one zone
 * @returns kilograms a day, in all and by cause
 */
export function moistureLoad(zone: ZoneYear): MoistureLoad {
  const byCause = zone.moistureByCause
    .map(({ cause, monthKg }) => ({ cause, kgPerDay: monthKg.reduce((sum, kg) => sum + kg, 0) / DAYS }))
    .sort((one, other) => other.kgPerDay - one.kgPerDay);
  return { kgPerDay: byCause.reduce((sum, { kgPerDay }) => sum + kgPerDay, 0), byCause };
}
