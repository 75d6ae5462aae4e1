// Air through every opening, step by step: who opens what, how far, and the sum of what passes. The model's openings and zone
// temperatures in, mass flows with outdoors and between zones out. Every flow but that of a house's stack (house-stack.ts) is an
// exchange, as much in as out, and the stack's ways carry on what comes in, so the air mass of each zone balances at every step.
// What passes through one opening: opening-flow.ts; what flows with nobody's hand on it: fans-and-cracks.ts.
// Flow depends on temperature and temperature on flow: the run tries temperatures until those the network answers to
// their flows agree with them (temperature-search.ts), so nothing chatters and a finer step changes little. An opener's
// position in a step follows from the trial temperature too.

import type { DoorOpening, Model, Opening, StairOpening, VentOpening } from '../../model/model.ts';
import { blankMoment, type Moment, momentOf, scheduled } from '../hour/clock.ts';
import type { DayPart } from '../hour/day-part.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { beginAiring } from '../people/airing.ts';
import { wantDoor } from '../people/heat-giving.ts';
import {
  closeAgainstCold,
  closedOpening,
  easing,
  isBedtime,
  isForNight,
  isHome,
  isMinded,
  meanEasing,
  type OpeningState,
  openInMean,
  operate,
  resetCounts,
} from '../people/occupant-control.ts';
import type { Will } from '../people/will.ts';
import {
  feelDamp,
  isMildNight,
  needsAir,
  settleOpener,
  settleVent,
  switchOpener,
  ventTarget,
  wantVent,
} from '../people/window-rules.ts';
import type { ZoneAir } from '../people/zone-air.ts';
import type { AirFlow } from './air-flow-interface.ts';
import { createExchangeSum } from './exchange-sum.ts';
import { createFansAndCracks } from './fans-and-cracks.ts';
import { createStackFlows } from './house-stack.ts';
import { createOpeningFlow } from './opening-flow.ts';

/** An opener this little open lets nothing through. */
const SHUT = 1e-6;
/** An opener further open than this cools a room. */
const LITTLE = 0.02;

/**
 * Openings of a run, with room for so many; load() before use.
 *
 * @param given by opening, how far it is known to stand open in the hour or step that begins, 0…1; NaN for as its rule has it
 */
export function createAirFlow(
  capacity: EngineCapacity,
  air: ZoneAir,
  will: Will,
  given: Float64Array,
): AirFlow {
  let zones = 0;
  let count = 0;
  let openings: readonly Opening[] = [];
  let states: OpeningState[] = [];
  const outdoors = new Float64Array(capacity.zones);
  const recovered = new Float64Array(capacity.zones);
  const spared = new Float64Array(capacity.zones);
  const givenW = new Float64Array(capacity.zones);
  const lostW = new Float64Array(capacity.zones);
  const between = new Float64Array(capacity.zones * capacity.zones);
  let stepLengthS = 0;
  const byOpening = {
    zoneOf: new Int32Array(capacity.openings),
    otherOf: new Int32Array(capacity.openings),
    volume: new Float64Array(capacity.openings),
    share: new Float64Array(capacity.openings),
    /** the same without the minutes of an airing */
    steady: new Float64Array(capacity.openings),
    /** 1 for doors and stairs that stand open by a schedule */
    isKept: new Int32Array(capacity.openings),
    /** share of the heat in its flow that an exchanger gives back */
    recovers: new Float64Array(capacity.openings),
    /** share of its flow that leaves with no heat of its zone's, since an airing cools the air before the furniture */
    spares: new Float64Array(capacity.openings),
    /** an opener's position before the step */
    openBefore: new Float64Array(capacity.openings),
    /** vents and doors; cracks and most fans flow as the hour's start finds them */
    movable: new Int32Array(capacity.openings),
    /** 1 for vents; 1 for those that an opener moves */
    isVent: new Int32Array(capacity.openings),
    opensItself: new Int32Array(capacity.openings),
    /** 1 for doors that an opener moves as heat is wanted */
    easesDoor: new Int32Array(capacity.openings),
  };
  const { zoneOf, otherOf, volume, share } = byOpening;
  const sumExchange = createExchangeSum(byOpening, { outdoors, recovered, spared, between }, air);
  const stack = createStackFlows(capacity, byOpening, { outdoors, between }, air);
  const flow = createOpeningFlow(capacity, byOpening, air, will);
  const { throughVent, throughDoor, throughStairs, limitByWalls, lengthenAiring, stairFlow } = flow;
  const fans = createFansAndCracks(capacity, byOpening, { givenW, lostW }, air, will);
  const at = blankMoment();
  let movables = 0;
  /** share of its way that an opener goes in a step, and is at in the mean */
  let ease = 0;
  let meanEase = 0;
  let doorEase = 0;
  let doorMeanEase = 0;
  /** no fan runs, and no motor moves anything */
  let powerIsOut = false;
  let anyOpen = false;
  let stale = true;
  let changed = true;

  function load(model: Model, roomDensity: number, stepS: number): void {
    zones = model.zones.length;
    openings = model.openings;
    count = openings.length;
    states = openings.map(() => closedOpening());
    setStep(stepS);
    anyOpen = false;
    movables = 0;
    for (const array of [outdoors, recovered, spared, givenW, lostW, between, volume, share]) array.fill(0);
    for (const array of [byOpening.recovers, byOpening.spares]) array.fill(0);
    flow.load(model, roomDensity);
    fans.load(openings);
    const indexOf = (id: string) => model.zones.findIndex((zone) => zone.id === id);
    openings.forEach((opening, i) => {
      zoneOf[i] = indexOf(opening.zone);
      const other = 'other' in opening ? opening.other : undefined;
      otherOf[i] = other === undefined ? -1 : indexOf(other);
      byOpening.isVent[i] = opening.kind === 'vent' ? 1 : 0;
      byOpening.opensItself[i] = opening.kind === 'vent' && opening.control === 'automatic' ? 1 : 0;
      byOpening.easesDoor[i] =
        opening.kind === 'door' && opening.control === 'automatic' && opening.rule === 'by-need' ? 1 : 0;
      const isStairs = opening.kind === 'stairs';
      byOpening.isKept[i] = isStairs || (opening.kind === 'door' && opening.schedule !== undefined) ? 1 : 0;
      if (opening.kind === 'vent' || opening.kind === 'door' || isStairs) byOpening.movable[movables++] = i;
    });
    byOpening.steady.fill(0);
    stack.load(
      model.stack,
      openings,
      model.zones.map(({ id }) => id),
    );
  }

  function setStep(stepS: number): void {
    stepLengthS = stepS;
    setEase();
    fans.setStep(stepS);
  }

  function setEase(): void {
    ease = easing(stepLengthS);
    meanEase = meanEasing(stepLengthS);
    doorEase = powerIsOut ? 0 : ease;
    doorMeanEase = powerIsOut ? 0 : meanEase;
  }

  function beginLongSteps(): void {
    will.setLongSteps(true);
    openings.forEach((opening, i) => {
      if (opening.kind === 'vent' && opening.control !== 'never') byOpening.opensItself[i] = 1;
    });
  }

  function endLongSteps(): void {
    will.setLongSteps(false);
    openings.forEach((opening, i) => {
      if (opening.kind !== 'vent') return;
      byOpening.opensItself[i] = opening.control === 'automatic' ? 1 : 0;
      states[i]!.open = 0;
      states[i]!.wanted = 0;
    });
  }

  function beginLongStep({ hours, count: hourCount }: DayPart, dryBulbC: Float64Array): void {
    openings.forEach((opening, i) => {
      if (opening.kind !== 'vent') return;
      let mild = 0;
      let home = 0;
      for (let k = 0; k < hourCount; k++) {
        const hour = hours[k]!;
        momentOf(hour, at);
        if (isMildNight(opening, at, dryBulbC[hour]!)) mild++;
        if (isHome(opening.control, at)) home++;
      }
      states[i]!.mildNightShare = mild / hourCount;
      states[i]!.allowed *= openInMean(opening.control, home / hourCount);
    });
  }

  function mayMove(): boolean {
    const { movable, isVent, easesDoor, opensItself, zoneOf } = byOpening;
    if (fans.mayMove()) return true;
    for (let k = 0; k < movables; k++) {
      const i = movable[k]!;
      const state = states[i]!;
      const isMoving = isVent[i] === 1 ? state.open > SHUT : state.open > SHUT || state.wanted > 0;
      if (isMoving && (isVent[i] === 1 || easesDoor[i] === 1)) return true;
      if (state.airingS > 0) return true;
      if (opensItself[i] === 1 && !isGiven(i) && needsAir(openings[i] as VentOpening, state, air, zoneOf[i]!))
        return true;
    }
    return wouldOpen(air.zoneC);
  }

  function beginHour(moment: Moment): void {
    const { zoneOf, otherOf } = byOpening;
    const all = openings;
    const allStates = states;
    const last = count;
    for (let i = 0; i < last; i++) {
      const opening = all[i]!;
      const state = allStates[i]!;
      const zone = zoneOf[i]!;
      if (opening.kind === 'vent') {
        state.allowed = scheduled(opening.rule.schedule, moment);
        state.mildNightShare = isMildNight(opening, moment, air.weather.dryBulbC) ? 1 : 0;
        feelDamp(state, air, will, zone);
        settleOpener(opening, state, air, will, zone);
        if (isGiven(i)) {
          stand(state, i);
          continue;
        }
        if (byOpening.opensItself[i] === 0) {
          limitByWalls(i, state, isBedtime(moment));
          wantVent(opening, state, moment, air, will, zone);
          operate(state, opening.control, moment);
        }
        if (powerIsOut && isMotor(opening, i)) state.airingS = 0;
        else beginAiring(opening, state, moment, air, will, zone);
        if (state.airingS > 0) lengthenAiring(i, state);
      } else if (byOpening.isKept[i] === 1) {
        if (isGiven(i)) stand(state, i);
        else state.open = scheduled((opening as StairOpening).schedule, moment);
        state.wanted = state.open;
        byOpening.steady[i] = state.open;
      } else if (opening.kind === 'door') {
        if (isGiven(i)) {
          stand(state, i);
          continue;
        }
        wantDoor(opening, state, moment, air, will, zone, otherOf[i]!);
        operate(state, opening.control, moment);
      } else fans.beginHour(i, moment);
    }
    fans.readUnits();
    stack.beginHour();
    markCooled(moment);
    stale = true;
  }

  function isGiven(i: number): boolean {
    return !Number.isNaN(given[i]!);
  }

  /** As it is known to stand, whatever anybody would want. */
  function stand(state: OpeningState, i: number): void {
    state.open = given[i]!;
    state.wanted = state.open;
    state.waitingH = 0;
    state.airingS = 0;
    state.airingShare = 0;
  }

  function beginStep(moment: Moment, isQuarter: boolean, secondsGone: number): void {
    const { zoneOf, openBefore, movable, isVent, opensItself, isKept } = byOpening;
    const { zoneC } = air;
    const { isRoom, feltC } = will.rooms;
    const all = openings;
    const allStates = states;
    const last = movables;
    if (isQuarter && fans.beginQuarter(moment)) stale = true;
    for (let k = 0; k < last; k++) {
      const i = movable[k]!;
      const state = allStates[i]!;
      const zone = zoneOf[i]!;
      openBefore[i] = state.open;
      if (isGiven(i)) {
        stand(state, i);
        openBefore[i] = state.open;
        continue;
      }
      if (isVent[i] === 0) {
        if (isKept[i] === 0) setDoor(all[i] as DoorOpening, state, doorEase);
        continue;
      }
      const vent = all[i] as VentOpening;
      state.airingShare =
        state.airingS > secondsGone ? Math.min(1, (state.airingS - secondsGone) / stepLengthS) : 0;
      if (opensItself[i] === 1) {
        settleOpener(vent, state, air, will, zone);
        if (isQuarter) switchOpener(vent, state, air, zone);
      } else if (state.open > 0 && isQuarter) {
        settleVent(vent, state, will, zone);
        limitByWalls(i, state, isForNight(state, moment));
        closeAgainstCold(state, vent.control, moment, isRoom[zone] === 1, zoneC[zone]!, feltC[zone]!);
      }
    }
    markCooled(moment);
  }

  /** Zones that a window somebody minds, or a night fan, cools: for whoever heats them. */
  function markCooled(moment: Moment): void {
    const { zoneOf, movable, isVent, opensItself } = byOpening;
    const { isCooled } = will.rooms;
    const allStates = states;
    const last = movables;
    for (let z = 0; z < zones; z++) isCooled[z] = 0;
    for (let k = 0; k < last; k++) {
      const i = movable[k]!;
      const state = allStates[i]!;
      if (isVent[i] === 0 || state.open <= LITTLE) continue;
      if (opensItself[i] === 1 || isMinded(state, (openings[i] as VentOpening).control, moment))
        isCooled[zoneOf[i]!] = 1;
    }
    fans.markCooled(isCooled);
  }

  function renew(): boolean {
    const { zoneOf, volume, share, openBefore, movable, isVent, opensItself, easesDoor } = byOpening;
    const { steady } = byOpening;
    const { zoneC } = air;
    const all = openings;
    const allStates = states;
    const last = movables;
    const wasOpen = anyOpen;
    let isOpen = false;
    for (let k = 0; k < last; k++) {
      const i = movable[k]!;
      const state = allStates[i]!;
      if (opensItself[i] === 1 && !isGiven(i)) {
        const target = ventTarget(all[i] as VentOpening, state, air, zoneC, zoneOf[i]!);
        state.open = openBefore[i]! + ease * (target - openBefore[i]!);
        share[i] = openBefore[i]! + meanEase * (target - openBefore[i]!);
        if (target > 0) isOpen = true;
      } else if (easesDoor[i] === 1) {
        share[i] = openBefore[i]! + doorMeanEase * (state.wanted - openBefore[i]!);
      } else share[i] = state.open;
      volume[i] = 0;
      steady[i] = share[i]!;
      if (share[i]! <= SHUT && (isVent[i] === 0 || state.airingShare === 0)) continue;
      isOpen = true;
      if (isVent[i] === 1) throughVent(i, state);
      else if (stairFlow[i]! > 0) throughStairs(i);
      else throughDoor(i);
    }
    anyOpen = isOpen;
    changed = isOpen || wasOpen || stale;
    if (changed) {
      stack.find();
      sumExchange(zones, count, states);
      stack.apply();
    }
    stale = false;
    return isOpen;
  }

  function wouldOpen(zoneC: Float64Array): boolean {
    const { zoneOf, movable, opensItself } = byOpening;
    const all = openings;
    const allStates = states;
    const last = movables;
    for (let k = 0; k < last; k++) {
      const i = movable[k]!;
      if (opensItself[i] === 0 || isGiven(i)) continue;
      if (ventTarget(all[i] as VentOpening, allStates[i]!, air, zoneC, zoneOf[i]!) > 0) return true;
    }
    return false;
  }

  /**
   * Fans, and the motors of windows and doors where they are, stand still from the next hour on, or run again. Openers of
   * vents beside the rooms go on: they are of wax, as those of greenhouses are; common practice, no source.
   */
  function cutPower(isOut: boolean): void {
    if (isOut === powerIsOut) return;
    powerIsOut = isOut;
    fans.standStill(isOut);
    setEase();
    openings.forEach((opening, i) => {
      if (opening.kind === 'vent' && isMotor(opening, i)) byOpening.opensItself[i] = isOut ? 0 : 1;
    });
  }

  function isMotor({ control }: VentOpening, i: number): boolean {
    return control === 'automatic' && will.rooms.isRoom[zoneOf[i]!] === 1;
  }

  function startCounting(): void {
    for (const state of states) resetCounts(state);
  }

  return {
    load,
    outdoors,
    recovered,
    spared,
    givenW,
    lostW,
    between,
    volume,
    share,
    openingStates: () => states,
    setStep,
    beginLongSteps,
    endLongSteps,
    beginLongStep,
    mayMove,
    beginHour,
    beginStep,
    renew,
    isNew: () => changed,
    wouldOpen,
    cutPower,
    startCounting,
  };
}

function setDoor(opening: DoorOpening, state: OpeningState, ease: number): void {
  if (opening.rule === 'open') state.open = 1;
  else if (opening.rule === 'shut') state.open = 0;
  else if (opening.control === 'automatic') state.open += ease * (state.wanted - state.open);
}
