// Occupant control of openings: what the rule wants, what whoever controls an opening makes of it, and how many moves
// that costs. Five kinds of control: an automatic opener (follows at once, nobody's work), an attentive person (at home
// and awake, acts within the hour), the same person away on workdays, a forgetful one (thinks of it three times a day), and
// nobody. A person opens by degrees, less far the colder it is outside, and anyone at home, awake or woken by it, narrows
// what has made the room too cold, and shuts it when the heater comes on; but the forgetful one, who waits there too.
// Waking 7–22 h, away 8–17 h, degrees and forgetting: common practice, no source.

import type { OpeningControl } from '../../model/model.ts';
import { clamp01 } from '../../physics/clamp.ts';
import { exp } from '../../physics/elementary.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Moment } from '../hour/clock.ts';

/** A forgetful person thinks of it once in so many waking hours, in an hour that chance has drawn. */
const THINKS_IN_HOURS = 5;
/** Wax and motor openers follow with about this time constant [s]; common practice, no source. */
const OPENER_S = 1200;
const WAKES = 7;
const SLEEPS = 22;
const EVENING = 18;
const LEAVES = 8;
const RETURNS = 17;

/** A night outdoors no colder than this below the opening temperature is mild [K]. */
export const MILD_WITHIN_K = 12;
/** With outdoors this much colder than the opening temperature people open less far; and ajar at the most [K]. */
const LESS_BELOW_K = 8;
const AJAR_BELOW_K = 20;
const AJAR = 0.25;
/** Nobody moves a window for less than this much wider, or narrower: by share of what is open. */
const WIDER = 1.5;
const NARROWER = 0.7;

/** A vent beside the rooms that has brought its zone this far below where it opens is shut by whoever is awake [K]. */
const PLAINLY_COLD_K = 4;
/** A window that has brought a room's air this far below its floor is narrowed; as far as need be when it is colder by so much [K]. */
const UNDER_FLOOR_K = 0.5;
const NARROWED_K = 1;
/** Air this far below the floor of a night wakes a sleeper, who shuts half of what is open [K]. */
export const WAKING_COLD_K = 1;
/** The least that a window is set ajar. */
const LEAST_SHARE = 1 / 128;

/** In the mean of many days, of what an opener would have open: by who is out, and by who forgets (docs/convergence.md). */
const LEFT_OPEN = 0.07;
const REMEMBERED = 0.8;

/** State of an opening that is moved; changes each step. */
export interface OpeningState {
  /** share open now, 0…1 */
  open: number;
  /** share the rule last wanted of a person */
  wanted: number;
  /** share its schedule lets open in the hour, 0…1 */
  allowed: number;
  /** by the will of the rooms (window-rules.ts): opens at, cools to by day and by night, and by walls and air of a night [°C] */
  opensC: number;
  floorC: number;
  nightFloorC: number;
  nightFeltC: number;
  /** the room's heater is at work; a night may be used to cool */
  heats: boolean;
  mayCoolByNight: boolean;
  /** how far warm walls count beside the air, 0…1, and what they add for an opener in this step [K] */
  wallsCount: number;
  liftK: number;
  /** an opener is shut in this step, whatever its trials */
  barred: boolean;
  /** as far open as the walls can warm what comes in, 0…1 and more */
  mostShare: number;
  /** share of the time that is a mild night: 0 or 1 in an hour */
  mildNightShare: number;
  /** open for drier air, whatever its warmth */
  airsDamp: boolean;
  /** waking hours for which want and state have differed */
  waitingH: number;
  /** of the hour, from its start, it is opened wide to air [s]; and of the step so much, 0…1 */
  airingS: number;
  airingShare: number;
  airings: number;
  moves: number;
  neglectedHours: number;
  readonly movesByDay: Float64Array;
}

export function closedOpening(): OpeningState {
  return {
    open: 0,
    wanted: 0,
    allowed: 0,
    opensC: 0,
    floorC: 0,
    nightFloorC: 0,
    nightFeltC: 0,
    heats: false,
    mayCoolByNight: false,
    wallsCount: 0,
    liftK: 0,
    barred: false,
    mostShare: 1,
    mildNightShare: 0,
    airsDamp: false,
    waitingH: 0,
    airingS: 0,
    airingShare: 0,
    airings: 0,
    moves: 0,
    neglectedHours: 0,
    movesByDay: new Float64Array(365),
  };
}

/** Forget the moves of the warm-up, keep where things stand. */
export function resetCounts(state: OpeningState): void {
  state.moves = 0;
  state.airings = 0;
  state.neglectedHours = 0;
  state.movesByDay.fill(0);
}

/**
 * How far a person would open: wide at half the band, so that the room is run down.
 *
 * @param need how far through the rule's band the room is; 0 or less asks for nothing
 * @param colderK outdoors below the temperature the rule opens at [K]
 */
export function shareFor(need: number, colderK: number): number {
  const less = clamp01((colderK - LESS_BELOW_K) / (AJAR_BELOW_K - LESS_BELOW_K));
  return Math.min(clamp01(2 * need), 1 - less * (1 - AJAR));
}

/** What is worth a move from what is open now, up to a limit: as it is, unless much wider is wanted or much narrower. */
export function moved(open: number, wanted: number, most: number): number {
  const share = Math.min(wanted, most);
  if (share < LEAST_SHARE) return 0;
  return share > WIDER * open || share < NARROWER * open ? share : open;
}

/** Once an hour, before the steps: a person looks, and acts or does not. Automatic control acts by easing(). */
export function operate(state: OpeningState, control: OpeningControl, moment: Moment): void {
  if (control === 'automatic') return;
  if (state.wanted === state.open) {
    state.waitingH = 0;
    return;
  }
  if (actsNow(control, moment)) {
    move(state, moment);
    return;
  }
  // A sleeper has forgotten nothing: what was left open for the night is known to be open.
  if (isAwake(moment)) state.waitingH++;
  state.neglectedHours++;
}

/**
 * Every quarter hour: whoever is at home narrows a room's window that has brought the air below its floor, as far as the
 * walls can warm what comes in, awake or woken by it, and shuts it when the heater comes on or when the walls too are as cool
 * as a night should leave them. A forgetful person leaves it to the heater for as long as anything else. Vents beside the
 * rooms are shut when their zone has become plainly cold, by whoever is awake, or is woken by cold rooms or the
 * heater.
 *
 * @param airC the zone's air, @param feltC air and walls together [°C]
 */
export function closeAgainstCold(
  state: OpeningState,
  control: OpeningControl,
  moment: Moment,
  isRoom: boolean,
  airC: number,
  feltC: number,
): void {
  if (state.open === 0 || control === 'automatic' || control === 'never' || !isHome(control, moment)) return;
  const awake = !isForNight(state, moment);
  let share = state.open;
  if (!isRoom) {
    if ((awake || state.heats) && airC < state.opensC - PLAINLY_COLD_K) share = 0;
  } else if (state.heats && control !== 'forgetful') share = 0;
  else if (!awake && feltC < state.nightFeltC) share = 0;
  else if (!awake && airC < state.nightFloorC - WAKING_COLD_K)
    share = moved(share, share / 2, state.mostShare);
  else {
    const under = clamp01(((awake ? state.floorC : state.nightFloorC) - UNDER_FLOOR_K - airC) / NARROWED_K);
    share = moved(share, share, share + under * (state.mostShare - share));
  }
  if (share === state.open) return;
  state.wanted = share;
  move(state, moment);
}

function move(state: OpeningState, moment: Moment): void {
  state.open = state.wanted;
  state.moves++;
  state.movesByDay[moment.day]!++;
  state.waitingH = 0;
}

/** Opened and shut again within the hour, as to air: two moves that leave things as they were. */
export function moveThereAndBack(state: OpeningState, moment: Moment): void {
  state.moves += 2;
  state.movesByDay[moment.day]! += 2;
}

/**
 * Hours of the year in which a forgetful person thinks of it, one of every THINKS_IN_HOURS: a fixed series without order, so
 * that who forgets when is the same in every house, and no small change of a design moves it.
 */
const THOUGHT_OF = Uint8Array.from({ length: HOURS }, (_, hour) => {
  const sinceWaking = (hour % 24) - WAKES;
  const drawn = scattered(hour - (sinceWaking % THINKS_IN_HOURS));
  return sinceWaking % THINKS_IN_HOURS === Math.floor(THINKS_IN_HOURS * drawn) ? 1 : 0;
});

/** A number of 0…1 by a hash of another, without any order. Source: the finaliser of MurmurHash3, public domain. */
function scattered(n: number): number {
  let bits = Math.imul(n + 1, 0x9e3779b1);
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return ((bits ^ (bits >>> 16)) >>> 0) / 0x1_0000_0000;
}

/** Share of the way an opener has gone at a step's end toward where its rule would have it. */
export function easing(stepS: number): number {
  return 1 - exp(-stepS / OPENER_S);
}

/** The same in the mean of the step. */
export function meanEasing(stepS: number): number {
  return 1 - (easing(stepS) * OPENER_S) / stepS;
}

/** Whether a person acts in this hour on what is wanted: at home, awake, and thinking of it. */
export function actsNow(control: OpeningControl, moment: Moment): boolean {
  if (control === 'never' || !isAwake(moment) || !isHome(control, moment)) return false;
  return control !== 'forgetful' || THOUGHT_OF[moment.hour] === 1;
}

/** Whether somebody who is here, and has not forgotten it, knows that it is open. */
export function isMinded(state: OpeningState, control: OpeningControl, moment: Moment): boolean {
  return control !== 'never' && isHome(control, moment) && state.waitingH === 0;
}

/** The last look before somebody leaves for the day or the weekend. */
export function isLeaving(control: OpeningControl, { hourOfDay, weekend, leaves }: Moment): boolean {
  return leaves || (control === 'away' && !weekend && hourOfDay === LEAVES - 1);
}

/** The last look of the day. */
export function isBedtime({ hourOfDay }: Moment): boolean {
  return hourOfDay === SLEEPS - 1;
}

/** A forgetful person's look of an evening: there will be no other before the morning. */
export function isLastThought(control: OpeningControl, { hourOfDay }: Moment): boolean {
  return control === 'forgetful' && hourOfDay >= EVENING;
}

/** Marks an hour of a household that is away on Saturdays and Sundays: it leaves with the last look of the day before. */
export function markWeekendAway(into: { -readonly [K in keyof Moment]: Moment[K] }): void {
  const { weekend, hour, calendar } = into;
  into.absent = weekend;
  into.leaves = !weekend && isBedtime(into) && calendar.weekend[(hour + 24) % HOURS] === 1;
}

/** What is open is open for the night: from the last look on, and from the evening on where the night may be used to cool. */
export function isForNight({ mayCoolByNight }: OpeningState, moment: Moment): boolean {
  return !isAwake(moment) || isBedtime(moment) || (mayCoolByNight && moment.hourOfDay >= EVENING);
}

export function isAwake({ hourOfDay }: Moment): boolean {
  return hourOfDay >= WAKES && hourOfDay < SLEEPS;
}

/**
 * How far a vent goes of an opener's way in the mean of many days.
 *
 * @param homeShare of the hours somebody is at home, 0…1
 */
export function openInMean(control: OpeningControl, homeShare: number): number {
  return (LEFT_OPEN + (1 - LEFT_OPEN) * homeShare) * (control === 'forgetful' ? REMEMBERED : 1);
}

/** At home by the clock. */
export function isHome(control: OpeningControl, { hourOfDay, weekend, absent }: Moment): boolean {
  if (absent) return false;
  return control !== 'away' || weekend || hourOfDay < LEAVES || hourOfDay >= RETURNS;
}
