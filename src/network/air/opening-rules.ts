// What the rules of vents, doors and fans between zones ask for: a rule, the zones' air and the hour in; the share
// wanted, or whether to run, out. Who then moves what is wanted: states.ts.

import type { DoorOpening, HeatGiving, VentOpening } from '../../model/model.ts';
import type { Moment } from '../hour/clock.ts';
import { HALF_BELOW_K, isAwake, isBedtime, notchFor, type OpeningState } from './occupant-control.ts';
import type { ZoneAir } from './zone-air.ts';

/**
 * Vents begin to open at the rule's temperature less this, and are shut below it [K]: what is opened on a hot day
 * stays open until the room has cooled. People open at the rule's temperature and then let it run down as far.
 */
const RUN_DOWN_K = 2;
const NIGHT_RUN_DOWN_K = 5;
/**
 * A room this humid is aired even with hotter, drier air, until it is down to the second; a grower's rule: common
 * practice, no source.
 */
const DAMP_HUMIDITY = 0.85;
const DRIED_HUMIDITY = 0.7;
/** Rain that makes people and sensors shut what is open to it [mm in the hour]; common practice, no source. */
const FELT_RAIN_MM = 0.2;
/** A door that obeys its rule opens for air at least this much warmer [K], and shuts when it is no warmer. */
const DOOR_LEAD_K = 1;

/** Shut by season, hour, wind, rain, or air outside that is no cooler, unless damp asks for it. */
function barred(
  { rule }: VentOpening,
  { airsDamp, allowed }: OpeningState,
  air: ZoneAir,
  insideC: number,
): boolean {
  return (
    allowed <= 0 ||
    air.weather.windSpeed > rule.shutAboveWind ||
    (rule.shutInRain && air.weather.rainMm >= FELT_RAIN_MM) ||
    (rule.onlyWhileOutside === 'cooler' && air.weather.dryBulbC >= insideC && !airsDamp) ||
    (rule.onlyWhileOutside === 'warmer' && air.weather.dryBulbC <= insideC)
  );
}

/** Damp asks for drier air, however hot it is, from DAMP until the room has dried. */
export function feelDamp(state: OpeningState, air: ZoneAir, zone: number): void {
  const isDrierOutside = air.weather.humidityRatio < air.zoneRatio[zone]!;
  const humidity = air.zoneHumidity[zone]!;
  if (!isDrierOutside || humidity < DRIED_HUMIDITY) state.airsDamp = false;
  else if (humidity > DAMP_HUMIDITY) state.airsDamp = true;
}

/** How far through the rule's band the room is, from where vents begin to open: 0 none, 1 or more all. */
function needOf({ rule }: VentOpening, insideC: number): number {
  return (insideC - (rule.opensAboveC - RUN_DOWN_K)) / rule.bandK;
}

/** An opener that knows only open and shut: by the air at the quarter hour, so that no step hangs between the two. */
export function switchOpener(opening: VentOpening, state: OpeningState, air: ZoneAir, zone: number): void {
  const { rule } = opening;
  const insideC = air.zoneC[zone]!;
  if (rule.opens !== 'all-at-once') return;
  if (needOf(opening, insideC) <= 0 || barred(opening, state, air, insideC)) state.wanted = 0;
  else if (insideC > rule.opensAboveC) state.wanted = state.allowed;
}

/** A room whose opener, if it knows only open and shut, may open at the next quarter hour. */
export function needsAir(opening: VentOpening, air: ZoneAir, zone: number): boolean {
  return opening.rule.opens === 'all-at-once' && needOf(opening, air.zoneC[zone]!) > 0;
}

/** Share an opener asks for at these temperatures: full at half the band, so that like a person it runs the room down. */
export function ventTarget(
  opening: VentOpening,
  state: OpeningState,
  air: ZoneAir,
  zoneC: Float64Array,
  zone: number,
): number {
  const { rule } = opening;
  const insideC = zoneC[zone]!;
  if (rule.opens === 'all-at-once') return state.wanted;
  if (barred(opening, state, air, insideC)) return 0;
  const { mildNightShare, allowed } = state;
  const byDay = fullAtHalf((insideC - (rule.opensAboveC - RUN_DOWN_K)) / rule.bandK);
  if (mildNightShare === 0) return allowed * byDay;
  const byNight = fullAtHalf((insideC - (rule.opensAboveC - NIGHT_RUN_DOWN_K)) / rule.bandK);
  return allowed * (byDay + mildNightShare * (byNight - byDay));
}

const fullAtHalf = (need: number) => Math.min(1, Math.max(0, 2 * need));

/** A night so mild that an opener lets the room run down further. */
export function isMildNight({ rule }: VentOpening, moment: Moment, dryBulbC: number): boolean {
  return !isAwake(moment) && dryBulbC > rule.opensAboveC - HALF_BELOW_K;
}

/**
 * What a person wants: nothing until the rule's temperature, then by notches until it has run down. The last look of the
 * day is for the night: whether walls and all the room is still warm enough to want air until morning.
 */
export function wantVent(
  opening: VentOpening,
  state: OpeningState,
  moment: Moment,
  air: ZoneAir,
  zone: number,
): void {
  const { rule } = opening;
  const airC = air.zoneC[zone]!;
  const isForTheNight = isBedtime(moment);
  const insideC = isForTheNight ? (airC + air.radiantC[zone]!) / 2 : airC;
  const need = needOf(opening, insideC);
  if (need <= 0 || barred(opening, state, air, airC)) {
    state.wanted = 0;
    return;
  }
  const share = rule.opens === 'all-at-once' ? 1 : notchFor(need, rule.opensAboveC - air.weather.dryBulbC);
  const notch = share * state.allowed;
  if (isForTheNight) {
    state.wanted = notch;
    return;
  }
  // Once open, a person widens when it gets hotter but does not fiddle on the way down.
  if (insideC > rule.opensAboveC || state.wanted > 0) state.wanted = Math.max(state.wanted, notch);
  if (insideC < rule.opensAboveC && air.weather.dryBulbC < rule.opensAboveC)
    state.wanted = Math.min(state.wanted, notch);
}

export function wantDoor(
  opening: DoorOpening,
  state: OpeningState,
  air: ZoneAir,
  zone: number,
  other: number,
): void {
  if (opening.rule !== 'by-need') {
    state.wanted = opening.rule === 'open' ? 1 : 0;
    state.open = state.wanted;
    return;
  }
  if (givesHeat(opening, air, zone, other)) state.wanted = 1;
  else if (!mayGiveOn(opening, air, zone, other)) state.wanted = 0;
}

/** Begins to give: the other zone wants heat, this one is plainly warmer and not damper. */
export function givesHeat(giving: HeatGiving, air: ZoneAir, zone: number, other: number): boolean {
  const takerC = air.zoneC[other]!;
  return (
    mayGiveOn(giving, air, zone, other) &&
    takerC < giving.wantsHeatBelowC &&
    air.zoneC[zone]! > takerC + DOOR_LEAD_K
  );
}

/** Goes on giving what it gives: still warmer, not damper, and the other zone not yet too warm. */
function mayGiveOn(
  { wantsHeatBelowC, dampLimit }: HeatGiving,
  air: ZoneAir,
  zone: number,
  other: number,
): boolean {
  const takerC = air.zoneC[other]!;
  const isDamper = air.zoneRatio[zone]! > air.zoneRatio[other]! + dampLimit;
  return air.zoneC[zone]! > takerC && takerC <= wantsHeatBelowC + RUN_DOWN_K && !isDamper;
}
