// The books of a run: heat by zone, cause and month, and whether it adds up. Within an hour the conductances of
// chain ends are constant, so sums of temperatures over the steps are enough there; what changes every step has been
// added up step by step (hourly-sums.ts). Heat into a zone is positive. A zone's own store is its air and the elements and
// panes that touch no other zone; what stands between two zones appears as heat shared with the other.

import type { Model } from '../../model/model.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout, radiantHub } from '../layout/layout.ts';
import { endA, endB, nodeA, nodeB, slotOf } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { HourlyGains } from '../sun/hourly-gains.ts';
import type { Beds } from '../water/beds.ts';
import type { LatentHeat } from '../water/latent-heat.ts';
import type { Books, HeatByCause } from '../year.ts';
import type { HourlySums } from './hourly-sums.ts';
import { createMonthlySums } from './monthly-sums.ts';

const HEAT_CAUSES = [
  'sun',
  'people and appliances',
  'heating',
  'cooling',
  'evaporation and dew',
  'air',
  'heat recovered',
  'fans and frost heater',
  'glass',
  'walls',
  'roof',
  'ground',
  'other zones',
] as const;
type Cause = (typeof HEAT_CAUSES)[number];
const CAUSES = HEAT_CAUSES.length;
const at = (cause: Cause) => HEAT_CAUSES.indexOf(cause);
const SUN = at('sun');
const GAINS = at('people and appliances');
const HEATING = at('heating');
const COOLING = at('cooling');
const LATENT = at('evaporation and dew');
const AIR = at('air');
const RECOVERED = at('heat recovered');
const FANS = at('fans and frost heater');
const GLASS = at('glass');
const OTHER_ZONES = at('other zones');
/** of what stands between zones: heat taken up, and given to the zones */
const IN = 0;
const OUT = 1;

export interface WaterSums {
  readonly held: number;
  readonly received: number;
  readonly released: number;
  readonly entered: number;
}

export interface HeatBalance {
  /** take a laid-out model in; its network is in the stepper */
  load(model: Model, layout: Layout): void;
  /** forget the warm-up */
  open(): void;
  beginHour(month: number): void;
  endHour(weather: HourWeather): void;
  byCause(): HeatByCause[];
  close(water: WaterSums): Books;
}

/** A chain as the heat balance sees it. */
interface Entry {
  readonly chain: number;
  readonly zone: number;
  readonly cause: number;
  /** stands between two zones */
  readonly between: boolean;
}

/** Books of a run, with room for so much; load() before use. */
export function createHeatBalance(
  capacity: EngineCapacity,
  stepper: Stepper,
  gains: HourlyGains,
  sums: HourlySums,
  latent: LatentHeat,
  beds: Beds,
): HeatBalance {
  let zones = 0;
  let hubs = 0;
  let chains = 0;
  let panes = 0;
  let zoneIds: readonly string[] = [];
  /** zones with a ventilation unit: of the others nothing is said of its heat */
  let unitZones: readonly string[] = [];
  let monthOf = 0;
  const byChain = {
    /** first place of its zone among the causes, its own cause, and whether it stands between two zones */
    rowOf: new Int32Array(capacity.chains),
    causeOf: new Int32Array(capacity.chains),
    isShared: new Int32Array(capacity.chains),
    /** nodes from its end a on that are soil */
    soilNodes: new Int32Array(capacity.chains),
    /** what they hold more than at the start, as far as it is booked [J] */
    soilJ: new Float64Array(capacity.chains),
  };
  /** by zone · CAUSES + cause [J] */
  const heat = createMonthlySums(capacity.zones * CAUSES);
  const startNode = new Float64Array(capacity.nodes);
  const startHub = new Float64Array(2 * capacity.zones);
  const paneFrom = new Int32Array(capacity.panes);
  const paneTo = new Int32Array(capacity.panes);
  /** what panes and walls between zones took up, and gave to the zones [J] */
  const through = new Float64Array(2);

  function load(model: Model, layout: Layout): void {
    zones = model.zones.length;
    zoneIds = layout.zoneIds;
    unitZones = model.openings.flatMap((opening) =>
      opening.kind === 'fixed' && opening.recovery !== undefined ? [opening.zone] : [],
    );
    ({ hubs, chains } = stepper);
    const { rowOf, causeOf, isShared } = byChain;
    byChain.soilNodes.fill(0);
    for (const { element, chain, discretisation } of layout.elements) {
      const { a } = element;
      const soilM = a.kind === 'ground' ? (a.soilM ?? 0) : 0;
      byChain.soilNodes[chain] = discretisation.depthM.filter((depthM) => depthM < soilM).length;
    }
    for (const { chain, zone, cause, between } of entriesOf(layout)) {
      rowOf[chain] = zone * CAUSES;
      causeOf[chain] = cause;
      isShared[chain] = between ? 1 : 0;
    }
    panes = layout.panes.length;
    layout.panes.forEach(({ zoneFrom, zoneTo }, p) => {
      paneFrom[p] = zoneFrom;
      paneTo[p] = zoneTo;
    });
  }

  function open(): void {
    heat.clear(zones * CAUSES, 1);
    through.fill(0);
    for (let c = 0; c < chains; c++) stepper.settleInside(c);
    startNode.set(stepper.nodeC);
    startHub.set(stepper.hubC);
    byChain.soilJ.fill(0);
    monthOf = 0;
  }

  /** Heat a chain's nodes from one to before another hold more than at the start [J]. */
  function storedIn(from: number, until: number): number {
    let joule = 0;
    for (let i = from; i < until; i++) joule += stepper.nodeJ[i]! * (stepper.nodeC[i]! - startNode[i]!);
    return joule;
  }

  /**
   * What comes from the ground is what leaves its soil towards the construction: what the far side gave, less what the
   * soil keeps. Booked when a month ends, since temperatures inside exist only when asked for.
   */
  function bookSoil(): void {
    const { soilNodes, soilJ, rowOf, causeOf } = byChain;
    for (let c = 0; c < chains; c++) {
      if (soilNodes[c] === 0) continue;
      stepper.settleInside(c);
      const start = nodeA(stepper.first, c);
      const now = storedIn(start, start + soilNodes[c]!);
      heat.running[rowOf[c]! + causeOf[c]!]! -= now - soilJ[c]!;
      soilJ[c] = now;
    }
  }

  function beginHour(month: number): void {
    const { endSum } = stepper;
    const ends = 2 * chains;
    if (month !== monthOf) bookSoil();
    monthOf = month;
    heat.turnTo(month);
    for (let e = 0; e < ends; e++) endSum[e] = 0;
  }

  function addZoneHour(z: number, steps: number): void {
    const { running } = heat;
    const { hubLink, hubBoundaryC, stepS } = stepper;
    const { airGain, radiantGain, coverHeat, frameConductance } = gains;
    const hubSum = sums.hubC;
    const row = z * CAUSES;
    const air = airHub(z, zones);
    running[row + HEATING]! += stepS * sums.heatingW[z]!;
    running[row + COOLING]! -= stepS * sums.coolingW[z]!;
    running[row + LATENT]! += stepS * sums.latentW[z]!;
    running[row + AIR]! += stepS * sums.outdoorAirW[z]!;
    running[row + RECOVERED]! += stepS * sums.recoveredW[z]!;
    running[row + FANS]! += stepS * sums.fansW[z]!;
    running[row + OTHER_ZONES]! += stepS * sums.otherAirW[z]!;
    running[row + SUN]! += stepS * steps * coverHeat[z]!;
    running[row + GAINS]! += stepS * steps * (airGain[z]! + radiantGain[z]!);
    running[row + GLASS]! += stepS * frameConductance[z]! * (steps * hubBoundaryC[air]! - hubSum[air]!);
    const own = radiantHub(z);
    for (let y = 0; y < zones; y++) {
      const seen = radiantHub(y);
      if (y !== z)
        running[row + OTHER_ZONES]! += stepS * hubLink[own * hubs + seen]! * (hubSum[seen]! - hubSum[own]!);
    }
  }

  function endHour({ darkShare }: HourWeather): void {
    const { running } = heat;
    const { rowOf, causeOf, isShared } = byChain;
    const { endBoundary, endBoundaryC, endSum, stepS } = stepper;
    const { chainSun, outsideSun } = gains;
    const { paneHourW, facesHourW } = latent;
    const count = chains;
    const steps = sums.steps();
    const hourS = steps * stepS;
    for (let z = 0; z < zones; z++) {
      addZoneHour(z, steps);
      running[z * CAUSES + LATENT]! += stepS * facesHourW[z]!;
    }
    if (beds.count() > 0) {
      for (let z = 0; z < zones; z++) running[z * CAUSES + LATENT]! += beds.hourW[z]! * stepS;
    }
    for (let p = 0; p < panes; p++) {
      const watt = paneHourW[p]!;
      if (paneFrom[p]! >= 0) through[IN]! += watt * stepS;
      else running[paneTo[p]! * CAUSES + LATENT]! += watt * stepS;
    }
    for (let c = 0; c < count; c++) {
      if (isShared[c] === 1) {
        through[IN]! += chainSun[c]! * hourS;
        addShared(endA(c));
        addShared(endB(c));
        continue;
      }
      const row = rowOf[c]!;
      const own = row + causeOf[c]!;
      if (darkShare < 1) {
        // Sun on the outside counts with the wall it falls on, not as sun in the zone.
        const outside = outsideSun[c]! * hourS;
        running[row + SUN]! += chainSun[c]! * hourS - outside;
        running[own]! += outside;
      }
      const outer = endA(c);
      const g = endBoundary[outer]!;
      if (g > 0) running[own]! += g * stepS * (steps * endBoundaryC[outer]! - endSum[outer]!);
    }
  }

  /** Heat from an end between two zones to the zone it faces. */
  function addShared(end: number): void {
    const { running } = heat;
    const { endHub, endHubG, endSum, stepS } = stepper;
    const hubSum = sums.hubC;
    for (let slot = slotOf(end, 0); slot <= slotOf(end, 1); slot++) {
      const hub = endHub[slot]!;
      if (hub < 0) continue;
      const given = stepS * endHubG[slot]! * (endSum[end]! - hubSum[hub]!);
      running[(hub % zones) * CAUSES + OTHER_ZONES]! += given;
      through[OUT]! += given;
    }
  }

  function byCause(): HeatByCause[] {
    bookSoil();
    heat.close();
    return zoneIds.flatMap((zone, z) =>
      HEAT_CAUSES.flatMap((cause, c) => {
        if ((c === RECOVERED || c === FANS) && !unitZones.includes(zone)) return [];
        const row = (z * CAUSES + c) * 12;
        return [{ zone, cause, monthJ: [...heat.monthly.subarray(row, row + 12)] }];
      }),
    );
  }

  function close(water: WaterSums): Books {
    bookSoil();
    heat.close();
    const { monthly } = heat;
    const { first } = stepper;
    const { rowOf, isShared } = byChain;
    const stored = new Float64Array(zones);
    let throughStored = 0;
    for (let h = 0; h < hubs; h++) stored[h % zones]! += stepper.hubJ[h]! * (stepper.hubC[h]! - startHub[h]!);
    for (let c = 0; c < chains; c++) {
      stepper.settleInside(c);
      const joule = storedIn(nodeA(first, c) + byChain.soilNodes[c]!, nodeB(first, c) + 1);
      if (isShared[c] === 1) throughStored += joule;
      else stored[rowOf[c]! / CAUSES]! += joule;
    }
    let total = through[IN]! - through[OUT]! - throughStored;
    let scale = 0;
    const zoneHeatResidual: number[] = [];
    for (let z = 0; z < zones; z++) {
      let net = 0;
      let size = 0;
      for (let i = z * CAUSES * 12; i < (z + 1) * CAUSES * 12; i++) {
        net += monthly[i]!;
        size += Math.abs(monthly[i]!);
      }
      zoneHeatResidual.push((net - stored[z]!) / Math.max(size / 2, 1));
      total += net - stored[z]!;
      scale += sunOf(z);
      if (scale === 0) scale += size / 2;
    }
    // Without a source the net is near nothing; what passes through with the air is then the measure.
    const throughput = water.released > 0 ? water.released : Math.max(water.entered, 1e-3);
    return {
      heatResidual: total / Math.max(scale, 1),
      waterResidual: (water.held - water.received) / throughput,
      zoneHeatResidual,
    };
  }

  function sunOf(z: number): number {
    let sun = 0;
    for (let m = 0; m < 12; m++) sun += heat.monthly[(z * CAUSES + SUN) * 12 + m]!;
    return sun;
  }

  return { load, open, beginHour, endHour, byCause, close };
}

function entriesOf(layout: Layout): Entry[] {
  const elements = layout.elements.map(({ element, chain, zoneA, zoneB }): Entry => {
    const { a } = element;
    const cause = a.kind === 'ground' ? 'ground' : a.kind === 'outdoors' && a.tiltDeg < 60 ? 'roof' : 'walls';
    return { chain, zone: zoneB, cause: at(cause), between: zoneA >= 0 };
  });
  const panes = layout.panes.map(({ chain, zoneFrom, zoneTo }): Entry => {
    return { chain, zone: zoneTo, cause: GLASS, between: zoneFrom >= 0 };
  });
  const leaves = layout.beds
    .filter(({ canopy }) => canopy >= 0)
    .map(({ canopy, zone }): Entry => ({ chain: canopy, zone, cause: LATENT, between: false }));
  return [...elements, ...panes, ...leaves];
}
