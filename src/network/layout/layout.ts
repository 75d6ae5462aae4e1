// Lays a model out as a linear network: which hub is whose air, which chain is which element or pane, which
// node is which surface. A model in; the network's description and the indices the rest of the room reads by.
// Hubs: first the massless mean radiant node of every zone (star network), steady within an hour, then every zone's
// air, whose flows change with every trial.

import type { Element, Face, Model, Pane, Planting } from '../../model/model.ts';
import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import type { Chain, ChainEnd, LinearNetwork } from '../solver/linear-network.ts';
import { type Discretisation, discretise } from './discretisation.ts';

const GLASS_DENSITY = 2500;
const GLASS_SPECIFIC_HEAT = 750;
/** Leaves by their area: 0.25 kg/m², nearly all water [J/(m²K)]; from memory, medium confidence. */
const LEAF_J_PER_K = 900;

export interface ElementChain {
  /** with the area of all its members */
  readonly element: Element;
  /** elements alike but for the way they face, which share the chain */
  readonly members: readonly Element[];
  readonly chain: number;
  readonly discretisation: Discretisation;
  /** zone index at each side, −1 where that side is no zone */
  readonly zoneA: number;
  readonly zoneB: number;
}

export interface PaneChain {
  /** with the area of all its members */
  readonly pane: Pane;
  /** panes alike but for the way they face and their shade, which share the chain; glass without frame [m²] */
  readonly members: readonly { readonly pane: Pane; readonly glassM2: number }[];
  readonly chain: number;
  /** zone the light comes from, −1 for outdoors */
  readonly zoneFrom: number;
  readonly zoneTo: number;
  /** glass without frame [m²] */
  readonly glassM2: number;
}

/** A planted bed: chains of its ground and of its leaves, a single node each; −1 for no leaves. */
export interface BedPlace {
  readonly zone: number;
  readonly planting: Planting;
  readonly ground: number;
  readonly canopy: number;
}

export interface Layout {
  readonly network: LinearNetwork;
  readonly elements: readonly ElementChain[];
  readonly panes: readonly PaneChain[];
  readonly beds: readonly BedPlace[];
  readonly zoneIds: readonly string[];
  /** air of the zones [kg/m³] */
  readonly roomDensity: number;
}

export const radiantHub = (zone: number) => zone;
export const airHub = (zone: number, zones: number) => zones + zone;

/**
 * Lay a model out.
 *
 * @param model checked by requireModel
 * @param airDensity at the site [kg/m³], for the heat capacity of zone air
 */
export function layOut(model: Model, airDensity: number): Layout {
  const zoneIds = model.zones.map((zone) => zone.id);
  const zones = zoneIds.length;
  const zoneOf = (face: Face) => (face.kind === 'zone' ? zoneIds.indexOf(face.zone) : -1);
  const chains: Chain[] = [];
  const elements = grouped(model.elements, elementLikeness).map((members): ElementChain => {
    const element = withAreaOfAll(members);
    const discretisation = discretise(element);
    chains.push({
      id: element.id,
      capacity: discretisation.capacity,
      link: discretisation.link,
      a: elementEndA(element, discretisation, zoneOf(element.a), zones),
      b: zoneEnd(zoneOf(element.b), zones),
      heatAtEnds: element.heatedM === undefined,
    });
    return {
      element,
      members,
      chain: chains.length - 1,
      discretisation,
      zoneA: zoneOf(element.a),
      zoneB: zoneOf(element.b),
    };
  });
  const panes = grouped(model.panes, paneLikeness).map((alike): PaneChain => {
    const pane = withAreaOfAll(alike);
    const zoneFrom = pane.from === 'outdoors' ? -1 : zoneIds.indexOf(pane.from);
    const zoneTo = zoneIds.indexOf(pane.to);
    const members = alike.map((each) => ({ pane: each, glassM2: each.areaM2 * (1 - each.frameShare) }));
    const glassM2 = members.reduce((sum, each) => sum + each.glassM2, 0);
    chains.push(paneChain(pane, glassM2, zoneFrom, zoneTo, zones));
    return { pane, members, chain: chains.length - 1, zoneFrom, zoneTo, glassM2 };
  });
  const beds = model.zones.flatMap(({ id, planting }, zone): BedPlace[] => {
    const ground = elements.find(({ element, zoneB }) => element.isBed === true && zoneB === zone)?.chain;
    if (planting === null || ground === undefined) return [];
    const { bedM2, leafAreaIndex } = planting;
    if (leafAreaIndex === 0) return [{ zone, planting, ground, canopy: -1 }];
    chains.push({
      id: `${id} leaves`,
      capacity: [LEAF_J_PER_K * leafAreaIndex * bedM2],
      link: [],
      a: { boundary: 0, hubs: [] },
      b: zoneEnd(zone, zones),
      heatAtEnds: true,
    });
    return [{ zone, planting, ground, canopy: chains.length - 1 }];
  });
  const hubs = [
    ...zoneIds.map((id) => ({ id: `${id} radiant`, capacity: 0, boundary: 0 })),
    ...model.zones.map((zone) => ({
      id: `${zone.id} air`,
      capacity: zone.volumeM3 * airDensity * SPECIFIC_HEAT_AIR + zone.furnitureCapacity,
      boundary: 0,
    })),
  ];
  return {
    network: { chains, hubs, steadyHubs: zones, hubLinks: [] },
    elements,
    panes,
    beds,
    zoneIds,
    roomDensity: airDensity,
  };
}

/**
 * Elements that differ only in area and azimuth are alike: walls of one build-up around one zone. Heat through them is
 * linear in the sun on them, so one chain with all their sun stands for them; what is lost is that their films, which
 * depend a little on each wall's own temperature, follow the mean.
 */
function elementLikeness({ id: _id, areaM2: _area, a, ...rest }: Element): string {
  return JSON.stringify([rest, a.kind === 'outdoors' ? { ...a, azimuthDeg: 0 } : a]);
}

/**
 * The same for panes of one glass and frame; dew follows their mean temperature too. A pane with covers stands alone, since
 * each side is drawn by its own sun.
 */
function paneLikeness(pane: Pane): string {
  const { glass, frameShare, frameUValue, tiltDeg, from, to, filmOutside, filmInside, nightResistance } =
    pane;
  const isCovered = pane.covers !== undefined && pane.covers.length > 0;
  return JSON.stringify([
    isCovered ? pane.id : '',
    glass,
    frameShare,
    frameUValue,
    tiltDeg,
    from,
    to,
    filmOutside,
    filmInside,
    nightResistance,
  ]);
}

function grouped<T>(items: readonly T[], likeness: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = likeness(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}

/** The first of a group with the area of them all. */
function withAreaOfAll<T extends { readonly areaM2: number }>(group: readonly T[]): T {
  return { ...group[0]!, areaM2: group.reduce((sum, { areaM2 }) => sum + areaM2, 0) };
}

/** Conductances start at 1 W/K and are set before the first step. */
function zoneEnd(zone: number, zones: number): ChainEnd {
  return {
    boundary: 0,
    hubs: [
      { hub: airHub(zone, zones), conductance: 1 },
      { hub: radiantHub(zone), conductance: 1 },
    ],
  };
}

function elementEndA(
  element: Element,
  discretisation: Discretisation,
  zone: number,
  zones: number,
): ChainEnd {
  switch (element.a.kind) {
    case 'zone':
      return zoneEnd(zone, zones);
    case 'outdoors':
      return { boundary: 1, hubs: [] };
    case 'ground':
      return { boundary: element.areaM2 / (discretisation.resistanceToA + element.a.resistance), hubs: [] };
    case 'adiabatic':
      return { boundary: 0, hubs: [] };
  }
}

/**
 * Sheets as nodes, gas gaps as links. Single glass is two half sheets, so that both faces stand apart. A sheet's
 * own resistance is put into the gaps beside it.
 */
function paneChain(pane: Pane, glassM2: number, zoneFrom: number, zoneTo: number, zones: number): Chain {
  const { glass } = pane;
  const sheetJ = GLASS_DENSITY * GLASS_SPECIFIC_HEAT * glass.sheetM * glassM2;
  const capacity =
    glass.sheets === 1 ? [sheetJ / 2, sheetJ / 2] : new Array<number>(glass.sheets).fill(sheetJ);
  return {
    id: pane.id,
    capacity,
    link: new Array<number>(capacity.length - 1).fill(1),
    a: zoneFrom >= 0 ? zoneEnd(zoneFrom, zones) : { boundary: 1, hubs: [] },
    b: zoneEnd(zoneTo, zones),
  };
}

/** Of the sheets' own resistance, what stands between two neighbouring nodes of a pane [m²K/W]. */
export function sheetResistance({ sheets, sheetM, sheetConductivity }: Pane['glass']): number {
  return ((sheetM / sheetConductivity) * sheets) / Math.max(1, sheets - 1);
}
