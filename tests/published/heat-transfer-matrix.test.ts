// Source: ISO 13786:2017, periodic properties of ten build-ups at 24 h (table wall-response.json, computed by matrix
// exponential and by a fine finite-volume solution).
import { describe, expect, test } from 'vitest';
import type { Complex } from '../../src/physics/complex.ts';
import { type WallLayer, wallTransfer } from '../../src/physics/heat-transfer-matrix.ts';
import { check } from './ledger.ts';
import { readJson } from './reference-table.ts';

/** Allowed relative errors; both sides are analytic, the tables print eight digits. */
const ANALYTIC = 1e-6;

interface PrintedComplex {
  readonly re: number;
  readonly im: number;
  readonly modulus: number;
}

interface PeriodicWall {
  readonly name: string;
  readonly Rsi: number;
  readonly Rse: number;
  readonly layers_inside_to_outside: readonly {
    readonly type: 'conduction' | 'resistance' | 'mixed';
    readonly d?: number;
    readonly lambda?: number;
    readonly rho?: number;
    readonly c?: number;
    readonly R?: number;
  }[];
  readonly U: number;
  readonly Z11: PrintedComplex;
  readonly Z12: PrintedComplex;
  readonly Z21: PrintedComplex;
  readonly Z22: PrintedComplex;
  readonly admittance_Y11: PrintedComplex;
  readonly admittance_Y22: PrintedComplex;
  readonly transmittance_Y12: PrintedComplex;
  readonly decrement_factor: number;
  readonly time_shift_h: number;
  readonly kappa1_J_m2K: number;
  readonly kappa2_J_m2K: number;
}

function layerOf(layer: PeriodicWall['layers_inside_to_outside'][number]): WallLayer {
  if (layer.type === 'resistance') {
    return { thicknessM: 0.01, conductivity: 0.01 / layer.R!, density: 0, specificHeat: 0 };
  }
  const mass = { thicknessM: layer.d!, density: layer.rho!, specificHeat: layer.c! };
  return layer.type === 'mixed'
    ? { ...mass, conductivity: 1, mixed: true }
    : { ...mass, conductivity: layer.lambda! };
}

describe('ISO 13786 at 24 h', () => {
  const walls = readJson<{ periodic_24h: readonly PeriodicWall[] }>('wall-response.json').periodic_24h;

  test('there are ten walls', () => {
    expect(walls).toHaveLength(10);
  });

  test.each(walls.map((wall) => [wall.name, wall] as const))('%s', (name, wall) => {
    const ours = wallTransfer(wall.layers_inside_to_outside.map(layerOf), wall.Rsi, wall.Rse, 86_400);
    const enter = (quantity: string, reference: number, value: number, allowed: number, unit: string) =>
      check({
        source: 'ISO 13786:2017',
        case: name,
        quantity,
        reference,
        ours: value,
        allowed,
        unit,
        mark: 'computed',
      });
    const complex = (quantity: string, reference: PrintedComplex, value: Complex, unit: string) => {
      // Relative to the modulus: a part may be all but zero.
      enter(`${quantity}, real part`, reference.re, value.re, ANALYTIC * reference.modulus, unit);
      enter(`${quantity}, imaginary part`, reference.im, value.im, ANALYTIC * reference.modulus, unit);
    };
    const relative = (quantity: string, reference: number, value: number, unit: string) =>
      enter(quantity, reference, value, ANALYTIC * Math.abs(reference), unit);
    complex('Z11', wall.Z11, ours.matrix.z11, '');
    complex('Z12', wall.Z12, ours.matrix.z12, 'm²K/W');
    complex('Z21', wall.Z21, ours.matrix.z21, 'W/m²K');
    complex('Z22', wall.Z22, ours.matrix.z22, '');
    complex('admittance Y11', wall.admittance_Y11, ours.y11, 'W/m²K');
    complex('admittance Y22', wall.admittance_Y22, ours.y22, 'W/m²K');
    complex('transmittance Y12', wall.transmittance_Y12, ours.y12, 'W/m²K');
    relative('U-value', wall.U, ours.uValue, 'W/m²K');
    relative('decrement factor', wall.decrement_factor, ours.decrement, '');
    relative('time shift', wall.time_shift_h, ours.timeShiftH, 'h');
    relative('areal capacity inside', wall.kappa1_J_m2K, ours.kappa1, 'J/m²K');
    relative('areal capacity outside', wall.kappa2_J_m2K, ours.kappa2, 'J/m²K');
  });
});
