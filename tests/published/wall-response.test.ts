// Sources: ISO 13786:2017, periodic properties of ten build-ups at 24 h (table wall-response.json, computed by matrix
// exponential and by a fine finite-volume solution) and of the walls of the ANSI/ASHRAE 140 fabric cases; diurnal heat
// capacity of insulated-back slabs, US national-laboratory method of 1983 (values computed independently).
import { describe, expect, test } from 'vitest';
import type { WallLayer } from '../../src/physics/wall-response.ts';
import type { Complex } from '../reference/complex.ts';
import { diurnalHeatCapacity, wallTransfer } from '../reference/wall-transfer.ts';
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
        mark: 'document',
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

describe('walls of the fabric cases', () => {
  const layer = (
    thicknessM: number,
    conductivity: number,
    density: number,
    specificHeat: number,
  ): WallLayer => ({
    thicknessM,
    conductivity,
    density,
    specificHeat,
  });
  const WALLS = {
    light_wall: [layer(0.012, 0.16, 950, 840), layer(0.066, 0.04, 12, 840), layer(0.009, 0.14, 530, 900)],
    heavy_wall: [layer(0.1, 0.51, 1400, 1000), layer(0.0615, 0.04, 10, 1400), layer(0.009, 0.14, 530, 900)],
    roof: [layer(0.01, 0.16, 950, 840), layer(0.1118, 0.04, 12, 840), layer(0.019, 0.14, 530, 900)],
    common_wall_960: [layer(0.2, 0.51, 1400, 1000)],
  };
  interface Reference {
    readonly weather_free_tests: {
      readonly periodic_properties_ISO_13786_method_24h: Readonly<Record<string, readonly number[]>>;
    };
  }
  const reference =
    readJson<Reference>('fabric-tests.json').weather_free_tests.periodic_properties_ISO_13786_method_24h;

  test.each(Object.entries(WALLS))('%s', (name, layers) => {
    const outside = name === 'common_wall_960' ? 1 / 8.29 : 1 / 29.3;
    const ours = wallTransfer(layers, 1 / 8.29, outside, 86_400);
    const [u, y11, decrement, lag, kappaIn, kappaOut] = reference[name]!;
    const rows = [
      ['U-value', u!, ours.uValue, 'W/m²K', 0.00006],
      ['admittance', y11!, Math.hypot(ours.y11.re, ours.y11.im), 'W/m²K', 0.0006],
      ['decrement factor', decrement!, ours.decrement, '', 0.0006],
      ['time lag', lag!, -ours.timeShiftH, 'h', 0.006],
      ['areal capacity inside', kappaIn!, ours.kappa1 / 1000, 'kJ/m²K', 0.006],
      ['areal capacity outside', kappaOut!, ours.kappa2 / 1000, 'kJ/m²K', 0.006],
    ] as const;
    for (const [quantity, value, mine, unit, allowed] of rows) {
      // Allowed: the rounding of the printed digits.
      check({
        source: 'ANSI/ASHRAE 140 walls by ISO 13786',
        case: name.replaceAll('_', ' '),
        quantity,
        reference: value,
        ours: mine,
        allowed,
        unit,
        mark: 'computed',
      });
    }
  });
});

describe('diurnal heat capacity of slabs with an insulated back', () => {
  const MATERIALS = [
    ['concrete', 1.75, 2300, 1000, [114.5, 215.3, 265.2, 264.5, 239.3], 235.3, 0.171, 268.9],
    ['rammed earth', 1.0, 1950, 900, [87.1, 157.0, 177.5, 168.6, 155.1], 155.3, 0.148, 177.6],
    ['adobe', 0.7, 1600, 900, [71.2, 124.3, 133.7, 125.0, 117.1], 117.7, 0.137, 134.6],
    ['brick', 0.77, 1800, 1000, [88.8, 150.1, 155.2, 144.1, 137.3], 138.1, null, null],
    ['softwood', 0.13, 500, 1600, [36.6, 41.8, 38.0, 37.6, 37.8], 37.8, null, null],
  ] as const;
  const THICKNESSES = [0.05, 0.1, 0.15, 0.2, 0.3];
  const capacity = (k: number, rho: number, c: number, thicknessM: number) =>
    diurnalHeatCapacity({ thicknessM, conductivity: k, density: rho, specificHeat: c }) / 1000;
  const enter = (name: string, reference: number, ours: number, allowed = 0.06) =>
    check({
      source: 'Diurnal heat capacity, 1983 method',
      case: name,
      quantity: 'diurnal heat capacity',
      reference,
      ours,
      allowed,
      unit: 'kJ/m²K',
      mark: 'computed',
    });

  test('five materials, five thicknesses and the semi-infinite limit', () => {
    for (const [name, k, rho, c, values, limit, best, highest] of MATERIALS) {
      expect(values).toHaveLength(THICKNESSES.length);
      for (const [i, reference] of values.entries()) {
        enter(`${name}, ${THICKNESSES[i]! * 1000} mm`, reference, capacity(k, rho, c, THICKNESSES[i]!));
      }
      enter(`${name}, very thick`, limit, capacity(k, rho, c, 5));
      if (best !== null)
        enter(`${name}, best thickness ${best * 1000} mm`, highest, capacity(k, rho, c, best));
    }
  });

  test('stirred water stores in proportion to its depth', () => {
    const water = { conductivity: 0.6, density: 1000, specificHeat: 4190, mixed: true };
    for (const [i, reference] of [209, 419, 628, 838, 1256].entries()) {
      // Printed to whole kilojoules; 209.5 and 628.5 are halves.
      enter(
        `water, ${THICKNESSES[i]! * 1000} mm`,
        reference,
        diurnalHeatCapacity({ ...water, thicknessM: THICKNESSES[i]! }) / 1000,
        1.01,
      );
    }
  });
});
