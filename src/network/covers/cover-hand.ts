// Whether a cover is wanted drawn, and what whoever draws it makes of that: its rule, the room, the sun on the window and
// the hour in; how far it is drawn, and moves, out. Automatic control follows at once and is nobody's work; people act at
// home and awake, forgetful ones when they think of it. Who leaves for the day draws the blinds of a room already warm, and
// opens what was drawn for the night though it is dark yet.
// A rule lets go at a lower bar than it draws at: two fifths less sun, a degree and a half less warmth. Common practice,
// no source; for the sun, controls reopen 50 to 100 W/m² lower (from memory, medium confidence).

import type { CoverRule, OpeningControl } from '../../model/model.ts';
import { clamp01 } from '../../physics/clamp.ts';
import type { Moment } from '../hour/clock.ts';
import { actsNow, isBedtime, isLeaving } from '../people/occupant-control.ts';

/** Of the sun it is drawn at, it is opened again below. */
const RELEASE_SUN = 0.6;
/** and below the temperature it is drawn at [K] */
const RELEASE_K = 1.5;
/** Outdoors below which it is cold, and above which it is not; heating limits in use lie there. Common practice, no source [°C]. */
const COLD_C = 12;
const MILD_C = 16;

/** What a cover's rule looks at. */
export interface CoverSigns {
  /** on the window [W/m²] */
  sunW: number;
  /** mean of air and radiant temperature of the room, and outdoors [°C] */
  roomC: number;
  /** the same of a room that wants this one's warmth; Infinity for none [°C] */
  takerC: number;
  outdoorC: number;
  windSpeed: number;
  isDark: boolean;
}

export interface CoverState {
  /** share drawn, and share wanted, 0…1 */
  drawn: number;
  wanted: number;
  waitingH: number;
  moves: number;
  neglectedHours: number;
  readonly movesByDay: Float64Array;
}

/** A cover that is not drawn, and no hour counted. */
export function openCover(): CoverState {
  return { drawn: 0, wanted: 0, waitingH: 0, moves: 0, neglectedHours: 0, movesByDay: new Float64Array(365) };
}

/**
 * Share of the cover that is wanted drawn, 0…1.
 *
 * @param month January 0
 * @param isDrawn whether it is wanted drawn already, which holds it to the lower bar
 * @param isLastLook the last look of the day, when people draw for the night
 */
export function wantedShare(
  rule: CoverRule,
  signs: CoverSigns,
  month: number,
  isDrawn: boolean,
  isLastLook: boolean,
): number {
  const most = rule.months[month]!;
  if (most === 0 || signs.windSpeed > rule.mostWind) return 0;
  switch (rule.drawnBy) {
    case 'season':
      return most;
    case 'sun':
      return isSunny(rule, signs, isDrawn) ? most : 0;
    case 'heat':
      return isSunny(rule, signs, isDrawn) && isWarm(rule, signs, isDrawn) ? most : 0;
    case 'night': {
      const keepsHeat = signs.outdoorC < signs.roomC && signs.roomC <= rule.aboveC;
      return (signs.isDark || isLastLook) && (isDrawn || keepsHeat) ? most : 0;
    }
  }
}

function isSunny({ sunW }: CoverRule, signs: CoverSigns, isDrawn: boolean): boolean {
  return signs.sunW > (isDrawn ? RELEASE_SUN : 1) * sunW;
}

function isWarm(rule: CoverRule, signs: CoverSigns, isDrawn: boolean): boolean {
  const { aboveC, coldAboveC = aboveC, spares } = rule;
  const lower = isDrawn ? RELEASE_K : 0;
  const cold = clamp01((MILD_C - signs.outdoorC) / (MILD_C - COLD_C));
  const bar = aboveC + cold * (coldAboveC - aboveC);
  return signs.roomC > bar - lower && (spares === undefined || signs.takerC > spares.belowC - lower);
}

/** Once an hour, before its steps: whoever draws the cover looks, and acts or does not. */
export function tend(
  state: CoverState,
  rule: CoverRule,
  control: OpeningControl,
  signs: CoverSigns,
  moment: Moment,
): void {
  const isPerson = control !== 'automatic';
  const isLastLook = isPerson && isBedtime(moment);
  state.wanted = wantedShare(rule, signs, moment.month, state.wanted > 0, isLastLook);
  if (isPerson && rule.drawnBy === 'heat' && isLeaving(control, moment) && isWarm(rule, signs, true))
    state.wanted = signs.windSpeed > rule.mostWind ? 0 : rule.months[moment.month]!;
  else if (isPerson && rule.drawnBy === 'night' && isLeaving(control, moment)) state.wanted = 0;
  if (state.wanted === state.drawn) {
    state.waitingH = 0;
    return;
  }
  if (!isPerson) {
    state.drawn = state.wanted;
    return;
  }
  if (!actsNow(control, moment)) {
    state.waitingH++;
    state.neglectedHours++;
    return;
  }
  state.drawn = state.wanted;
  state.moves++;
  state.movesByDay[moment.day]!++;
  state.waitingH = 0;
}
