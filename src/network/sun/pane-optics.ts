// Light and a pane: its glass system in; shares transmitted and absorbed per sheet by angle, from outside and
// for diffuse light, out. Tables run over the cosine of the angle, which needs no arc cosine in the loop.

import type { GlassSystem } from '../../model/model.ts';
import { acos } from '../../physics/elementary.ts';
import { type AngularTable, angularTable } from '../../physics/glass-angular.ts';
import { BARE_EMISSIVITY, type GlazingPath, glazingPath } from '../../physics/glass-u-value.ts';

/** Entries over cos 0…1; linear between them, error below 0.001 above cos 0.05. */
const ENTRIES = 257;

/** Clear float glass behind named glazing: index and extinction of common soda-lime glass, from memory, high. */
const FLOAT_INDEX = 1.526;
const FLOAT_EXTINCTION = 19.6;

export interface PaneOptics {
  /** by i / (ENTRIES − 1) = cos θ */
  readonly transmittance: Float64Array;
  /** one array a node of the pane, outer first */
  readonly absorbed: readonly Float64Array[];
  readonly diffuseTransmittance: number;
  readonly diffuseAbsorbed: readonly number[];
}

const known = new Map<string, PaneOptics>();

/** Tables of a glass system; remembered by value, since they cost a few milliseconds. */
export function opticsOf(glass: GlassSystem): PaneOptics {
  const key = JSON.stringify([
    glass.sheets,
    glass.sheetM,
    glass.optics,
    glass.gapM,
    glass.gas,
    glass.gapEmissivity,
    glass.insideEmissivity,
    glass.sheetConductivity,
  ]);
  const found = known.get(key);
  if (found) return found;
  const made = byCosine(tableOf(glass), glass.sheets);
  known.set(key, made);
  return made;
}

/** Value at a cosine of the angle of incidence, 0…1. Every hour of every pane: no guards. */
export function atCosine(table: Float64Array, cosine: number): number {
  const place = cosine * (ENTRIES - 1);
  const below = Math.min(Math.floor(place), ENTRIES - 2);
  return table[below]! + (place - below) * (table[below + 1]! - table[below]!);
}

function tableOf(glass: GlassSystem): AngularTable {
  const { optics } = glass;
  if (optics.kind === 'clear')
    return angularTable({
      panes: glass.sheets,
      refractiveIndex: optics.refractiveIndex,
      extinctionPerM: optics.extinctionPerM,
      thicknessM: glass.sheetM,
    });
  return angularTable({
    panes: glass.sheets,
    refractiveIndex: FLOAT_INDEX,
    extinctionPerM: FLOAT_EXTINCTION,
    thicknessM: glass.sheetM,
    solarTransmittanceNormal: optics.solarTransmittance,
    solarHeatGainNormal: optics.solarHeatGain,
    inwardFractions: ratedPath(glass).inwardFractions,
  });
}

/** U-value and inward-flowing share of each sheet's absorbed heat under the conditions U-values are rated in (EN 673). */
export function ratedPath(glass: GlassSystem): GlazingPath {
  const gap = {
    widthM: glass.gapM,
    gas: glass.gas,
    emissivityOuter: BARE_EMISSIVITY,
    emissivityInner: glass.gapEmissivity,
  };
  return glazingPath(
    {
      panes: Array.from({ length: glass.sheets }, () => ({
        thicknessM: glass.sheetM,
        conductivity: glass.sheetConductivity,
      })),
      gaps: Array.from({ length: glass.sheets - 1 }, () => gap),
      insideEmissivity: glass.insideEmissivity,
    },
    90,
  );
}

/** Single glass is two nodes (half sheets): its absorbed part is shared between them. */
function byCosine(table: AngularTable, sheets: number): PaneOptics {
  const nodes = sheets === 1 ? 2 : sheets;
  const column = (of: (deg: number) => number) =>
    Float64Array.from({ length: ENTRIES }, (_, i) => {
      const deg = (acos(i / (ENTRIES - 1)) * 180) / Math.PI;
      const below = Math.min(Math.floor(deg), 89);
      return of(below) + (deg - below) * (of(below + 1) - of(below));
    });
  const share = sheets === 1 ? 0.5 : 1;
  const sheetOf = (node: number) => (sheets === 1 ? 0 : node);
  const nodeIndices = Array.from({ length: nodes }, (_, i) => i);
  return {
    transmittance: column((deg) => table.transmittance[deg]!),
    absorbed: nodeIndices.map((node) => column((deg) => share * table.absorbed[sheetOf(node)]![deg]!)),
    diffuseTransmittance: table.diffuseTransmittance,
    diffuseAbsorbed: nodeIndices.map((node) => share * table.diffuseAbsorbed[sheetOf(node)]!),
  };
}
