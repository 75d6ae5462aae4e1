// What drives a zone hour by hour: sun through the panes, spread over the surfaces; sun on outside faces; people
// and appliances; ground temperatures. Model, layout and climate in; watts on nodes and hubs, written into the
// stepper each hour. The light of all panes is worked out before the run starts.

import type { Model } from '../model/model.ts';
import { planeSun } from '../weather/plane-sun.ts';
import type { PreparedClimate } from '../weather/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { addToTable, type Moment, TABLE_PLACES } from './clock.ts';
import type { EngineRoom } from './engine-room.ts';
import { airHub, type Layout, type PanePlace, radiantHub } from './layout.ts';
import { BEAM_ON_BACK, BEAM_ON_FLOOR, DIFFUSE, type LightSpread, spreadLight } from './light-spread.ts';
import { type PaneLight, paneLight } from './pane-light.ts';
import type { Stepper } from './stepper.ts';

export interface Drivers {
  /** take a model in; its network is in the stepper */
  load(model: Model, layout: Layout, climate: PreparedClimate): void;
  /** set nodeW, radiant hubW, airGain and ground temperatures for an hour */
  renew(hour: number, moment: Moment): void;
  /** convective gains of people and appliances to each zone's air [W] */
  readonly airGain: Float64Array;
  /** radiant gains [W] */
  readonly radiantGain: Float64Array;
  /** sun taken up in each zone, panes included [W] */
  readonly zoneSun: Float64Array;
  /** light on each zone's floor [W/m²] */
  readonly floorLight: Float64Array;
  /** frames of each zone's panes, zone air to outdoors [W/K] */
  readonly frameConductance: Float64Array;
  /** by place of panes and member, per m² of glass; null for panes between zones */
  paneLight(): PaneLights;
  /** sun on the outside of chains [W], by chain, as written this hour */
  readonly outsideSun: Float64Array;
  /** no sun in the hour last renewed */
  isDark(): boolean;
}

type PaneLights = readonly (readonly (PaneLight | null)[])[];

/** A year's sun taken up in a sheet of glass [W], of so many square metres each. */
interface PaneSun {
  readonly node: number;
  readonly zone: number;
  readonly glassM2: number;
  readonly watt: Float64Array;
}

interface Loaded {
  readonly zones: Model['zones'];
  readonly spread: LightSpread;
  /** row 3 · zone + kind [W] */
  readonly sources: readonly Float64Array[];
  readonly panes: readonly PaneSun[];
  readonly outside: readonly OutsideSun[];
  readonly floors: readonly { lightOn(nodeW: Float64Array): number }[];
  readonly ground: readonly {
    readonly end: number;
    readonly meanC: number;
    readonly amplitudeK: number;
    readonly coldestDay: number;
  }[];
}

const NO_SPREAD: LightSpread = { nodes: [], shares: [], zoneShare: [], lost: new Float64Array(0) };

/** A year's sun on an outside face, already times area and absorptance [W]. */
interface OutsideSun {
  readonly chain: number;
  readonly node: number;
  readonly watt: Float64Array;
}

/** Drivers written onto a stepper, with room for so much; load() before use. */
export function createDrivers(room: EngineRoom, stepper: Stepper): Drivers {
  const airGain = new Float64Array(room.zones);
  const radiantGain = new Float64Array(room.zones);
  const zoneSun = new Float64Array(room.zones);
  const floorLight = new Float64Array(room.zones);
  const outsideSun = new Float64Array(room.chains);
  const frameConductance = new Float64Array(room.zones);
  /** people and appliances by zone and place [W] */
  const airTable = new Float64Array(room.zones * TABLE_PLACES);
  const radiantTable = new Float64Array(room.zones * TABLE_PLACES);
  const { nodeW, hubW, endBoundaryC } = stepper;
  let loaded: Loaded = {
    zones: [],
    spread: NO_SPREAD,
    sources: [],
    panes: [],
    outside: [],
    floors: [],
    ground: [],
  };
  let cosZenith: Float64Array = new Float64Array(0);
  let light: PaneLights = [];
  let dark = true;

  function load(model: Model, layout: Layout, climate: PreparedClimate): void {
    const zones = model.zones.length;
    light = layout.panes.map(({ members, zoneFrom }) =>
      members.map(({ pane }) => (zoneFrom < 0 ? paneLight(pane, climate) : null)),
    );
    cosZenith = climate.cosZenith;
    for (const array of [airGain, radiantGain, zoneSun, floorLight, outsideSun, frameConductance])
      array.fill(0);
    airTable.fill(0);
    radiantTable.fill(0);
    model.zones.forEach(({ gains }, z) => {
      for (const { power, radiantShare } of gains) {
        addToTable(airTable, z * TABLE_PLACES, power, 1 - radiantShare);
        addToTable(radiantTable, z * TABLE_PLACES, power, radiantShare);
      }
    });
    for (const { pane, zoneFrom, zoneTo } of layout.panes) {
      if (zoneFrom < 0) frameConductance[zoneTo]! += pane.areaM2 * pane.frameShare * pane.frameUValue;
    }
    loaded = {
      zones: model.zones,
      spread: spreadLight(model, layout, stepper.first.subarray(0, stepper.chains + 1)),
      sources: sourcesOf(layout, light, zones),
      panes: layout.panes.flatMap((place, p) => sheetsSun(place, light[p]!, stepper)),
      outside: outsideSunOf(layout, stepper, climate),
      floors: model.zones.map((_, zone) => litFloor(layout, stepper, zone)),
      ground: layout.elements.flatMap(({ element: { a }, chain }) =>
        a.kind === 'ground' ? [{ end: 2 * chain, ...a.wave }] : [],
      ),
    };
  }

  function renew(hour: number, moment: Moment): void {
    const { zones, ground } = loaded;
    for (let i = 0; i < stepper.nodes; i++) nodeW[i] = 0;
    for (let z = 0; z < zones.length; z++) zoneSun[z] = 0;
    dark = cosZenith[hour]! <= 0;
    if (!dark) shine(hour);
    else {
      for (let z = 0; z < zones.length; z++) floorLight[z] = 0;
      for (let c = 0; c < stepper.chains; c++) outsideSun[c] = 0;
    }
    for (let z = 0; z < zones.length; z++) {
      const air = airTable[z * TABLE_PLACES + moment.place]!;
      const radiant = radiantTable[z * TABLE_PLACES + moment.place]!;
      airGain[z] = air;
      radiantGain[z] = radiant;
      hubW[airHub(z, zones.length)] = air;
      hubW[radiantHub(z)] = radiant;
    }
    for (let i = 0; i < ground.length; i++) {
      const { end, meanC, amplitudeK, coldestDay } = ground[i]!;
      const angle = (2 * Math.PI * (hour / 24 - coldestDay)) / 365;
      endBoundaryC[end] = meanC - amplitudeK * Math.cos(angle);
    }
  }

  function shine(hour: number): void {
    const { zones, spread, sources, panes, outside, floors } = loaded;
    for (let source = 0; source < sources.length; source++) {
      const watt = sources[source]![hour]!;
      if (watt === 0) continue;
      const nodes = spread.nodes[source]!;
      const shares = spread.shares[source]!;
      const zoneShare = spread.zoneShare[source]!;
      for (let i = 0; i < nodes.length; i++) nodeW[nodes[i]!]! += watt * shares[i]!;
      for (let z = 0; z < zones.length; z++) zoneSun[z]! += watt * zoneShare[z]!;
    }
    for (let z = 0; z < zones.length; z++) floorLight[z] = floors[z]!.lightOn(nodeW);
    for (let i = 0; i < panes.length; i++) {
      const sheet = panes[i]!;
      const watt = sheet.glassM2 * sheet.watt[hour]!;
      nodeW[sheet.node]! += watt;
      zoneSun[sheet.zone]! += watt;
    }
    for (let i = 0; i < outside.length; i++) {
      const face = outside[i]!;
      const watt = face.watt[hour]!;
      outsideSun[face.chain] = watt;
      nodeW[face.node]! += watt;
    }
  }

  return {
    load,
    renew,
    airGain,
    radiantGain,
    zoneSun,
    floorLight,
    frameConductance,
    paneLight: () => light,
    outsideSun,
    isDark: () => dark,
  };
}

/** Sun taken up in the sheets of a place's panes. */
function sheetsSun(
  { members, chain, zoneTo }: PanePlace,
  light: readonly (PaneLight | null)[],
  stepper: Stepper,
): PaneSun[] {
  return (light[0]?.absorbedW ?? []).map((watt, sheet): PaneSun => {
    const at = { node: stepper.first[chain]! + sheet, zone: zoneTo };
    if (members.length === 1) return { ...at, glassM2: members[0]!.glassM2, watt };
    const sum = new Float64Array(HOURS);
    members.forEach(({ glassM2 }, m) => {
      addTo(sum, light[m]!.absorbedW[sheet]!, glassM2);
    });
    return { ...at, glassM2: 1, watt: sum };
  });
}

/** Hourly light that enters each zone from outdoors by kind [W]: row 3 · zone + kind. */
function sourcesOf(layout: Layout, light: PaneLights, zones: number): Float64Array[] {
  const sources = Array.from({ length: 3 * zones }, () => new Float64Array(HOURS));
  layout.panes.forEach(({ members, zoneTo }, p) => {
    const row = 3 * zoneTo;
    members.forEach(({ glassM2 }, m) => {
      const pane = light[p]![m];
      if (!pane) return;
      addTo(sources[row + BEAM_ON_FLOOR]!, pane.beamFloorW, glassM2);
      addTo(sources[row + BEAM_ON_BACK]!, pane.beamBackW, glassM2);
      addTo(sources[row + DIFFUSE]!, pane.diffuseW, glassM2);
    });
  });
  return sources;
}

function addTo(sum: Float64Array, part: Float64Array, scale: number): void {
  for (let hour = 0; hour < HOURS; hour++) sum[hour]! += scale * part[hour]!;
}

function outsideSunOf(layout: Layout, stepper: Stepper, climate: PreparedClimate): OutsideSun[] {
  const faces: OutsideSun[] = [];
  for (const { members, chain } of layout.elements) {
    const watt = new Float64Array(HOURS);
    let isExposed = false;
    for (const { a, areaM2 } of members) {
      if (a.kind !== 'outdoors' || !a.exposed) continue;
      isExposed = true;
      addTo(watt, planeSun(climate, a.tiltDeg, a.azimuthDeg).total, areaM2 * a.absorptance);
    }
    if (isExposed) faces.push({ chain, node: stepper.first[chain]!, watt });
  }
  return faces;
}

/** Light on a zone's floor from what its faces take up: absorbed ÷ absorptance, per area [W/m²]. */
function litFloor(layout: Layout, stepper: Stepper, zone: number) {
  const faces = layout.elements.flatMap(({ element, chain, zoneB }) =>
    zoneB === zone && element.b.lit === 'floor' && element.b.absorptance > 0
      ? [{ node: stepper.first[chain + 1]! - 1, absorptance: element.b.absorptance, areaM2: element.areaM2 }]
      : [],
  );
  const area = faces.reduce((sum, face) => sum + face.areaM2, 0);
  return {
    lightOn(nodeW: Float64Array): number {
      let watt = 0;
      for (const face of faces) watt += nodeW[face.node]! / face.absorptance;
      return area > 0 ? watt / area : 0;
    },
  };
}
