// Checks one opening of a model: the zones it joins, areas, coefficients and its rule.

import { requireRange } from '../physics/require-range.ts';
import {
  requireAtLeastZero,
  requireFinite,
  requirePositive,
  requireSchedule,
  requireShare,
  requireZoneName,
} from './check-number.ts';
import type {
  DoorOpening,
  FixedOpening,
  HeatGiving,
  HouseStack,
  Opening,
  Schedule,
  VentOpening,
} from './model.ts';
import { valuesOf } from './schedule.ts';

/** Refuse an opening by the first thing wrong with it. */
export function requireOpening(opening: Opening, zoneIds: ReadonlySet<string>): void {
  const of = (what: string) => `opening '${opening.id}', ${what}`;
  requireZoneName(of('zone'), opening.zone, zoneIds);
  switch (opening.kind) {
    case 'cracks':
      requireAtLeastZero(of('leakageCm2'), opening.leakageCm2, 'cm²');
      requireAtLeastZero(of('stackCoefficient'), opening.stackCoefficient, '');
      requireAtLeastZero(of('windCoefficient'), opening.windCoefficient, '');
      return;
    case 'fixed':
      requireFixed(of, opening, zoneIds);
      return;
    case 'vent':
      requireVent(of, opening);
      return;
    case 'door':
      requireDoor(of, opening, zoneIds);
      return;
    case 'stairs':
      requireOtherZone(of('other'), opening.other, opening.zone, zoneIds);
      requirePositive(of('areaM2'), opening.areaM2, 'm²');
      requirePositive(of('thicknessM'), opening.thicknessM, 'm');
      requireShares(of('schedule'), opening.schedule);
  }
}

function requireFixed(
  of: (what: string) => string,
  { other, zone, gives, flow, onlyAboveC, byHumidity, fanWPerM3H, recovery }: FixedOpening,
  zoneIds: ReadonlySet<string>,
): void {
  if (other !== undefined) requireOtherZone(of('other'), other, zone, zoneIds);
  if (gives !== undefined) requireGiving(of, gives);
  requireSchedule(of('flow'), flow, 0, 'm³/s');
  if (onlyAboveC !== undefined) requireFinite(of('onlyAboveC'), onlyAboveC, '°C');
  if (fanWPerM3H !== undefined) requireAtLeastZero(of('fanWPerM3H'), fanWPerM3H, 'W for each m³/h');
  if (byHumidity !== undefined) {
    requireShare(of('byHumidity.from'), byHumidity.from);
    requireRange(of('byHumidity.full'), byHumidity.full, byHumidity.from + 1e-3, 1, '');
  }
  if (recovery === undefined) return;
  if (other !== undefined)
    throw new RangeError(`${of('other')} is '${other}'; allowed: none beside 'recovery'`);
  requireShare(of('recovery.effectiveness'), recovery.effectiveness);
  requireFinite(of('recovery.bypassAboveC'), recovery.bypassAboveC, '°C');
}

function requireVent(of: (what: string) => string, vent: VentOpening): void {
  requireAtLeastZero(of('lowM2'), vent.lowM2, 'm²');
  requireAtLeastZero(of('highM2'), vent.highM2, 'm²');
  requirePositive(of('lowM2 + highM2'), vent.lowM2 + vent.highM2, 'm²');
  requireAtLeastZero(of('stackM'), vent.stackM, 'm');
  requirePositive(of('openingHeightM'), vent.openingHeightM, 'm');
  requireRange(of('discharge'), vent.discharge, 0.05, 1, '');
  requireAtLeastZero(of('windCoefficient'), vent.windCoefficient, '');
  const { opensAboveC, bandK, schedule, shutAboveWind } = vent.rule;
  requireFinite(of('rule.opensAboveC'), opensAboveC, '°C');
  if (vent.airing !== undefined) {
    requireRange(of('airing.minutes'), vent.airing.minutes, 1, 60, 'min');
    for (const hour of vent.airing.hours) requireRange(of('airing.hours'), hour, 0, 23, 'h');
  }
  requirePositive(of('rule.bandK'), bandK, 'K');
  requireSchedule(of('rule.schedule'), schedule, 0, '');
  if (shutAboveWind !== Number.POSITIVE_INFINITY)
    requireAtLeastZero(of('rule.shutAboveWind'), shutAboveWind, 'm/s');
}

function requireDoor(of: (what: string) => string, door: DoorOpening, zoneIds: ReadonlySet<string>): void {
  requireOtherZone(of('other'), door.other, door.zone, zoneIds);
  requirePositive(of('widthM'), door.widthM, 'm');
  requirePositive(of('heightM'), door.heightM, 'm');
  requireRange(of('discharge'), door.discharge, 0.05, 1, '');
  if (door.schedule !== undefined) requireShares(of('schedule'), door.schedule);
  requireGiving(of, door);
}

function requireShares(what: string, schedule: Schedule): void {
  requireSchedule(what, schedule, 0, '');
  for (const share of valuesOf(schedule)) requireShare(what, share);
}

/** Refuse a way or place of one-way air that is none. */
export function requireStack(
  { places, ways }: HouseStack,
  openings: readonly Opening[],
  zoneIds: ReadonlySet<string>,
): void {
  const named = new Set(openings.map(({ id }) => id));
  for (const { zone, windows, cracks, heightM, share } of places) {
    const of = (what: string) => `stack, place of '${zone}', ${what}`;
    requireZoneName(of('zone'), zone, zoneIds);
    requireFinite(of('heightM'), heightM, 'm');
    requireShare(of('share'), share);
    for (const id of [windows, cracks]) if (id !== null) requireNamed(of('opening'), id, named);
  }
  const reached = new Set<string>();
  for (const { zone, to, opening } of ways) {
    const of = (what: string) => `stack, way of '${zone}', ${what}`;
    requireZoneName(of('zone'), zone, zoneIds);
    requireOtherZone(of('to'), to, zone, zoneIds);
    requireNamed(of('opening'), opening, named);
    if (reached.has(zone)) throw new RangeError(`${of('zone')} stands twice; allowed: one way from each`);
    reached.add(zone).add(to);
  }
}

function requireNamed(what: string, id: string, named: ReadonlySet<string>): void {
  if (!named.has(id)) throw new RangeError(`${what} is '${id}'; allowed: an opening of the model`);
}

function requireGiving(of: (what: string) => string, { wantsHeatBelowC, dampLimit }: HeatGiving): void {
  requireFinite(of('wantsHeatBelowC'), wantsHeatBelowC, '°C');
  requireFinite(of('dampLimit'), dampLimit, 'kg/kg');
}

function requireOtherZone(what: string, other: string, own: string, zoneIds: ReadonlySet<string>): void {
  requireZoneName(what, other, zoneIds);
  if (other === own) throw new RangeError(`${what} is '${other}'; allowed: another zone than its own`);
}
