// The faces whose surface coefficients a run renews: which end and node they are, what they depend on, and their
// exchange areas for long-wave inside (Carroll) or shares of sky and ground outside. A model and its layout in.

import type { Film, Model, OutdoorFace } from '../../model/model.ts';
import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import { cos } from '../../physics/elementary.ts';
import { radiantConductances } from '../../physics/radiant-exchange.ts';
import { diffusePast, leafConvection } from '../../physics/transpiration.ts';
import type { Layout } from '../layout/layout.ts';
import { endA, endB, nodeA, nodeOfEnd, slotOf } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';

const DEG = Math.PI / 180;
/** Long-wave emissivity of foliage: 0.94 to 0.98, from memory, high confidence. */
const FOLIAGE_EMISSIVITY = 0.96;
/** No face is so shaded that it counts for nothing [m²]. */
const LEAST_EXCHANGE_M2 = 1e-6;

/** A face to a zone: where its conductances go and what they depend on. */
export interface ZoneSide {
  readonly slot: number;
  readonly zone: number;
  readonly node: number;
  readonly areaM2: number;
  readonly faceTiltDeg: number;
  readonly film: Film;
  readonly exchangeM2: number;
  readonly nightResistance: number;
}

export interface OutdoorSide {
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

export interface ExchangeAreas {
  /** by end [m²] */
  readonly faces: ReadonlyMap<number, number>;
  readonly open: readonly { readonly from: number; readonly to: number; readonly areaM2: number }[];
}

/**
 * Carroll's exchange areas of all faces of each zone, open sides to other zones counted as black. Leaves hide of their bed
 * what light they would keep from it: so much of it is their face to the room, the rest the ground's.
 */
export function exchangeAreas(model: Model, layout: Layout): ExchangeAreas {
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
    // What stands in one chain may still be several faces, which see each other.
    for (const { element, members, chain, zoneA, zoneB } of layout.elements) {
      for (const { areaM2 } of members) {
        if (zoneA === zone && element.a.kind === 'zone') add(endA(chain), areaM2, element.a.emissivity);
        if (zoneB === zone) add(endB(chain), areaM2 * pastLeaves(layout, chain), element.b.emissivity);
      }
    }
    for (const bed of layout.beds) {
      if (bed.zone !== zone || bed.canopy < 0) continue;
      const hidden = bed.planting.bedM2 * (1 - pastLeaves(layout, bed.ground));
      add(endB(bed.canopy), Math.max(LEAST_EXCHANGE_M2, hidden), FOLIAGE_EMISSIVITY);
    }
    for (const { pane, members, chain, zoneFrom, zoneTo } of layout.panes) {
      for (const { glassM2 } of members) {
        if (zoneFrom === zone) add(endA(chain), glassM2, pane.glass.outsideEmissivity);
        if (zoneTo === zone) add(endB(chain), glassM2, pane.glass.insideEmissivity);
      }
    }
    model.openings.forEach((opening, i) => {
      if (opening.kind !== 'door' || !opening.seeThrough) return;
      if (opening.zone === id || opening.other === id) add(-1 - i, opening.widthM * opening.heightM, 1);
    });
    if (areas.length === 0) return;
    radiantConductances(areas, emissivities).forEach((area, k) => {
      if (ends[k]! >= 0) faces.set(ends[k]!, (faces.get(ends[k]!) ?? 0) + area);
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

/** Share of an element's inner face that no leaves hide, 0…1. */
function pastLeaves(layout: Layout, chain: number): number {
  const bed = layout.beds.find(({ ground }) => ground === chain);
  return bed === undefined ? 1 : Math.max(LEAST_EXCHANGE_M2, diffusePast(bed.planting.leafAreaIndex));
}

/** Every face to a zone: both sides of what stands between zones, the inside of all else. */
export function zoneSidesOf(
  layout: Layout,
  stepper: Stepper,
  exchange: ReadonlyMap<number, number>,
): ZoneSide[] {
  const sides: ZoneSide[] = [];
  const add = (
    end: number,
    zone: number,
    of: { areaM2: number; faceTiltDeg: number; film: Film; nightResistance: number },
  ) => {
    sides.push({
      ...of,
      slot: slotOf(end, 0),
      zone,
      node: nodeOfEnd(stepper.first, end),
      exchangeM2: exchange.get(end) ?? 0,
    });
  };
  for (const { element, chain, zoneA, zoneB } of layout.elements) {
    const { areaM2, a, b } = element;
    if (a.kind === 'zone')
      add(endA(chain), zoneA, { areaM2, faceTiltDeg: a.faceTiltDeg, film: a.film, nightResistance: 0 });
    add(endB(chain), zoneB, { areaM2, faceTiltDeg: b.faceTiltDeg, film: b.film, nightResistance: 0 });
  }
  for (const { pane, chain, zoneFrom, zoneTo, glassM2 } of layout.panes) {
    if (zoneFrom >= 0) {
      const outer = {
        areaM2: glassM2,
        faceTiltDeg: pane.tiltDeg,
        film: pane.filmOutside,
        nightResistance: 0,
      };
      add(endA(chain), zoneFrom, outer);
    }
    add(endB(chain), zoneTo, {
      areaM2: glassM2,
      faceTiltDeg: 180 - pane.tiltDeg,
      film: pane.filmInside,
      nightResistance: pane.nightResistance,
    });
  }
  for (const { zone, canopy, planting } of layout.beds) {
    if (canopy < 0) continue;
    const convection = leafConvection(
      planting.leafAreaIndex,
      planting.boundaryResistance,
      layout.roomDensity * SPECIFIC_HEAT_AIR,
    );
    add(endB(canopy), zone, {
      areaM2: planting.bedM2,
      faceTiltDeg: 90,
      film: { kind: 'fixed', convection, radiation: 'computed' },
      nightResistance: 0,
    });
  }
  return sides;
}

/** Every face to outdoors. */
export function outdoorSidesOf(layout: Layout, stepper: Stepper): OutdoorSide[] {
  const sides: OutdoorSide[] = [];
  const add = (
    chain: number,
    of: { areaM2: number; emissivity: number; film: Film; exposed: boolean; tiltDeg: number },
  ) => {
    const cosine = cos(of.tiltDeg * DEG);
    const view = (1 + cosine) / 2;
    // Near the horizon the sky is nearly as warm as the air: √view of what is seen of it counts as sky.
    sides.push({
      ...of,
      end: endA(chain),
      node: nodeA(stepper.first, chain),
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
