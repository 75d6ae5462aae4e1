// Air that flows with nobody's hand on it, hour by hour and, for fans that soon use up what they run on, by the quarter hour:
// cracks; fans by the clock, by humidity, between zones, in cool nights; units with heat recovery and what goes with them.
// Openings and the zones' air in; volume flows, heat given back and heat of fans out.

import type { CrackOpening, FixedOpening, Opening } from '../../model/model.ts';
import { type Moment, scheduled } from '../hour/clock.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { nightFanRuns } from '../people/night-fan.ts';
import type { Will } from '../people/will.ts';
import type { ZoneAir } from '../people/zone-air.ts';
import { uncontrolledFlow } from './uncontrolled-flow.ts';
import { askedByHumidity, blankUnitHour, humidityEasing, readUnitHour } from './ventilation-unit.ts';

interface OpeningColumns {
  readonly zoneOf: Int32Array;
  readonly otherOf: Int32Array;
  /** written: volume flow each way [m³/s]; share of the heat in it that an exchanger gives back */
  readonly volume: Float64Array;
  readonly recovers: Float64Array;
}

interface ZoneColumns {
  /** written: heat of the hour from supply fans and heaters against frost, and of it what leaves with the old air [W] */
  readonly givenW: Float64Array;
  readonly lostW: Float64Array;
}

/** Fans and cracks, with room for so many; load() before use. */
export function createFansAndCracks(
  capacity: EngineCapacity,
  byOpening: OpeningColumns,
  { givenW, lostW }: ZoneColumns,
  air: ZoneAir,
  will: Will,
) {
  const { zoneOf, otherOf, volume, recovers } = byOpening;
  let openings: readonly Opening[] = [];
  /** share of its flow that a fan led by humidity runs at */
  const ledShare = new Float64Array(capacity.openings);
  /** 1 for fans that cool by night; 1 while one runs; what it moves in the hour while it runs [m³/s] */
  const coolsByNight = new Int32Array(capacity.openings);
  const runs = new Int32Array(capacity.openings);
  const nightFlow = new Float64Array(capacity.openings);
  /** fans between zones, led by humidity, or cooling by night, which are switched by the quarter hour */
  const switched = new Int32Array(capacity.openings);
  let switches = 0;
  /** share of its way that a fan led by humidity goes in a step */
  let humidityEase = 0;
  let isStanding = false;
  /** whether any opening has an exchanger */
  let anyUnit = false;
  const unit = blankUnitHour();

  function load(all: readonly Opening[]): void {
    openings = all;
    switches = 0;
    for (const array of [ledShare, runs]) array.fill(0);
    anyUnit = openings.some((opening) => opening.kind === 'fixed' && opening.recovery !== undefined);
    openings.forEach((opening, i) => {
      coolsByNight[i] = opening.kind === 'fixed' && opening.onlyAboveC !== undefined ? 1 : 0;
      if (
        opening.kind === 'fixed' &&
        (opening.gives || opening.byHumidity || opening.onlyAboveC !== undefined)
      )
        switched[switches++] = i;
    });
  }

  function setStep(stepS: number): void {
    humidityEase = humidityEasing(stepS);
  }

  /** Whether a fan may be switched within the hour that has begun. */
  function mayMove(): boolean {
    for (let k = 0; k < switches; k++) {
      const i = switched[k]!;
      if (coolsByNight[i] === 0 || nightFlow[i]! > 0 || volume[i]! > 0) return true;
    }
    return false;
  }

  /** One of them as the hour finds it. */
  function beginHour(i: number, moment: Moment): void {
    const opening = openings[i] as CrackOpening | FixedOpening;
    if (coolsByNight[i] === 1) {
      nightFlow[i] = isStanding ? 0 : scheduled((opening as FixedOpening).flow, moment);
      return;
    }
    const zone = zoneOf[i]!;
    volume[i] = uncontrolledFlow(opening, moment, air, will, zone, otherOf[i]!);
    if (opening.kind !== 'fixed') return;
    if (opening.byHumidity) volume[i]! *= ledShare[i]!;
    if (isStanding && opening.fan) volume[i] = 0;
    if (opening.feedsFire) volume[i]! *= will.rooms.burning[zone]!;
  }

  /** Exchangers, and what goes with them, as the hour finds them; once all have begun it. */
  function readUnits(): void {
    if (!anyUnit) return;
    givenW.fill(0);
    lostW.fill(0);
    for (let i = 0; i < openings.length; i++) {
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

  /** Switch fans; whether any is there to be switched. */
  function beginQuarter(moment: Moment): boolean {
    if (switches === 0 || isStanding) return false;
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
    return true;
  }

  /** Zones that a night fan cools. */
  function markCooled(isCooled: Float64Array): void {
    for (let k = 0; k < switches; k++) {
      const i = switched[k]!;
      if (runs[i] === 1) isCooled[zoneOf[i]!] = 1;
    }
  }

  /** Fans stand still from the next hour on, or run again. */
  function standStill(still: boolean): void {
    if (still) for (const array of [volume, runs]) array.fill(0);
    isStanding = still;
  }

  return { load, setStep, mayMove, beginHour, readUnits, beginQuarter, markCooled, standStill };
}
