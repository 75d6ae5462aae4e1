// Checks one zone of a model: sizes, capacities, schedules of its people, gains, water and thermostat.

import { requireRange } from '../physics/require-range.ts';
import {
  requireAtLeastZero,
  requireFinite,
  requirePositive,
  requireSchedule,
  requireShare,
} from './check-number.ts';
import type { Zone } from './model.ts';

const COLDEST_C = -60;

/** Refuse a zone by the first thing wrong with it. */
export function requireZone(zone: Zone): void {
  const of = (what: string) => `zone '${zone.id}', ${what}`;
  requirePositive(of('floorAreaM2'), zone.floorAreaM2, 'm²');
  requirePositive(of('volumeM3'), zone.volumeM3, 'm³');
  requireAtLeastZero(of('furnitureCapacity'), zone.furnitureCapacity, 'J/K');
  requireAtLeastZero(of('furnitureMoisture'), zone.furnitureMoisture, 'kg');
  requireShare(of('cornerFactor'), zone.cornerFactor);
  if (zone.people) requireSchedule(of('people'), zone.people, 0, '');
  for (const { id, power, radiantShare } of zone.gains) {
    requireSchedule(of(`gain '${id}'`), power, Number.NEGATIVE_INFINITY, 'W');
    requireShare(of(`gain '${id}', radiantShare`), radiantShare);
  }
  for (const { cause, rate } of zone.moisture) requireSchedule(of(`moisture '${cause}'`), rate, 0, 'g/h');
  if (zone.planting) {
    const { bedM2, leafAreaIndex, boundaryResistance, albedo } = zone.planting;
    requireAtLeastZero(of('planting.bedM2'), bedM2, 'm²');
    requireRange(of('planting.leafAreaIndex'), leafAreaIndex, 0, 20, '');
    requirePositive(of('planting.boundaryResistance'), boundaryResistance, 's/m');
    requireShare(of('planting.albedo'), albedo);
  }
  if (zone.thermostat) {
    const { heatC, coolC, heatCapacityW, coolCapacityW } = zone.thermostat;
    if (heatC) requireSchedule(of('heatC'), heatC, COLDEST_C, '°C');
    if (coolC) requireSchedule(of('coolC'), coolC, COLDEST_C, '°C');
    requireCapacity(of('heatCapacityW'), heatCapacityW);
    requireCapacity(of('coolCapacityW'), coolCapacityW);
  }
  requireStove(of, zone);
  if (zone.heatedFaceMaxC !== undefined) requireFinite(of('heatedFaceMaxC'), zone.heatedFaceMaxC, '°C');
}

function requireStove(of: (what: string) => string, { thermostat, stove }: Zone): void {
  if (stove === undefined) return;
  if (!thermostat?.heatC || thermostat.coolC)
    throw new RangeError(
      `${of('stove')} stands beside a thermostat; allowed: one that heats and does not cool`,
    );
  requirePositive(of('stove.woodJPerKg'), stove.woodJPerKg, 'J/kg');
  requireAtLeastZero(of('stove.loadKg'), stove.loadKg, 'kg');
  requireRange(of('stove.burnH'), stove.burnH, 1, 24, 'h');
  requirePositive(of('stove.coolingH'), stove.coolingH, 'h');
  for (const share of ['leastLoad', 'efficiency', 'floorShare', 'atOnce', 'radiantShare'] as const)
    requireShare(of(`stove.${share}`), stove[share]);
  if (stove.store !== undefined) {
    requirePositive(of('stove.store.capacity'), stove.store.capacity, 'J/K');
    requirePositive(of('stove.store.loss'), stove.store.loss, 'W/K');
    requireFinite(of('stove.store.mostC'), stove.store.mostC, '°C');
    requireAtLeastZero(of('stove.store.pipesPerM2'), stove.store.pipesPerM2, 'W/(m²K)');
  }
  requireSchedule(of('stove.mayFeed'), stove.mayFeed, 0, '');
}

/** A plant without limit is allowed: test cases ask for it. */
function requireCapacity(name: string, value: number): void {
  if (value !== Number.POSITIVE_INFINITY) requireAtLeastZero(name, value, 'W');
}
