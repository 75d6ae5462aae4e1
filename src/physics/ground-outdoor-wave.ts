// How the outdoor wave of a year arrives in a room through a floor on the ground or a wall against earth: construction,
// soil and sizes in; heat per square metre and kelvin of the swing outdoors out, as a complex number.
//
// Method. Every place of the floor or wall is reached from the ground's surface along an arc: π times its distance from
//   the edge under a floor, a quarter of a circle behind a wall. With m the transfer matrix of the construction and s the
//   arc, the heat that arrives is 1/(m22 Z sinh(ks) − m12/t), k = (1 + i)/δ, Z = 1/(λk): steady and at a warm, thin floor
//   the arc conducts; under a thick or well insulated one the face of the soil swings as t says. Behind a wall t is the
//   wave of undisturbed soil; under a floor, which heat reaches sideways only, that of a half-space whose top is half held
//   and half shut, erfc √(kx), once from either edge.
// Source: own derivation. The half-space is Sommerfeld's half-plane in its diffusive form (from memory, high confidence);
//   with no wall and much insulation it gives ISO 13370's 0.37 P λ δ/d, lag 1.5 months, as P λ δ/(2√2 d) at an eighth of
//   a year. What stands open is fitted to the two-dimensional sections of tests/reference/ground-section.ts: GAP.
// Error: against those sections, tests/published/ground-section.test.ts.

import { add, type Complex, cosh, divide, modulus, multiply, scale, sinh } from './complex.ts';
import { cos, exp, sin } from './elementary.ts';
import type { Ground } from './ground-floor.ts';
import { annualDampingDepth, annualWave } from './ground-temperature.ts';
import { type WallLayer, wallTransfer } from './heat-transfer-matrix.ts';

export const YEAR_S = 365 * 86_400;
const DAY_S = 86_400;
/** ISO 13370 outside film [m²K/W]. */
const OUTSIDE_FILM = 0.04;
/** Wall over the edge of a floor: how much longer its width makes the arcs (a half circle round its middle: π/2). */
const GAP = 1.3;
/** Places along a floor or wall; more change nothing beyond 0.2 %. */
const PLACES = 40;

export interface EdgeStrip {
  /** down from the ground's surface [m] */
  readonly depthM: number;
  /** [m²K/W] */
  readonly resistance: number;
}

/**
 * Outdoor wave through a floor on the ground.
 *
 * @param floor characteristic dimension B [m], thickness of the outer wall [m]
 * @param layers of the floor, from the room down
 * @param film inside [m²K/W]
 * @param edge upright insulation at the edge; null for none
 * @returns heat into the room per floor area [W/(m²·K)]; a negative argument is a lag
 */
export function outdoorWaveThroughSlab(
  floor: { readonly dimensionM: number; readonly wallThicknessM: number },
  layers: readonly WallLayer[],
  film: number,
  ground: Ground,
  edge: EdgeStrip | null,
): Complex {
  const { dimensionM, wallThicknessM } = floor;
  const soil = soilWave(ground);
  const from = arrival(layers, film, soil);
  let sum: Complex = { re: 0, im: 0 };
  for (let i = 0; i < PLACES; i++) {
    // Places crowd towards the edge, where most arrives.
    const share = (i + 0.5) / PLACES;
    const x = (dimensionM / 2) * share * share;
    const near = halfShut(scale(soil.k, x + wallThicknessM));
    const far = halfShut(scale(soil.k, dimensionM - x + wallThicknessM));
    const strip = edge !== null && x < edge.depthM ? edge.resistance : 0;
    const heat = from(Math.PI * x + GAP * wallThicknessM, add(near, far), strip);
    sum = add(sum, scale(heat, (2 * share) / PLACES));
  }
  return sum;
}

/**
 * What a berm leaves of the outdoor wave at a floor: where earth stands against the wall the wave comes from that much
 * further, and is e^(−z/δ) of itself and z/δ of its phase later, as ISO 13370 has it for the floors of basements (from
 * memory, high confidence).
 *
 * @param berm height of the earth [m] and share of the perimeter, 0…1
 * @returns factor to the wave; 1 without earth
 */
export function waveUnderBerm(
  berm: { readonly heightM: number; readonly share: number },
  ground: Ground,
): Complex {
  const reached = exponential(scale(soilWave(ground).k, -berm.heightM));
  return add({ re: 1 - berm.share, im: 0 }, scale(reached, berm.share));
}

/**
 * Outdoor wave through a wall against earth.
 *
 * @param heightM of the earth [m]
 * @param layers of the wall, from the room outwards
 * @param film inside [m²K/W]
 * @returns heat into the room per area of wall against earth [W/(m²·K)]; a negative argument is a lag
 */
export function outdoorWaveThroughWall(
  heightM: number,
  layers: readonly WallLayer[],
  film: number,
  ground: Ground,
): Complex {
  const soil = soilWave(ground);
  const from = arrival(layers, film, soil);
  let sum: Complex = { re: 0, im: 0 };
  for (let i = 0; i < PLACES; i++) {
    const x = (heightM * (i + 0.5)) / PLACES;
    sum = add(sum, scale(from((Math.PI / 2) * x, undisturbed(soil, x), 0), 1 / PLACES));
  }
  return sum;
}

interface SoilWave {
  readonly conductivity: number;
  /** [m²/day] */
  readonly diffusivity: number;
  /** (1 + i)/δ [1/m] */
  readonly k: Complex;
}

function soilWave({ conductivity, heatCapacity }: Ground): SoilWave {
  const diffusivity = (conductivity / heatCapacity) * DAY_S;
  const perMetre = 1 / annualDampingDepth(diffusivity);
  return { conductivity, diffusivity, k: { re: perMetre, im: perMetre } };
}

/** Swing of soil at a depth [m] that no house disturbs. */
function undisturbed({ diffusivity }: SoilWave, depthM: number): Complex {
  const { damping, lagDays } = annualWave(diffusivity, depthM);
  const angle = (2 * Math.PI * lagDays * DAY_S) / YEAR_S;
  return { re: damping * cos(angle), im: -damping * sin(angle) };
}

/** Heat that arrives inside, from length of an arc, swing of the shut soil's face, resistance of a strip on the way. */
function arrival(layers: readonly WallLayer[], film: number, { conductivity, k }: SoilWave) {
  const { z12, z22 } = wallTransfer(layers, film, 0, YEAR_S).matrix;
  const through = scale(z12, -1);
  const slope = scale(k, conductivity);
  return (arcM: number, shutSwing: Complex, strip: number): Complex => {
    const way = scale(k, arcM + OUTSIDE_FILM * conductivity);
    let inverse = add(divide(through, shutSwing), multiply(divide(sinh(way), slope), z22));
    if (strip > 0) {
      const taken = add(multiply(multiply(slope, sinh(way)), through), multiply(cosh(way), z22));
      inverse = add(inverse, scale(taken, strip));
    }
    return divide({ re: 1, im: 0 }, inverse);
  };
}

/** erfc √u, as e^(−u) · 2/(√(πu) + √(πu + 4)): 1 at 0, and right for large u; within 6 % between. */
function halfShut(u: Complex): Complex {
  const inner = scale(u, Math.PI);
  const roots = add(squareRoot(inner), squareRoot({ re: inner.re + 4, im: inner.im }));
  return scale(divide(exponential(scale(u, -1)), roots), 2);
}

function exponential(a: Complex): Complex {
  const size = exp(a.re);
  return { re: size * cos(a.im), im: size * sin(a.im) };
}

/** Of a number in the first quadrant. */
function squareRoot(a: Complex): Complex {
  const size = modulus(a);
  return { re: Math.sqrt((size + a.re) / 2), im: Math.sqrt(Math.max(0, size - a.re) / 2) };
}
