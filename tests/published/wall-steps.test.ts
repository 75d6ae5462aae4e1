// Layered walls stepped through days of a sine outdoors, as a run steps them: hourly means of the weather, one, two and
// four steps an hour, hourly means of the heat to the room. Decrement and time shift against the exact 24 h response of ISO
// 13786. Cells are fine, so that the step alone is judged; what a run's own cells add stands in wall-discretisation.test.ts.
// Source: wall-response.json (computed, checked two ways).
import { beforeAll, describe, expect, test } from 'vitest';
import { discretise } from '../../src/network/layout/discretisation.ts';
import type { Stepper } from '../../src/network/solver/stepper-interface.ts';
import { compileStepper } from '../network/compile-stepper.ts';
import { check } from './ledger.ts';
import { elementOf, LEAST_DECREMENT, type Periodic, periodicWalls } from './periodic-walls.ts';

/** By steps an hour: share of the decrement, and hours. Stirred water that nothing parts from its face is the hardest. */
const ALLOWED: Readonly<Record<number, { readonly decrement: number; readonly shiftH: number }>> = {
  1: { decrement: 0.02, shiftH: 0.025 },
  2: { decrement: 0.008, shiftH: 0.006 },
  4: { decrement: 0.005, shiftH: 0.003 },
};
const FINE_CELLS = 64;
const HOURS = 24;
/** Until nothing of the start is left in the thickest of them. */
const DAYS = 20;

const lagging = periodicWalls.filter((wall) => wall.decrement_factor > LEAST_DECREMENT);

test('most of the ten walls let through enough of a day to be judged', () => {
  expect(lagging.length).toBeGreaterThanOrEqual(7);
});

describe.each(lagging)('$name stepped as a run steps it', (wall) => {
  let stepper: Stepper;
  // Its inside as modes takes far longer than its days, and is the same at every step.
  beforeAll(() => {
    stepper = stepperOf(wall);
  });
  test.each([1, 2, 4])('with %i steps an hour it loses nothing of its decrement', (stepsPerHour) => {
    const ours = steppedResponse(wall, stepper, stepsPerHour);
    const row = {
      source: 'ISO 13786 by steps',
      case: `${wall.name}, ${stepsPerHour} an hour`,
      mark: 'computed',
    } as const;
    check({
      ...row,
      quantity: 'decrement factor',
      reference: wall.decrement_factor,
      ours: ours.decrement,
      allowed: ALLOWED[stepsPerHour]!.decrement,
      kind: 'rel',
      unit: '',
    });
    check({
      ...row,
      quantity: 'time shift',
      reference: wall.time_shift_unwrapped_h,
      ours: ours.shiftH + HOURS * Math.round((wall.time_shift_unwrapped_h - ours.shiftH) / HOURS),
      allowed: ALLOWED[stepsPerHour]!.shiftH,
      unit: 'h',
    });
  });
});

/** A day's first harmonic in means of an hour: by so much of it, once as they are taken and once as they are held. */
const MEAN = Math.sin(Math.PI / HOURS) / (Math.PI / HOURS);

function stepperOf(wall: Periodic): Stepper {
  const cells = discretise(elementOf(wall), FINE_CELLS);
  return compileStepper(
    {
      chains: [
        {
          id: wall.name,
          capacity: cells.capacity,
          link: cells.link,
          a: { boundary: wall.Rse > 0 ? 1 / wall.Rse : 1e6, hubs: [] },
          b: { boundary: 0, hubs: [{ hub: 0, conductance: 1 / wall.Rsi }] },
        },
      ],
      hubs: [{ id: 'room', capacity: 0, boundary: 1e9 }],
      hubLinks: [],
    },
    3600,
    0,
  );
}

/**
 * First harmonic of the last day's heat to a room held at 0 °C, by that of the staircase outdoors. What hourly means lose of
 * a sine is the weather's and the record's, not the step's, and is taken out.
 */
function steppedResponse(
  wall: Periodic,
  stepper: Stepper,
  stepsPerHour: number,
): { decrement: number; shiftH: number } {
  stepper.setStep(3600 / stepsPerHour);
  stepper.refreshEnds();
  stepper.hubBoundaryC[0] = 0;
  const faceC = new Float64Array(1);
  const omega = (2 * Math.PI) / HOURS;
  const [given, got] = [
    { re: 0, im: 0 },
    { re: 0, im: 0 },
  ];
  for (let hour = 0; hour < DAYS * HOURS; hour++) {
    const outdoorC = (Math.cos(omega * hour) - Math.cos(omega * (hour + 1))) / omega;
    stepper.endBoundaryC[0] = outdoorC;
    stepper.refreshSources();
    let watt = 0;
    for (let n = 0; n < stepsPerHour; n++) {
      stepper.beginStep();
      stepper.solve();
      stepper.finish();
      stepper.readInnerMeans(CHAINS, 1, faceC);
      stepper.endStep();
      watt += faceC[0]! / wall.Rsi / stepsPerHour;
    }
    if (hour < (DAYS - 1) * HOURS) continue;
    addTo(given, Math.sin(omega * (hour + 0.5)), omega * (hour + 0.5));
    addTo(got, watt, omega * (hour + 0.5));
  }
  const size = Math.hypot(got.re, got.im) / Math.hypot(given.re, given.im);
  const lag = Math.atan2(got.im, got.re) - Math.atan2(given.im, given.re);
  return { decrement: size / MEAN ** 3 / wall.U, shiftH: -lag / omega };
}

const CHAINS = Int32Array.of(0);

function addTo(sum: { re: number; im: number }, value: number, angle: number): void {
  sum.re += value * Math.cos(angle);
  sum.im += value * Math.sin(angle);
}
