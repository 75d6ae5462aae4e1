// Discretises an element: divides its layers into the nodes of a chain. An element in; capacities, links and node depths out.
// Cells are a quarter of the 24 h penetration depth δ = √(λT/(πρc)) at faces that feel the day and grow to a third.
// They grow on beyond 2.5 δ from every such face, or beyond 1 δ where the far side is ground or nothing and no
// daily wave has to come through. Light layers need no more cells than their heat capacity is worth. Each face to
// a zone or outdoors has a massless surface node, where film, sun and long-wave meet; cell centres hold the mass.
// Error against ISO 13786: measured in tests/published/wall-discretisation.test.ts.

import type { Element } from '../../model/model.ts';
import { dailyDepth } from '../../physics/wall-response.ts';

/** Cells per 24 h penetration depth at a face that feels the day. */
const CELLS_PER_DEPTH = 4;

/** Largest cell where the daily wave still matters, in δ times 4 / CELLS_PER_DEPTH. */
const LARGEST_NEAR = 4 / 3;
const NEAR_DEPTHS = 2.5;
const NEAR_DEPTHS_ONE_SIDED = 1;
/** A cell holding less than this, times 4 / CELLS_PER_DEPTH, would change nothing that can be seen [J/(m²K)]. */
const LEAST_CELL = 5000;

/** Cell growth per penetration depth travelled from the nearest such face, and beyond NEAR_DEPTHS. */
const GROWTH = 0.15;
const GROWTH_BEYOND = 0.7;
/** Between a mixed layer (water) and its faces: taken as no resistance; finite so that a link exists [W/(m²K)]. */
const MIXED_FILM = 1e4;
/** Stands in for the mass of an element whose layers have none, so that both faces stay defined [J/(m²K)]. */
const LEAST_CAPACITY = 100;

export interface Discretisation {
  /** [J/K] by node from face a to b */
  readonly capacity: readonly number[];
  /** [W/K] between nodes */
  readonly link: readonly number[];
  /** distance of each node from face a [m] */
  readonly depthM: readonly number[];
  /** from node 0 to face a itself [m²K/W]; 0 where face a has a surface node */
  readonly resistanceToA: number;
}

/**
 * Cut an element into chain nodes.
 *
 * @param element layers from face a to face b; thickness and conductivity above 0
 * @param cellsPerDepth cells per daily penetration depth at the faces; 1…100
 */
export function discretise(element: Element, cellsPerDepth: number = CELLS_PER_DEPTH): Discretisation {
  const area = element.areaM2;
  const surfaceAtA = element.a.kind === 'zone' || element.a.kind === 'outdoors';
  const capacity: number[] = [];
  const depthM: number[] = [];
  const resistance: number[] = [];
  let pending = 0;
  let depth = 0;
  const place = (joulePerM2: number, at: number) => {
    if (capacity.length > 0) resistance.push(pending);
    capacity.push(joulePerM2 * area);
    depthM.push(at);
  };
  if (surfaceAtA) place(0, 0);
  let resistanceToA = 0;
  for (const { layer, thicknesses } of cellsOf(element, cellsPerDepth, surfaceAtA)) {
    for (const thickness of thicknesses) {
      const half = layer.mixed ? 1 / MIXED_FILM : thickness / 2 / layer.conductivity;
      const volumetric = layer.density * layer.specificHeat;
      pending += half;
      if (volumetric > 0) {
        if (capacity.length === 0) resistanceToA = pending;
        place(volumetric * thickness, depth + thickness / 2);
        pending = 0;
      }
      pending += half;
      depth += thickness;
    }
  }
  place(0, depth);
  if (!surfaceAtA && capacity.length === 1) resistanceToA = pending;
  if (!capacity.some((value) => value > 0)) capacity[capacity.length - 1] = LEAST_CAPACITY * area;
  return { capacity, link: resistance.map((r) => area / r), depthM, resistanceToA };
}

/** Each layer with the thicknesses of its cells, a to b. */
function cellsOf(element: Element, cellsPerDepth: number, feelsAtA: boolean) {
  const total = element.layers.reduce((sum, layer) => sum + layer.thicknessM / dailyDepth(layer), 0);
  let travelled = 0;
  return element.layers.map((layer) => {
    const depth = dailyDepth(layer);
    if (layer.mixed || depth === Number.POSITIVE_INFINITY) return { layer, thicknesses: [layer.thicknessM] };
    const span = layer.thicknessM / depth;
    const byDepth = cellFractions(travelled, span, total, cellsPerDepth, feelsAtA).map((x) => x * depth);
    travelled += span;
    const worth =
      (layer.thicknessM * layer.density * layer.specificHeat * cellsPerDepth) /
      (LEAST_CELL * CELLS_PER_DEPTH);
    const most = Math.max(1, Math.ceil(worth));
    if (byDepth.length <= most) return { layer, thicknesses: byDepth };
    return { layer, thicknesses: new Array<number>(most).fill(layer.thicknessM / most) };
  });
}

/**
 * Cell sizes of one layer in units of its δ: marched from the face nearest to each point, then stretched to
 * fill the layer exactly.
 */
function cellFractions(
  from: number,
  span: number,
  total: number,
  cellsPerDepth: number,
  feelsAtA: boolean,
): number[] {
  const nearDepths = feelsAtA ? NEAR_DEPTHS : NEAR_DEPTHS_ONE_SIDED;
  const wanted = (at: number) => {
    const nearest = feelsAtA ? Math.min(at, total - at) : total - at;
    const near = Math.min(1 + GROWTH * Math.max(0, nearest), LARGEST_NEAR);
    return (near * (1 + GROWTH_BEYOND * Math.max(0, nearest - nearDepths))) / cellsPerDepth;
  };
  const sizes: number[] = [];
  for (let at = 0; at < span; ) {
    const first = wanted(from + at);
    const size = (first + wanted(Math.min(from + at + first, from + span))) / 2;
    sizes.push(size);
    at += size;
  }
  const sum = sizes.reduce((a, b) => a + b, 0);
  const last = sizes.at(-1)!;
  if (sizes.length > 1 && sum - span > last / 2) {
    sizes.pop();
    const scale = span / (sum - last);
    return sizes.map((size) => size * scale);
  }
  return sizes.map((size) => (size * span) / sum);
}
