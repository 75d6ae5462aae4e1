// When people put wood on: the will, the hour and what burns in; the share of a full load out. Somebody who is there and awake
// looks once an hour. A light stove is fed while it is cold, a masonry heater at its hours, for those ahead.
// Constants: common practice, no source, unless said.

import type { Stove } from '../../model/model.ts';
import { clamp01 } from '../../physics/clamp.ts';
import type { Will } from './will.ts';

/** A light stove is lit when it is so far too cold, and fed until it is so much too warm: a hand is a two-point thermostat [K]. */
const LIGHTS_K = 0.5;
const FEEDS_K = 0.5;
/** Loads grow from the smallest to a full one over so much cold more [K]. */
const FULL_OVER_K = 1.5;
/** A masonry heater is fired when the room is colder than asked for, fully once it is so much colder [K]. */
const FIRE_FULL_OVER_K = 2;
/** By habit it is lit until it is half summer. */
const HABIT_UNTIL = 0.5;

/**
 * Share of a full load that is put on, 0 or `leastLoad`…1.
 *
 * @param mayFeed whether somebody who thinks of it is there
 * @param burns whether it burnt in the hour before
 */
export function loadShare(stove: Stove, mayFeed: boolean, burns: boolean, will: Will, zone: number): number {
  if (!mayFeed) return 0;
  if (stove.byHabit) return will.season.summer < HABIT_UNTIL ? 1 : 0;
  const coldK = will.rooms.holdC[zone]! - will.rooms.feltC[zone]!;
  if (stove.fedHourly) {
    if (coldK <= (burns ? -FEEDS_K : LIGHTS_K)) return 0;
    return grown(stove, (coldK + FEEDS_K) / FULL_OVER_K);
  }
  return coldK <= 0 ? 0 : grown(stove, coldK / FIRE_FULL_OVER_K);
}

function grown({ leastLoad }: Stove, share: number): number {
  return leastLoad + (1 - leastLoad) * clamp01(share);
}
