// Air through every opening, step by step: the model's openings and the temperatures of the step before in,
// mass flows with outdoors and between zones out. Every flow is an exchange (as much in as out), so the air
// mass of each zone balances at every step. Volume formulas: src/physics/leakage, openings, doorway.
// Flow follows temperature by a power of at most one half, so taking it from the step before converges; people
// act once an hour and openers ease, so nothing chatters.

import type { DoorOpening, Model, Opening, VentOpening } from '../model/model.ts';
import { doorwayExchange } from '../physics/doorway.ts';
import { crackFlow } from '../physics/leakage.ts';
import { combinedQuadrature, effectiveArea, singleSidedStackFlow, stackFlow } from '../physics/openings.ts';
import { type Moment, scheduled } from './clock.ts';
import { act, follow, type HandState, resetMoves, restingHand, want } from './hands.ts';

/** A person shuts again this far below the temperature they open at [K]; common practice, no source. */
const PERSON_BAND_K = 2;
/** A door that obeys its rule opens for air at least this much warmer [K], and shuts when it is no warmer. */
const DOOR_LEAD_K = 1;

/** What the flows depend on, written by the run before each step. */
export interface AirState {
  readonly zoneC: Float64Array;
  /** humidity ratio of each zone [kg/kg] */
  readonly zoneRatio: Float64Array;
  outdoorC: number;
  wind: number;
  /** outdoors [kg/m³] */
  density: number;
}

export interface AirFlow {
  /** zone: mass exchanged with outdoors [kg/s] */
  readonly outdoors: Float64Array;
  /** zone · zones + zone, symmetric [kg/s] */
  readonly between: Float64Array;
  /** opening: volume flow each way [m³/s]; share open 0…1 */
  readonly volume: Float64Array;
  readonly hands: readonly HandState[];
  /** before the steps of an hour */
  beginHour(moment: Moment): void;
  /** before each step */
  update(moment: Moment, stepS: number): void;
  /** moves start to count */
  startCounting(): void;
}

/** Compile a model's openings. */
export function compileAirFlow(model: Model, state: AirState): AirFlow {
  const zones = model.zones.length;
  const openings = model.openings;
  const indexOf = (id: string) => model.zones.findIndex((zone) => zone.id === id);
  const zoneOf = Int32Array.from(openings, (opening) => indexOf(opening.zone));
  const otherOf = Int32Array.from(openings, (opening) =>
    opening.kind === 'door' ? indexOf(opening.other) : -1,
  );
  const outdoors = new Float64Array(zones);
  const between = new Float64Array(zones * zones);
  const volume = new Float64Array(openings.length);
  const hands = openings.map(() => restingHand());

  function beginHour(moment: Moment): void {
    for (let i = 0; i < openings.length; i++) {
      const opening = openings[i]!;
      const hand = hands[i]!;
      if (opening.kind === 'vent') wantVent(opening, hand, moment, state, zoneOf[i]!);
      else if (opening.kind === 'door') wantDoor(opening, hand, state, zoneOf[i]!, otherOf[i]!);
      else continue;
      act(hand, opening.hand, moment);
    }
  }

  function update(moment: Moment, stepS: number): void {
    outdoors.fill(0);
    between.fill(0);
    for (let i = 0; i < openings.length; i++) {
      const zone = zoneOf[i]!;
      const other = otherOf[i]!;
      const flow = flowOf(openings[i]!, hands[i]!, moment, state, zone, other, stepS);
      volume[i] = flow;
      const mass = flow * state.density;
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

  return { outdoors, between, volume, hands, beginHour, update, startCounting };
}

function flowOf(
  opening: Opening,
  hand: HandState,
  moment: Moment,
  state: AirState,
  zone: number,
  other: number,
  stepS: number,
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
      const runs =
        opening.onlyAboveC === undefined || (insideC > opening.onlyAboveC && state.outdoorC < insideC);
      return runs ? scheduled(opening.flow, moment) : 0;
    }
    case 'vent':
      if (opening.hand === 'automatic') follow(hand, ventTarget(opening, moment, state, insideC), stepS);
      return hand.open > 1e-6 ? ventFlow(opening, hand.open, insideC, state) : 0;
    case 'door': {
      if (opening.rule === 'open') hand.open = 1;
      else if (opening.rule === 'shut') hand.open = 0;
      else if (opening.hand === 'automatic') follow(hand, hand.wanted, stepS);
      const otherC = state.zoneC[other]!;
      return doorwayExchange(opening.widthM, opening.heightM, insideC, otherC, opening.discharge) * hand.open;
    }
  }
}

/** Share an opener asks for: from shut to full over the rule's band. */
function ventTarget(opening: VentOpening, moment: Moment, state: AirState, insideC: number): number {
  const { rule } = opening;
  const allowed = scheduled(rule.schedule, moment);
  if (state.wind > rule.shutAboveWind || (rule.onlyCooler && state.outdoorC >= insideC)) return 0;
  return allowed * Math.min(1, Math.max(0, (insideC - rule.opensAboveC) / rule.bandK));
}

function wantVent(
  opening: VentOpening,
  hand: HandState,
  moment: Moment,
  state: AirState,
  zone: number,
): void {
  const { rule } = opening;
  const insideC = state.zoneC[zone]!;
  const barred =
    scheduled(rule.schedule, moment) <= 0 ||
    state.wind > rule.shutAboveWind ||
    (rule.onlyCooler && state.outdoorC >= insideC);
  want(hand, insideC > rule.opensAboveC, barred || insideC < rule.opensAboveC - PERSON_BAND_K);
}

function wantDoor(opening: DoorOpening, hand: HandState, state: AirState, zone: number, other: number): void {
  if (opening.rule !== 'by-need') {
    hand.wanted = opening.rule === 'open' ? 1 : 0;
    hand.open = hand.wanted;
    return;
  }
  const giverC = state.zoneC[zone]!;
  const takerC = state.zoneC[other]!;
  const wantsHeat = takerC < opening.wantsHeatBelowC;
  const damper = state.zoneRatio[zone]! > state.zoneRatio[other]! + opening.dampLimit;
  want(
    hand,
    wantsHeat && giverC > takerC + DOOR_LEAD_K && !damper,
    giverC <= takerC || takerC > opening.wantsHeatBelowC + PERSON_BAND_K || damper,
  );
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
