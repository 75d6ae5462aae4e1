// What drives a zone hour by hour: sun through the panes, spread over the surfaces; sun on outside faces; people
// and appliances; ground temperatures. Model, layout and climate in; watts on nodes and hubs, written into the
// stepper each hour. The light of all panes is worked out before the run starts.

import type { Model } from '../model/model.ts';
import { planeSun } from '../weather/plane-sun.ts';
import type { PreparedClimate } from '../weather/prepared-climate.ts';
import { HOURS } from '../weather/typical-year.ts';
import { type Moment, scheduled } from './clock.ts';
import { airHub, type Layout, radiantHub } from './layout.ts';
import { BEAM_ON_BACK, BEAM_ON_FLOOR, DIFFUSE, spreadLight } from './light-spread.ts';
import { type PaneLight, paneLight } from './pane-light.ts';
import type { Stepper } from './stepper.ts';

export interface Drivers {
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
  /** by pane, per m² of glass; null for panes between zones */
  readonly paneLight: readonly (PaneLight | null)[];
  /** sun on the outside of chains [W], by chain, as written this hour */
  readonly outsideSun: Float64Array;
  /** no sun in the hour last renewed */
  isDark(): boolean;
}

/** A year's sun on an outside face, already times area and absorptance [W]. */
interface OutsideSun {
  readonly chain: number;
  readonly node: number;
  readonly watt: Float64Array;
}

/** Compile the drivers of a model in a climate. */
export function compileDrivers(
  model: Model,
  layout: Layout,
  stepper: Stepper,
  climate: PreparedClimate,
): Drivers {
  const zones = model.zones.length;
  const spread = spreadLight(model, layout, stepper.first);
  const light = layout.panes.map((place) => (place.zoneFrom < 0 ? paneLight(place.pane, climate) : null));
  const sources = sourcesOf(layout, light, zones);
  const outside = outsideSunOf(layout, stepper, climate);
  const floors = model.zones.map((_, zone) => litFloor(layout, stepper, zone));
  const airGain = new Float64Array(zones);
  const radiantGain = new Float64Array(zones);
  const zoneSun = new Float64Array(zones);
  const floorLight = new Float64Array(zones);
  const outsideSun = new Float64Array(stepper.chains);
  const frameConductance = new Float64Array(zones);
  for (const { pane, zoneFrom, zoneTo } of layout.panes) {
    if (zoneFrom < 0) frameConductance[zoneTo]! += pane.areaM2 * pane.frameShare * pane.frameUValue;
  }

  let dark = true;

  function renew(hour: number, moment: Moment): void {
    stepper.nodeW.fill(0);
    zoneSun.fill(0);
    dark = climate.cosZenith[hour]! <= 0;
    if (!dark) shine(hour);
    else {
      floorLight.fill(0);
      outsideSun.fill(0);
    }
    for (let z = 0; z < zones; z++) {
      airGain[z] = 0;
      radiantGain[z] = 0;
      for (const gain of model.zones[z]!.gains) {
        const watt = scheduled(gain.power, moment);
        airGain[z]! += watt * (1 - gain.radiantShare);
        radiantGain[z]! += watt * gain.radiantShare;
      }
      stepper.hubW[airHub(z, zones)] = airGain[z]!;
      stepper.hubW[radiantHub(z)] = radiantGain[z]!;
    }
    for (const { element, chain } of layout.elements) {
      if (element.a.kind !== 'ground') continue;
      const { meanC, amplitudeK, coldestDay } = element.a.wave;
      const angle = (2 * Math.PI * (hour / 24 - coldestDay)) / 365;
      stepper.endBoundaryC[2 * chain] = meanC - amplitudeK * Math.cos(angle);
    }
  }

  function shine(hour: number): void {
    for (let source = 0; source < 3 * zones; source++) {
      const watt = sources[source]![hour]!;
      if (watt === 0) continue;
      const nodes = spread.nodes[source]!;
      const shares = spread.shares[source]!;
      for (let i = 0; i < nodes.length; i++) stepper.nodeW[nodes[i]!]! += watt * shares[i]!;
      for (let z = 0; z < zones; z++) zoneSun[z]! += watt * spread.zoneShare[source]![z]!;
    }
    for (let z = 0; z < zones; z++) floorLight[z] = floors[z]!.lightOn(stepper.nodeW);
    for (let p = 0; p < light.length; p++) {
      const pane = light[p];
      if (!pane) continue;
      const place = layout.panes[p]!;
      const first = stepper.first[place.chain]!;
      for (let i = 0; i < pane.absorbedW.length; i++) {
        const watt = place.glassM2 * pane.absorbedW[i]![hour]!;
        stepper.nodeW[first + i]! += watt;
        zoneSun[place.zoneTo]! += watt;
      }
    }
    for (const { chain, node, watt } of outside) {
      outsideSun[chain] = watt[hour]!;
      stepper.nodeW[node]! += watt[hour]!;
    }
  }

  return {
    renew,
    airGain,
    radiantGain,
    zoneSun,
    floorLight,
    frameConductance,
    paneLight: light,
    outsideSun,
    isDark: () => dark,
  };
}

/** Hourly light that enters each zone from outdoors by kind [W]: row 3 · zone + kind. */
function sourcesOf(layout: Layout, light: readonly (PaneLight | null)[], zones: number): Float64Array[] {
  const sources = Array.from({ length: 3 * zones }, () => new Float64Array(HOURS));
  light.forEach((pane, p) => {
    if (!pane) return;
    const row = 3 * layout.panes[p]!.zoneTo;
    const { glassM2 } = layout.panes[p]!;
    addTo(sources[row + BEAM_ON_FLOOR]!, pane.beamFloorW, glassM2);
    addTo(sources[row + BEAM_ON_BACK]!, pane.beamBackW, glassM2);
    addTo(sources[row + DIFFUSE]!, pane.diffuseW, glassM2);
  });
  return sources;
}

function addTo(sum: Float64Array, part: Float64Array, scale: number): void {
  for (let hour = 0; hour < HOURS; hour++) sum[hour]! += scale * part[hour]!;
}

function outsideSunOf(layout: Layout, stepper: Stepper, climate: PreparedClimate): OutsideSun[] {
  const faces: OutsideSun[] = [];
  for (const { element, chain } of layout.elements) {
    if (element.a.kind !== 'outdoors' || !element.a.exposed) continue;
    const { tiltDeg, azimuthDeg, absorptance } = element.a;
    const plane = planeSun(climate, tiltDeg, azimuthDeg);
    const scale = element.areaM2 * absorptance;
    const watt = new Float64Array(HOURS);
    for (let hour = 0; hour < HOURS; hour++) {
      const sky = plane.circumsolar[hour]! + plane.isotropic[hour]! + plane.horizon[hour]!;
      watt[hour] = scale * Math.max(0, plane.beam[hour]! + sky + plane.ground[hour]!);
    }
    faces.push({ chain, node: stepper.first[chain]!, watt });
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
