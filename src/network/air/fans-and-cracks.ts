// Air that flows with nobody's hand on it, hour by hour and, for fans that soon use up what they run on, by the quarter hour:
// cracks; fans by the clock, by humidity, between zones, in cool nights; units with heat recovery and what goes with them.
// Openings and the zones' air in; volume flows, heat given back and heat of fans out.

import type { FixedOpening, Opening } from '../../model/model.ts';
import { crackFlow } from '../../physics/leakage.ts';
import { type Moment, scheduled } from '../hour/clock.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { givesHeat } from '../people/heat-giving.ts';
import { nightFanRuns } from '../people/night-fan.ts';
import type { Will } from '../people/will.ts';
import type { ZoneAir } from '../people/zone-air.ts';
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
  /** of cracks: what lets air through [cm²], 0 for all else, and how stack and wind drive it, as crackFlow() takes them */
  const isCracks = new Int32Array(capacity.openings);
  const leakageCm2 = new Float64Array(capacity.openings);
  const stackCoefficients = new Float64Array(capacity.openings);
  const windCoefficients = new Float64Array(capacity.openings);
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
      isCracks[i] = opening.kind === 'cracks' ? 1 : 0;
      if (opening.kind === 'cracks') {
        leakageCm2[i] = opening.leakageCm2;
        stackCoefficients[i] = opening.stackCoefficient;
        windCoefficients[i] = opening.windCoefficient;
      }
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
    if (isCracks[i] === 1) {
      leak(i);
      return;
    }
    const opening = openings[i] as FixedOpening;
    if (coolsByNight[i] === 1) {
      nightFlow[i] = isStanding ? 0 : scheduled(opening.flow, moment);
      return;
    }
    const zone = zoneOf[i]!;
    volume[i] = gives(i, opening) ? scheduled(opening.flow, moment) : 0;
    if (opening.byHumidity) volume[i]! *= ledShare[i]!;
    if (isStanding && opening.fan) volume[i] = 0;
    if (opening.feedsFire) volume[i]! *= will.rooms.burning[zone]!;
  }

  /** Through cracks, by stack and wind. */
  function leak(i: number): void {
    const { dryBulbC, windSpeed } = air.weather;
    const warmerK = air.zoneC[zoneOf[i]!]! - dryBulbC;
    volume[i] = crackFlow(leakageCm2[i]!, stackCoefficients[i]!, windCoefficients[i]!, warmerK, windSpeed);
  }

  /** Whether a room wants what it gives, where it waits for that. */
  function gives(i: number, fan: FixedOpening): boolean {
    return fan.gives === undefined || givesHeat(fan.gives, air, will, zoneOf[i]!, otherOf[i]!);
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
        const flow = gives(i, fan) ? scheduled(fan.flow, moment) : 0;
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
