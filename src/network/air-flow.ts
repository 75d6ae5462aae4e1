// Air through every opening, step by step: the model's openings and zone temperatures in, mass flows with outdoors
// and between zones out. Every flow is an exchange (as much in as out), so the air mass of each zone balances at
// every step. Volume formulas: src/physics/leakage, openings, doorway.
// Flow depends on temperature and temperature on flow: the run tries temperatures until those the network answers to
// their flows agree with them (temperature-search.ts), so nothing chatters and a finer step changes little. An opener's
// position in a step follows from the trial temperature too.

import type { DoorOpening, HeatGiving, Model, Opening, VentOpening } from '../model/model.ts';
import { doorwayExchange } from '../physics/doorway.ts';
import { crackFlow } from '../physics/leakage.ts';
import { combinedQuadrature, effectiveArea, singleSidedStackFlow, stackFlow } from '../physics/openings.ts';
import { type Moment, scheduled } from './clock.ts';
import type { EngineRoom } from './engine-room.ts';
import {
  act,
  easing,
  HALF_BELOW_K,
  type HandState,
  isAwake,
  isBedtime,
  notchFor,
  resetMoves,
  restingHand,
  shutAgainstCold,
} from './hands.ts';

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

/** An opener this little open lets nothing through. */
const SHUT = 1e-6;
/** What the flows depend on, written by the run before each step. */
export interface AirState {
  readonly zoneC: Float64Array;
  /** mean radiant temperature at a step's start [°C] */
  readonly radiantC: Float64Array;
  /** humidity ratio of each zone [kg/kg] */
  readonly zoneRatio: Float64Array;
  /** relative humidity of each zone, 0…1 */
  readonly zoneHumidity: Float64Array;
  outdoorC: number;
  /** humidity ratio outdoors [kg/kg] */
  outdoorRatio: number;
  /** rain in the hour [mm]; 0 where the weather knows of none */
  rainMm: number;
  wind: number;
  /** outdoors [kg/m³] */
  density: number;
}

export interface AirFlow {
  /** take a model's openings in, all shut */
  load(model: Model, stepS: number): void;
  /** zone: mass exchanged with outdoors [kg/s] */
  readonly outdoors: Float64Array;
  /** zone · zones + zone, symmetric [kg/s] */
  readonly between: Float64Array;
  /** opening: volume flow each way [m³/s]; share open 0…1 */
  readonly volume: Float64Array;
  readonly hands: readonly HandState[];
  /** before the steps of an hour */
  beginHour(moment: Moment): void;
  /** before each step, from the temperatures it starts at; people at hand look up at quarter hours */
  beginStep(moment: Moment, isQuarter: boolean): void;
  /** flows for the trial temperatures in zoneC; false when they depend on none, with all that moves shut */
  renew(moment: Moment): boolean;
  /** the last renewal changed a flow */
  readonly isNew: boolean;
  /** whether an opener, shut as everything is, would open at these temperatures [°C] */
  wouldOpen(moment: Moment, zoneC: Float64Array): boolean;
  /** moves start to count */
  startCounting(): void;
}

/** Openings of a run, with room for so many; load() before use. */
export function createAirFlow(room: EngineRoom, state: AirState): AirFlow {
  let zones = 0;
  let count = 0;
  let openings: readonly Opening[] = [];
  let hands: HandState[] = [];
  const zoneOf = new Int32Array(room.openings);
  const otherOf = new Int32Array(room.openings);
  /** 1 where people live */
  const livedIn = new Uint8Array(room.zones);
  const outdoors = new Float64Array(room.zones);
  const between = new Float64Array(room.zones * room.zones);
  const volume = new Float64Array(room.openings);
  /** an opener's position before the step */
  const openBefore = new Float64Array(room.openings);
  /** vents and doors; cracks and most fans flow as the hour's start finds them */
  const movable = new Int32Array(room.openings);
  let movables = 0;
  /** fans between zones, switched by the quarter hour: they soon use up what they run on */
  const switched = new Int32Array(room.openings);
  let switches = 0;
  /** share of its way that an opener goes in a step */
  let ease = 0;
  let anyOpen = false;
  let stale = true;
  let isNew = true;

  function load(model: Model, stepS: number): void {
    zones = model.zones.length;
    openings = model.openings;
    count = openings.length;
    hands = openings.map(() => restingHand());
    ease = easing(stepS);
    anyOpen = false;
    movables = 0;
    switches = 0;
    for (const array of [outdoors, between, volume]) array.fill(0);
    model.zones.forEach(({ people }, z) => {
      livedIn[z] = people === null ? 0 : 1;
    });
    const indexOf = (id: string) => model.zones.findIndex((zone) => zone.id === id);
    openings.forEach((opening, i) => {
      zoneOf[i] = indexOf(opening.zone);
      const other = opening.kind === 'door' || opening.kind === 'fixed' ? opening.other : undefined;
      otherOf[i] = other === undefined ? -1 : indexOf(other);
      if (opening.kind === 'vent' || opening.kind === 'door') movable[movables++] = i;
      if (opening.kind === 'fixed' && opening.gives) switched[switches++] = i;
    });
  }

  function beginHour(moment: Moment): void {
    for (let i = 0; i < count; i++) {
      const opening = openings[i]!;
      const hand = hands[i]!;
      if (opening.kind === 'vent') feelDamp(hand, state, zoneOf[i]!);
      if (opening.kind === 'vent') wantVent(opening, hand, moment, state, zoneOf[i]!);
      else if (opening.kind === 'door') wantDoor(opening, hand, state, zoneOf[i]!, otherOf[i]!);
      else {
        volume[i] = flowOf(opening, hand, moment, state, zoneOf[i]!, otherOf[i]!);
        continue;
      }
      act(hand, opening.hand, moment);
    }
    stale = true;
  }

  function beginStep(moment: Moment, isQuarter: boolean): void {
    for (let k = 0; k < switches && isQuarter; k++) {
      const i = switched[k]!;
      volume[i] = flowOf(openings[i]!, hands[i]!, moment, state, zoneOf[i]!, otherOf[i]!);
      stale = true;
    }
    for (let k = 0; k < movables; k++) {
      const i = movable[k]!;
      const opening = openings[i]!;
      const hand = hands[i]!;
      openBefore[i] = hand.open;
      if (isQuarter) feelCold(opening, hand, moment, state.zoneC[zoneOf[i]!]!, livedIn[zoneOf[i]!] === 1);
      if (opening.kind === 'door') setDoor(opening, hand, ease);
      else if (isQuarter && opening.kind === 'vent' && opening.hand === 'automatic') {
        switchOpener(opening, hand, moment, state, state.zoneC[zoneOf[i]!]!);
      }
    }
  }

  function renew(moment: Moment): boolean {
    const wasOpen = anyOpen;
    anyOpen = false;
    for (let k = 0; k < movables; k++) {
      const i = movable[k]!;
      const opening = openings[i]!;
      const hand = hands[i]!;
      if (opening.kind === 'vent' && opening.hand === 'automatic') {
        const target = ventTarget(opening, hand, moment, state, state.zoneC[zoneOf[i]!]!);
        hand.open = openBefore[i]! + ease * (target - openBefore[i]!);
        if (target > 0) anyOpen = true;
      }
      if (hand.open > SHUT) anyOpen = true;
      volume[i] = hand.open > SHUT ? flowOf(opening, hand, moment, state, zoneOf[i]!, otherOf[i]!) : 0;
    }
    isNew = anyOpen || wasOpen || stale;
    if (isNew) sum();
    stale = false;
    return anyOpen;
  }

  function wouldOpen(moment: Moment, zoneC: Float64Array): boolean {
    for (let k = 0; k < movables; k++) {
      const opening = openings[movable[k]!]!;
      if (opening.kind !== 'vent' || opening.hand !== 'automatic') continue;
      const hand = hands[movable[k]!]!;
      if (ventTarget(opening, hand, moment, state, zoneC[zoneOf[movable[k]!]!]!) > 0) return true;
    }
    return false;
  }

  function sum(): void {
    // Loops, not fill(): on arrays this short the call costs more than the work.
    for (let z = 0; z < zones; z++) outdoors[z] = 0;
    for (let z = 0; z < zones * zones; z++) between[z] = 0;
    for (let i = 0; i < count; i++) {
      const zone = zoneOf[i]!;
      const other = otherOf[i]!;
      const mass = volume[i]! * state.density;
      if (other < 0) {
        outdoors[zone]! += mass;
      } else {
        between[zone * zones + other]! += mass;
        between[other * zones + zone]! += mass;
      }
    }
  }

  function startCounting(): void {
    for (const hand of hands) resetMoves(hand);
  }

  return {
    load,
    outdoors,
    between,
    volume,
    get hands() {
      return hands;
    },
    beginHour,
    beginStep,
    renew,
    get isNew() {
      return isNew;
    },
    wouldOpen,
    startCounting,
  };
}

function setDoor(opening: DoorOpening, hand: HandState, ease: number): void {
  if (opening.rule === 'open') hand.open = 1;
  else if (opening.rule === 'shut') hand.open = 0;
  else if (opening.hand === 'automatic') hand.open += ease * (hand.wanted - hand.open);
}

function feelCold(
  opening: Opening,
  hand: HandState,
  moment: Moment,
  feltC: number,
  isLivedIn: boolean,
): void {
  if (opening.kind !== 'vent') return;
  shutAgainstCold(hand, opening.hand, moment, opening.rule.opensAboveC - feltC, isLivedIn);
}

function flowOf(
  opening: Opening,
  hand: HandState,
  moment: Moment,
  state: AirState,
  zone: number,
  other: number,
): number {
  const insideC = state.zoneC[zone]!;
  switch (opening.kind) {
    case 'cracks':
      return crackFlow(
        opening.leakageCm2,
        opening.stackCoefficient,
        opening.windCoefficient,
        insideC - state.outdoorC,
        state.wind,
      );
    case 'fixed': {
      const cools =
        opening.onlyAboveC === undefined || (insideC > opening.onlyAboveC && state.outdoorC < insideC);
      const gives = opening.gives === undefined || givesHeat(opening.gives, state, zone, other);
      return cools && gives ? scheduled(opening.flow, moment) : 0;
    }
    case 'vent':
      return ventFlow(opening, hand.open, insideC, state);
    case 'door': {
      if (hand.open === 0) return 0;
      const otherC = state.zoneC[other]!;
      return doorwayExchange(opening.widthM, opening.heightM, insideC, otherC, opening.discharge) * hand.open;
    }
  }
}

/** Shut by season, hour, wind, rain, or air outside that is no cooler, unless damp asks for it. */
function barred(
  { rule }: VentOpening,
  { airsDamp }: HandState,
  moment: Moment,
  state: AirState,
  insideC: number,
): boolean {
  return (
    scheduled(rule.schedule, moment) <= 0 ||
    state.wind > rule.shutAboveWind ||
    (rule.shutInRain && state.rainMm >= FELT_RAIN_MM) ||
    (rule.onlyWhileOutside === 'cooler' && state.outdoorC >= insideC && !airsDamp) ||
    (rule.onlyWhileOutside === 'warmer' && state.outdoorC <= insideC)
  );
}

/** Damp asks for drier air, however hot it is, from DAMP until the room has dried. */
function feelDamp(hand: HandState, state: AirState, zone: number): void {
  const isDrierOutside = state.outdoorRatio < state.zoneRatio[zone]!;
  const humidity = state.zoneHumidity[zone]!;
  if (!isDrierOutside || humidity < DRIED_HUMIDITY) hand.airsDamp = false;
  else if (humidity > DAMP_HUMIDITY) hand.airsDamp = true;
}

/** How far through the rule's band the room is, from where vents begin to open: 0 none, 1 or more all. */
function needOf({ rule }: VentOpening, insideC: number): number {
  return (insideC - (rule.opensAboveC - RUN_DOWN_K)) / rule.bandK;
}

/** An opener that knows only open and shut: by the air at the quarter hour, so that no step hangs between the two. */
function switchOpener(
  opening: VentOpening,
  hand: HandState,
  moment: Moment,
  state: AirState,
  insideC: number,
): void {
  const { rule } = opening;
  if (rule.opens !== 'all-at-once') return;
  if (needOf(opening, insideC) <= 0 || barred(opening, hand, moment, state, insideC)) hand.wanted = 0;
  else if (insideC > rule.opensAboveC) hand.wanted = scheduled(rule.schedule, moment);
}

/** Share an opener asks for: full at half the band, so that like a person's hand it runs the room down. */
function ventTarget(
  opening: VentOpening,
  hand: HandState,
  moment: Moment,
  state: AirState,
  insideC: number,
): number {
  const { rule } = opening;
  if (rule.opens === 'all-at-once') return hand.wanted;
  if (barred(opening, hand, moment, state, insideC)) return 0;
  const isMildNight = !isAwake(moment) && state.outdoorC > rule.opensAboveC - HALF_BELOW_K;
  const need = (insideC - (rule.opensAboveC - (isMildNight ? NIGHT_RUN_DOWN_K : RUN_DOWN_K))) / rule.bandK;
  return scheduled(rule.schedule, moment) * Math.min(1, Math.max(0, 2 * need));
}

/**
 * What a person wants: nothing until the rule's temperature, then by notches until it has run down. The last look of the
 * day is for the night: whether walls and all the room is still warm enough to want air until morning.
 */
function wantVent(
  opening: VentOpening,
  hand: HandState,
  moment: Moment,
  state: AirState,
  zone: number,
): void {
  const { rule } = opening;
  const airC = state.zoneC[zone]!;
  const isForTheNight = isBedtime(moment);
  const insideC = isForTheNight ? (airC + state.radiantC[zone]!) / 2 : airC;
  const need = needOf(opening, insideC);
  if (need <= 0 || barred(opening, hand, moment, state, airC)) {
    hand.wanted = 0;
    return;
  }
  const share = rule.opens === 'all-at-once' ? 1 : notchFor(need, rule.opensAboveC - state.outdoorC);
  const notch = share * scheduled(rule.schedule, moment);
  if (isForTheNight) {
    hand.wanted = notch;
    return;
  }
  // Once open, a person widens when it gets hotter but does not fiddle on the way down.
  if (insideC > rule.opensAboveC || hand.wanted > 0) hand.wanted = Math.max(hand.wanted, notch);
  if (insideC < rule.opensAboveC && state.outdoorC < rule.opensAboveC)
    hand.wanted = Math.min(hand.wanted, notch);
}

function wantDoor(opening: DoorOpening, hand: HandState, state: AirState, zone: number, other: number): void {
  if (opening.rule !== 'by-need') {
    hand.wanted = opening.rule === 'open' ? 1 : 0;
    hand.open = hand.wanted;
    return;
  }
  if (givesHeat(opening, state, zone, other)) hand.wanted = 1;
  else if (!mayGiveOn(opening, state, zone, other)) hand.wanted = 0;
}

/** Begins to give: the other zone wants heat, this one is plainly warmer and not damper. */
function givesHeat(giving: HeatGiving, state: AirState, zone: number, other: number): boolean {
  const takerC = state.zoneC[other]!;
  return (
    mayGiveOn(giving, state, zone, other) &&
    takerC < giving.wantsHeatBelowC &&
    state.zoneC[zone]! > takerC + DOOR_LEAD_K
  );
}

/** Goes on giving what it gives: still warmer, not damper, and the other zone not yet too warm. */
function mayGiveOn(
  { wantsHeatBelowC, dampLimit }: HeatGiving,
  state: AirState,
  zone: number,
  other: number,
): boolean {
  const takerC = state.zoneC[other]!;
  const isDamper = state.zoneRatio[zone]! > state.zoneRatio[other]! + dampLimit;
  return state.zoneC[zone]! > takerC && takerC <= wantsHeatBelowC + RUN_DOWN_K && !isDamper;
}

/** Stack between low and high openings, or through one; wind; combined by quadrature (ASHRAE). */
function ventFlow(opening: VentOpening, open: number, insideC: number, state: AirState): number {
  const low = opening.lowM2 * open;
  const high = opening.highM2 * open;
  const stack =
    low > 0 && high > 0
      ? stackFlow(effectiveArea(low, high), opening.stackM, insideC, state.outdoorC, opening.discharge)
      : singleSidedStackFlow(low + high, opening.openingHeightM, insideC, state.outdoorC, opening.discharge);
  const wind =
    opening.windCoefficient * (low > 0 && high > 0 ? Math.min(low, high) : low + high) * state.wind;
  return combinedQuadrature(Math.abs(stack), wind);
}
