// What a fan's hour asks for beyond its schedule: how much of its air a unit with heat recovery brings in, what share of the
// heat its exchanger gives back, and the heat its fans and its heater against frost put into the supply air. An opening and
// the hour's air in; one record, used again, out.

import type { FixedOpening } from '../../model/model.ts';
import { clamp01 } from '../../physics/clamp.ts';
import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import { exp } from '../../physics/elementary.ts';
import { bypassShare, preheatRise, thawShare } from '../../physics/heat-recovery.ts';
import type { ZoneAir } from '../people/zone-air.ts';

/** Of two fans alike, one blows into the rooms and warms what it blows; the other's heat leaves with the old air. */
const SUPPLY_FAN_SHARE = 0.5;
/** A fan led by humidity follows it with about this time constant [s]: its sensor's and its run-on; common practice, no source. */
const HUMIDITY_S = 3600;

/** A unit in an hour. */
export interface UnitHour {
  /** share of its flow that comes from outdoors, 0…1 */
  fresh: number;
  /** share of the difference in temperature given back, 0…1 */
  recovers: number;
  /** heat of the supply fan and of the heater against frost [W] */
  givenW: number;
  /** of the heater's, what leaves again with the old air [W] */
  lostW: number;
}

export const blankUnitHour = (): UnitHour => ({ fresh: 1, recovers: 0, givenW: 0, lostW: 0 });

/**
 * A unit as the hour finds it.
 *
 * @param flow of the unit by its schedule [m³/s]
 */
export function readUnitHour(
  { recovery, fanWPerM3H }: FixedOpening,
  flow: number,
  { zoneC, weather }: ZoneAir,
  zone: number,
  into: UnitHour,
): void {
  if (recovery === undefined) return;
  const { effectiveness, frost, bypassAboveC } = recovery;
  const { dryBulbC, airDensity } = weather;
  into.recovers = effectiveness * (1 - bypassShare(zoneC[zone]!, dryBulbC, bypassAboveC));
  into.fresh = frost === 'recirculate' ? 1 - thawShare(dryBulbC) : 1;
  const heatW = frost === 'preheat' ? flow * airDensity * SPECIFIC_HEAT_AIR * preheatRise(dryBulbC) : 0;
  into.givenW = heatW + SUPPLY_FAN_SHARE * flow * 3600 * (fanWPerM3H ?? 0);
  into.lostW = into.recovers * heatW;
}

/** Share of the way a fan led by humidity goes in a step toward what its room asks for. */
export function humidityEasing(stepS: number): number {
  return 1 - exp(-stepS / HUMIDITY_S);
}

/** Share of its flow that a fan led by humidity is asked for, 0…1; none while outdoors is no drier. */
export function askedByHumidity({ byHumidity }: FixedOpening, air: ZoneAir, zone: number): number {
  if (byHumidity === undefined) return 1;
  if (air.weather.humidityRatio >= air.zoneRatio[zone]!) return 0;
  const { from, full } = byHumidity;
  return clamp01((air.zoneHumidity[zone]! - from) / (full - from));
}
