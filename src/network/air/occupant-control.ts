// Occupant control of openings: what the rule wants, what whoever controls an opening makes of it, and how many moves
// that costs. Five kinds of control: an automatic opener (follows at once, nobody's work), an attentive person (at home
// and awake, acts within the hour), the same person away on workdays, a forgetful one (acts three hours late), and
// nobody. A person opens by notches, less far the colder it is outside, and anyone at home, awake or woken by it, shuts
// what has made the room plainly cold.
// Waking 7–22 h, away 8–17 h, notches and patience: common practice, no source.

import type { OpeningControl } from '../../model/model.ts';
import type { Moment } from '../hour/clock.ts';

/** Hours a want must last before a forgetful person acts on it. */
const FORGETFUL_HOURS = 3;
/** Wax and motor openers follow with about this time constant [s]; common practice, no source. */
const OPENER_S = 1200;
const WAKES = 7;
const SLEEPS = 22;
const LEAVES = 8;
const RETURNS = 17;

/** How far a person opens: ajar, half, full; the first notch that covers the need. */
const NOTCHES = [0, 0.25, 0.5, 1] as const;
/** With outdoors this much colder than the opening temperature, half open is the most; and ajar the most [K]. */
export const HALF_BELOW_K = 12;
const AJAR_BELOW_K = 20;

/** A vent or window that has brought the room this far below the rule's temperature is shut; or wakes a sleeper [K]. */
const PLAINLY_COLD_K = 4;
const WAKING_COLD_K = 5;

/** State of an opening that is moved; changes each step. */
export interface OpeningState {
  /** share open now, 0…1 */
  open: number;
  /** share the rule last wanted of a person */
  wanted: number;
  /** share its schedule lets open in the hour, 0…1 */
  allowed: number;
  /** share of the time that is a mild night: 0 or 1 in an hour */
  mildNightShare: number;
  /** open for drier air, whatever its warmth */
  airsDamp: boolean;
  /** hours for which want and state have differed */
  waitingH: number;
  moves: number;
  neglectedHours: number;
  readonly movesByDay: Float64Array;
}

export function closedOpening(): OpeningState {
  return {
    open: 0,
    wanted: 0,
    allowed: 0,
    mildNightShare: 0,
    airsDamp: false,
    waitingH: 0,
    moves: 0,
    neglectedHours: 0,
    movesByDay: new Float64Array(365),
  };
}

/** Forget the moves of the warm-up, keep where things stand. */
export function resetCounts(state: OpeningState): void {
  state.moves = 0;
  state.neglectedHours = 0;
  state.movesByDay.fill(0);
}

/**
 * How far a person would open, in notches.
 *
 * @param need how far through the rule's band the room is; 0 or less asks for nothing
 * @param colderK outdoors below the temperature the rule opens at [K]
 */
export function notchFor(need: number, colderK: number): number {
  if (need <= 0) return 0;
  const most = colderK > AJAR_BELOW_K ? 0.25 : colderK > HALF_BELOW_K ? 0.5 : 1;
  const notch = NOTCHES.find((share) => share >= need) ?? 1;
  return Math.min(notch, most);
}

/** Once an hour, before the steps: a person looks, and acts or does not. Automatic control acts by easing(). */
export function operate(state: OpeningState, control: OpeningControl, moment: Moment): void {
  if (control === 'automatic') return;
  if (state.wanted === state.open) {
    state.waitingH = 0;
    return;
  }
  const patience = control === 'forgetful' ? FORGETFUL_HOURS : 0;
  if (control !== 'never' && isAvailable(control, moment) && state.waitingH >= patience) {
    move(state, moment);
    return;
  }
  state.waitingH++;
  state.neglectedHours++;
}

/**
 * Every quarter hour: a person at home shuts what has made the room plainly cold, forgetful or not; asleep, when the
 * cold wakes them.
 *
 * @param colderK the room below the temperature the rule opens at [K]
 * @param isLivedIn whether people live in the room
 */
export function closeAgainstCold(
  state: OpeningState,
  control: OpeningControl,
  moment: Moment,
  colderK: number,
  isLivedIn: boolean,
): void {
  if (state.open === 0 || control === 'automatic' || control === 'never' || !isHome(control, moment)) return;
  if (colderK < (isAwake(moment) ? PLAINLY_COLD_K : isLivedIn ? WAKING_COLD_K : Number.POSITIVE_INFINITY))
    return;
  state.wanted = 0;
  move(state, moment);
}

function move(state: OpeningState, moment: Moment): void {
  state.open = state.wanted;
  state.moves++;
  state.movesByDay[moment.day]!++;
  state.waitingH = 0;
}

/** Share of the way an opener has gone at a step's end toward where its rule would have it. */
export function easing(stepS: number): number {
  return 1 - Math.exp(-stepS / OPENER_S);
}

/** The same in the mean of the step. */
export function meanEasing(stepS: number): number {
  return 1 - (easing(stepS) * OPENER_S) / stepS;
}

function isAvailable(control: OpeningControl, moment: Moment): boolean {
  return isAwake(moment) && isHome(control, moment);
}

/** The last look of the day. */
export function isBedtime({ hourOfDay }: Moment): boolean {
  return hourOfDay === SLEEPS - 1;
}

export function isAwake({ hourOfDay }: Moment): boolean {
  return hourOfDay >= WAKES && hourOfDay < SLEEPS;
}

/** At home by the clock. */
export function isHome(control: OpeningControl, { hourOfDay, weekend }: Moment): boolean {
  return control !== 'away' || weekend || hourOfDay < LEAVES || hourOfDay >= RETURNS;
}
