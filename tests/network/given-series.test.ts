// Series in place of schedules and rules: what is given is what the run has, to the last watt and minute, and where nothing
// is given the schedule decides as ever. A period of a whole year is the year.
import { describe, expect, test } from 'vitest';
import type { Stove } from '../../src/model/model.ts';
import type { RowSeries } from '../../src/network/given-series.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { Year } from '../../src/network/year.ts';
import { HOURS } from '../../src/weather/typical-year.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';
import { always } from './always.ts';
import { smallHouse } from './small-house.ts';

const climate = bundledClimate('santa-fe');
const unknown = () => new Float64Array(HOURS).fill(Number.NaN);
const fortnight = { firstRow: 24 * 20, hours: 24 * 14 };
const inFortnight = (column: Float64Array) =>
  column.subarray(fortnight.firstRow, fortnight.firstRow + fortnight.hours);
const sumOf = (column: Float64Array) => inFortnight(column).reduce((a, b) => a + b, 0);
const runFortnight = (series: readonly RowSeries[] = []) =>
  simulate(smallHouse(), climate, { period: fortnight, warmUpDays: 28, series });
const STOVE: Stove = {
  woodJPerKg: 4 * 3.6e6,
  loadKg: 2,
  leastLoad: 0.5,
  burnH: 1,
  efficiency: 0.78,
  floorShare: 0,
  atOnce: 0.3,
  coolingH: 0.5,
  radiantShare: 0.6,
  mayFeed: always(1),
  fedHourly: true,
  byHabit: false,
};
const openingOf = (year: Year, id: string) => year.openings.find((one) => one.id === id)!;

describe('periods', () => {
  test('a period of all rows is the year, to the last bit', () => {
    const year = simulate(smallHouse(), climate, { warmUpDays: 28 });
    const period = simulate(smallHouse(), climate, {
      warmUpDays: 28,
      period: { firstRow: 0, hours: HOURS },
      series: [],
    });
    period.zones.forEach((zone, z) => {
      expect(zone.airC).toEqual(year.zones[z]!.airC);
      expect(zone.relativeHumidity).toEqual(year.zones[z]!.relativeHumidity);
    });
    expect(period.books).toEqual(year.books);
    expect(period.heat).toEqual(year.heat);
  });

  test('books of a fortnight close, over new year too', () => {
    for (const firstRow of [24 * 20, 24 * 200, 24 * 358 + 5]) {
      const { books } = simulate(smallHouse(), climate, { period: { firstRow, hours: 24 * 14 } });
      expect(Math.abs(books.heatResidual)).toBeLessThan(1e-9);
      expect(Math.abs(books.waterResidual)).toBeLessThan(1e-9);
    }
  });

  test('a fortnight of a typical year is what the year has there, once the past is the same', () => {
    const year = simulate(smallHouse(), climate);
    const period = runFortnight();
    inFortnight(period.zones[0]!.airC).forEach((airC, hour) => {
      expect(Math.abs(airC - inFortnight(year.zones[0]!.airC)[hour]!)).toBeLessThan(0.1);
    });
  });

  test('a start by value is what a run starts from', () => {
    const shut = smallHouse({ moved: false, heated: false });
    const at = { period: { firstRow: 0, hours: 1 }, stepsPerHour: 60 };
    const [cold, warm] = [5, 30].map((startC) => simulate(shut, climate, { ...at, startC }).zones[0]!);
    expect(Math.abs(warm!.operativeC[0]! - 30)).toBeLessThan(3);
    expect(Math.abs(cold!.operativeC[0]! - 5)).toBeLessThan(3);
  });
});

describe('what is given', () => {
  test('heat measured is the heat of the books, and unknown hours keep their schedule', () => {
    const values = unknown();
    const from = fortnight.firstRow;
    for (let hour = 0; hour < 48; hour++) values[from + hour] = 100 + 20 * hour;
    const year = runFortnight([{ kind: 'gain', zone: 'house', gain: 'living', values }]);
    const gains = year.heat.find(({ zone, cause }) => zone === 'house' && cause === 'people and appliances')!;
    const givenWh = Array.from({ length: 48 }, (_, hour) => 100 + 20 * hour).reduce((a, b) => a + b, 0);
    const expectedJ = 3600 * (givenWh + 250 * (fortnight.hours - 48));
    expect(gains.monthJ.reduce((a, b) => a + b, 0) / expectedJ).toBeCloseTo(1, 12);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  });

  test('two gains of one zone are both as given, and neither keeps anything of its schedule', () => {
    const [living] = smallHouse().zones[0]!.gains;
    const house = smallHouse();
    const twoGains = {
      ...house,
      zones: house.zones.map((zone, z) =>
        z === 0 ? { ...zone, gains: [living!, { ...living!, id: 'cooking' }] } : zone,
      ),
    };
    const of = (gain: string, watt: number): RowSeries => ({
      kind: 'gain',
      zone: 'house',
      gain,
      values: unknown().fill(watt),
    });
    const year = simulate(twoGains, climate, {
      period: fortnight,
      warmUpDays: 28,
      series: [of('living', 0), of('cooking', 40)],
    });
    const gains = year.heat.find(({ zone, cause }) => zone === 'house' && cause === 'people and appliances')!;
    const givenJ = 40 * 3600 * fortnight.hours;
    expect(gains.monthJ.reduce((a, b) => a + b, 0) / givenJ).toBeCloseTo(1, 12);
  });

  test('a heater gives what is known to the watt, nothing where that is nothing, and by its rule elsewhere', () => {
    const from = fortnight.firstRow;
    const values = unknown();
    for (let hour = 0; hour < 96; hour++) values[from + hour] = hour % 3 === 0 ? 700 : 0;
    const year = runFortnight([{ kind: 'heat', zone: 'house', values }]);
    const rule = runFortnight();
    const { heatingW } = year.zones[0]!;
    for (let hour = 0; hour < 96; hour++) expect(heatingW[from + hour]).toBeCloseTo(values[from + hour]!, 6);
    expect(sumOf(rule.zones[0]!.heatingW)).toBeGreaterThan(0);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  });

  test('heat read off a run by the rule gives that run again', () => {
    // In the dark, so that the thermostat holds its air all along: heat that sets in within a step is not even over it.
    const house = smallHouse({ moved: false, glass: false });
    const options = { period: fortnight, warmUpDays: 28, stepsPerHour: 1 };
    const rule = simulate(house, climate, options);
    const values = unknown();
    values.set(inFortnight(rule.zones[0]!.heatingW), fortnight.firstRow);
    const again = simulate(house, climate, { ...options, series: [{ kind: 'heat', zone: 'house', values }] });
    inFortnight(again.zones[0]!.airC).forEach((airC, hour) => {
      expect(Math.abs(airC - inFortnight(rule.zones[0]!.airC)[hour]!)).toBeLessThan(1e-3);
    });
  });

  test('wood put on a stove is the wood that burns there, and its heat that of the books', () => {
    const house = smallHouse();
    const withStove = {
      ...house,
      zones: house.zones.map((zone, z) => (z === 0 ? { ...zone, stove: STOVE } : zone)),
    };
    const values = unknown().fill(0, fortnight.firstRow, fortnight.firstRow + fortnight.hours);
    for (const hour of [18, 19, 42, 70]) values[fortnight.firstRow + hour] = 1.5;
    const year = simulate(withStove, climate, {
      period: fortnight,
      warmUpDays: 28,
      series: [{ kind: 'wood', zone: 'house', values }],
    });
    const [stove] = year.stoves!;
    expect(sumOf(stove!.loadKg)).toBeCloseTo(6, 12);
    expect([17, 18, 19, 20].map((hour) => inFortnight(stove!.loadKg)[hour])).toEqual([0, 1.5, 1.5, 0]);
    const roomKWh = sumOf(stove!.roomW) / 1000;
    // What the body held as the days began comes on top; it cools within hours.
    expect(roomKWh).toBeGreaterThan(0.99 * 6 * 4 * 0.78);
    expect(roomKWh).toBeLessThan(6 * 4 * 0.78 + 4);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  });

  test('heat and wood where nothing can give them are refused, with what there is', () => {
    const zeros = unknown().fill(0);
    expect(() => runFortnight([{ kind: 'wood', zone: 'house', values: zeros }])).toThrow(/has a heater/);
    expect(() => runFortnight([{ kind: 'heat', zone: 'sunspace', values: zeros }])).toThrow(
      /nothing that heats/,
    );
    expect(() => runFortnight([{ kind: 'heat', zone: 'house', values: unknown().fill(-5) }])).toThrow(
      /has -5; allowed: 0 or more/,
    );
  });

  test('water measured is the water given off', () => {
    const values = unknown().fill(1000, fortnight.firstRow, fortnight.firstRow + 24);
    const year = runFortnight([{ kind: 'moisture', zone: 'house', cause: 'people', values }]);
    expect(sumOf(year.zones[0]!.moistureG)).toBeCloseTo(24 * 1000 + 150 * (fortnight.hours - 24), 6);
    expect(Math.abs(year.books.waterResidual)).toBeLessThan(1e-9);
  });

  test('people counted breathe: twice as many, twice as far above outdoors in still air, and nobody none', () => {
    const people = (count: number): RowSeries => ({
      kind: 'people',
      zone: 'house',
      values: unknown().fill(count),
    });
    const above = (count: number) =>
      sumOf(runFortnight([people(count)]).zones[0]!.co2Ppm.map((ppm) => ppm - 425));
    expect(above(0) / fortnight.hours).toBeLessThan(1);
    expect(above(4) / above(2)).toBeCloseTo(2, 2);
    expect(above(2)).toBeCloseTo(sumOf(runFortnight().zones[0]!.co2Ppm.map((ppm) => ppm - 425)), 6);
  });

  test('held air is as it was held, the books close, and it is let go where nothing is known', () => {
    const values = unknown();
    const from = fortnight.firstRow;
    for (let hour = 0; hour < 100; hour++) values[from + hour] = 21 + (hour % 24 < 12 ? 0 : 1);
    const year = runFortnight([{ kind: 'held', zone: 'sunspace', values }]);
    const { airC } = year.zones[1]!;
    for (let hour = 1; hour < 100; hour++) {
      const changes = values[from + hour] !== values[from + hour - 1];
      if (!changes) expect(airC[from + hour]).toBeCloseTo(values[from + hour]!, 6);
    }
    expect(Math.abs(airC[from + 140]! - 22)).toBeGreaterThan(0.5);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  });

  test('series equal to the schedules give the same fortnight', () => {
    const rule = runFortnight();
    const same = runFortnight([
      { kind: 'gain', zone: 'house', gain: 'living', values: unknown().fill(250) },
      { kind: 'moisture', zone: 'house', cause: 'people', values: unknown().fill(150) },
      { kind: 'people', zone: 'house', values: unknown().fill(2) },
    ]);
    rule.zones.forEach((zone, z) => {
      inFortnight(zone.airC).forEach((airC, hour) => {
        expect(Math.abs(airC - inFortnight(same.zones[z]!.airC)[hour]!)).toBeLessThan(1e-9);
      });
    });
  });
});

describe('openings that are known', () => {
  const vents = smallHouse().openings.find(({ kind }) => kind === 'vent')!.id;
  const door = smallHouse().openings.find(({ kind }) => kind === 'door')!.id;

  test('stand open by the minute, and by their rule where nothing is known', () => {
    const year = runFortnight([
      {
        kind: 'opening',
        opening: vents,
        events: [
          { hour: -1000, open: 0 },
          { hour: 30.25, open: 0.5 },
          { hour: 32.5, open: 0 },
        ],
      },
    ]);
    const open = inFortnight(openingOf(year, vents).open);
    expect([29, 30, 31, 32, 33].map((hour) => open[hour])).toEqual([0, 0.375, 0.5, 0.25, 0]);
    expect(Math.max(...open.subarray(34))).toBe(0);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  });

  test('positions read off a run by the rule give that run again', () => {
    const options = { period: fortnight, warmUpDays: 28, stepsPerHour: 1 };
    const rule = simulate(smallHouse(), climate, options);
    const events = (id: string) =>
      Array.from(inFortnight(openingOf(rule, id).open), (open, hour) => ({ hour, open }));
    expect(events(door).some(({ open }) => open > 0)).toBe(true);
    const again = simulate(smallHouse(), climate, {
      ...options,
      series: [{ kind: 'opening', opening: door, events: events(door) }],
    });
    inFortnight(again.zones[1]!.airC).forEach((airC, hour) => {
      expect(Math.abs(airC - inFortnight(rule.zones[1]!.airC)[hour]!)).toBeLessThan(1e-9);
    });
  });

  test('a series of what the model does not have says what there is', () => {
    expect(() =>
      runFortnight([{ kind: 'opening', opening: 'chimney', events: [{ hour: 0, open: 1 }] }]),
    ).toThrow(/chimney/);
    expect(() => runFortnight([{ kind: 'gain', zone: 'house', gain: 'oven', values: unknown() }])).toThrow(
      /'living'/,
    );
  });
});
