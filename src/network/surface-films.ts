// Surface coefficients of every element and pane, renewed once an hour from the temperatures of the hour before:
// convection inside by Alamdari–Hammond, long-wave inside through the zone's radiant node (Carroll), wind
// convection outside (ISO 6946, 4 + 4v), long-wave to sky, air and ground by tilt, gas gaps by EN 673 at the
// pane's tilt, night insulation from dusk to dawn. Writes conductances into the stepper; prescribed films stay.

import type { Film, Model, OutdoorFace } from '../model/model.ts';
import { alamdariHammond, buoyancy } from '../physics/convection.ts';
import { outsideConvection } from '../physics/films.ts';
import { radiantConductances } from '../physics/radiant-exchange.ts';
import { STEFAN_BOLTZMANN } from '../physics/sky-temperature.ts';
import { windAtHeight } from '../physics/wind-profile.ts';
import { conductanceAt, type GapTable, gapTable } from './gap-table.ts';
import { airHub, type Layout, type PanePlace, paneLink, radiantHub } from './layout.ts';
import type { Stepper } from './stepper.ts';

const KELVIN = 273.15;
const DEG = Math.PI / 180;
/** Height of the wind that meets walls and low roofs [m], and the land around: farm and village. */
const WIND_HEIGHT_M = 2.5;
const WIND_TERRAIN = 'suburb';
/** Height of a wall for its natural convection [m]. */
const WALL_HEIGHT_M = 2.5;
/** Air is never quite still [W/(m²K)]; keeps a face with no temperature difference coupled. */
const LEAST_CONVECTION = 0.1;

export interface OutdoorHour {
  dryBulbC: number;
  skyC: number;
  /** at 10 m [m/s] */
  wind: number;
  /** [°C], ground and surroundings seen from outside */
  groundC: number;
  dark: boolean;
}

/** A face to a zone: where its conductances go and what they depend on. */
interface ZoneSide {
  readonly slot: number;
  readonly zone: number;
  readonly node: number;
  readonly areaM2: number;
  readonly faceTiltDeg: number;
  readonly lengthM: number;
  readonly film: Film;
  readonly exchangeM2: number;
  readonly nightResistance: number;
}

interface OutdoorSide {
  readonly end: number;
  readonly node: number;
  readonly areaM2: number;
  readonly emissivity: number;
  readonly film: Film;
  readonly exposed: boolean;
  /** shares of the hemisphere that see sky at its full depth; the rest sees air or ground */
  readonly skyShare: number;
  readonly groundShare: number;
}

export interface SurfaceFilms {
  /** write this hour's conductances and outside boundary temperatures */
  renew(hour: OutdoorHour): void;
  /** long-wave conductance between radiant nodes through open sides [W/K], zone · zones + zone */
  readonly openRadiation: Float64Array;
}

/** Compile the films of a model onto a stepper. */
export function compileFilms(model: Model, layout: Layout, stepper: Stepper): SurfaceFilms {
  const zones = layout.zoneIds.length;
  const exchange = exchangeAreas(model, layout);
  const zoneSides = zoneSidesOf(layout, stepper, exchange.faces);
  const outdoorSides = outdoorSidesOf(layout, stepper);
  const paneGaps = layout.panes.filter(
    ({ pane }) => pane.glass.sheets > 1 && pane.glass.gapConductance === undefined,
  );
  const gaps = paneGaps.map(({ pane }) => gapTable(pane.glass, pane.tiltDeg));
  const renewed = new Set<number>();
  for (const side of outdoorSides) renewed.add(side.end >> 1);
  for (const place of layout.panes) renewed.add(place.chain);
  const chainsToRefresh = Int32Array.from(renewed);
  const openRadiation = new Float64Array(zones * zones);
  const radiantCoefficient = new Float64Array(zones);
  const windFactor = windAtHeight(1, WIND_HEIGHT_M, WIND_TERRAIN);
  for (const place of layout.panes) setPaneLinks(place, stepper, place.pane.glass.gapConductance ?? 5);

  function renew(hour: OutdoorHour): void {
    for (let z = 0; z < zones; z++) {
      radiantCoefficient[z] = 4 * STEFAN_BOLTZMANN * (stepper.hubC[radiantHub(z)]! + KELVIN) ** 3;
    }
    for (const side of zoneSides) renewZoneSide(side, hour.dark);
    for (const side of outdoorSides) renewOutdoorSide(side, hour);
    for (let p = 0; p < paneGaps.length; p++) {
      setPaneLinks(paneGaps[p]!, stepper, gapOf(paneGaps[p]!, gaps[p]!, stepper));
    }
    for (const { from, to, areaM2 } of exchange.open) {
      const conductance = (areaM2 * (radiantCoefficient[from]! + radiantCoefficient[to]!)) / 2;
      openRadiation[from * zones + to] = conductance;
      openRadiation[to * zones + from] = conductance;
    }
    for (const chain of chainsToRefresh) stepper.refreshChain(chain);
    stepper.refreshEnds();
  }

  function renewZoneSide(side: ZoneSide, dark: boolean): void {
    const { film, areaM2, zone } = side;
    const difference = stepper.nodeC[side.node]! - stepper.hubC[airHub(zone)]!;
    let convection = film.kind === 'fixed' ? film.convection : insideConvection(side, difference);
    let radiation =
      film.kind === 'fixed' && film.radiation !== 'computed'
        ? film.radiation
        : (radiantCoefficient[zone]! * side.exchangeM2) / areaM2;
    if (dark && side.nightResistance > 0) {
      const both = convection + radiation;
      const through = 1 / (1 / both + side.nightResistance) / both;
      convection *= through;
      radiation *= through;
    }
    stepper.endHubG[side.slot] = convection * areaM2;
    stepper.endHubG[side.slot + 1] = radiation * areaM2;
  }

  function renewOutdoorSide(side: OutdoorSide, hour: OutdoorHour): void {
    const { film, areaM2, end } = side;
    const convection = film.kind === 'fixed' ? film.convection : outsideConvection(hour.wind * windFactor);
    if (!side.exposed) {
      const all = convection + (film.kind === 'fixed' && film.radiation !== 'computed' ? film.radiation : 0);
      stepper.endBoundary[end] = all * areaM2;
      stepper.endBoundaryC[end] = hour.dryBulbC;
      return;
    }
    const surfaceK = stepper.nodeC[side.node]! + KELVIN;
    const sky = side.skyShare * longwave(side.emissivity, surfaceK, hour.skyC + KELVIN);
    const ground = side.groundShare * longwave(side.emissivity, surfaceK, hour.groundC + KELVIN);
    const airShare = 1 - side.skyShare - side.groundShare;
    const air = airShare * longwave(side.emissivity, surfaceK, hour.dryBulbC + KELVIN);
    // A prescribed radiation coefficient keeps the directions and replaces their sum.
    const fixed = film.kind === 'fixed' && film.radiation !== 'computed' ? film.radiation : null;
    const scale = fixed === null ? 1 : fixed / (sky + ground + air);
    const all = convection + scale * (sky + ground + air);
    stepper.endBoundary[end] = all * areaM2;
    stepper.endBoundaryC[end] =
      ((convection + scale * air) * hour.dryBulbC + scale * (sky * hour.skyC + ground * hour.groundC)) / all;
  }

  return { renew, openRadiation };
}

/** Exact linear coefficient of ε σ (T₁⁴ − T₂⁴) [W/(m²K)]. */
function longwave(emissivity: number, t1K: number, t2K: number): number {
  return emissivity * STEFAN_BOLTZMANN * (t1K * t1K + t2K * t2K) * (t1K + t2K);
}

function insideConvection(side: ZoneSide, surfaceMinusAirK: number): number {
  const kind = buoyancy(side.faceTiltDeg, surfaceMinusAirK);
  return Math.max(LEAST_CONVECTION, alamdariHammond(kind, surfaceMinusAirK, side.lengthM));
}

/** EN 673 for each gap; with three sheets both gaps take the mean of the two. */
function gapOf(place: PanePlace, table: GapTable, stepper: Stepper): number {
  const outer = stepper.nodeC[stepper.first[place.chain]!]!;
  const inner = stepper.nodeC[stepper.first[place.chain + 1]! - 1]!;
  return conductanceAt(table, (outer + inner) / 2, (inner - outer) / (place.pane.glass.sheets - 1));
}

function setPaneLinks(place: PanePlace, stepper: Stepper, gap: number): void {
  const first = stepper.first[place.chain]!;
  const last = stepper.first[place.chain + 1]! - 1;
  const link = paneLink(place, gap);
  for (let i = first; i < last; i++) stepper.link[i] = link;
}

interface ExchangeAreas {
  /** by end of chain (2·chain + side) [m²] */
  readonly faces: ReadonlyMap<number, number>;
  readonly open: readonly { readonly from: number; readonly to: number; readonly areaM2: number }[];
}

/** Carroll's exchange areas of all faces of each zone, open sides to other zones counted as black. */
function exchangeAreas(model: Model, layout: Layout): ExchangeAreas {
  const faces = new Map<number, number>();
  const openSides: { opening: number; zone: number; areaM2: number }[] = [];
  layout.zoneIds.forEach((id, zone) => {
    const ends: number[] = [];
    const areas: number[] = [];
    const emissivities: number[] = [];
    const add = (end: number, area: number, emissivity: number) => {
      ends.push(end);
      areas.push(area);
      emissivities.push(Math.min(1, Math.max(0.01, emissivity)));
    };
    for (const { element, chain, zoneA, zoneB } of layout.elements) {
      if (zoneA === zone && element.a.kind === 'zone') add(2 * chain, element.areaM2, element.a.emissivity);
      if (zoneB === zone) add(2 * chain + 1, element.areaM2, element.b.emissivity);
    }
    for (const { pane, chain, zoneFrom, zoneTo, glassM2 } of layout.panes) {
      if (zoneFrom === zone) add(2 * chain, glassM2, pane.glass.outsideEmissivity);
      if (zoneTo === zone) add(2 * chain + 1, glassM2, pane.glass.insideEmissivity);
    }
    model.openings.forEach((opening, i) => {
      if (opening.kind !== 'door' || !opening.seeThrough) return;
      if (opening.zone === id || opening.other === id) add(-1 - i, opening.widthM * opening.heightM, 1);
    });
    if (areas.length === 0) return;
    radiantConductances(areas, emissivities).forEach((area, k) => {
      if (ends[k]! >= 0) faces.set(ends[k]!, area);
      else openSides.push({ opening: -1 - ends[k]!, zone, areaM2: area });
    });
  });
  const open = model.openings.flatMap((_, i) => {
    const sides = openSides.filter((side) => side.opening === i);
    if (sides.length !== 2) return [];
    // From one radiant node through the open side to the other: two exchange areas in series.
    const areaM2 = 1 / (1 / sides[0]!.areaM2 + 1 / sides[1]!.areaM2);
    return [{ from: sides[0]!.zone, to: sides[1]!.zone, areaM2 }];
  });
  return { faces, open };
}

function zoneSidesOf(layout: Layout, stepper: Stepper, exchange: ReadonlyMap<number, number>): ZoneSide[] {
  const sides: ZoneSide[] = [];
  const nodeOf = (chain: number, side: 0 | 1) =>
    side === 0 ? stepper.first[chain]! : stepper.first[chain + 1]! - 1;
  const add = (
    chain: number,
    side: 0 | 1,
    zone: number,
    of: { areaM2: number; faceTiltDeg: number; film: Film; nightResistance: number },
  ) => {
    const isLevel = of.faceTiltDeg < 60 || of.faceTiltDeg > 120;
    sides.push({
      ...of,
      slot: 2 * (2 * chain + side),
      zone,
      node: nodeOf(chain, side),
      lengthM: isLevel ? Math.sqrt(of.areaM2) : WALL_HEIGHT_M,
      exchangeM2: exchange.get(2 * chain + side) ?? 0,
    });
  };
  for (const { element, chain, zoneA, zoneB } of layout.elements) {
    const { areaM2, a, b } = element;
    if (a.kind === 'zone')
      add(chain, 0, zoneA, { areaM2, faceTiltDeg: a.faceTiltDeg, film: a.film, nightResistance: 0 });
    add(chain, 1, zoneB, { areaM2, faceTiltDeg: b.faceTiltDeg, film: b.film, nightResistance: 0 });
  }
  for (const { pane, chain, zoneFrom, zoneTo, glassM2 } of layout.panes) {
    if (zoneFrom >= 0) {
      const outer = {
        areaM2: glassM2,
        faceTiltDeg: pane.tiltDeg,
        film: pane.filmOutside,
        nightResistance: 0,
      };
      add(chain, 0, zoneFrom, outer);
    }
    add(chain, 1, zoneTo, {
      areaM2: glassM2,
      faceTiltDeg: 180 - pane.tiltDeg,
      film: pane.filmInside,
      nightResistance: pane.nightResistance,
    });
  }
  return sides;
}

function outdoorSidesOf(layout: Layout, stepper: Stepper): OutdoorSide[] {
  const sides: OutdoorSide[] = [];
  const add = (
    chain: number,
    of: { areaM2: number; emissivity: number; film: Film; exposed: boolean; tiltDeg: number },
  ) => {
    const cosine = Math.cos(of.tiltDeg * DEG);
    const view = (1 + cosine) / 2;
    // Near the horizon the sky is nearly as warm as the air: √view of what is seen of it counts as sky.
    sides.push({
      ...of,
      end: 2 * chain,
      node: stepper.first[chain]!,
      skyShare: view * Math.sqrt(view),
      groundShare: 1 - view,
    });
  };
  for (const { element, chain } of layout.elements) {
    if (element.a.kind !== 'outdoors') continue;
    const face: OutdoorFace = element.a;
    add(chain, { ...face, areaM2: element.areaM2 });
  }
  for (const { pane, chain, zoneFrom, glassM2 } of layout.panes) {
    if (zoneFrom >= 0) continue;
    const { filmOutside: film, tiltDeg } = pane;
    add(chain, { areaM2: glassM2, emissivity: pane.glass.outsideEmissivity, film, exposed: true, tiltDeg });
  }
  return sides;
}
