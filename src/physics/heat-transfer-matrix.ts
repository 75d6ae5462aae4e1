// How a layered wall answers a temperature that swings with a period (a day, a year): layers, films and period in;
// U-value, admittances, decrement factor, time shift and areal heat capacities out.
// Side 1 is inside, side 2 outside, layers listed from inside to outside; heat positive from side 1 to side 2.
// Source: ISO 13786:2017, heat transfer matrices.
import {
  type Complex,
  type ComplexMatrix,
  cosh,
  divide,
  modulus,
  multiply,
  multiplyMatrices,
  scale,
  sinh,
} from './complex.ts';
import { atan2 } from './elementary.ts';
import { requireRange } from './require-range.ts';
import { type ConductingLayer, penetrationDepth } from './wall-response.ts';

export interface WallLayer extends ConductingLayer {
  readonly thicknessM: number;
  /** stirred by its own convection (water in drums): stores heat, has no resistance */
  readonly mixed?: boolean;
}

export interface WallTransfer {
  /** steady, films included [W/(m²·K)] */
  readonly uValue: number;
  /** [θ₂, q₂] = Z · [θ₁, q₁] */
  readonly matrix: ComplexMatrix;
  /** inside and outside thermal admittance [W/(m²·K)] */
  readonly y11: Complex;
  readonly y22: Complex;
  /** periodic transmittance [W/(m²·K)] */
  readonly y12: Complex;
  /** |Y12|/U, 0…1 */
  readonly decrement: number;
  /** of the heat flow inside after the temperature outside [h]; wrapped into (−period, 0], so a delay is negative */
  readonly timeShiftH: number;
  /** areal heat capacities of the two sides [J/(m²·K)] */
  readonly kappa1: number;
  readonly kappa2: number;
}

/**
 * Periodic thermal characteristics of a wall.
 *
 *   Z = Z_se · Z_n … Z_1 · Z_si;  Y11 = −Z11/Z12, Y22 = −Z22/Z12, Y12 = −1/Z12;  κ = (P/2π) |(Z_mm − 1)/Z12|
 *
 * @param layers inside to outside
 * @param insideResistance film R_si [m²K/W]; ≥ 0
 * @param outsideResistance film R_se [m²K/W]; ≥ 0; 0 where a temperature is prescribed at the last layer's face
 * @param periodS period [s]; 60…10⁹
 * @returns see WallTransfer
 * Error: round-off (1e-6 of an independent solution, tests/published/heat-transfer-matrix.test.ts) for layers up to about 300
 *   times the penetration depth; beyond that the numbers overflow.
 * Source: ISO 13786:2017.
 */
export function wallTransfer(
  layers: readonly WallLayer[],
  insideResistance: number,
  outsideResistance: number,
  periodS: number,
): WallTransfer {
  requireRange('insideResistance', insideResistance, 0, Number.POSITIVE_INFINITY, 'm²K/W');
  requireRange('outsideResistance', outsideResistance, 0, Number.POSITIVE_INFINITY, 'm²K/W');
  requireRange('periodS', periodS, 60, 1e9, 's');
  let matrix = resistanceMatrix(insideResistance);
  let resistance = insideResistance + outsideResistance;
  for (const layer of layers) {
    requireLayer(layer);
    matrix = multiplyMatrices(layerMatrix(layer, periodS), matrix);
    resistance += layer.mixed ? 0 : layer.thicknessM / layer.conductivity;
  }
  matrix = multiplyMatrices(resistanceMatrix(outsideResistance), matrix);

  const minus = (a: Complex): Complex => scale(a, -1);
  const { z11, z12, z22 } = matrix;
  const y12 = divide({ re: -1, im: 0 }, z12);
  const uValue = 1 / resistance;
  const phase = atan2(y12.im, y12.re) / (2 * Math.PI);
  const capacity = (z: Complex) =>
    (periodS / (2 * Math.PI)) * modulus(divide({ re: z.re - 1, im: z.im }, z12));
  return {
    uValue,
    matrix,
    y11: minus(divide(z11, z12)),
    y22: minus(divide(z22, z12)),
    y12,
    decrement: modulus(y12) / uValue,
    timeShiftH: ((phase > 0 ? phase - 1 : phase) * periodS) / 3600,
    kappa1: capacity(z11),
    kappa2: capacity(z22),
  };
}

function requireLayer(layer: WallLayer): void {
  requireRange('thicknessM', layer.thicknessM, 0, 50, 'm');
  requireRange('conductivity', layer.conductivity, 1e-4, 1000, 'W/mK');
  requireRange('density', layer.density, 0, 30_000, 'kg/m³');
  requireRange('specificHeat', layer.specificHeat, 0, 10_000, 'J/kgK');
}

function resistanceMatrix(resistance: number): ComplexMatrix {
  return { z11: ONE, z12: { re: -resistance, im: 0 }, z21: ZERO, z22: ONE };
}

/** Heat transfer matrix of one layer, ISO 13786 equation 14. */
function layerMatrix(layer: WallLayer, periodS: number): ComplexMatrix {
  const capacity = layer.density * layer.specificHeat * layer.thicknessM;
  if (layer.mixed) {
    return { z11: ONE, z12: ZERO, z21: { re: 0, im: (-2 * Math.PI * capacity) / periodS }, z22: ONE };
  }
  if (capacity === 0) return resistanceMatrix(layer.thicknessM / layer.conductivity);
  const depth = penetrationDepth(layer, periodS);
  const ratio = layer.thicknessM / depth;
  const wave: Complex = { re: ratio, im: ratio };
  const slope = scale({ re: 1, im: 1 }, layer.conductivity / depth);
  const [c, s] = [cosh(wave), sinh(wave)];
  return { z11: c, z12: scale(divide(s, slope), -1), z21: scale(multiply(slope, s), -1), z22: c };
}

const ONE: Complex = { re: 1, im: 0 };
const ZERO: Complex = { re: 0, im: 0 };
