// Heat that is not put into the air by an ideal thermostat: stoves, and floors and walls heated within. The will of the people
// in; watts on hubs and nodes of the stepper out, even over each hour. A run without any pays one question an hour.

import type { Model } from '../../model/model.ts';
import { clamp01 } from '../../physics/clamp.ts';
import { FLOOR_LIMIT_C } from '../../physics/floor-output.ts';
import type { GivenHeat } from '../given-series.ts';
import type { Moment } from '../hour/clock.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout, radiantHub } from '../layout/layout.ts';
import type { Will } from '../people/will.ts';
import type { ZoneAir } from '../people/zone-air.ts';
import { nodeA, nodeB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { StoveYear } from '../year.ts';
import { burnHour, recordFire, type StoveFire, storeHour, stoveFires } from './stove-fires.ts';

/** A thermostat of a floor is full this far below its set-point and off as far above [K]; electronic room thermostats, read. */
const FLOOR_BAND_K = 0.5;
/** A body that gives less than this is out of mind [W]; common practice, no source. */
const LITTLE_W = 50;

interface HeatedFloor {
  readonly zone: number;
  readonly node: number;
  readonly faceNode: number;
  /** of the heated floors of its zone, and of all */
  readonly shareOfZone: number;
  readonly shareOfAll: number;
  readonly areaM2: number;
  watt: number;
  /** of the hour, what its pipes carry for each kelvin [W/K] */
  pipes: number;
}

export interface Heaters {
  load(model: Model, layout: Layout): void;
  any(): boolean;
  /** 1 for zones whose air no thermostat warms */
  readonly own: Float64Array;
  /** heat of the hour to each zone or its floor [W] */
  readonly watt: Float64Array;
  /**
   * What they do in an hour, once the will is written; before gains are renewed.
   *
   * @param isOn false where heaters give nothing and nobody lights a fire
   */
  decide(moment: Moment, isOn: boolean): void;
  /** put the hour's heat on hubs and nodes; once gains are renewed */
  putOn(): void;
  record(row: number): void;
  years(): StoveYear[];
}

/** Heaters with room for so much; load() before use. */
export function createHeaters(
  capacity: EngineCapacity,
  stepper: Stepper,
  will: Will,
  { zoneC }: ZoneAir,
  given: GivenHeat,
): Heaters {
  const own = new Float64Array(capacity.zones);
  const watt = new Float64Array(capacity.zones);
  let zones = 0;
  let fires: StoveFire[] = [];
  let floors: HeatedFloor[] = [];
  /** of each zone: heat there is for its floor [W], and the warmest its face may be [°C] */
  let floorHeat: { zone: number; mostW: number; maxC: number }[] = [];
  let hasAny = false;

  function load(model: Model, layout: Layout): void {
    zones = model.zones.length;
    own.fill(0);
    watt.fill(0);
    fires = stoveFires(model);
    floors = heatedFloors(layout);
    floorHeat = model.zones.flatMap(({ thermostat, heatedFaceMaxC }, zone) =>
      heatedFaceMaxC === undefined || thermostat === null
        ? []
        : [{ zone, mostW: thermostat.heatCapacityW, maxC: heatedFaceMaxC }],
    );
    for (const { zone } of [...fires, ...floorHeat]) own[zone] = 1;
    hasAny = fires.length + floorHeat.length > 0;
  }

  function heatedFloors({ elements }: Layout): HeatedFloor[] {
    const heated = elements.filter(({ element }) => element.heatedM !== undefined);
    const allM2 = heated.reduce((sum, { element }) => sum + element.areaM2, 0);
    return heated.map(({ element, chain, zoneB, discretisation }) => {
      const ofZone = heated.filter((other) => other.zoneB === zoneB);
      const first = nodeA(stepper.first, chain);
      return {
        zone: zoneB,
        node: first + nearestNode(discretisation, element.heatedM!),
        faceNode: nodeB(stepper.first, chain),
        shareOfZone: element.areaM2 / ofZone.reduce((sum, other) => sum + other.element.areaM2, 0),
        shareOfAll: element.areaM2 / allM2,
        areaM2: element.areaM2,
        watt: 0,
        pipes: 0,
      };
    });
  }

  function decide(moment: Moment, isOn: boolean): void {
    const { fireW, burning } = will.rooms;
    for (let z = 0; z < zones; z++) {
      watt[z] = 0;
      burning[z] = 0;
    }
    for (const floor of floors) {
      // Nothing else takes heat off a node in the dark.
      stepper.nodeW[floor.node]! -= floor.watt;
      floor.watt = 0;
    }
    for (const fire of fires) {
      const { stove, zone } = fire;
      burnHour(fire, moment, will, isOn, given.woodKg[zone]!);
      if (stove.store !== undefined) runStore(fire, stove.store.pipesPerM2);
      watt[zone]! += fire.roomW;
      burning[zone] = (fire.burntW * stove.burnH * 3600) / (stove.loadKg * stove.woodJPerKg || 1);
      if (stove.store === undefined) for (const floor of floors) floor.watt += floor.shareOfAll * fire.floorW;
    }
    for (const heat of floorHeat) {
      const givenW = given.watt[heat.zone]!;
      if (!Number.isNaN(givenW)) giveFloor(heat.zone, givenW);
      else if (isOn) runHeatedFloor(heat);
    }
    for (const floor of floors) watt[floor.zone]! += floor.watt;
    for (let z = 0; z < zones; z++) fireW[z] = watt[z]! > LITTLE_W ? watt[z]! : 0;
    // Nobody minds what a store loses.
    for (const { zone, storeLossW, stove } of fires)
      if (stove.store !== undefined && watt[zone]! - storeLossW <= LITTLE_W) fireW[zone] = 0;
  }

  /** A pump sends a store's water to the floors as the stove's room wants it; each floor as its face allows. */
  function runStore(fire: StoveFire, pipesPerM2: number): void {
    const { zone, stove } = fire;
    const wanted = wantedHeat(zone);
    let pipes = 0;
    let sum = 0;
    for (const floor of floors) {
      floor.pipes = pipesPerM2 * floor.areaM2 * wanted * allowedHeat(floor, FLOOR_LIMIT_C);
      pipes += floor.pipes;
      sum += floor.pipes * stepper.nodeC[floor.node]!;
    }
    const roomC = zoneC[zone]!;
    storeHour(fire, { roomC, pipes, slabC: pipes > 0 ? sum / pipes : roomC });
    const overW = fire.storeC < stove.store!.mostC ? 0 : fire.floorW;
    for (const floor of floors) {
      const share = pipes > 0 && overW === 0 ? floor.pipes / pipes : floor.shareOfAll;
      floor.watt += share * fire.floorW;
    }
  }

  /** By degrees as the room wants it, and as its face nears the warmest it may be. */
  function runHeatedFloor({ zone, mostW, maxC }: (typeof floorHeat)[number]): void {
    const wanted = wantedHeat(zone);
    for (const floor of floors) {
      if (floor.zone !== zone) continue;
      floor.watt += floor.shareOfZone * mostW * wanted * allowedHeat(floor, maxC);
    }
  }

  function giveFloor(zone: number, givenW: number): void {
    for (const floor of floors) if (floor.zone === zone) floor.watt += floor.shareOfZone * givenW;
  }

  function wantedHeat(zone: number): number {
    return clamp01((will.rooms.holdC[zone]! + FLOOR_BAND_K - zoneC[zone]!) / (2 * FLOOR_BAND_K));
  }

  function allowedHeat({ faceNode }: HeatedFloor, maxC: number): number {
    return clamp01((maxC + FLOOR_BAND_K - stepper.nodeC[faceNode]!) / (2 * FLOOR_BAND_K));
  }

  function putOn(): void {
    const { hubW, nodeW } = stepper;
    for (const { zone, stove, roomW } of fires) {
      hubW[airHub(zone, zones)]! += (1 - stove.radiantShare) * roomW;
      hubW[radiantHub(zone)]! += stove.radiantShare * roomW;
    }
    for (const floor of floors) nodeW[floor.node]! += floor.watt;
  }

  return {
    load,
    any: () => hasAny,
    own,
    watt,
    decide,
    putOn,
    record(row) {
      for (const fire of fires) recordFire(fire, row);
    },
    years: () => fires.map(({ year }) => year),
  };
}

/** The node with mass nearest to a depth. */
function nearestNode({ depthM, capacity }: Layout['elements'][number]['discretisation'], at: number): number {
  let best = 0;
  depthM.forEach((depth, i) => {
    if (capacity[i]! > 0 && (capacity[best] === 0 || Math.abs(depth - at) < Math.abs(depthM[best]! - at)))
      best = i;
  });
  return best;
}
