// Heat lost through floors and walls against the ground: floor plan, ground and insulation in; steady U-values and the
// depth of the yearly wave out. A slab loses around its edge first, so area and exposed perimeter both count.
// Source: ISO 13370:2017 (from memory, high confidence; U-values checked by a published table). Ground: clay or silt
// 1.5 W/mK and 3.0 MJ/m³K; sand or gravel 2.0 and 2.0; rock 3.5 and 2.0.

import { log } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** ISO 13370 films [m²K/W]: floor, wall below ground, outside. */
const FLOOR_FILM = 0.17;
const WALL_FILM = 0.13;
const OUTSIDE_FILM = 0.04;

/** The year as the standard counts it [s]. */
const YEAR_S = 3.15e7;

export interface Ground {
  /** λ [W/(m·K)] */
  readonly conductivity: number;
  /** ρc [J/(m³·K)] */
  readonly heatCapacity: number;
}

export const GROUNDS = {
  clay: { conductivity: 1.5, heatCapacity: 3.0e6 },
  sand: { conductivity: 2.0, heatCapacity: 2.0e6 },
  rock: { conductivity: 3.5, heatCapacity: 2.0e6 },
} as const satisfies Record<string, Ground>;

export interface FloorPlan {
  /** [m²] */
  readonly areaM2: number;
  /** exposed to outdoors [m] */
  readonly perimeterM: number;
  /** thickness w of the outer walls [m] */
  readonly wallThicknessM: number;
  /** resistance R_f of the whole slab's insulation and covering [m²K/W] */
  readonly floorResistance: number;
  /** earth against the walls above the floor: how high it stands [m], and along how much of the perimeter, 0…1 */
  readonly berm?: { readonly heightM: number; readonly share: number };
}

/** Walls that stand in the ground. */
export interface BelowGround {
  /** depth z of the floor below the ground outside [m] */
  readonly depthM: number;
  /** resistance R_w of the wall, without films [m²K/W] */
  readonly wallResistance: number;
}

/**
 * Characteristic dimension.
 *
 *   B = A/(0.5 P)
 *
 * @returns [m]
 */
export function characteristicDimension(floor: FloorPlan): number {
  requireRange('areaM2', floor.areaM2, 0.1, 1e6, 'm²');
  requireRange('perimeterM', floor.perimeterM, 0.1, 1e5, 'm');
  return floor.areaM2 / (0.5 * floor.perimeterM);
}

/**
 * Thickness of ground that resists as much as the floor does.
 *
 *   d_f = w + λ (R_si + R_f + R_se)
 *
 * @returns [m]
 */
function equivalentThickness(floor: FloorPlan, ground: Ground): number {
  requireRange('wallThicknessM', floor.wallThicknessM, 0, 5, 'm');
  requireRange('floorResistance', floor.floorResistance, 0, 50, 'm²K/W');
  requireRange('conductivity', ground.conductivity, 0.1, 10, 'W/mK');
  return floor.wallThicknessM + ground.conductivity * (FLOOR_FILM + floor.floorResistance + OUTSIDE_FILM);
}

/**
 * U-value of a slab on the ground, or of the floor of a house with earth against its walls.
 *
 *   d < B: U = 2λ/(πB + d) · ln(πB/d + 1);  else U = λ/(0.457 B + d);  d = d_f + z/2, z the mean depth of the floor below
 *   the ground outside
 *
 * @returns [W/(m²·K)] of the floor area, edge included
 */
export function slabUValue(floor: FloorPlan, ground: Ground): number {
  const depthM = floor.berm === undefined ? 0 : floor.berm.heightM * floor.berm.share;
  requireRange('depthM', depthM, 0, 20, 'm');
  const dimension = characteristicDimension(floor);
  const thickness = equivalentThickness(floor, ground) + depthM / 2;
  const { conductivity } = ground;
  if (thickness >= dimension) return conductivity / (0.457 * dimension + thickness);
  const path = Math.PI * dimension;
  return ((2 * conductivity) / (path + thickness)) * log(path / thickness + 1);
}

/**
 * U-value of a wall in the ground.
 *
 *   U = 2λ/(πz) · (1 + 0.5 d_f/(d_f + z)) · ln(z/d_w + 1), d_w = λ (R_si + R_w + R_se); d_f no more than d_w
 *
 * @returns [W/(m²·K)] of the wall below ground
 */
export function basementWallUValue(floor: FloorPlan, ground: Ground, wall: BelowGround): number {
  const wallDepth = wallThicknessInGround(ground, wall);
  const floorDepth = Math.min(equivalentThickness(floor, ground), wallDepth);
  const { conductivity } = ground;
  return (
    ((2 * conductivity) / (Math.PI * wall.depthM)) *
    (1 + (0.5 * floorDepth) / (floorDepth + wall.depthM)) *
    log(wall.depthM / wallDepth + 1)
  );
}

/**
 * Correction of a strip of insulation along the edge of a slab.
 *
 *   Ψ = −(λ/π) [ln(D/d_f + 1) − ln(D/(d_f + d′) + 1)], d′ = λ R_n − d_n;  upright: D counts twice
 *
 * @param strip width or depth D [m], its resistance R_n [m²K/W] and thickness d_n [m]
 * @returns Ψ [W/(m·K)], negative; the floor's U-value changes by 2 Ψ/B
 */
export function edgeInsulationPsi(
  floor: FloorPlan,
  ground: Ground,
  strip: {
    readonly lies: 'flat' | 'upright';
    readonly reachM: number;
    readonly resistance: number;
    readonly thicknessM: number;
  },
): number {
  requireRange('reachM', strip.reachM, 0, 10, 'm');
  requireRange('resistance', strip.resistance, 0, 50, 'm²K/W');
  const reach = strip.lies === 'upright' ? 2 * strip.reachM : strip.reachM;
  const depth = equivalentThickness(floor, ground);
  const added = Math.max(ground.conductivity * strip.resistance - strip.thicknessM, 0);
  return (-ground.conductivity / Math.PI) * (log(reach / depth + 1) - log(reach / (depth + added) + 1));
}

/**
 * Depth at which the yearly wave in the ground has shrunk to 1/e.
 *
 *   δ = √(3.15·10⁷ λ/(π ρc))
 *
 * @returns [m]: 2.2 clay, 3.2 sand, 4.2 rock
 */
export function periodicDepth(ground: Ground): number {
  requireRange('heatCapacity', ground.heatCapacity, 1e5, 1e7, 'J/m³K');
  return Math.sqrt((YEAR_S * ground.conductivity) / (Math.PI * ground.heatCapacity));
}

/** d_w [m]. */
function wallThicknessInGround(ground: Ground, wall: BelowGround): number {
  requireRange('depthM', wall.depthM, 0.01, 20, 'm');
  requireRange('wallResistance', wall.wallResistance, 0, 50, 'm²K/W');
  return ground.conductivity * (WALL_FILM + wall.wallResistance + OUTSIDE_FILM);
}
