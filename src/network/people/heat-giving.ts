// When a zone gives heat to a room that wants it, by its door or its fan: the zones' air and the will in; whether to begin
// and whether to go on out.

import type { DoorOpening, HeatGiving } from '../../model/model.ts';
import type { Moment } from '../hour/clock.ts';
import { isBedtime, type OpeningState } from './occupant-control.ts';
import { NIGHT_RUN_DOWN_K, RUN_DOWN_K, type Will } from './will.ts';
import type { ZoneAir } from './zone-air.ts';

/** A door that obeys its rule opens for air at least this much warmer [K], and shuts when it is no warmer. */
const DOOR_LEAD_K = 1;
/** In summer nobody warms a room that is no colder than a night with open windows leaves it, less this [K]. */
const UNDER_NIGHT_K = 1;

/** What whoever keeps a door wants of it. With the last look of the day people shut it: a sunspace outcools the rooms by night. */
export function wantDoor(
  opening: DoorOpening,
  state: OpeningState,
  moment: Moment,
  air: ZoneAir,
  will: Will,
  zone: number,
  other: number,
): void {
  if (opening.rule !== 'by-need') {
    state.wanted = opening.rule === 'open' ? 1 : 0;
    state.open = state.wanted;
    return;
  }
  if (opening.control !== 'automatic' && isBedtime(moment)) state.wanted = 0;
  else if (givesHeat(opening, air, will, zone, other)) state.wanted = 1;
  else if (!mayGiveOn(opening, air, will, zone, other)) state.wanted = 0;
}

/** Begins to give: the other zone wants heat, this one is plainly warmer and not damper. */
export function givesHeat(
  giving: HeatGiving,
  air: ZoneAir,
  will: Will,
  zone: number,
  other: number,
): boolean {
  const takerC = air.zoneC[other]!;
  return (
    mayGiveOn(giving, air, will, zone, other) &&
    takerC < wantedBelow(giving, will, other) &&
    air.zoneC[zone]! > takerC + DOOR_LEAD_K
  );
}

/** Goes on giving what it gives: still warmer, not damper, and the other zone not yet too warm. */
function mayGiveOn(giving: HeatGiving, air: ZoneAir, will: Will, zone: number, other: number): boolean {
  const takerC = air.zoneC[other]!;
  const isDamper = air.zoneRatio[zone]! > air.zoneRatio[other]! + giving.dampLimit;
  return (
    air.zoneC[zone]! > takerC &&
    takerC <= wantedBelow(giving, will, other) + RUN_DOWN_K &&
    will.rooms.isCooled[other] === 0 &&
    !isDamper
  );
}

/** Heat is wanted below this [°C]: as the rule says, and in summer of a room with windows below what these cool it to. */
function wantedBelow({ wantsHeatBelowC }: HeatGiving, will: Will, room: number): number {
  const windowsC = will.rooms.windowsC[room]!;
  if (will.rooms.isRoom[room] === 0 || Number.isNaN(windowsC)) return wantsHeatBelowC;
  const inSummer = Math.min(wantsHeatBelowC, windowsC - NIGHT_RUN_DOWN_K - UNDER_NIGHT_K);
  return wantsHeatBelowC + will.season.summer * (inSummer - wantsHeatBelowC);
}
