// Writes the hourly year while a run goes on: means over the steps of each hour, moisture by cause and month,
// carbon dioxide, panes, openings and, when asked for, the temperature of every node.

import type { Model, Opening } from '../../model/model.ts';
import { carbonDioxideRelease } from '../../physics/carbon-dioxide.ts';
import { operativeTemperature } from '../../physics/operative-temperature.ts';
import { surfaceTemperature } from '../../physics/surface-humidity.ts';
import type { AirFlow } from '../air/air-flow-interface.ts';
import { addToTable, type Moment, SCHEDULE_LENGTH } from '../hour/clock.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import { coveredPanes } from '../layout/covered-panes.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout, radiantHub } from '../layout/layout.ts';
import { nodeA, nodeB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { HourlyGains } from '../sun/hourly-gains.ts';
import type { MoistureBalance } from '../water/moisture-balance.ts';
import type { ElementHistory, OpeningYear, Year, ZoneYear } from '../year.ts';
import type { HeatedOpen } from './heated-open.ts';
import type { HourlySums } from './hourly-sums.ts';
import { createMonthlySums } from './monthly-sums.ts';
import {
  blankHistory,
  blankPane,
  blankZone,
  newColumn,
  type PaneRecord,
  type ZoneRecord,
} from './year-columns.ts';

/** Outdoor carbon dioxide [ppm]; rounded world mean of the mid 2020s, from memory, high confidence. */
const OUTDOOR_CO2_PPM = 425;
/** A resting to lightly active adult [met], ISO 7730 sedentary activity. */
const ACTIVITY_MET = 1.2;
const ADULT_SKIN_M2 = 1.8;

/** What round-off may leave on a pane that has dried [kg]. */
const DRY_KG = 1e-9;

export interface Recorder {
  /**
   * Take a laid-out model in, with columns for its year.
   *
   * @param lend hand out columns that the next run writes over
   */
  load(model: Model, layout: Layout, keepHistory: boolean, lend: boolean): void;
  /** carbon dioxide of an hour that has run, counted or not */
  breathe(moment: Moment): void;
  endHour(hour: number, moment: Moment, weather: HourWeather): void;
  /** carbon dioxide given off by zone and schedule index, and of one person [ppm·kg of air in the hour] */
  readonly breath: Float64Array;
  breathPerPerson(): number;
  releasedKg(): number;
  year(): Omit<Year, 'heat' | 'books'>;
}

/** A recorder with room for so much; load() before use. `co2` is where it writes the carbon dioxide of each zone [ppm]. */
export function createRecorder(
  capacity: EngineCapacity,
  stepper: Stepper,
  flows: AirFlow,
  moisture: MoistureBalance,
  gains: HourlyGains,
  sums: HourlySums,
  heatedOpen: HeatedOpen,
  co2: Float64Array,
): Recorder {
  let zones = 0;
  let causes = 0;
  /** chain of each element whose history is kept */
  const historyChain: number[] = [];
  let years: ZoneRecord[] = [];
  let panes: PaneRecord[] = [];
  let openings: { id: string; kind: Opening['kind']; open: Float64Array; flow: Float64Array }[] = [];
  let history: ElementHistory[] | null = null;
  /** of each pane: its place among those that share chains, the node of its inner face, hours wet and frozen */
  const paneAt = new Int32Array(capacity.panes);
  const innerNode = new Int32Array(capacity.panes);
  const wetHours = new Float64Array(capacity.panes);
  const frostHours = new Float64Array(capacity.panes);
  let innerC: Float64Array[] = [];
  /** light passed by panes with covers [W] */
  let coveredW: Float64Array[] = [];
  /** water given off by zone · causes + cause [kg] */
  const givenOffKg = createMonthlySums(capacity.zones * capacity.causes);
  /** carbon dioxide given off by zone and schedule index [ppm·kg of air in the hour] */
  const breath = new Float64Array(capacity.zones * SCHEDULE_LENGTH);
  let onePerson = 0;
  const airKg = new Float64Array(capacity.zones);
  const cornerFactors = new Float64Array(capacity.zones);
  const release = carbonDioxideRelease(ACTIVITY_MET, ADULT_SKIN_M2) / 1000;

  const lent: Float64Array[] = [];
  /** kg */
  const releasedSum = new Float64Array(1);

  function load(model: Model, layout: Layout, keepHistory: boolean, lend: boolean): void {
    const column = lend ? lentColumns() : newColumn;
    zones = model.zones.length;
    causes = moisture.causes().length;
    breath.fill(0);
    onePerson = release * 1e6 * layout.roomDensity;
    model.zones.forEach(({ people, volumeM3, cornerFactor }, z) => {
      airKg[z] = layout.roomDensity * volumeM3;
      cornerFactors[z] = cornerFactor;
      if (people !== null) addToTable(breath, z * SCHEDULE_LENGTH, people, onePerson);
    });
    years = model.zones.map((zone) => blankZone(zone.id, column));
    const records = layout.panes.flatMap(({ members, chain }, place) =>
      members.map(({ pane, glassM2 }, m) => ({
        place,
        node: nodeB(stepper.first, chain),
        record: blankPane(pane, glassM2, gains.paneLight()[place]![m], column),
      })),
    );
    coveredW = coveredPanes(layout).panes.map(
      ({ place, member }) => records.filter((one) => one.place === place)[member]!.record.transmittedW,
    );
    panes = records.map(({ record }) => record);
    innerC = panes.map((pane) => pane.innerC);
    wetHours.fill(0);
    frostHours.fill(0);
    records.forEach(({ place, node }, i) => {
      paneAt[i] = place;
      innerNode[i] = node;
    });
    openings = model.openings.map(({ id, kind }) => ({
      id,
      kind,
      open: column(),
      flow: column(),
    }));
    historyChain.length = 0;
    history = null;
    if (keepHistory) {
      const kept = layout.elements.flatMap(({ members, discretisation, chain }) =>
        members.map(({ id }) => ({ chain, history: blankHistory(id, discretisation.depthM) })),
      );
      historyChain.push(...kept.map(({ chain }) => chain));
      history = kept.map((one) => one.history);
    }
    co2.fill(OUTDOOR_CO2_PPM);
    givenOffKg.clear(zones * causes, 1);
    releasedSum.fill(0);
  }

  /** Columns of this recorder, the same ones for every run they are lent to. */
  function lentColumns(): () => Float64Array {
    let taken = 0;
    return () => {
      lent[taken] ??= newColumn();
      return lent[taken++]!;
    };
  }

  function endHour(hour: number, moment: Moment, { dryBulbC }: HourWeather): void {
    const { nodeC } = stepper;
    const { hubC, heatingW, coolingW, humidity, condensation, outdoorKg, flow, open } = sums;
    const { outdoorAirW, recoveredW, otherAirW, airWaterKg } = sums;
    const { byCause, film } = moisture;
    const { running } = givenOffKg;
    const perStep = 1 / sums.steps();
    givenOffKg.turnTo(moment.month);
    for (let z = 0; z < zones; z++) {
      const year = years[z]!;
      const airC = hubC[airHub(z, zones)]! * perStep;
      year.airC[hour] = airC;
      const operativeC = operativeTemperature(airC, hubC[radiantHub(z)]! * perStep);
      year.operativeC[hour] = operativeC;
      year.heatingW[hour] = heatingW[z]! * perStep;
      year.coolingW[hour] = coolingW[z]! * perStep;
      year.solarW[hour] = gains.zoneSun[z]!;
      year.relativeHumidity[hour] = humidity[z]! * perStep;
      year.ventAch[hour] = (outdoorKg[z]! * perStep * 3600) / airKg[z]!;
      year.condensationG[hour] = condensation[z]! * perStep * 3.6e6;
      year.airHeatW[hour] = (outdoorAirW[z]! + recoveredW[z]! + otherAirW[z]!) * perStep;
      year.airWaterG[hour] = airWaterKg[z]! * perStep * 3.6e6;
      year.cornerC[hour] = surfaceTemperature(cornerFactors[z]!, operativeC, dryBulbC);
      let givenOff = 0;
      for (let i = z * causes; i < (z + 1) * causes; i++) {
        givenOff += byCause[i]!;
        running[i]! += byCause[i]!;
      }
      year.moistureG[hour] = givenOff * 1000;
      releasedSum[0]! += givenOff;
    }
    for (let z = 0; z < zones; z++) years[z]!.co2Ppm[hour] = co2[z]!;
    for (let p = 0; p < innerC.length; p++) {
      const faceC = nodeC[innerNode[p]!]!;
      innerC[p]![hour] = faceC;
      if (film[paneAt[p]!]! > DRY_KG) {
        wetHours[p]!++;
        if (faceC < 0) frostHours[p]!++;
      }
    }
    for (let p = 0; p < coveredW.length; p++) coveredW[p]![hour] = gains.coveredPassed[p]!;
    for (let o = 0; o < openings.length; o++) {
      openings[o]!.flow[hour] = flow[o]! * perStep;
      openings[o]!.open[hour] = open[o]! * perStep;
    }
    if (history !== null) {
      const kept = history;
      historyChain.forEach((chain, e) => {
        const a = nodeA(stepper.first, chain);
        const b = nodeB(stepper.first, chain);
        stepper.settleInside(chain);
        for (let i = a; i <= b; i++) {
          kept[e]!.temperatureC[hour * (b - a + 1) + i - a] = nodeC[i]!;
        }
      });
    }
  }

  /** Carbon dioxide of the hour, zone after zone, implicit in its own concentration. */
  function breathe(moment: Moment): void {
    const { outdoorKg, betweenKg } = sums;
    const perStep = 1 / sums.steps();
    for (let z = 0; z < zones; z++) {
      const mass = airKg[z]!;
      let gain = (mass * co2[z]!) / 3600 + outdoorKg[z]! * perStep * OUTDOOR_CO2_PPM;
      gain += breath[z * SCHEDULE_LENGTH + moment.scheduleIndex]! / 3600;
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
    givenOffKg.close();
    return {
      zones: years.map(
        (zone, z): ZoneYear => ({
          ...zone,
          drainedKg: moisture.drained[z]!,
          waterGainKg: moisture.gained(z),
          airWaterFrom: years.flatMap(({ id }, y) =>
            y === z ? [] : [{ zone: id, kg: moisture.broughtFrom[z * zones + y]! }],
          ),
          moistureByCause: moisture.causes().map((cause, c) => {
            const row = (z * causes + c) * 12;
            return { cause, monthKg: [...givenOffKg.monthly.subarray(row, row + 12)] };
          }),
        }),
      ),
      panes: panes.map((pane, p) =>
        Object.assign(pane, { wetHours: wetHours[p], frostHours: frostHours[p] }),
      ),
      openings: openings.map((opening, o): OpeningYear => {
        const state = flows.openingStates()[o]!;
        return {
          ...opening,
          moves: state.moves,
          movesByDay: state.movesByDay,
          neglectedHours: state.neglectedHours,
          airings: state.airings,
          heatedOpenHours: heatedOpen.seconds[o]! / 3600,
          heatedOpenJ: heatedOpen.joules[o]!,
        };
      }),
      history,
      nodes: stepper.nodes,
    };
  }

  return {
    load,
    breathe,
    endHour,
    breath,
    breathPerPerson: () => onePerson,
    releasedKg: () => releasedSum[0]!,
    year,
  };
}
