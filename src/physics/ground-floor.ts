// Heat lost through floors and walls against the ground: floor plan, ground and insulation in; steady U-values and the
// yearly periodic coefficients out. A slab loses around its edge first, so area and exposed perimeter both count.
// Source: ISO 13370:2017 (from memory: U-values high confidence, checked by a published table; periodic coefficients of
// its annex high confidence, not checked against any document). Ground: clay or silt 1.5 W/mK and 3.0 MJ/m³K; sand or
// gravel 2.0 and 2.0; rock 3.5 and 2.0.
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
}

/** Walls that stand in the ground. */
export interface BelowGround {
  /** depth z of the floor below the ground outside [m] */
  readonly depthM: number;
  /** resistance R_w of the wall, without films [m²K/W] */
  readonly wallResistance: number;
}

/** Yearly swings: what the floor loses beyond the steady loss. */
export interface PeriodicCoupling {
  /** H_pi, per kelvin of the indoor swing [W/K] */
  readonly insideWPerK: number;
  /** heat flow ahead of the indoor swing [months] */
  readonly insideLeadMonths: number;
  /** H_pe, per kelvin of the outdoor swing [W/K] */
  readonly outsideWPerK: number;
  /** heat flow behind the outdoor swing [months] */
  readonly outsideLagMonths: number;
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
 * U-value of a slab on the ground.
 *
 *   d_f < B: U = 2λ/(πB + d_f) · ln(πB/d_f + 1);  else U = λ/(0.457 B + d_f)
 *
 * @returns [W/(m²·K)] of the floor area, edge included
 */
export function slabUValue(floor: FloorPlan, ground: Ground): number {
  return groundFloorUValue(floor, ground, 0);
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
    Math.log(wall.depthM / wallDepth + 1)
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
  return (
    (-ground.conductivity / Math.PI) * (Math.log(reach / depth + 1) - Math.log(reach / (depth + added) + 1))
  );
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

/**
 * Yearly periodic coupling of a slab, evenly insulated or not at all, or of a heated basement.
 *
 *   H_pi = A λ/d_f · √(2/((1 + δ/d_f)² + 1)), lead 1.5 − (12/2π) arctan(d_f/(d_f + δ))
 *   H_pe = 0.37 P λ ln(δ/d_f + 1), lag 1.5 − 0.42 ln(δ/d_f + 1)
 *   below ground: H_pi gains z P λ/d_w · √(2/((1 + δ/d_w)² + 1)); the logarithm in H_pe becomes
 *   e^(−z/δ) ln(δ/d_f + 1) + 2 (1 − e^(−z/δ)) ln(δ/d_w + 1)
 *
 * @param below depth and wall of a heated basement; null for a slab
 * @returns see PeriodicCoupling
 * Source: ISO 13370:2017 annex on periodic coefficients, from memory, high confidence, no check value found.
 */
export function periodicCoupling(
  floor: FloorPlan,
  ground: Ground,
  below: BelowGround | null,
): PeriodicCoupling {
  const delta = periodicDepth(ground);
  const depth = equivalentThickness(floor, ground);
  const { conductivity } = ground;
  const inside = (thickness: number) =>
    (conductivity / thickness) * Math.sqrt(2 / ((1 + delta / thickness) ** 2 + 1));
  const edge = Math.log(delta / depth + 1);
  let insideWPerK = floor.areaM2 * inside(depth);
  let reach = edge;
  if (below !== null) {
    const wallDepth = wallThicknessInGround(ground, below);
    const sunk = Math.exp(-below.depthM / delta);
    insideWPerK += below.depthM * floor.perimeterM * inside(wallDepth);
    reach = sunk * edge + 2 * (1 - sunk) * Math.log(delta / wallDepth + 1);
  }
  return {
    insideWPerK,
    insideLeadMonths: 1.5 - (12 / (2 * Math.PI)) * Math.atan(depth / (depth + delta)),
    outsideWPerK: 0.37 * floor.perimeterM * conductivity * reach,
    outsideLagMonths: 1.5 - 0.42 * edge,
  };
}

function groundFloorUValue(floor: FloorPlan, ground: Ground, depthM: number): number {
  requireRange('depthM', depthM, 0, 20, 'm');
  const dimension = characteristicDimension(floor);
  const thickness = equivalentThickness(floor, ground) + depthM / 2;
  const { conductivity } = ground;
  if (thickness >= dimension) return conductivity / (0.457 * dimension + thickness);
  const path = Math.PI * dimension;
  return ((2 * conductivity) / (path + thickness)) * Math.log(path / thickness + 1);
}

/** d_w [m]. */
function wallThicknessInGround(ground: Ground, wall: BelowGround): number {
  requireRange('depthM', wall.depthM, 0.01, 20, 'm');
  requireRange('wallResistance', wall.wallResistance, 0, 50, 'm²K/W');
  return ground.conductivity * (WALL_FILM + wall.wallResistance + OUTSIDE_FILM);
}
