// What windows and vents are wanted for: the will of the rooms, a vent's rule and the zone's air in; the share wanted of a
// person, or of an opener, out. Who then moves it: occupant-control.ts.
// A window of a room cools it to a floor and no further: by the rule's own temperature in summer, and never near what the
// heater holds in the rest of the year. It is opened as far as the walls can warm the air that comes in, so that a large
// window, which brings the air outdoors in within minutes, is set ajar and left so, and not shut in a room that is still hot.
// The vents of a zone beside the rooms wait for KEPT_C while the rooms want its heat.
// Constants: common practice, no source, unless said.

import type { VentOpening } from '../../model/model.ts';
import { clamp01 } from '../../physics/clamp.ts';
import type { Moment } from '../hour/clock.ts';
import {
  isAwake,
  isBedtime,
  isLastThought,
  isLeaving,
  MILD_WITHIN_K,
  moved,
  type OpeningState,
  shareFor,
} from './occupant-control.ts';
import { HEATED_LATELY_H, NIGHT_RUN_DOWN_K, RUN_DOWN_K, tied, type Will } from './will.ts';
import type { ZoneAir } from './zone-air.ts';

/** A sunspace whose heat the rooms want is vented above this [°C]. */
const KEPT_C = 35;
/** A room is opened at the rule's temperature, and this far above the floor it is cooled to [K]. */
const ABOVE_FLOOR_K = 1;
/** What walls and floor give air that is colder than they are: 3 m² of them a m² of floor, by 3 W/(m²K). */
export const WALLS_W_PER_M2K = 9;
/** After the last look, or the evening's one thought of it, outdoors cools by this much yet, as every evening [K]. */
const EVENING_FALLS_K = 1.5;
/** Who leaves for a day like the last leaves shut if that was hotter than what the vent opens at by so much [K]. */
const HOT_DAY_K = 3;
/** An opener may let the air down to this far under its floor while the walls are still warm [K]. */
const UNDER_FLOOR_K = 0.5;
/** An opener is wide open once outdoors is this much cooler, or warmer, than the rule asks; a person opens as far [K]. */
const COOLER_BY_K = 0.5;
const COOLER_BY_HAND_K = 1;
/** A person opens as far as is wanted from this far above the temperature it opens at on, and less below that [K]. */
const OPENS_WITHIN_K = 0.5;
/** A zone beside the rooms this humid is vented even with hotter, drier air, until it is down to the second; a grower's rule. */
const DAMP_HUMIDITY = 0.85;
const DRIED_HUMIDITY = 0.7;
/** Rain that makes people and sensors shut what is open to it [mm in the hour]. */
const FELT_RAIN_MM = 0.2;

/** What the will makes of a vent's rule: where it opens, its floors, whether walls count. At the start of a step. */
export function settleVent({ rule }: VentOpening, state: OpeningState, will: Will, zone: number): void {
  const { isRoom, feltC, dayTieC, nightTieC, nightFeltC, unheated, sinceHeatH, heats } = will.rooms;
  const summer = will.rooms.summer[zone]!;
  const opens = rule.opensAboveC;
  if (isRoom[zone] === 0) {
    // Nor is a zone beside the rooms cooled by day further than these are.
    const { share, nightShare, tieC, summer: allSummer, unheated: allUnheated } = will.keeping;
    const leastC = tied(opens, tieC + ABOVE_FLOOR_K, allSummer);
    const keptK = Math.max(0, KEPT_C - leastC);
    state.opensC = leastC + share * keptK;
    state.floorC = state.opensC - RUN_DOWN_K;
    const opensByNightC = leastC + nightShare * keptK;
    state.nightFloorC = opensByNightC - NIGHT_RUN_DOWN_K;
    state.nightFeltC = opensByNightC - RUN_DOWN_K;
    state.heats = will.keeping.heats;
    state.mayCoolByNight = true;
    // Where nobody wants its heat it is left open while its walls are hot, though the air that comes in is cool.
    state.wallsCount = Math.min(1 - share, allUnheated);
    return;
  }
  state.floorC = tied(opens - RUN_DOWN_K, dayTieC[zone]!, summer);
  state.opensC = Math.max(opens, state.floorC + ABOVE_FLOOR_K);
  state.nightFloorC = tied(opens - NIGHT_RUN_DOWN_K, nightTieC[zone]!, summer);
  state.nightFeltC = tied(opens - NIGHT_RUN_DOWN_K, nightFeltC[zone]!, summer);
  state.heats = heats[zone] === 1;
  state.mayCoolByNight = sinceHeatH[zone]! >= HEATED_LATELY_H && feltC[zone]! > state.nightFeltC;
  state.wallsCount = unheated[zone]!;
}

/** How much warmer than its air a room is judged for the warmth of its walls [K]. */
function liftBy(state: OpeningState, air: ZoneAir, will: Will, zone: number): number {
  return state.wallsCount * Math.max(0, will.rooms.feltC[zone]! - air.zoneC[zone]!);
}

/** Before a step: an opener's bars, and how much its walls count; neither changes with the step's trials. */
export function settleOpener(
  vent: VentOpening,
  state: OpeningState,
  air: ZoneAir,
  will: Will,
  zone: number,
): void {
  settleVent(vent, state, will, zone);
  state.liftK = liftBy(state, air, will, zone);
  state.barred = isShutBy(vent, state, air) || (state.heats && will.rooms.isRoom[zone] === 1);
}

/** Shut by season, hour, wind or rain. */
export function isShutBy({ rule }: VentOpening, { allowed }: OpeningState, air: ZoneAir): boolean {
  return (
    allowed <= 0 ||
    air.weather.windSpeed > rule.shutAboveWind ||
    (rule.shutInRain && air.weather.rainMm >= FELT_RAIN_MM)
  );
}

/** Outdoors is no cooler, or no warmer, than the rule asks, unless damp asks for it. */
function isNoHelp({ rule }: VentOpening, { airsDamp }: OpeningState, air: ZoneAir, insideC: number): boolean {
  const { dryBulbC } = air.weather;
  return (
    (rule.onlyWhileOutside === 'cooler' && dryBulbC >= insideC && !airsDamp) ||
    (rule.onlyWhileOutside === 'warmer' && dryBulbC <= insideC)
  );
}

/** How far outdoors helps, by how much cooler than the zone it is [K]: 0…1. */
function helpOf({ rule }: VentOpening, { airsDamp }: OpeningState, coolerK: number): number {
  if (rule.onlyWhileOutside === 'either' || (rule.onlyWhileOutside === 'cooler' && airsDamp)) return 1;
  return clamp01((rule.onlyWhileOutside === 'cooler' ? coolerK : -coolerK) / COOLER_BY_HAND_K);
}

/** Beside the rooms damp asks for drier air, however hot it is, from DAMP until the zone has dried; rooms are aired. */
export function feelDamp(state: OpeningState, air: ZoneAir, will: Will, zone: number): void {
  if (will.rooms.isRoom[zone] === 1) return;
  const isDrierOutside = air.weather.humidityRatio < air.zoneRatio[zone]!;
  const humidity = air.zoneHumidity[zone]!;
  if (!isDrierOutside || humidity < DRIED_HUMIDITY) state.airsDamp = false;
  else if (humidity > DAMP_HUMIDITY) state.airsDamp = true;
}

/** An opener that knows only open and shut: by the air at the quarter hour, so that no step hangs between the two. */
export function switchOpener(vent: VentOpening, state: OpeningState, air: ZoneAir, zone: number): void {
  if (vent.rule.opens !== 'all-at-once') return;
  const insideC = air.zoneC[zone]! + state.liftK;
  if (insideC <= state.floorC || state.barred || isNoHelp(vent, state, air, insideC)) state.wanted = 0;
  else if (insideC > state.opensC) state.wanted = state.allowed;
}

/** A room whose opener, if it knows only open and shut, may open at the next quarter hour. */
export function needsAir({ rule }: VentOpening, state: OpeningState, air: ZoneAir, zone: number): boolean {
  return rule.opens === 'all-at-once' && air.zoneC[zone]! > state.floorC;
}

/** Share an opener asks for at these temperatures: full at half the band, so that like a person it runs the room down. */
export function ventTarget(
  { rule }: VentOpening,
  state: OpeningState,
  air: ZoneAir,
  zoneC: Float64Array,
  zone: number,
): number {
  const { barred, mildNightShare, allowed, liftK, floorC, nightFloorC } = state;
  if (rule.opens === 'all-at-once') return state.wanted;
  if (barred) return 0;
  const airC = zoneC[zone]!;
  const byDay = openedFor(airC, liftK, floorC, rule.bandK);
  const night = state.mayCoolByNight ? mildNightShare : 0;
  const need =
    night === 0 ? byDay : byDay + night * (openedFor(airC, liftK, nightFloorC, rule.bandK) - byDay);
  if (need === 0 || rule.onlyWhileOutside === 'either') return allowed * need;
  if (rule.onlyWhileOutside === 'cooler' && state.airsDamp) return allowed * need;
  const coolerK = airC + liftK - air.weather.dryBulbC;
  return allowed * need * clamp01((rule.onlyWhileOutside === 'cooler' ? coolerK : -coolerK) / COOLER_BY_K);
}

function openedFor(airC: number, liftK: number, floorC: number, bandK: number): number {
  const byWarmth = clamp01((2 * (airC + liftK - floorC)) / bandK);
  return liftK > 0 ? Math.min(byWarmth, clamp01(airC - floorC + UNDER_FLOOR_K)) : byWarmth;
}

/** A night so mild that an opener lets the room run down further; it begins with sleep, as the heater's night does. */
export function isMildNight({ rule }: VentOpening, moment: Moment, dryBulbC: number): boolean {
  return !isAwake(moment) && dryBulbC > rule.opensAboveC - MILD_WITHIN_K;
}

/**
 * What a person wants, looking in the hour: nothing until the room is as warm as it opens at, then by notches until it has
 * run down to its floor. The last look of the day is for the night, and who will not think of it again this evening does not
 * wait for outdoors to be cooler than the room.
 */
export function wantVent(
  vent: VentOpening,
  state: OpeningState,
  moment: Moment,
  air: ZoneAir,
  will: Will,
  zone: number,
): void {
  const { rule, control } = vent;
  const { opensC, floorC } = state;
  const feltC = will.rooms.feltC[zone]!;
  const isForTheNight = isBedtime(moment);
  const airC = air.zoneC[zone]!;
  const warmC = airC + liftBy(state, air, will, zone);
  const insideC = isForTheNight ? feltC : warmC;
  const need = (insideC - floorC) / rule.bandK;
  const looksAhead = isForTheNight || isLastThought(control, moment);
  const coolC = looksAhead ? Math.max(airC, feltC) + EVENING_FALLS_K : warmC;
  const isRoom = will.rooms.isRoom[zone] === 1;
  const isHeatedLately = isRoom && will.rooms.sinceHeatH[zone]! < HEATED_LATELY_H;
  if (
    need <= 0 ||
    (isRoom && state.heats) ||
    isShutBy(vent, state, air) ||
    isNoHelp(vent, state, air, coolC) ||
    (isForTheNight && !(state.mayCoolByNight && feltC > state.nightFeltC)) ||
    moment.leaves ||
    (isLeaving(control, moment) && (isHeatedLately || will.season.recentHighC > opensC + HOT_DAY_K))
  ) {
    state.wanted = 0;
    return;
  }
  const isWhole = rule.opens === 'all-at-once';
  const outdoorC = air.weather.dryBulbC;
  const share =
    state.allowed * (isWhole ? 1 : shareFor(need, opensC - outdoorC) * helpOf(vent, state, coolC - outdoorC));
  const most = isWhole ? 1 : state.mostShare;
  const { open } = state;
  // Once open, a person widens when it gets hotter but does not fiddle on the way down.
  if (isForTheNight || (open > 0 && insideC < opensC && outdoorC < opensC))
    state.wanted = moved(open, share, most);
  else {
    const opening = isWhole ? Number(insideC > opensC) : clamp01((insideC - opensC) / OPENS_WITHIN_K);
    state.wanted = moved(open, Math.max(open, opening * Math.min(share, most)), most);
  }
}
