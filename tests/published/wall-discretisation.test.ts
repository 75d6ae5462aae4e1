// Layered walls divided into nodes, against the exact 24 h response of ISO 13786: admittance, decrement and time
// shift from the chain's own frequency response (no time-step error), within the node table's error for a
// third of the penetration depth; and the step response of a closed cube (ISO 13791, conduction set).
// Sources: wall-response.json (computed, checked two ways); ISO 13791 results from memory, high confidence.
import { describe, expect, test } from 'vitest';
import type { Element } from '../../src/model/model.ts';
import { discretise } from '../../src/network/layout/discretisation.ts';
import { compileStepper } from '../network/compile-stepper.ts';
import { check } from './ledger.ts';
import { elementOf, LEAST_DECREMENT, type Periodic, periodicWalls as walls } from './periodic-walls.ts';

/** Shorter than a run's 900 s, so that the conduction set shows the method and not the step. */
const STEP_S = 60;
/** Cells per penetration depth for the conduction set: its tolerance is finer than a run's own cells. */
const FINE_CELLS = 64;

const DAY_S = 86_400;
/** A third of the 24 h depth at the faces; error of a cell-centred layer model, from the reference's node table. */
const ADMITTANCE_REL = 0.014;
const DECREMENT_REL = 0.053;
const SHIFT_H = 0.17;
interface Complex {
  readonly re: number;
  readonly im: number;
}
const times = (x: Complex, y: Complex): Complex => ({
  re: x.re * y.re - x.im * y.im,
  im: x.re * y.im + x.im * y.re,
});
const over = (x: Complex, y: Complex): Complex => {
  const size = y.re ** 2 + y.im ** 2;
  return { re: (x.re * y.re + x.im * y.im) / size, im: (x.im * y.re - x.re * y.im) / size };
};

/** Heat into face b per kelvin of room air, 24 h, nothing behind face a. */
function admittanceOf(cells: ReturnType<typeof discretise>, insideResistance: number): number {
  const omega = (2 * Math.PI) / DAY_S;
  let pivot: Complex = { re: cells.link[0] ?? 0, im: omega * cells.capacity[0]! };
  for (let i = 1; i < cells.capacity.length; i++) {
    const before: Complex = { re: cells.link[i - 1]!, im: 0 };
    const carried = over(times(before, before), pivot);
    pivot = {
      re: before.re + (cells.link[i] ?? 1 / insideResistance) - carried.re,
      im: omega * cells.capacity[i]! - carried.im,
    };
  }
  const face = over({ re: 1 / insideResistance, im: 0 }, pivot);
  return Math.hypot(1 - face.re, face.im) / insideResistance;
}

/** Steady 24 h response of the chain with room air held at 0: heat to the room per kelvin outdoors, and into it. */
function responseOf(wall: Periodic): { admittance: number; decrement: number; shiftH: number } {
  const cells = discretise(elementOf(wall));
  const n = cells.capacity.length;
  const omega = (2 * Math.PI) / DAY_S;
  const outside = wall.Rse > 0 ? 1 / wall.Rse : 1e9;
  const inside = 1 / wall.Rsi;
  const diagonal: Complex[] = cells.capacity.map((c, i) => ({
    re: (cells.link[i - 1] ?? outside) + (cells.link[i] ?? inside),
    im: omega * c,
  }));
  const solve = (atA: number, atB: number): Complex[] => {
    const d = diagonal.map((value) => value);
    const rhs: Complex[] = d.map((_, i) => ({
      re: (i === 0 ? atA * outside : 0) + (i === n - 1 ? atB * inside : 0),
      im: 0,
    }));
    for (let i = 1; i < n; i++) {
      const ratio = over({ re: cells.link[i - 1]!, im: 0 }, d[i - 1]!);
      const shift = times(ratio, { re: cells.link[i - 1]!, im: 0 });
      const carried = times(ratio, rhs[i - 1]!);
      d[i] = { re: d[i]!.re - shift.re, im: d[i]!.im - shift.im };
      rhs[i] = { re: rhs[i]!.re + carried.re, im: rhs[i]!.im + carried.im };
    }
    const t = rhs.slice();
    t[n - 1] = over(rhs[n - 1]!, d[n - 1]!);
    for (let i = n - 2; i >= 0; i--) {
      const pulled = times({ re: cells.link[i]!, im: 0 }, t[i + 1]!);
      t[i] = over({ re: rhs[i]!.re + pulled.re, im: rhs[i]!.im + pulled.im }, d[i]!);
    }
    return t;
  };
  const fromOutside = solve(1, 0)[n - 1]!;
  const fromInside = solve(0, 1)[n - 1]!;
  const lag = (-Math.atan2(fromOutside.im, fromOutside.re) / (2 * Math.PI)) * 24;
  const near = -wall.time_shift_unwrapped_h;
  return {
    admittance: inside * Math.hypot(1 - fromInside.re, -fromInside.im),
    decrement: (inside * Math.hypot(fromOutside.re, fromOutside.im)) / wall.U,
    shiftH: -(lag + 24 * Math.round((near - lag) / 24)),
  };
}

test('the reference holds its ten walls', () => {
  expect(walls).toHaveLength(10);
  expect(walls.filter((wall) => wall.decrement_factor > LEAST_DECREMENT).length).toBeGreaterThanOrEqual(7);
});

describe.each(walls)('$name divided into nodes', (wall) => {
  const ours = responseOf(wall);
  const row = (
    quantity: string,
    reference: number,
    value: number,
    allowed: number,
    unit: string,
    kind: 'rel' | 'abs',
  ) =>
    check({
      source: 'ISO 13786 node table',
      case: wall.name,
      quantity,
      reference,
      ours: value,
      allowed,
      unit,
      mark: 'computed',
      kind,
    });

  test('its admittance is within the node table', () => {
    row('admittance Y11', wall.admittance_Y11.modulus, ours.admittance, ADMITTANCE_REL, 'W/m²K', 'rel');
  });
  if (wall.decrement_factor > LEAST_DECREMENT)
    test('its decrement and time shift are within the node table', () => {
      row('decrement factor', wall.decrement_factor, ours.decrement, DECREMENT_REL, '', 'rel');
      row('time shift', wall.time_shift_unwrapped_h, ours.shiftH, SHIFT_H, 'h', 'abs');
    });
});

describe.each(walls)('$name with ground or nothing behind it', (wall) => {
  test('its coarser cells answer the room as fine ones do', () => {
    const element: Element = { ...elementOf(wall), a: { kind: 'adiabatic' } };
    const ours = admittanceOf(discretise(element), wall.Rsi);
    const fine = admittanceOf(discretise(element, FINE_CELLS), wall.Rsi);
    expect(Math.abs(ours / fine - 1)).toBeLessThan(ADMITTANCE_REL);
  });
});

/** Layers outside to inside: thickness, conductivity, density, specific heat; results after 2, 6, 12, 24, 120 h. */
const CUBE: readonly {
  readonly layers: readonly [number, number, number, number][];
  readonly results: readonly number[];
  readonly calculated: readonly number[];
}[] = [
  {
    layers: [[0.2, 1.2, 2000, 1000]],
    results: [20.04, 21.26, 23.48, 26.37, 30.0],
    calculated: [20.05, 21.31, 23.48, 26.37, 29.97],
  },
  {
    layers: [[0.1, 0.04, 50, 1000]],
    results: [25.09, 29.63, 30.0, 30.0, 30.0],
    calculated: [25.08, 29.63, 29.99, 30.0, 30.0],
  },
  {
    layers: [
      [0.2, 1.2, 2000, 1000],
      [0.1, 0.04, 50, 1000],
      [0.005, 0.14, 800, 1500],
    ],
    results: [20.0, 20.26, 21.67, 24.9, 29.95],
    calculated: [20.0, 20.26, 21.67, 24.9, 29.94],
  },
  {
    layers: [
      [0.005, 0.14, 800, 1500],
      [0.1, 0.04, 50, 1000],
      [0.2, 1.2, 2000, 1000],
    ],
    results: [20.0, 20.06, 20.25, 20.63, 23.17],
    calculated: [20.0, 20.06, 20.25, 20.62, 23.17],
  },
];
/** The published results are printed to 0.01 °C, so ours are compared as they would print. */
const asPrinted = (tempC: number) => Math.round(tempC * 100) / 100;

/** Of a difference of two decimals in binary. */
const ROUND_OFF = 1e-9;
const HOURS_READ = [2, 6, 12, 24, 120];

describe.each(CUBE.map((entry, i) => ({ ...entry, number: i + 1 })))(
  'ISO 13791 conduction test $number',
  ({ layers, results, calculated, number }) => {
    const element: Element = {
      ...elementOf(walls[0]!),
      layers: layers.map(([thicknessM, conductivity, density, specificHeat], i) => ({
        name: `layer ${i}`,
        thicknessM,
        conductivity,
        density,
        specificHeat,
      })),
    };
    test('room air follows the published rise', () => {
      const cells = discretise(element, FINE_CELLS);
      const stepper = compileStepper(
        {
          chains: [
            {
              id: 'face',
              capacity: cells.capacity,
              link: cells.link,
              a: { boundary: 8, hubs: [] },
              b: { boundary: 0, hubs: [{ hub: 0, conductance: 2.5 }] },
            },
          ],
          hubs: [{ id: 'air', capacity: 0, boundary: 0 }],
          hubLinks: [],
        },
        STEP_S,
        20,
      );
      let read = 0;
      for (let n = 1; n <= (120 * 3600) / STEP_S; n++) {
        const hours = (n * STEP_S) / 3600;
        stepper.endBoundaryC[0] = 20 + 10 * Math.min(hours, 1);
        stepper.refreshSources();
        stepper.step();
        if (hours !== HOURS_READ[read]) continue;
        check({
          source: 'ISO 13791 conduction set',
          case: `test ${number}, after ${hours} h`,
          quantity: 'air temperature',
          reference: results[read]!,
          ours: asPrinted(stepper.hubC[0]!),
          allowed: 0.05 + ROUND_OFF,
          unit: '°C',
          mark: 'memory',
        });
        check({
          source: 'ISO 13791 conduction set',
          case: `test ${number}, after ${hours} h`,
          quantity: 'air temperature, calculated independently',
          reference: calculated[read]!,
          ours: asPrinted(stepper.hubC[0]!),
          allowed: 0.01 + ROUND_OFF,
          unit: '°C',
          mark: 'computed',
        });
        read++;
      }
      expect(read).toBe(5);
    });
  },
);
