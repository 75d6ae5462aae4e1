// The books of a run: heat by zone, cause and month, and whether it adds up. Within an hour the conductances of
// chain ends are constant, so sums of temperatures over the steps are enough there; air flows change every step
// and are summed step by step. Heat into a zone is positive. A zone's own store is its air and the elements and
// panes that touch no other zone; what stands between two zones appears as heat shared with the other.

import type { Model } from '../model/model.ts';
import type { Drivers } from './drivers.ts';
import { airHub, type Layout, radiantHub } from './layout.ts';
import type { Stepper } from './stepper.ts';
import type { Books, HeatByCause } from './year.ts';

export const HEAT_CAUSES = [
  'sun',
  'people and appliances',
  'heating',
  'cooling',
  'evaporation and dew',
  'air',
  'glass',
  'walls',
  'roof',
  'ground',
  'other zones',
] as const;
type Cause = (typeof HEAT_CAUSES)[number];
const CAUSES = HEAT_CAUSES.length;
const at = (cause: Cause) => HEAT_CAUSES.indexOf(cause);
const [SUN, GAINS, HEATING, COOLING, LATENT, AIR, GLASS] = [
  at('sun'),
  at('people and appliances'),
  at('heating'),
  at('cooling'),
  at('evaporation and dew'),
  at('air'),
  at('glass'),
];
const OTHER_ZONES = at('other zones');

export interface WaterSums {
  readonly held: number;
  readonly received: number;
  readonly released: number;
  readonly entered: number;
}

export interface HeatLedger {
  /** forget the warm-up */
  open(): void;
  beginHour(): void;
  addStep(): void;
  endHour(month: number): void;
  byCause(): HeatByCause[];
  close(water: WaterSums): Books;
}

/** A chain as the ledger sees it. */
interface Entry {
  readonly chain: number;
  readonly zone: number;
  readonly cause: number;
  readonly through: boolean;
}

/** Compile the books of a laid-out model. */
export function compileLedger(
  model: Model,
  layout: Layout,
  stepper: Stepper,
  drivers: Drivers,
  paneLatentW: Float64Array,
): HeatLedger {
  const zones = model.zones.length;
  const hubs = stepper.hubs;
  const stepS = stepper.stepS;
  const entries = entriesOf(layout);
  const monthly = new Float64Array(zones * CAUSES * 12);
  const hourly = new Float64Array(zones * CAUSES);
  const { endSum } = stepper;
  const hubSum = new Float64Array(hubs);
  const sunOn = new Float64Array(stepper.chains);
  const startNode = new Float64Array(stepper.nodes);
  const startHub = new Float64Array(hubs);
  let steps = 0;
  /** what panes and walls between zones took up, and gave to the zones [J] */
  let throughIn = 0;
  let throughOut = 0;

  function open(): void {
    monthly.fill(0);
    throughIn = 0;
    throughOut = 0;
    startNode.set(stepper.nodeC);
    startHub.set(stepper.hubC);
  }

  /** Called when the hour's sun is on the nodes and nothing else is. */
  function beginHour(): void {
    steps = 0;
    hourly.fill(0);
    endSum.fill(0);
    hubSum.fill(0);
    sunOn.fill(0);
    if (drivers.isDark()) return;
    const { nodeW, first } = stepper;
    for (let c = 0; c < sunOn.length; c++) {
      let watt = 0;
      for (let i = first[c]!; i < first[c + 1]!; i++) watt += nodeW[i]!;
      sunOn[c] = watt;
    }
  }

  function addStep(): void {
    steps++;
    for (let h = 0; h < hubs; h++) hubSum[h]! += stepper.hubC[h]!;
    for (let z = 0; z < zones; z++) addZoneStep(z);
    for (let p = 0; p < layout.panes.length; p++) {
      const { zoneFrom, zoneTo } = layout.panes[p]!;
      if (zoneFrom >= 0) throughIn += paneLatentW[p]! * stepS;
      else hourly[zoneTo * CAUSES + LATENT!]! += paneLatentW[p]!;
    }
  }

  function addZoneStep(z: number): void {
    const row = z * CAUSES;
    const air = airHub(z, zones);
    const radiant = radiantHub(z);
    const held = stepper.heldW[air]!;
    hourly[row + (held > 0 ? HEATING! : COOLING!)]! += held;
    const gains = drivers.airGain[z]! + drivers.radiantGain[z]!;
    hourly[row + GAINS!]! += gains;
    // What is on the hubs beyond gains is the latent heat of the zone's air.
    hourly[row + LATENT!]! += stepper.hubW[air]! + stepper.hubW[radiant]! - gains;
    const outward = stepper.hubBoundaryC[air]! - stepper.hubC[air]!;
    hourly[row + GLASS!]! += drivers.frameConductance[z]! * outward;
    hourly[row + AIR!]! += (stepper.hubBoundary[air]! - drivers.frameConductance[z]!) * outward;
    for (let y = 0; y < zones; y++) {
      if (y === z) continue;
      const next = airHub(y, zones);
      const seen = radiantHub(y);
      hourly[row + OTHER_ZONES]! +=
        stepper.hubLink[air * hubs + next]! * (stepper.hubC[next]! - stepper.hubC[air]!) +
        stepper.hubLink[radiant * hubs + seen]! * (stepper.hubC[seen]! - stepper.hubC[radiant]!);
    }
  }

  function endHour(month: number): void {
    for (const { chain, zone, cause, through } of entries) {
      if (through) {
        throughIn += sunOn[chain]! * steps * stepS;
        addShared(2 * chain);
        addShared(2 * chain + 1);
        continue;
      }
      // Sun on the outside counts with the wall it falls on, not as sun in the zone.
      const outside = drivers.outsideSun[chain]! * steps;
      hourly[zone * CAUSES + SUN!]! += sunOn[chain]! * steps - outside;
      hourly[zone * CAUSES + cause]! += outside;
      const end = 2 * chain;
      const g = stepper.endBoundary[end]!;
      if (g > 0) hourly[zone * CAUSES + cause]! += g * (steps * stepper.endBoundaryC[end]! - endSum[end]!);
    }
    for (let i = 0; i < hourly.length; i++) monthly[i * 12 + month]! += hourly[i]! * stepS;
  }

  /** Heat from an end between two zones to the zone it faces. */
  function addShared(end: number): void {
    for (let slot = 2 * end; slot < 2 * end + 2; slot++) {
      const hub = stepper.endHub[slot]!;
      if (hub < 0) continue;
      const given = stepper.endHubG[slot]! * (endSum[end]! - hubSum[hub]!);
      hourly[(hub % zones) * CAUSES + OTHER_ZONES]! += given;
      throughOut += given * stepS;
    }
  }

  function byCause(): HeatByCause[] {
    return model.zones.flatMap((zone, z) =>
      HEAT_CAUSES.map((cause, c) => {
        const row = (z * CAUSES + c) * 12;
        return { zone: zone.id, cause, monthJ: [...monthly.subarray(row, row + 12)] };
      }),
    );
  }

  function close(water: WaterSums): Books {
    const stored = new Float64Array(zones);
    let throughStored = 0;
    for (let h = 0; h < hubs; h++) stored[h % zones]! += stepper.hubJ[h]! * (stepper.hubC[h]! - startHub[h]!);
    for (const { chain, zone, through } of entries) {
      let joule = 0;
      for (let i = stepper.first[chain]!; i < stepper.first[chain + 1]!; i++) {
        joule += stepper.nodeJ[i]! * (stepper.nodeC[i]! - startNode[i]!);
      }
      if (through) throughStored += joule;
      else stored[zone]! += joule;
    }
    let total = throughIn - throughOut - throughStored;
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
    for (let m = 0; m < 12; m++) sun += monthly[(z * CAUSES + SUN!) * 12 + m]!;
    return sun;
  }

  return { open, beginHour, addStep, endHour, byCause, close };
}

function entriesOf(layout: Layout): Entry[] {
  const elements = layout.elements.map(({ element, chain, zoneA, zoneB }): Entry => {
    const { a } = element;
    const through = zoneA >= 0;
    const cause = a.kind === 'ground' ? 'ground' : a.kind === 'outdoors' && a.tiltDeg < 60 ? 'roof' : 'walls';
    return { chain, zone: zoneB, cause: at(cause), through };
  });
  const panes = layout.panes.map(({ chain, zoneFrom, zoneTo }): Entry => {
    return { chain, zone: zoneTo, cause: GLASS!, through: zoneFrom >= 0 };
  });
  return [...elements, ...panes];
}
