// Sections through the contacts a house has with the ground, for ground-section.ts: a slab at grade, bare, insulated
// under it or at its edge, and a floor and wall behind a berm. Dimensions and soil in; a section out.
// Films are ISO 13370's: floor 0.17, wall 0.13, outside 0.04 m²K/W. Nothing passes through the strip w under the outer
// wall, which is how that standard's formulas see the wall.

import type { Block, Section, Span, Surface } from './ground-section.ts';

const FLOOR_FILM = 0.17;
const WALL_FILM = 0.13;
const OUTSIDE_FILM = 0.04;
/** Soil beyond the floor and below it, in characteristic dimensions; at least so many metres. */
const REACH = 5;
const LEAST_REACH_M = 25;
/** Gap that lets nothing through where walls and floors end [m]. */
const BREAK_M = 0.005;

export interface Solid {
  readonly conductivity: number;
  readonly heatCapacity: number;
}

export interface SolidLayer extends Solid {
  readonly thicknessM: number;
}

export interface FloorCase {
  /** B = A/(0.5 P) [m] */
  readonly dimensionM: number;
  readonly wallThicknessM: number;
  readonly soil: Solid;
  /** from the room down */
  readonly layers: readonly SolidLayer[];
  /** insulation down from the top of the ground at the floor's edge, and level under that edge */
  readonly upright?: SolidLayer & { readonly reachM: number };
  readonly level?: SolidLayer & { readonly reachM: number };
}

const INDOORS = () => 1;
const OUTDOORS = () => 0;

/**
 * Slab on the ground: its layers lie above the level of the soil and end in a break at the outer wall, so that their own
 * edge leaks nothing (ISO 13370 counts that leak apart, as the Ψ of the junction). Part 'floor'.
 */
export function slabSection(slab: FloorCase, reach = 1): Section {
  const half = slab.dimensionM / 2;
  const outside = half + slab.wallThicknessM;
  const far = reach * Math.max(LEAST_REACH_M, REACH * slab.dimensionM);
  const top = thicknessOf(slab.layers);
  const edge: Block[] = [];
  if (slab.upright) {
    const { thicknessM, reachM } = slab.upright;
    edge.push({ x: [half, half + thicknessM], z: [top, top + reachM], ...solid(slab.upright) });
  }
  if (slab.level) {
    const { thicknessM, reachM } = slab.level;
    edge.push({ x: [half - reachM, half], z: [top, top + thicknessM], ...solid(slab.level) });
  }
  return {
    widthM: half + far,
    depthM: top + far,
    soil: slab.soil,
    blocks: [...levelLayers(slab.layers, [0, half], 0), ...edge],
    voids: [{ x: [half, half + far], z: [0, top] }],
    surfaces: [
      level('floor', 0, [0, half], FLOOR_FILM, INDOORS),
      level('ground', top, [outside, half + far], OUTSIDE_FILM, OUTDOORS),
    ],
  };
}

export interface BermCase extends FloorCase {
  /** earth against the wall, above the top of the floor [m] */
  readonly heightM: number;
  /** from the room outwards */
  readonly wallLayers: readonly SolidLayer[];
}

/** Floor with earth up its wall, level outside; parts 'floor' and 'wall'. Nothing passes the wall's top. */
export function bermSection(berm: BermCase, reach = 1): Section {
  const half = berm.dimensionM / 2;
  const { heightM } = berm;
  const far = reach * Math.max(LEAST_REACH_M, REACH * berm.dimensionM);
  const thickness = thicknessOf(berm.wallLayers);
  let x = half;
  const wall = berm.wallLayers.map((layer): Block => {
    const from = x;
    x += layer.thicknessM;
    return { x: [from, x], z: [0, heightM - BREAK_M], ...solid(layer) };
  });
  const foot = heightM + thicknessOf(berm.layers);
  return {
    widthM: half + far,
    depthM: heightM + far,
    soil: berm.soil,
    blocks: [...wall, ...levelLayers(berm.layers, [0, half], heightM)],
    voids: [
      { x: [0, half], z: [0, heightM] },
      { x: [half, half + thickness], z: [heightM - BREAK_M, heightM] },
      { x: [half, half + BREAK_M], z: [heightM, foot] },
    ],
    surfaces: [
      level('floor', heightM, [0, half], FLOOR_FILM, INDOORS),
      {
        part: 'wall',
        lies: 'upright',
        at: half,
        span: [0, heightM - BREAK_M],
        resistance: WALL_FILM,
        indoorShare: INDOORS,
      },
      level('ground', 0, [half + thickness, half + far], OUTSIDE_FILM, OUTDOORS),
    ],
  };
}

function level(part: string, at: number, span: Span, resistance: number, indoorShare: () => number): Surface {
  return { part, lies: 'level', at, span, resistance, indoorShare };
}

function levelLayers(layers: readonly SolidLayer[], x: Span, top: number): Block[] {
  let z = top;
  return layers.map((layer) => {
    const from = z;
    z += layer.thicknessM;
    return { x, z: [from, z], ...solid(layer) };
  });
}

function solid({ conductivity, heatCapacity }: Solid): Solid {
  return { conductivity, heatCapacity };
}

function thicknessOf(layers: readonly SolidLayer[]): number {
  return layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
}
