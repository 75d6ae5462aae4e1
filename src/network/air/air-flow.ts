// Air through every opening, step by step: the model's openings and zone temperatures in, mass flows with outdoors
// and between zones out. Every flow is an exchange (as much in as out), so the air mass of each zone balances at
// every step. Volume formulas: src/physics/leakage, openings, doorway.
// Flow depends on temperature and temperature on flow: the run tries temperatures until those the network answers to
// their flows agree with them (temperature-search.ts), so nothing chatters and a finer step changes little. An opener's
// position in a step follows from the trial temperature too.

import type { DoorOpening, FixedOpening, Model, Opening, VentOpening } from '../../model/model.ts';
import { doorwayExchange } from '../../physics/doorway.ts';
import {
  combinedQuadrature,
  effectiveArea,
  singleSidedStackFlow,
  stackFlow,
} from '../../physics/openings.ts';
import { blankMoment, type Moment, momentOf, scheduled } from '../hour/clock.ts';
import type { DayPart } from '../hour/day-part.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import {
  closeAgainstCold,
  closedOpening,
  easing,
  meanEasing,
  type OpeningState,
  operate,
  resetCounts,
} from './occupant-control.ts';
import {
  feelDamp,
  isMildNight,
  needsAir,
  switchOpener,
  ventTarget,
  wantDoor,
  wantVent,
} from './opening-rules.ts';
import { uncontrolledFlow } from './uncontrolled-flow.ts';
import { askedByHumidity, blankUnitHour, humidityEasing, readUnitHour } from './ventilation-unit.ts';
import type { ZoneAir } from './zone-air.ts';

/** An opener this little open lets nothing through. */
const SHUT = 1e-6;

export interface AirFlow {
  /** take a model's openings in, all shut */
  load(model: Model, stepS: number): void;
  /** zone: mass exchanged with outdoors [kg/s] */
  readonly outdoors: Float64Array;
  /** zone: of it so much gives all its heat back to what comes in [kg/s] */
  readonly recovered: Float64Array;
  /** zone: heat of the hour from supply fans and heaters against frost [W]; of it what leaves with the old air [W] */
  readonly givenW: Float64Array;
  readonly lostW: Float64Array;
  /** zone · zones + zone, symmetric [kg/s] */
  readonly between: Float64Array;
  /** opening: volume flow each way [m³/s]; how far open what moves is in the mean of the step, 0…1 */
  readonly volume: Float64Array;
  readonly share: Float64Array;
  openingStates(): readonly OpeningState[];
  /** steps of another length from now on [s] */
  setStep(stepS: number): void;
  /** from now on until endLongSteps(), whoever moves a vent does so as an opener does; after it all vents are shut */
  beginLongSteps(): void;
  endLongSteps(): void;
  /** before a long step, after beginHour() at the middle of its day part */
  beginLongStep(dayPart: DayPart, dryBulbC: Float64Array): void;
  /** before the steps of an hour */
  beginHour(moment: Moment): void;
  /** whether anything that moves is open, or may be within the hour that has begun */
  mayMove(): boolean;
  /** before each step, from the temperatures it starts at; people at home look up at quarter hours */
  beginStep(moment: Moment, isQuarter: boolean): void;
  /** flows for the trial temperatures in zoneC; false when they depend on none, with all that moves shut */
  renew(): boolean;
  /** the last renewal changed a flow */
  isNew(): boolean;
  /** whether an opener, shut as everything is, would open at these temperatures [°C] */
  wouldOpen(zoneC: Float64Array): boolean;
  /** moves start to count */
  startCounting(): void;
}

/** Openings of a run, with room for so many; load() before use. */
export function createAirFlow(capacity: EngineCapacity, air: ZoneAir): AirFlow {
  let zones = 0;
  let count = 0;
  let openings: readonly Opening[] = [];
  let states: OpeningState[] = [];
  const outdoors = new Float64Array(capacity.zones);
  const recovered = new Float64Array(capacity.zones);
  const givenW = new Float64Array(capacity.zones);
  const lostW = new Float64Array(capacity.zones);
  const between = new Float64Array(capacity.zones * capacity.zones);
  /** 1 where people live */
  const livedIn = new Float64Array(capacity.zones);
  const byOpening = {
    zoneOf: new Int32Array(capacity.openings),
    otherOf: new Int32Array(capacity.openings),
    volume: new Float64Array(capacity.openings),
    share: new Float64Array(capacity.openings),
    /** share of the heat in its flow that an exchanger gives back */
    recovers: new Float64Array(capacity.openings),
    /** share of its flow that a fan led by humidity runs at */
    runs: new Float64Array(capacity.openings),
    /** an opener's position before the step */
    openBefore: new Float64Array(capacity.openings),
    /** vents and doors; cracks and most fans flow as the hour's start finds them */
    movable: new Int32Array(capacity.openings),
    /** 1 for vents; 1 for those that an opener moves */
    isVent: new Int32Array(capacity.openings),
    opensItself: new Int32Array(capacity.openings),
    /** 1 for doors that an opener moves as heat is wanted */
    easesDoor: new Int32Array(capacity.openings),
    /** a vent wide open: its pair of openings in series, 0 for one alone; what the wind blows on [m²] */
    pairM2: new Float64Array(capacity.openings),
    windM2: new Float64Array(capacity.openings),
  };
  const { zoneOf, otherOf, volume, share, recovers, runs } = byOpening;
  const at = blankMoment();
  const unit = blankUnitHour();
  let movables = 0;
  /** fans between zones and fans led by humidity, led by the quarter hour: they soon use up what they run on */
  const switched = new Int32Array(capacity.openings);
  let switches = 0;
  /** share of its way that an opener goes in a step, and is at in the mean */
  let ease = 0;
  let meanEase = 0;
  /** the same of a fan led by humidity */
  let humidityEase = 0;
  /** whether any opening has an exchanger */
  let anyUnit = false;
  let anyOpen = false;
  let stale = true;
  let changed = true;

  function load(model: Model, stepS: number): void {
    zones = model.zones.length;
    openings = model.openings;
    count = openings.length;
    states = openings.map(() => closedOpening());
    setStep(stepS);
    anyOpen = false;
    movables = 0;
    switches = 0;
    for (const array of [outdoors, recovered, givenW, lostW, between, volume, share, recovers, runs])
      array.fill(0);
    anyUnit = openings.some((opening) => opening.kind === 'fixed' && opening.recovery !== undefined);
    model.zones.forEach(({ people }, z) => {
      livedIn[z] = people === null ? 0 : 1;
    });
    const indexOf = (id: string) => model.zones.findIndex((zone) => zone.id === id);
    openings.forEach((opening, i) => {
      zoneOf[i] = indexOf(opening.zone);
      const other = opening.kind === 'door' || opening.kind === 'fixed' ? opening.other : undefined;
      otherOf[i] = other === undefined ? -1 : indexOf(other);
      byOpening.isVent[i] = opening.kind === 'vent' ? 1 : 0;
      byOpening.opensItself[i] = opening.kind === 'vent' && opening.control === 'automatic' ? 1 : 0;
      byOpening.easesDoor[i] =
        opening.kind === 'door' && opening.control === 'automatic' && opening.rule === 'by-need' ? 1 : 0;
      if (opening.kind === 'vent' || opening.kind === 'door') byOpening.movable[movables++] = i;
      if (opening.kind === 'vent') {
        const { lowM2, highM2, windCoefficient } = opening;
        const isPair = lowM2 > 0 && highM2 > 0;
        byOpening.pairM2[i] = isPair ? effectiveArea(lowM2, highM2) : 0;
        byOpening.windM2[i] = windCoefficient * (isPair ? Math.min(lowM2, highM2) : lowM2 + highM2);
      }
      if (opening.kind === 'fixed' && (opening.gives || opening.byHumidity)) switched[switches++] = i;
    });
  }

  function setStep(stepS: number): void {
    ease = easing(stepS);
    meanEase = meanEasing(stepS);
    humidityEase = humidityEasing(stepS);
  }

  function beginLongSteps(): void {
    openings.forEach((opening, i) => {
      if (opening.kind === 'vent' && opening.control !== 'never') byOpening.opensItself[i] = 1;
    });
  }

  function endLongSteps(): void {
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
      for (let k = 0; k < hourCount; k++) {
        const hour = hours[k]!;
        if (isMildNight(opening, momentOf(hour, at), dryBulbC[hour]!)) mild++;
      }
      states[i]!.mildNightShare = mild / hourCount;
    });
  }

  function mayMove(): boolean {
    const { movable, isVent, easesDoor, opensItself, zoneOf } = byOpening;
    if (switches > 0) return true;
    for (let k = 0; k < movables; k++) {
      const i = movable[k]!;
      const state = states[i]!;
      const isMoving = isVent[i] === 1 ? state.open > SHUT : state.open > SHUT || state.wanted > 0;
      if (isMoving && (isVent[i] === 1 || easesDoor[i] === 1)) return true;
      if (opensItself[i] === 1 && needsAir(openings[i] as VentOpening, air, zoneOf[i]!)) return true;
    }
    return wouldOpen(air.zoneC);
  }

  function beginHour(moment: Moment): void {
    const { zoneOf, otherOf, volume } = byOpening;
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
        feelDamp(state, air, zone);
        wantVent(opening, state, moment, air, zone);
        operate(state, opening.control, moment);
      } else if (opening.kind === 'door') {
        wantDoor(opening, state, air, zone, otherOf[i]!);
        operate(state, opening.control, moment);
      } else {
        volume[i] = uncontrolledFlow(opening, moment, air, zone, otherOf[i]!);
        if (opening.kind === 'fixed' && opening.byHumidity) volume[i]! *= runs[i]!;
      }
    }
    if (anyUnit) readUnits();
    stale = true;
  }

  /** Exchangers, and what goes with them, as the hour finds them. */
  function readUnits(): void {
    givenW.fill(0);
    lostW.fill(0);
    for (let i = 0; i < count; i++) {
      const opening = openings[i]!;
      if (opening.kind !== 'fixed' || opening.recovery === undefined) continue;
      const zone = zoneOf[i]!;
      readUnitHour(opening, volume[i]!, air, zone, unit);
      volume[i]! *= unit.fresh;
      recovers[i] = unit.recovers;
      givenW[zone]! += unit.givenW;
      lostW[zone]! += unit.lostW;
    }
  }

  function beginStep(moment: Moment, isQuarter: boolean): void {
    const { zoneOf, openBefore, movable, isVent, opensItself } = byOpening;
    const { zoneC } = air;
    const people = livedIn;
    const all = openings;
    const allStates = states;
    const last = movables;
    if (isQuarter && switches > 0) runFans(moment);
    for (let k = 0; k < last; k++) {
      const i = movable[k]!;
      const state = allStates[i]!;
      const zone = zoneOf[i]!;
      openBefore[i] = state.open;
      if (isVent[i] === 0) {
        setDoor(all[i] as DoorOpening, state, ease);
        continue;
      }
      if (!isQuarter) continue;
      const vent = all[i] as VentOpening;
      if (opensItself[i] === 1) switchOpener(vent, state, air, zone);
      else if (state.open > 0) {
        const colderK = vent.rule.opensAboveC - zoneC[zone]!;
        closeAgainstCold(state, vent.control, moment, colderK, people[zone] === 1);
      }
    }
  }

  function runFans(moment: Moment): void {
    for (let k = 0; k < switches; k++) {
      const i = switched[k]!;
      const fan = openings[i] as FixedOpening;
      runs[i]! += humidityEase * (askedByHumidity(fan, air, zoneOf[i]!) - runs[i]!);
      const flow = uncontrolledFlow(fan, moment, air, zoneOf[i]!, otherOf[i]!);
      volume[i] = fan.byHumidity ? runs[i]! * flow : flow;
    }
    stale = true;
  }

  function renew(): boolean {
    const { zoneOf, volume, share, openBefore, movable, isVent, opensItself, easesDoor } = byOpening;
    const { zoneC } = air;
    const all = openings;
    const allStates = states;
    const last = movables;
    const wasOpen = anyOpen;
    let isOpen = false;
    for (let k = 0; k < last; k++) {
      const i = movable[k]!;
      const state = allStates[i]!;
      if (opensItself[i] === 1) {
        const target = ventTarget(all[i] as VentOpening, state, air, zoneC, zoneOf[i]!);
        state.open = openBefore[i]! + ease * (target - openBefore[i]!);
        share[i] = openBefore[i]! + meanEase * (target - openBefore[i]!);
        if (target > 0) isOpen = true;
      } else if (easesDoor[i] === 1) {
        share[i] = openBefore[i]! + meanEase * (state.wanted - openBefore[i]!);
      } else share[i] = state.open;
      volume[i] = 0;
      if (share[i]! <= SHUT) continue;
      isOpen = true;
      if (isVent[i] === 1) letThroughVent(i);
      else letThroughDoor(i);
    }
    anyOpen = isOpen;
    changed = isOpen || wasOpen || stale;
    if (changed) sum();
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
      if (opensItself[i] === 0) continue;
      if (ventTarget(all[i] as VentOpening, allStates[i]!, air, zoneC, zoneOf[i]!) > 0) return true;
    }
    return false;
  }

  // What passes through one opening, written where it is kept: a number handed back by a function is an allocation.

  /** A vent: stack between low and high openings, or through one; wind; combined by quadrature (ASHRAE). */
  function letThroughVent(i: number): void {
    const { zoneOf, volume, share, pairM2, windM2 } = byOpening;
    const { lowM2, highM2, stackM, openingHeightM, discharge } = openings[i] as VentOpening;
    const { dryBulbC, windSpeed } = air.weather;
    const insideC = air.zoneC[zoneOf[i]!]!;
    const stack =
      pairM2[i]! > 0
        ? stackFlow(pairM2[i]!, stackM, insideC, dryBulbC, discharge)
        : singleSidedStackFlow(lowM2 + highM2, openingHeightM, insideC, dryBulbC, discharge);
    volume[i] = share[i]! * combinedQuadrature(stack, windM2[i]! * windSpeed);
  }

  function letThroughDoor(i: number): void {
    const { zoneOf, otherOf, volume, share } = byOpening;
    const { widthM, heightM, discharge } = openings[i] as DoorOpening;
    const { zoneC } = air;
    volume[i] =
      share[i]! * doorwayExchange(widthM, heightM, zoneC[zoneOf[i]!]!, zoneC[otherOf[i]!]!, discharge);
  }

  function sum(): void {
    const { zoneOf, otherOf, volume, recovers } = byOpening;
    const toOutdoors = outdoors;
    const givenBack = recovered;
    const toZones = between;
    const { airDensity } = air.weather;
    const zoneCount = zones;
    const last = count;
    // Loops, not fill(): on arrays this short the call costs more than the work.
    for (let z = 0; z < zoneCount; z++) {
      toOutdoors[z] = 0;
      givenBack[z] = 0;
    }
    for (let z = 0; z < zoneCount * zoneCount; z++) toZones[z] = 0;
    for (let i = 0; i < last; i++) {
      const zone = zoneOf[i]!;
      const other = otherOf[i]!;
      const mass = volume[i]! * airDensity;
      if (other < 0) {
        toOutdoors[zone]! += mass;
        givenBack[zone]! += mass * recovers[i]!;
      } else {
        toZones[zone * zoneCount + other]! += mass;
        toZones[other * zoneCount + zone]! += mass;
      }
    }
  }

  function startCounting(): void {
    for (const state of states) resetCounts(state);
  }

  return {
    load,
    outdoors,
    recovered,
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
    startCounting,
  };
}

function setDoor(opening: DoorOpening, state: OpeningState, ease: number): void {
  if (opening.rule === 'open') state.open = 1;
  else if (opening.rule === 'shut') state.open = 0;
  else if (opening.control === 'automatic') state.open += ease * (state.wanted - state.open);
}
