// A stove and a heated floor in the small house: wood in is heat out and flue and what is held; what it gives is what the
// house's books have; it goes out at night and in an outage; a heated floor holds its room and stays below its limit.
import { expect, test } from 'vitest';
import type { Design } from '../../../src/design/design.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { requireModel } from '../../../src/model/check-model.ts';
import { modelOf } from '../../../src/model/from-design.ts';
import type { Model, Stove, Zone } from '../../../src/model/model.ts';
import { simulate } from '../../../src/network/simulate.ts';
import type { Year } from '../../../src/network/year.ts';
import { bundledClimate } from '../../weather/bundled-climates.ts';
import { always } from '../always.ts';
import { smallHouse } from '../small-house.ts';

const climate = bundledClimate('denver');
const ROUND_OFF = 1e-9;
const WAKING = { workday: Array.from({ length: 24 }, (_, hour) => (hour >= 7 && hour < 22 ? 1 : 0)) };
const STOVE: Stove = {
  woodJPerKg: 1.4e7,
  loadKg: 1.2,
  leastLoad: 0.5,
  burnH: 1,
  efficiency: 0.78,
  floorShare: 0,
  atOnce: 0.3,
  coolingH: 0.5,
  radiantShare: 0.65,
  mayFeed: WAKING,
  fedHourly: true,
  byHabit: false,
};
/** 300 litres. */
const STORE = { capacity: 300 * 4114, loss: 2.1, mostC: 85, pipesPerM2: 12 };
const MASONRY: Partial<Stove> = {
  loadKg: 12,
  burnH: 2,
  atOnce: 0.1,
  coolingH: 10,
  fedHourly: false,
  mayFeed: { workday: WAKING.workday.map((_, hour) => (hour === 7 || hour === 19 ? 1 : 0)) },
};

const plain = smallHouse();

function withHouse(change: Partial<Zone>, heatedM?: number): Model {
  const [house, ...others] = plain.zones;
  return {
    ...plain,
    zones: [{ ...house!, ...change }, ...others],
    elements: plain.elements.map((element) =>
      element.id === 'house floor' && heatedM !== undefined ? { ...element, heatedM } : element,
    ),
  };
}

const sum = (values: Float64Array) => values.reduce((all, value) => all + value, 0);

function heatingJ(year: Year): number {
  return year.heat
    .filter(({ zone, cause }) => zone === 'house' && cause === 'heating')
    .reduce((all, { monthJ }) => all + monthJ.reduce((one, joule) => one + joule, 0), 0);
}

test.each([
  ['a light stove', withHouse({ stove: STOVE })],
  ['a masonry heater', withHouse({ stove: { ...STOVE, ...MASONRY } })],
  ['a stove with a back boiler', withHouse({ stove: { ...STOVE, floorShare: 0.6 } }, 0.07)],
  [
    'a stove with a back boiler and a store',
    withHouse({ stove: { ...STOVE, floorShare: 0.6, store: STORE } }, 0.07),
  ],
])(
  'of %s, wood in is heat to the house, flue and what is held, and the house has that heat in its books',
  (_, model) => {
    requireModel(model);
    const year = simulate(model, climate);
    const { loadKg, burntW, roomW, floorW, flueW, heldJ, woodJPerKg } = year.stoves![0]!;
    const beforeFirst =
      heldJ[0]! - 3600 * (loadKg[0]! * (woodJPerKg / 3600) - roomW[0]! - floorW[0]! - flueW[0]!);
    const woodJ = sum(loadKg) * woodJPerKg;
    const outJ = 3600 * (sum(roomW) + sum(floorW) + sum(flueW));
    expect(woodJ).toBeGreaterThan(1e9);
    expect(Math.abs(woodJ - outJ - (heldJ.at(-1)! - beforeFirst))).toBeLessThan(ROUND_OFF * woodJ);
    expect(Math.abs(sum(flueW) - 0.22 * sum(burntW))).toBeLessThan(ROUND_OFF * sum(burntW));
    expect(Math.abs(heatingJ(year) - 3600 * (sum(roomW) + sum(floorW)))).toBeLessThan(ROUND_OFF * woodJ);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(ROUND_OFF);
    for (const residual of year.books.zoneHeatResidual) expect(Math.abs(residual)).toBeLessThan(ROUND_OFF);
  },
);

test('nobody feeds a stove by night, and a light one is cold before morning', () => {
  const { loadKg, roomW } = simulate(withHouse({ stove: STOVE }), climate).stoves![0]!;
  const inHours = (from: number, until: number) => (_: number, hour: number) =>
    hour % 24 >= from && hour % 24 < until;
  expect(sum(loadKg.filter(inHours(0, 7)))).toBe(0);
  expect(sum(loadKg.filter(inHours(22, 24)))).toBe(0);
  expect(Math.max(...roomW)).toBeGreaterThan(3000);
  expect(Math.max(...roomW.filter(inHours(4, 7)))).toBeLessThan(1);
});

test('air for the fire passes the room while it burns and at no other time', () => {
  const model = withHouse({ stove: STOVE });
  const flow = (8 * STOVE.loadKg) / 3600;
  const fed: Model = {
    ...model,
    openings: [
      ...model.openings,
      { kind: 'fixed', id: 'air', zone: 'house', flow: always(flow), fan: false, feedsFire: true },
    ],
  };
  const year = simulate(fed, climate);
  const { burntW, woodJPerKg } = year.stoves![0]!;
  const opening = year.openings.find(({ id }) => id === 'air')!;
  burntW.forEach((watt, hour) => {
    expect(Math.abs(opening.flow[hour]! - (8 * watt) / woodJPerKg)).toBeLessThan(1e-12);
  });
});

test('in an outage nobody lights a fire, a masonry heater gives what it holds, and fans stand', () => {
  const fan = { kind: 'fixed', id: 'fan', zone: 'house', flow: always(0.02), fan: true } as const;
  const model = withHouse({ stove: { ...STOVE, ...MASONRY } });
  const withFan: Model = { ...model, openings: [...model.openings, fan] };
  const period = { firstRow: 24 * 5, hours: 72 };
  const outage = { fromHour: 20, noHeat: true, noPower: true };
  const year = simulate(withFan, climate, { period, outage, stepsPerHour: 2 });
  const of = (column: Float64Array) => column.slice(period.firstRow, period.firstRow + period.hours);
  const { loadKg, roomW } = year.stoves![0]!;
  expect(sum(of(loadKg).slice(0, 20))).toBeGreaterThan(0);
  expect(sum(of(loadKg).slice(20))).toBe(0);
  const room = of(roomW);
  // E' = E e^(−t/τ): 20 hours on, e^−2 of what it gave.
  expect(room[48]! / room[28]!).toBeCloseTo(Math.exp(-2), 9);
  const flow = of(year.openings.find(({ id }) => id === 'fan')!.flow);
  expect(flow[19]).toBeCloseTo(0.02, 12);
  expect(sum(flow.slice(20))).toBe(0);
});

test('without power, openers and motors of covers stay where they are', () => {
  const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
  const motors: Design = {
    ...design,
    vents: { ...design.vents, habit: 'automatic' },
    covers: [
      { kind: 'outside-blind', on: 'all', drawnBy: 'sun', season: 'year', habit: 'automatic', sunW: 150 },
    ],
  };
  const period = { firstRow: 24 * 140, hours: 72 };
  const movesOf = (noPower: boolean) => {
    const outage = { fromHour: 36, noHeat: false, noPower };
    const { openings, covers } = simulate(modelOf(motors, climate.year.site, climate.ground), climate, {
      period,
      outage,
    });
    const columns = [openings.find(({ kind }) => kind === 'vent')!.open, covers![0]!.drawn];
    return columns.map((column) => new Set(column.slice(period.firstRow + 37, period.firstRow + 72)).size);
  };
  expect(movesOf(true)).toEqual([1, 1]);
  for (const moved of movesOf(false)) expect(moved).toBeGreaterThan(1);
});

test('without power a sunspace’s openers go on, as wax does, while the motors of the rooms’ windows stay', () => {
  const { design } = EXAMPLES.find(({ id }) => id === 'closed')!;
  const opened: Design = { ...design, vents: { ...design.vents, habit: 'automatic' } };
  const model = modelOf(opened, climate.year.site, climate.ground);
  const period = { firstRow: 24 * 160, hours: 96 };
  const placesOf = (noPower: boolean) => {
    const { openings } = simulate(model, climate, {
      period,
      outage: { fromHour: 36, noHeat: false, noPower },
    });
    const placesIn = (zone: string) => {
      const vents = model.openings.filter((opening) => opening.kind === 'vent' && opening.zone === zone);
      expect(vents.length).toBeGreaterThan(0);
      return vents.map(({ id }) => {
        const { open } = openings.find((opening) => opening.id === id)!;
        return new Set(open.slice(period.firstRow + 37, period.firstRow + period.hours)).size;
      });
    };
    return { rooms: Math.max(...placesIn('house')), sunspace: Math.max(...placesIn('sunspace')) };
  };
  expect(placesOf(true).rooms).toBe(1);
  expect(placesOf(true).sunspace).toBeGreaterThan(1);
  expect(placesOf(false).rooms).toBeGreaterThan(1);
});

test('without a heater’s heat in an outage the house cools as one that has no heater from then on', () => {
  const period = { firstRow: 24 * 5, hours: 48 };
  const outage = { fromHour: 0, noHeat: true, noPower: false };
  const options = { period, startC: 18, stepsPerHour: 2 };
  const cut = simulate(plain, climate, { ...options, outage });
  const cold = simulate(
    withHouse({ thermostat: { ...plain.zones[0]!.thermostat!, heatCapacityW: 0 } }),
    climate,
    options,
  );
  for (let hour = period.firstRow; hour < period.firstRow + period.hours; hour++) {
    expect(cut.zones[0]!.heatingW[hour]).toBe(0);
    expect(cut.zones[0]!.airC[hour]).toBeCloseTo(cold.zones[0]!.airC[hour]!, 9);
  }
});

test('a heated floor holds its room, books its heat, and is not made warmer than it may be', () => {
  const model = withHouse({ heatedFaceMaxC: 29 }, 0.07);
  const year = simulate(model, climate, { history: true });
  const { airC } = year.zones[0]!;
  const january = airC.slice(0, 744);
  expect(sum(january) / 744).toBeGreaterThan(18.5);
  expect(heatingJ(year)).toBeGreaterThan(1e9);
  expect(Math.abs(year.books.heatResidual)).toBeLessThan(ROUND_OFF);
  const { depthM, temperatureC } = year.history!.find(({ id }) => id === 'house floor')!;
  const winterNights = Array.from(
    { length: 60 },
    (_, day) => temperatureC[(24 * day + 5) * depthM.length + depthM.length - 1]!,
  );
  expect(Math.max(...winterNights)).toBeLessThan(29.5);
});

test('a stove beside no thermostat, and a heated layer outside its element, are refused by name', () => {
  expect(() => requireModel(withHouse({ stove: STOVE, thermostat: null }))).toThrow(/zone 'house', stove/);
  expect(() => requireModel(withHouse({}, 0.5))).toThrow(/element 'house floor', heatedM is 0.5 m/);
});
