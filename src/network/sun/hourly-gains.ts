// Heat that zones gain hour by hour: sun through the panes, spread over the surfaces; sun on outside faces; people
// and appliances; ground temperatures. Model, layout and climate in; watts on nodes and hubs, written into the
// stepper each hour. The light of all panes is worked out before the run starts.

import type { Model } from '../../model/model.ts';
import { type Calendar, TYPICAL_CALENDAR } from '../../weather/calendar.ts';
import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { addToTable, type Moment, SCHEDULE_LENGTH } from '../hour/clock.ts';
import { type DayPart, meanOver } from '../hour/day-part.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import { type CoveredPane, coveredPanes } from '../layout/covered-panes.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout, radiantHub } from '../layout/layout.ts';
import { nodeA, nodeB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import { createCoveredLight } from './covered-light.ts';
import { createGroundWaves } from './ground-waves.ts';
import {
  type BeamOnBed,
  beamsOnBeds,
  type OutsideSun,
  outsideSunOf,
  type PaneLights,
  type SheetSun,
  sheetsSun,
  sourcesOf,
} from './hourly-sun.ts';
import { distributeLight, type LightDistribution } from './light-distribution.ts';
import { paneLight } from './pane-light.ts';

export interface HourlyGains {
  /** take a model in; its network is in the stepper */
  load(model: Model, layout: Layout, climate: PreparedClimate): void;
  /** set nodeW, radiant hubW, airGain and ground temperatures for an hour */
  renew(hour: number, moment: Moment, weather: HourWeather): void;
  /** the same for the mean of a day part; what chains and outsides took up is not kept */
  renewMean(dayPart: DayPart): void;
  /** convective gains of people and appliances to each zone's air [W] */
  readonly airGain: Float64Array;
  /** radiant gains [W] */
  readonly radiantGain: Float64Array;
  /** sun taken up in each zone, panes included [W] */
  readonly zoneSun: Float64Array;
  /** sun that inside covers give to each zone's air and faces as heat [W] */
  readonly coverHeat: Float64Array;
  /** by covered pane, light passed into its zone [W] */
  readonly coveredPassed: Float64Array;
  /** frames of each zone's panes, zone air to outdoors [W/K] */
  readonly frameConductance: Float64Array;
  /** people and appliances by zone and schedule index, to the air and by radiation [W] */
  readonly schedules: { readonly air: Float64Array; readonly radiant: Float64Array };
  /** by place of panes and member, per m² of glass; null for panes between zones */
  paneLight(): PaneLights;
  /** sun taken up by each chain, and of it on its outside [W], by chain, as written this hour */
  readonly chainSun: Float64Array;
  readonly outsideSun: Float64Array;
}

/** Of the heat of a sunlit inside cover, to the air; the rest is radiation. Common practice, no source. */
const COVER_CONVECTIVE = 0.6;

/**
 * HourlyGains written onto a stepper, with room for so much; load() before use.
 *
 * @param shading by hand of covers, how far drawn while the sun is on it, 0…1
 */
export function createHourlyGains(
  capacity: EngineCapacity,
  stepper: Stepper,
  shading: Float64Array,
): HourlyGains {
  const perZone = () => new Float64Array(capacity.zones);
  const given = {
    airGain: perZone(),
    radiantGain: perZone(),
    zoneSun: perZone(),
    coverHeat: perZone(),
    chainSun: new Float64Array(capacity.chains),
    outsideSun: new Float64Array(capacity.chains),
    frameConductance: perZone(),
  };
  const tables = {
    /** people and appliances by zone and schedule index [W] */
    air: new Float64Array(capacity.zones * SCHEDULE_LENGTH),
    radiant: new Float64Array(capacity.zones * SCHEDULE_LENGTH),
  };
  /** three of each zone, and one of each bed */
  const sourceCount = 4 * capacity.zones;
  const spread = {
    /** where the nodes of each source begin, and how many there are in all; the nodes and their shares */
    begins: new Int32Array(sourceCount + 1),
    nodes: new Int32Array(sourceCount * 2 * capacity.chains),
    shares: new Float64Array(sourceCount * 2 * capacity.chains),
    /** source · zones + zone: share taken up in that zone */
    zoneShares: new Float64Array(sourceCount * capacity.zones),
  };
  const ground = createGroundWaves(stepper);
  /** nodes that the sun reaches, and their chains */
  const lit = {
    nodes: new Int32Array(capacity.nodes),
    chains: new Int32Array(capacity.nodes),
  };
  const covered = createCoveredLight(capacity, stepper, shading);
  let coveredCount = 0;
  let zones = 0;
  let litCount = 0;
  /** row 3 · zone + kind [W] */
  let sources: readonly Float64Array[] = [];
  let beams: readonly BeamOnBed[] = [];
  let sheets: readonly SheetSun[] = [];
  let outside: readonly OutsideSun[] = [];
  let light: PaneLights = [];
  let calendar: Calendar = TYPICAL_CALENDAR;
  /** no sun in the hour last renewed */
  let wasDark = true;

  function load(model: Model, layout: Layout, climate: PreparedClimate): void {
    zones = model.zones.length;
    calendar = climate.calendar;
    light = layout.panes.map(({ members, zoneFrom }) =>
      members.map(({ pane }) => (zoneFrom < 0 ? paneLight(pane, climate) : null)),
    );
    for (const array of [...Object.values(given), ...Object.values(tables)]) array.fill(0);
    model.zones.forEach(({ gains }, z) => {
      for (const { power, radiantShare } of gains) {
        addToTable(tables.air, z * SCHEDULE_LENGTH, power, 1 - radiantShare);
        addToTable(tables.radiant, z * SCHEDULE_LENGTH, power, radiantShare);
      }
    });
    for (const { pane, zoneFrom, zoneTo } of layout.panes) {
      if (zoneFrom < 0) given.frameConductance[zoneTo]! += pane.areaM2 * pane.frameShare * pane.frameUValue;
    }
    loadSpread(distributeLight(model, layout, stepper.first.subarray(0, stepper.chains + 1)));
    sources = sourcesOf(layout, light, zones);
    beams = beamsOnBeds(layout, sources, climate);
    sheets = layout.panes.flatMap((place, p) => sheetsSun(place, light[p]!, stepper));
    outside = outsideSunOf(layout, stepper, climate);
    const { panes } = coveredPanes(layout);
    coveredCount = panes.length;
    covered.load(panes, light);
    loadLit(panes);
    wasDark = true;
    ground.load(layout);
  }

  function loadSpread({ nodes, shares, zoneShare }: LightDistribution): void {
    let at = 0;
    nodes.forEach((hit, source) => {
      spread.begins[source] = at;
      spread.nodes.set(hit, at);
      spread.shares.set(shares[source]!, at);
      spread.zoneShares.set(zoneShare[source]!, source * zones);
      at += hit.length;
    });
    spread.begins[nodes.length] = at;
  }

  function loadLit(panes: readonly CoveredPane[]): void {
    const inside = spread.nodes.subarray(0, spread.begins[3 * zones + beams.length]);
    const others = [...sheets, ...outside].map(({ node }) => node);
    const behindCovers = panes.flatMap(({ chain }) => {
      const first = nodeA(stepper.first, chain.chain);
      return Array.from({ length: nodeB(stepper.first, chain.chain) - first + 1 }, (_, n) => first + n);
    });
    const nodes = new Set([...inside, ...others, ...behindCovers]);
    litCount = nodes.size;
    [...nodes].forEach((node, i) => {
      lit.nodes[i] = node;
      lit.chains[i] = stepper.first.subarray(0, stepper.chains).findLastIndex((start) => start <= node);
    });
  }

  function renew(hour: number, moment: Moment, weather: HourWeather): void {
    const { airGain, radiantGain, zoneSun, coverHeat } = given;
    const { air, radiant } = tables;
    const { hubW } = stepper;
    const count = zones;
    for (let z = 0; z < count; z++) {
      zoneSun[z] = 0;
      coverHeat[z] = 0;
      const at = z * SCHEDULE_LENGTH + moment.scheduleIndex;
      airGain[z] = air[at]!;
      radiantGain[z] = radiant[at]!;
      hubW[airHub(z, count)] = air[at]!;
      hubW[radiantHub(z)] = radiant[at]!;
    }
    if (!wasDark) {
      clearSun();
      if (coveredCount > 0) covered.clear();
    }
    wasDark = weather.darkShare === 1;
    if (!wasDark) shine(hour);
    ground.renew(hour);
  }

  /** The same for the mean of a day part. */
  function renewMean(dayPart: DayPart): void {
    const { hours, count } = dayPart;
    const { airGain, radiantGain, zoneSun } = given;
    const { air, radiant } = tables;
    const { hubW, nodeW } = stepper;
    const { monthDayHour } = calendar;
    for (let z = 0; z < zones; z++) {
      let toAir = 0;
      let toFaces = 0;
      for (let k = 0; k < count; k++) {
        const at = z * SCHEDULE_LENGTH + monthDayHour[hours[k]!]!;
        toAir += air[at]! / count;
        toFaces += radiant[at]! / count;
      }
      zoneSun[z] = 0;
      given.coverHeat[z] = 0;
      airGain[z] = toAir;
      radiantGain[z] = toFaces;
      hubW[airHub(z, zones)] = toAir;
      hubW[radiantHub(z)] = toFaces;
    }
    clearSun();
    wasDark = false;
    const { sourceW } = covered;
    if (coveredCount > 0) {
      covered.renewMean(dayPart);
      warmByCovers();
    }
    for (let source = 0; source < 3 * zones; source++)
      shineOn(source, meanOver(dayPart, sources[source]!) + sourceW[source]!);
    beams.forEach(({ row, watt, shift }, b) => {
      shineOn(3 * zones + b, meanOver(dayPart, watt) + sourceW[row]! * meanOver(dayPart, shift));
    });
    for (const { node, scale, watt } of sheets) nodeW[node]! += scale * meanOver(dayPart, watt);
    for (const { node, scale, watt } of outside) nodeW[node]! += scale * meanOver(dayPart, watt);
    ground.renew(hours[count >> 1]!);
  }

  /** Takes the sun of the hour before off everything. */
  function clearSun(): void {
    const { chainSun, outsideSun } = given;
    const { nodes, chains } = lit;
    const { nodeW } = stepper;
    for (let i = 0; i < litCount; i++) {
      nodeW[nodes[i]!] = 0;
      chainSun[chains[i]!] = 0;
      outsideSun[chains[i]!] = 0;
    }
  }

  /** Heat of covers and of the sheets behind them, to the zones. */
  function warmByCovers(): void {
    const { zoneSun, coverHeat } = given;
    const { roomW, sheetW } = covered;
    const { hubW } = stepper;
    for (let z = 0; z < zones; z++) {
      const heat = roomW[z]!;
      coverHeat[z] = heat;
      zoneSun[z]! += heat + sheetW[z]!;
      hubW[airHub(z, zones)]! += COVER_CONVECTIVE * heat;
      hubW[radiantHub(z)]! += (1 - COVER_CONVECTIVE) * heat;
    }
  }

  /** Watts of a source onto the faces it reaches. */
  function shineOn(source: number, watt: number): void {
    if (watt === 0) return;
    const { zoneSun } = given;
    const { begins, nodes, shares, zoneShares } = spread;
    const { nodeW } = stepper;
    const count = zones;
    const end = begins[source + 1]!;
    for (let i = begins[source]!; i < end; i++) nodeW[nodes[i]!]! += watt * shares[i]!;
    for (let z = 0; z < count; z++) zoneSun[z]! += watt * zoneShares[source * count + z]!;
  }

  function shine(hour: number): void {
    const { zoneSun, chainSun, outsideSun } = given;
    const { nodes: litNodes, chains: litChains } = lit;
    const { nodeW } = stepper;
    const count = zones;
    const { sourceW } = covered;
    if (coveredCount > 0) {
      covered.renew(hour);
      warmByCovers();
    }
    for (let source = 0; source < 3 * count; source++) {
      shineOn(source, sources[source]![hour]! + sourceW[source]!);
    }
    for (let b = 0; b < beams.length; b++) {
      const { row, watt, shift } = beams[b]!;
      shineOn(3 * count + b, watt[hour]! + sourceW[row]! * shift[hour]!);
    }
    for (let i = 0; i < sheets.length; i++) {
      const sheet = sheets[i]!;
      const watt = sheet.scale * sheet.watt[hour]!;
      nodeW[sheet.node]! += watt;
      zoneSun[sheet.zone]! += watt;
    }
    for (let i = 0; i < outside.length; i++) {
      const face = outside[i]!;
      const watt = face.scale * face.watt[hour]!;
      outsideSun[face.chain] = watt;
      nodeW[face.node]! += watt;
    }
    for (let i = 0; i < litCount; i++) chainSun[litChains[i]!]! += nodeW[litNodes[i]!]!;
  }

  return {
    load,
    renew,
    renewMean,
    ...given,
    schedules: tables,
    coveredPassed: covered.passedW,
    paneLight: () => light,
  };
}
