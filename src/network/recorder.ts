// Writes the hourly year while a run goes on: means over the steps of each hour, moisture by cause and month,
// carbon dioxide, panes, openings and, when asked for, the temperature of every node.

import type { Model } from '../model/model.ts';
import { carbonDioxideRelease } from '../physics/carbon-dioxide.ts';
import { HOURS } from '../weather/typical-year.ts';
import type { AirFlow } from './air-flow.ts';
import { type Moment, scheduled } from './clock.ts';
import type { Drivers } from './drivers.ts';
import { airHub, type Layout, radiantHub } from './layout.ts';
import type { Stepper } from './stepper.ts';
import type { Vapour } from './vapour.ts';
import type { ElementHistory, OpeningYear, PaneYear, Year, ZoneYear } from './year.ts';

/** Outdoor carbon dioxide [ppm]; rounded world mean of the mid 2020s, from memory, high confidence. */
const OUTDOOR_CO2_PPM = 425;
/** A resting to lightly active adult [met], ISO 7730 sedentary activity. */
const ACTIVITY_MET = 1.2;
const ADULT_SKIN_M2 = 1.8;

export interface Recorder {
  beginHour(): void;
  addStep(): void;
  endHour(hour: number, moment: Moment, outdoorC: number): void;
  releasedKg(): number;
  year(): Omit<Year, 'heat' | 'books'>;
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

export function compileRecorder(
  model: Model,
  layout: Layout,
  stepper: Stepper,
  flows: AirFlow,
  vapour: Vapour,
  drivers: Drivers,
  keepHistory: boolean,
): Recorder {
  const zones = model.zones.length;
  const causes = vapour.causes.length;
  const years = model.zones.map((zone) => blankZone(zone.id));
  const byCauseKg = new Float64Array(zones * causes * 12);
  const panes = layout.panes.map(({ pane, glassM2 }, p) => blankPane(pane, glassM2, drivers.paneLight[p]));
  const innerNode = Int32Array.from(layout.panes, ({ chain }) => stepper.first[chain + 1]! - 1);
  const openings = model.openings.map((opening) => ({
    id: opening.id,
    kind: opening.kind,
    open: new Float64Array(HOURS),
    flow: new Float64Array(HOURS),
  }));
  const history = keepHistory ? layout.elements.map(blankHistory) : null;
  const volume = model.zones.map((zone) => zone.volumeM3);
  const co2 = new Float64Array(zones).fill(OUTDOOR_CO2_PPM);
  const release = carbonDioxideRelease(ACTIVITY_MET, ADULT_SKIN_M2) / 1000;

  // One block of sums over the steps of an hour, cleared in one loop; the names are windows on it.
  const block = new Float64Array(8 * zones + zones * zones + zones * causes + 2 * openings.length);
  let taken = 0;
  const window = (length: number) => {
    taken += length;
    return block.subarray(taken - length, taken);
  };
  const air = window(zones);
  const radiant = window(zones);
  const held = window(zones);
  const cooled = window(zones);
  const humidity = window(zones);
  const outdoorKg = window(zones);
  const betweenKg = window(zones * zones);
  const released = window(zones);
  const dew = window(zones);
  const byCause = window(zones * causes);
  const flow = window(openings.length);
  const open = window(openings.length);
  let steps = 0;
  let releasedKg = 0;

  function beginHour(): void {
    steps = 0;
    for (let i = 0; i < block.length; i++) block[i] = 0;
  }

  function addStep(): void {
    steps++;
    for (let z = 0; z < zones; z++) {
      air[z]! += stepper.hubC[airHub(z, zones)]!;
      radiant[z]! += stepper.hubC[radiantHub(z)]!;
      const watt = stepper.heldW[airHub(z, zones)]!;
      if (watt > 0) held[z]! += watt;
      else cooled[z]! -= watt;
      humidity[z]! += vapour.humidity[z]!;
      outdoorKg[z]! += flows.outdoors[z]!;
      released[z]! += vapour.released[z]!;
      dew[z]! += vapour.dew[z]!;
    }
    for (let i = 0; i < betweenKg.length; i++) betweenKg[i]! += flows.between[i]!;
    for (let i = 0; i < byCause.length; i++) byCause[i]! += vapour.byCause[i]!;
    for (let o = 0; o < flow.length; o++) {
      flow[o]! += flows.volume[o]!;
      open[o]! += flows.hands[o]!.open;
    }
  }

  function endHour(hour: number, moment: Moment, outdoorC: number): void {
    const perStep = 1 / steps;
    for (let z = 0; z < zones; z++) {
      const year = years[z]!;
      const airC = air[z]! * perStep;
      year.airC[hour] = airC;
      year.operativeC[hour] = (airC + radiant[z]! * perStep) / 2;
      year.heatingW[hour] = held[z]! * perStep;
      year.coolingW[hour] = cooled[z]! * perStep;
      year.solarW[hour] = drivers.zoneSun[z]!;
      year.relativeHumidity[hour] = humidity[z]! * perStep;
      year.ventAch[hour] = airChanges(z, perStep);
      year.moistureG[hour] = released[z]! * perStep * 3.6e6;
      year.condensationG[hour] = dew[z]! * perStep * 3.6e6;
      year.cornerC[hour] = outdoorC + model.zones[z]!.cornerFactor * (year.operativeC[hour]! - outdoorC);
      releasedKg += released[z]! * perStep * 3600;
      for (let c = 0; c < causes; c++) {
        byCauseKg[(z * causes + c) * 12 + moment.month]! += byCause[z * causes + c]! * perStep * 3600;
      }
    }
    breathe(moment, perStep);
    for (let z = 0; z < zones; z++) years[z]!.co2Ppm[hour] = co2[z]!;
    for (let p = 0; p < panes.length; p++) {
      panes[p]!.innerC[hour] = stepper.nodeC[innerNode[p]!]!;
      if (vapour.film[p]! > 0) {
        panes[p]!.wetHours++;
        if (panes[p]!.innerC[hour]! < 0) panes[p]!.frostHours++;
      }
    }
    for (let o = 0; o < openings.length; o++) {
      openings[o]!.flow[hour] = flow[o]! * perStep;
      openings[o]!.open[hour] = open[o]! * perStep;
    }
    if (history !== null) {
      layout.elements.forEach(({ chain }, e) => {
        const first = stepper.first[chain]!;
        const last = stepper.first[chain + 1]!;
        for (let i = first; i < last; i++) {
          history[e]!.temperatureC[hour * (last - first) + i - first] = stepper.nodeC[i]!;
        }
      });
    }
  }

  const { roomDensity } = layout;
  function airChanges(z: number, perStep: number): number {
    return (outdoorKg[z]! * perStep * 3600) / (roomDensity * volume[z]!);
  }

  /** Carbon dioxide of the hour, zone after zone, implicit in its own concentration. */
  function breathe(moment: Moment, perStep: number): void {
    for (let z = 0; z < zones; z++) {
      const people = model.zones[z]!.people;
      const source = people === null ? 0 : scheduled(people, moment) * release * 1e6;
      const mass = roomDensity * volume[z]!;
      let gain = (mass * co2[z]!) / 3600 + outdoorKg[z]! * perStep * OUTDOOR_CO2_PPM;
      gain += (source * roomDensity) / 3600;
      let loss = mass / 3600 + outdoorKg[z]! * perStep;
      for (let y = 0; y < zones; y++) {
        const exchange = betweenKg[z * zones + y]! * perStep;
        gain += exchange * co2[y]!;
        loss += exchange;
      }
      co2[z] = gain / loss;
    }
  }

  function year(): Omit<Year, 'heat' | 'books'> {
    return {
      zones: years.map(
        (zone, z): ZoneYear => ({
          ...zone,
          drainedKg: vapour.drained[z]!,
          moistureByCause: vapour.causes.map((cause, c) => {
            const row = (z * causes + c) * 12;
            return { cause, monthKg: [...byCauseKg.subarray(row, row + 12)] };
          }),
        }),
      ),
      panes,
      openings: openings.map((opening, o): OpeningYear => {
        const hand = flows.hands[o]!;
        return {
          ...opening,
          moves: hand.moves,
          movesByDay: hand.movesByDay,
          neglectedHours: hand.neglectedHours,
        };
      }),
      history,
      nodes: stepper.nodes,
    };
  }

  return { beginHour, addStep, endHour, releasedKg: () => releasedKg, year };
}

function blankZone(id: string): Writable<ZoneYear> {
  const column = () => new Float64Array(HOURS);
  return {
    id,
    airC: column(),
    operativeC: column(),
    relativeHumidity: column(),
    solarW: column(),
    heatingW: column(),
    coolingW: column(),
    ventAch: column(),
    moistureG: column(),
    condensationG: column(),
    moistureByCause: [],
    cornerC: column(),
    drainedKg: 0,
    co2Ppm: column(),
  };
}

function blankPane(
  pane: Model['panes'][number],
  glassM2: number,
  light: Drivers['paneLight'][number] | undefined,
): Writable<PaneYear> {
  const transmittedW = new Float64Array(HOURS);
  const incidentW = new Float64Array(HOURS);
  if (light) {
    for (let hour = 0; hour < HOURS; hour++) {
      const passed = light.beamFloorW[hour]! + light.beamBackW[hour]! + light.diffuseW[hour]!;
      transmittedW[hour] = glassM2 * passed;
      incidentW[hour] = glassM2 * light.incidentW[hour]!;
    }
  }
  return {
    id: pane.id,
    from: pane.from,
    to: pane.to,
    areaM2: glassM2,
    incidentW,
    transmittedW,
    innerC: new Float64Array(HOURS),
    wetHours: 0,
    frostHours: 0,
  };
}

function blankHistory({ element, cut }: Layout['elements'][number]): ElementHistory {
  return {
    id: element.id,
    depthM: cut.depthM,
    temperatureC: new Float32Array(HOURS * cut.depthM.length),
  };
}
