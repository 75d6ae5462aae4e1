// Air through every opening, step by step: the model's openings and zone temperatures in, mass flows with outdoors
// and between zones out. Every flow but that of a house's stack (house-stack.ts) is an exchange, as much in as out, and the
// stack's ways carry on what comes in, so the air mass of each zone balances at every step. Volume formulas: src/physics/leakage, openings, doorway.
// Flow depends on temperature and temperature on flow: the run tries temperatures until those the network answers to
// their flows agree with them (temperature-search.ts), so nothing chatters and a finer step changes little. An opener's
// position in a step follows from the trial temperature too.

import type {
  CrackOpening,
  DoorOpening,
  FixedOpening,
  Model,
  Opening,
  StairOpening,
  VentOpening,
} from '../../model/model.ts';
import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import { doorwayExchange } from '../../physics/doorway.ts';
import {
  combinedQuadrature,
  effectiveArea,
  singleSidedStackFlow,
  stackFlow,
} from '../../physics/openings.ts';
import { rootOfKelvins, STRAIGHT_BELOW_K, stairConductance, stairExchange } from '../../physics/stairwell.ts';
import { blankMoment, type Moment, momentOf, scheduled } from '../hour/clock.ts';
import type { DayPart } from '../hour/day-part.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { AIRED_CHANGES, airedHeat, airingLengthened, beginAiring } from '../people/airing.ts';
import { wantDoor } from '../people/heat-giving.ts';
import { nightFanRuns } from '../people/night-fan.ts';
import {
  closeAgainstCold,
  closedOpening,
  easing,
  isBedtime,
  isForNight,
  isMinded,
  meanEasing,
  type OpeningState,
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
  WALLS_W_PER_M2K,
  wantVent,
} from '../people/window-rules.ts';
import type { ZoneAir } from '../people/zone-air.ts';
import type { AirFlow } from './air-flow-interface.ts';
import { createExchangeSum } from './exchange-sum.ts';
import { createStackFlows } from './house-stack.ts';
import { uncontrolledFlow } from './uncontrolled-flow.ts';
import { askedByHumidity, blankUnitHour, humidityEasing, readUnitHour } from './ventilation-unit.ts';

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
  /** of each zone: air [kg]; furniture kept with the air by the air's own heat [–]; what its walls give colder air [W/K] */
  const airKg = new Float64Array(capacity.zones);
  const furnitureByAir = new Float64Array(capacity.zones);
  const wallsWK = new Float64Array(capacity.zones);
  let stepLengthS = 0;
  const byOpening = {
    zoneOf: new Int32Array(capacity.openings),
    otherOf: new Int32Array(capacity.openings),
    volume: new Float64Array(capacity.openings),
    share: new Float64Array(capacity.openings),
    /** the same without the minutes of an airing */
    steady: new Float64Array(capacity.openings),
    /** 1 for doors and stairs that stand open by a schedule; of stairs, flow by the root of kelvins [m³/(s·√K)] */
    isKept: new Int32Array(capacity.openings),
    stairFlow: new Float64Array(capacity.openings),
    /** share of the heat in its flow that an exchanger gives back */
    recovers: new Float64Array(capacity.openings),
    /** share of its flow that leaves with no heat of its zone's, since an airing cools the air before the furniture */
    spares: new Float64Array(capacity.openings),
    /** share of its flow that a fan led by humidity runs at */
    ledShare: new Float64Array(capacity.openings),
    /** an opener's position before the step */
    openBefore: new Float64Array(capacity.openings),
    /** vents and doors; cracks and most fans flow as the hour's start finds them */
    movable: new Int32Array(capacity.openings),
    /** 1 for vents; 1 for those that an opener moves */
    isVent: new Int32Array(capacity.openings),
    opensItself: new Int32Array(capacity.openings),
    /** 1 for fans that cool by night; 1 while one runs */
    coolsByNight: new Int32Array(capacity.openings),
    runs: new Int32Array(capacity.openings),
    /** 1 for doors that an opener moves as heat is wanted */
    easesDoor: new Int32Array(capacity.openings),
    /** a vent wide open: its pair of openings in series, 0 for one alone; what the wind blows on [m²] */
    pairM2: new Float64Array(capacity.openings),
    windM2: new Float64Array(capacity.openings),
  };
  const { zoneOf, otherOf, volume, share, recovers, ledShare } = byOpening;
  const sumExchange = createExchangeSum(byOpening, { outdoors, recovered, spared, between }, air);
  const stack = createStackFlows(capacity, byOpening, { outdoors, between }, air);
  const at = blankMoment();
  const unit = blankUnitHour();
  let movables = 0;
  /** fans between zones, led by humidity, or cooling by night; switched by the quarter hour: they soon use up what they run on */
  const switched = new Int32Array(capacity.openings);
  /** what a night fan moves in the hour while it runs; what a vent wide open would let through [m³/s] */
  const nightFlow = new Float64Array(capacity.openings);
  const wholeM3 = new Float64Array(16);
  let switches = 0;
  /** share of its way that an opener goes in a step, and is at in the mean */
  let ease = 0;
  let meanEase = 0;
  /** the same of a fan led by humidity */
  let humidityEase = 0;
  /** no fan runs, and no opener moves */
  let powerIsOut = false;
  /** whether any opening has an exchanger */
  let anyUnit = false;
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
    switches = 0;
    for (const array of [outdoors, recovered, spared, givenW, lostW, between, volume, share]) array.fill(0);
    for (const array of [recovers, byOpening.spares, ledShare, byOpening.runs]) array.fill(0);
    anyUnit = openings.some((opening) => opening.kind === 'fixed' && opening.recovery !== undefined);
    model.zones.forEach((zone, z) => {
      airKg[z] = zone.volumeM3 * roomDensity;
      furnitureByAir[z] = zone.furnitureCapacity / (airKg[z]! * SPECIFIC_HEAT_AIR);
      wallsWK[z] = WALLS_W_PER_M2K * zone.floorAreaM2;
    });
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
      byOpening.stairFlow[i] = isStairs ? stairConductance(opening.areaM2, opening.thicknessM) : 0;
      if (opening.kind === 'vent' || opening.kind === 'door' || isStairs) byOpening.movable[movables++] = i;
      if (opening.kind === 'vent') {
        const { lowM2, highM2, windCoefficient } = opening;
        const isPair = lowM2 > 0 && highM2 > 0;
        byOpening.pairM2[i] = isPair ? effectiveArea(lowM2, highM2) : 0;
        byOpening.windM2[i] = windCoefficient * (isPair ? Math.min(lowM2, highM2) : lowM2 + highM2);
      }
      byOpening.coolsByNight[i] = opening.kind === 'fixed' && opening.onlyAboveC !== undefined ? 1 : 0;
      if (
        opening.kind === 'fixed' &&
        (opening.gives || opening.byHumidity || opening.onlyAboveC !== undefined)
      )
        switched[switches++] = i;
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
    humidityEase = humidityEasing(stepS);
  }

  function setEase(): void {
    ease = powerIsOut ? 0 : easing(stepLengthS);
    meanEase = powerIsOut ? 0 : meanEasing(stepLengthS);
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
      for (let k = 0; k < hourCount; k++) {
        const hour = hours[k]!;
        if (isMildNight(opening, momentOf(hour, at), dryBulbC[hour]!)) mild++;
      }
      states[i]!.mildNightShare = mild / hourCount;
    });
  }

  function mayMove(): boolean {
    const { movable, isVent, easesDoor, opensItself, zoneOf, coolsByNight, volume } = byOpening;
    for (let k = 0; k < switches; k++) {
      const i = switched[k]!;
      if (coolsByNight[i] === 0 || nightFlow[i]! > 0 || volume[i]! > 0) return true;
    }
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
    const { zoneOf, otherOf, volume, coolsByNight } = byOpening;
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
          limitByWalls(i, isBedtime(moment) ? state.nightFloorC : state.floorC);
          wantVent(opening, state, moment, air, will, zone);
          operate(state, opening.control, moment);
        }
        if (powerIsOut && opening.control === 'automatic') state.airingS = 0;
        else beginAiring(opening, state, moment, air, will, zone);
        if (state.airingS > 0) lengthenAiring(i);
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
        wantDoor(opening, state, air, will, zone, otherOf[i]!);
        operate(state, opening.control, moment);
      } else if (coolsByNight[i] === 1) {
        nightFlow[i] = powerIsOut ? 0 : scheduled((opening as FixedOpening).flow, moment);
      } else {
        volume[i] = uncontrolledFlow(
          opening as CrackOpening | FixedOpening,
          moment,
          air,
          will,
          zone,
          otherOf[i]!,
        );
        if (opening.kind === 'fixed' && opening.byHumidity) volume[i]! *= ledShare[i]!;
        if (powerIsOut && opening.kind === 'fixed' && opening.fan) volume[i] = 0;
        if (opening.kind === 'fixed' && opening.feedsFire) volume[i]! *= will.rooms.burning[zone]!;
      }
    }
    if (anyUnit) readUnits();
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

  function beginStep(moment: Moment, isQuarter: boolean, secondsGone: number): void {
    const { zoneOf, openBefore, movable, isVent, opensItself, isKept } = byOpening;
    const { zoneC } = air;
    const { isRoom, feltC } = will.rooms;
    const all = openings;
    const allStates = states;
    const last = movables;
    if (isQuarter && switches > 0 && !powerIsOut) runFans(moment);
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
        if (isKept[i] === 0) setDoor(all[i] as DoorOpening, state, ease);
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
        limitByWalls(i, isForNight(state, moment) ? state.nightFloorC : state.floorC);
        closeAgainstCold(state, vent.control, moment, isRoom[zone] === 1, zoneC[zone]!, feltC[zone]!);
      }
    }
    markCooled(moment);
  }

  /** Zones that a window somebody minds, or a night fan, cools: for whoever heats them. */
  function markCooled(moment: Moment): void {
    const { zoneOf, movable, isVent, opensItself, runs } = byOpening;
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
    for (let k = 0; k < switches; k++) {
      const i = switched[k]!;
      if (runs[i] === 1) isCooled[zoneOf[i]!] = 1;
    }
  }

  /** How far a vent may be open for the walls of its zone to warm the air to a floor [°C]; none warm a sunspace's. */
  function limitByWalls(i: number, floorC: number): void {
    const { zoneOf } = byOpening;
    const zone = zoneOf[i]!;
    const { isRoom, feltC } = will.rooms;
    const { dryBulbC, airDensity } = air.weather;
    const state = states[i]!;
    state.mostShare = 1;
    if (isRoom[zone] === 0 || dryBulbC >= floorC) return;
    wholeVent(i);
    const wattPerK = wholeM3[0]! * airDensity * SPECIFIC_HEAT_AIR;
    state.mostShare = (wallsWK[zone]! * (feltC[zone]! - floorC)) / (wattPerK * (floorC - dryBulbC));
  }

  function runFans(moment: Moment): void {
    const { zoneOf, otherOf, volume, coolsByNight, runs } = byOpening;
    for (let k = 0; k < switches; k++) {
      const i = switched[k]!;
      const zone = zoneOf[i]!;
      const fan = openings[i] as FixedOpening;
      if (coolsByNight[i] === 0) {
        const flow = uncontrolledFlow(fan, moment, air, will, zone, otherOf[i]!);
        ledShare[i]! += humidityEase * (askedByHumidity(fan, air, zone) - ledShare[i]!);
        volume[i] = fan.byHumidity ? ledShare[i]! * flow : flow;
        continue;
      }
      runs[i] = nightFlow[i]! > 0 && nightFanRuns(fan, runs[i] === 1, air, will, zone) ? 1 : 0;
      volume[i] = runs[i] === 1 ? nightFlow[i]! : 0;
    }
    stale = true;
  }

  function renew(): boolean {
    const { zoneOf, volume, share, openBefore, movable, isVent, opensItself, easesDoor } = byOpening;
    const { steady, stairFlow } = byOpening;
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
        share[i] = openBefore[i]! + meanEase * (state.wanted - openBefore[i]!);
      } else share[i] = state.open;
      volume[i] = 0;
      steady[i] = share[i]!;
      if (share[i]! <= SHUT && (isVent[i] === 0 || state.airingShare === 0)) continue;
      isOpen = true;
      if (isVent[i] === 1) letThroughVent(i);
      else if (stairFlow[i]! > 0) letThroughStairs(i);
      else letThroughDoor(i);
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

  // What passes through one opening, written where it is kept: a number handed back by a function is an allocation.

  /** A vent: stack between low and high openings, or through one; wind; combined by quadrature (ASHRAE). */
  function letThroughVent(i: number): void {
    const { zoneOf, volume, share, spares } = byOpening;
    const { airingShare, airingS } = states[i]!;
    const { airing } = openings[i] as VentOpening;
    wholeVent(i);
    const whole = wholeM3[0]!;
    const steady = share[i]! * whole;
    volume[i] = steady;
    spares[i] = 0;
    if (airingShare === 0 || airing === undefined) return;
    // Wide open for a part of the step, and until the air has been changed: the mean of the step.
    const zone = zoneOf[i]!;
    const kg = airKg[zone]!;
    const { airDensity } = air.weather;
    const changed = (AIRED_CHANGES * kg) / (60 * airing.minutes * airDensity);
    const flow = Math.min(whole, changed);
    const added = airingShare * Math.max(0, flow - steady);
    volume[i] = steady + added;
    if (added > 0) {
      const heat = kg * SPECIFIC_HEAT_AIR;
      const taken = airedHeat(
        (flow * airDensity) / kg,
        wallsWK[zone]! / heat,
        furnitureByAir[zone]!,
        airingS,
      );
      spares[i] = ((1 - taken) * added) / volume[i]!;
    }
    share[i]! += airingShare * (1 - share[i]!);
  }

  /** Who airs for a reason keeps a small window open for longer. */
  function lengthenAiring(i: number): void {
    wholeVent(i);
    const { airing } = openings[i] as VentOpening;
    const changesAnS = (wholeM3[0]! * air.weather.airDensity) / airKg[zoneOf[i]!]!;
    states[i]!.airingS *= airingLengthened(airing!, changesAnS);
  }

  function wholeVent(i: number): void {
    const { zoneOf, pairM2, windM2 } = byOpening;
    const { lowM2, highM2, stackM, openingHeightM, discharge } = openings[i] as VentOpening;
    const { dryBulbC, windSpeed } = air.weather;
    const insideC = air.zoneC[zoneOf[i]!]!;
    const stack =
      pairM2[i]! > 0
        ? stackFlow(pairM2[i]!, stackM, insideC, dryBulbC, discharge)
        : singleSidedStackFlow(lowM2 + highM2, openingHeightM, insideC, dryBulbC, discharge);
    wholeM3[0] = combinedQuadrature(stack, windM2[i]! * windSpeed);
  }

  function letThroughDoor(i: number): void {
    const { zoneOf, otherOf, volume, share, isKept } = byOpening;
    const { widthM, heightM, discharge } = openings[i] as DoorOpening;
    const { zoneC } = air;
    const oneC = zoneC[zoneOf[i]!]!;
    const otherC = zoneC[otherOf[i]!]!;
    volume[i] = share[i]! * doorwayExchange(widthM, heightM, oneC, otherC, discharge);
    if (isKept[i] === 0) return;
    // Rooms come nearer to each other than a room and its sunspace: near nothing the exchange runs straight.
    const apartK = Math.abs(oneC - otherC);
    if (apartK > 0 && apartK < STRAIGHT_BELOW_K) volume[i]! *= rootOfKelvins(apartK) / Math.sqrt(apartK);
  }

  function letThroughStairs(i: number): void {
    const { zoneOf, otherOf, volume, share, stairFlow } = byOpening;
    const { areaM2 } = openings[i] as StairOpening;
    const { zoneC } = air;
    volume[i] = share[i]! * stairExchange(stairFlow[i]!, areaM2, zoneC[zoneOf[i]!]!, zoneC[otherOf[i]!]!);
  }

  /** Fans, and openers where they are, stand still from the next hour on, or run again. */
  function cutPower(isOut: boolean): void {
    if (isOut === powerIsOut) return;
    powerIsOut = isOut;
    if (isOut) for (const array of [volume, byOpening.runs]) array.fill(0);
    setEase();
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
