// Where the sun of a year falls, written out before a run: a laid-out model, the light of its panes and the climate in;
// hourly watts on glass sheets, on outside faces, and into each zone by kind, out.

import { beamPast, diffusePast } from '../../physics/transpiration.ts';
import { planeIrradiance } from '../../weather/prepared/plane-irradiance.ts';
import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Layout, PaneChain } from '../layout/layout.ts';
import { nodeA } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import { BEAM_ON_BACK, BEAM_ON_FLOOR, DIFFUSE } from './light-distribution.ts';
import type { PaneLight } from './pane-light.ts';

/** By place of panes and member, per m² of glass; null for panes between zones. */
export type PaneLights = readonly (readonly (PaneLight | null)[])[];

/** A year's sun on something [W], of which `scale` are there. */
export interface SunOn {
  readonly watt: Float64Array;
  readonly scale: number;
}

export interface SheetSun extends SunOn {
  readonly node: number;
  readonly zone: number;
}

export interface OutsideSun extends SunOn {
  readonly chain: number;
  readonly node: number;
}

/** A pane with covers, which stands alone in its place: its sun is not known before the run (covered-light.ts). */
function isCovered({ pane }: PaneChain['members'][number]): boolean {
  return (pane.covers?.length ?? 0) > 0;
}

/** Sun taken up in the sheets of a place's panes, covered ones left out. */
export function sheetsSun(
  { members, chain, zoneTo }: PaneChain,
  light: readonly (PaneLight | null)[],
  stepper: Stepper,
): SheetSun[] {
  if (isCovered(members[0]!)) return [];
  return (light[0]?.absorbedW ?? []).map((_, sheet): SheetSun => {
    const parts = members.map(({ glassM2 }, m) => ({ watt: light[m]!.absorbedW[sheet]!, scale: glassM2 }));
    return { node: nodeA(stepper.first, chain) + sheet, zone: zoneTo, ...together(parts) };
  });
}

/** Several years of sun as one; a single one as it stands. */
function together(parts: readonly SunOn[]): SunOn {
  if (parts.length === 1) return parts[0]!;
  const sum = new Float64Array(HOURS);
  for (const { watt, scale } of parts) addTo(sum, watt, scale);
  return { watt: sum, scale: 1 };
}

/** Hourly light that enters each zone from outdoors by kind [W], but for covered panes: row 3 · zone + kind. */
export function sourcesOf(layout: Layout, light: PaneLights, zones: number): Float64Array[] {
  const sources = Array.from({ length: 3 * zones }, () => new Float64Array(HOURS));
  layout.panes.forEach(({ members, zoneTo }, p) => {
    const row = 3 * zoneTo;
    members.forEach((member, m) => {
      const { glassM2 } = member;
      const pane = light[p]![m];
      if (!pane || isCovered(member)) return;
      addTo(sources[row + BEAM_ON_FLOOR]!, pane.beamFloorW, glassM2);
      addTo(sources[row + BEAM_ON_BACK]!, pane.beamBackW, glassM2);
      addTo(sources[row + DIFFUSE]!, pane.diffuseW, glassM2);
    });
  });
  return sources;
}

/** Beam that falls on a bed: how much more of the floor's beam its leaves catch of the beam than of diffuse light. */
export interface BeamOnBed {
  /** of the floor's beam */
  readonly row: number;
  /** by hour, share of it, −1…1; and of the beam known before the run [W] */
  readonly shift: Float64Array;
  readonly watt: Float64Array;
}

/**
 * The sun's height decides how much of the beam leaves catch; light-distribution.ts takes what they catch of diffuse light for
 * both, so this much more (less, from a high sun) is to move from the ground to the leaves.
 */
export function beamsOnBeds(
  layout: Layout,
  sources: readonly Float64Array[],
  climate: PreparedClimate,
): BeamOnBed[] {
  return layout.beds.map(({ zone, planting: { leafAreaIndex } }) => {
    const row = 3 * zone + BEAM_ON_FLOOR;
    const asDiffuse = diffusePast(leafAreaIndex);
    const shift = new Float64Array(HOURS);
    const watt = new Float64Array(HOURS);
    for (let hour = 0; hour < HOURS; hour++) {
      const sinHeight = climate.cosZenith[hour]!;
      if (sinHeight <= 0) continue;
      shift[hour] = asDiffuse - beamPast(leafAreaIndex, sinHeight);
      watt[hour] = shift[hour]! * sources[row]![hour]!;
    }
    return { row, shift, watt };
  });
}

function addTo(sum: Float64Array, part: Float64Array, scale: number): void {
  for (let hour = 0; hour < HOURS; hour++) sum[hour]! += scale * part[hour]!;
}

/** Sun taken up by the outside of exposed faces. */
export function outsideSunOf(layout: Layout, stepper: Stepper, climate: PreparedClimate): OutsideSun[] {
  return layout.elements.flatMap(({ members, chain }): OutsideSun[] => {
    const parts = members.flatMap(({ a, areaM2 }): SunOn[] => {
      if (a.kind !== 'outdoors' || !a.exposed) return [];
      const { total } = planeIrradiance(climate, a.tiltDeg, a.azimuthDeg);
      return [{ watt: total, scale: areaM2 * a.absorptance }];
    });
    return parts.length > 0 ? [{ chain, node: nodeA(stepper.first, chain), ...together(parts) }] : [];
  });
}
