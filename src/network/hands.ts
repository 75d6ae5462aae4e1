// Whoever moves an opening: what the rule wants and what the hand does, step by step, and what that costs in
// moves. Five hands: an automatic opener (follows at once, nobody's work), an attentive person (at home and
// awake, acts within the hour), the same person away on workdays, a forgetful one (acts three hours late), and
// nobody. Waking 7–22 h and away 8–17 h: common practice, no source.

import type { Hand } from '../model/model.ts';
import type { Moment } from './clock.ts';

/** Hours a want must last before a forgetful person acts on it. */
export const FORGETFUL_HOURS = 3;
/** Wax and motor openers follow with about this time constant [s]; common practice, no source. */
const OPENER_S = 1200;
const WAKES = 7;
const SLEEPS = 22;
const LEAVES = 8;
const RETURNS = 17;

/** Changes each step; one per opening that is moved. */
export interface HandState {
  /** share open now, 0…1 */
  open: number;
  /** what the rule last wanted of a person, 0 or 1 */
  wanted: number;
  /** hours for which want and state have differed */
  waitingH: number;
  moves: number;
  neglectedHours: number;
  readonly movesByDay: Float64Array;
}

export function restingHand(): HandState {
  return { open: 0, wanted: 0, waitingH: 0, moves: 0, neglectedHours: 0, movesByDay: new Float64Array(365) };
}

/** Forget the moves of the warm-up, keep where things stand. */
export function resetMoves(state: HandState): void {
  state.moves = 0;
  state.neglectedHours = 0;
  state.movesByDay.fill(0);
}

/**
 * What a person would want: open above, shut below, otherwise as it stands.
 *
 * @param opens the rule says open now
 * @param shuts the rule says shut now
 */
export function want(state: HandState, opens: boolean, shuts: boolean): number {
  if (shuts) state.wanted = 0;
  else if (opens) state.wanted = 1;
  return state.wanted;
}

/** Once an hour, before the steps: a person looks, and acts or does not. The automatic hand acts in follow(). */
export function act(state: HandState, hand: Hand, moment: Moment): void {
  if (hand === 'automatic') return;
  if (state.wanted === state.open) {
    state.waitingH = 0;
    return;
  }
  const patience = hand === 'forgetful' ? FORGETFUL_HOURS : 0;
  if (hand !== 'never' && atHand(hand, moment) && state.waitingH >= patience) {
    state.open = state.wanted;
    state.moves++;
    state.movesByDay[moment.day]!++;
    state.waitingH = 0;
    return;
  }
  state.waitingH++;
  state.neglectedHours++;
}

/** Every step: an opener eases toward the opening the rule asks for. */
export function follow(state: HandState, target: number, stepS: number): void {
  state.open += (target - state.open) * (1 - Math.exp(-stepS / OPENER_S));
}

function atHand(hand: Hand, { hourOfDay, weekend }: Moment): boolean {
  if (hourOfDay < WAKES || hourOfDay >= SLEEPS) return false;
  return hand !== 'away' || weekend || hourOfDay < LEAVES || hourOfDay >= RETURNS;
}
