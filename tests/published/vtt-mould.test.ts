// Source: the VTT mould index: original model for wood (1999) and sensitivity classes (2010); formulas from memory, high
// confidence. Rows are computed from them: start and show times in closed form, the rest by hourly steps.
import { expect, test } from 'vitest';
import {
  cleanSurface,
  criticalHumidity,
  largestIndex,
  MOULD_CLASSES,
  weeksToStart,
} from '../../src/physics/mould-index.ts';
import { mouldStep } from '../reference/whole-formulas.ts';
import { check } from './ledger.ts';

const SOURCE = 'VTT mould index';
/** The first class grows as pine does until index 1, which is where the two models part. */
const PINE = MOULD_CLASSES[0];

/** Days, – : half the last printed digit; a day of crossing is known to the hour the steps have. */
const ALLOWED = {
  timeDays: 0.02,
  crossingDays: 0.03,
  limit: 0.002,
  index: 0.002,
  classIndex: 0.02,
  humidity: 0.01,
};

/** Day on which the index first reaches 1, and the index after 84 days. */
function grow(step: () => number): { readonly started: number; readonly last: number } {
  let started = Number.NaN;
  let last = 0;
  for (let hour = 1; hour <= 84 * 24; hour++) {
    last = step();
    if (last >= 1 && Number.isNaN(started)) started = hour / 24;
  }
  return { started, last };
}

const GROWTH = [
  { tempC: 20, rh: 0.97, start: 10.38, limit: 5.504, day: 10.42, after84: 5.504 },
  { tempC: 20, rh: 0.9, start: 29.41, limit: 3.995, day: 29.46, after84: undefined },
  { tempC: 20, rh: 0.85, start: 65.1, limit: 2.616, day: 65.75, after84: undefined },
  { tempC: 22, rh: 0.95, start: 13.0, limit: 5.125, day: 13.04, after84: 5.125 },
  { tempC: 10, rh: 0.95, start: 22.23, limit: 5.01, day: 22.25, after84: undefined },
  { tempC: 5, rh: 0.97, start: 26.66, limit: 5.124, day: undefined, after84: undefined },
] as const;

test('pine at constant warmth and damp: time to start, limit and the day on which 1 is reached', () => {
  let crossings = 0;
  for (const { tempC, rh, start, limit, day, after84 } of GROWTH) {
    const row = { source: SOURCE, case: `pine, ${tempC} °C ${100 * rh} %`, mark: 'computed' } as const;
    const critical = criticalHumidity(tempC, 0.8);
    check({
      ...row,
      quantity: 'time to start',
      reference: start,
      ours: 7 * weeksToStart(tempC, rh, 0),
      allowed: ALLOWED.timeDays,
      unit: 'd',
    });
    check({
      ...row,
      quantity: 'largest index',
      reference: limit,
      ours: largestIndex(rh, critical, 1, 7, 2),
      allowed: ALLOWED.limit,
      unit: '',
    });
    const surface = cleanSurface();
    const { started, last } = grow(() => mouldStep(surface, tempC, rh, 1, PINE));
    if (day !== undefined) {
      check({
        ...row,
        quantity: 'day of index 1',
        reference: day,
        ours: started,
        allowed: ALLOWED.crossingDays,
        unit: 'd',
      });
      crossings += 1;
    }
    if (after84 !== undefined) {
      check({
        ...row,
        quantity: 'index after 84 d',
        reference: after84,
        ours: last,
        allowed: ALLOWED.index,
        unit: '',
      });
    }
  }
  expect(crossings).toBe(5);
});

test('spruce starts later', () => {
  check({
    source: SOURCE,
    case: 'spruce, 20 °C 97 %',
    quantity: 'time to start',
    reference: 11.95,
    ours: 7 * weeksToStart(20, 0.97, 1),
    allowed: ALLOWED.timeDays,
    unit: 'd',
    mark: 'computed',
  });
});

test('critical humidity and the limit at saturation', () => {
  const rows = [
    [1, 97.03],
    [5, 88.02],
    [10, 82.03],
    [15, 80.04],
    [20, 80.04],
    [25, 80],
  ] as const;
  for (const [tempC, reference] of rows) {
    check({
      source: SOURCE,
      case: `${tempC} °C`,
      quantity: 'critical humidity',
      reference,
      ours: 100 * criticalHumidity(tempC, 0.8),
      allowed: ALLOWED.humidity,
      unit: '%',
      mark: 'computed',
    });
  }
  check({
    source: SOURCE,
    case: 'pine, 20 °C 100 %',
    quantity: 'largest index',
    reference: 6,
    ours: largestIndex(1, criticalHumidity(20, 0.8), 1, 7, 2),
    allowed: ALLOWED.limit,
    unit: '',
    mark: 'computed',
  });
});

test('sensitivity classes at 20 °C 97 %, counted as pine', () => {
  const rows = [
    { day: 10.42, after84: 5.5 },
    { day: 18.0, after84: 3.43 },
    { day: 144.8, after84: 0.581 },
    { day: 338.5, after84: 0.261 },
  ];
  rows.forEach(({ day, after84 }, i) => {
    const cls = { ...MOULD_CLASSES[i]!, wood: 0 } as const;
    const row = { source: SOURCE, case: `${cls.id}, 20 °C 97 %`, mark: 'computed' } as const;
    const surface = cleanSurface();
    let started = Number.NaN;
    for (let hour = 1; hour <= 400 * 24; hour++) {
      const index = mouldStep(surface, 20, 0.97, 1, cls);
      if (index >= 1 && Number.isNaN(started)) started = hour / 24;
      if (hour === 84 * 24) {
        check({
          ...row,
          quantity: 'index after 84 d',
          reference: after84,
          ours: index,
          allowed: ALLOWED.classIndex,
          unit: '',
        });
      }
    }
    check({ ...row, quantity: 'day of index 1', reference: day, ours: started, allowed: 0.05, unit: 'd' });
  });
  expect(rows).toHaveLength(MOULD_CLASSES.length);
});

test('a class below the first takes e^0.14 longer when it is counted as spruce', () => {
  check({
    source: SOURCE,
    case: 'spruce against pine',
    quantity: 'ratio of times to start',
    reference: 1.15,
    ours: weeksToStart(20, 0.97, 1) / weeksToStart(20, 0.97, 0),
    allowed: 0.0005,
    unit: '',
    mark: 'computed',
  });
});

test('dry days take the index down slowly', () => {
  const surface = { index: 3, unfavourableHours: 0 };
  const row = { source: SOURCE, quantity: 'index', allowed: 0.001, unit: '', mark: 'computed' } as const;
  for (let hour = 1; hour <= 48; hour++) {
    const index = mouldStep(surface, 20, 0.5, 1, MOULD_CLASSES[0]);
    if (hour === 24) check({ ...row, case: '24 h dry from 3', reference: 2.992, ours: index });
    if (hour === 48) check({ ...row, case: '48 h dry from 3', reference: 2.976, ours: index });
  }
});
