// Fans for fresh air through whole runs of the modest example: when they run, what they give and take, and that nothing
// leaps as their numbers are moved. Directions are common practice, no source.
import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/design/design.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { modelOf } from '../../../src/model/from-design.ts';
import { simulate } from '../../../src/network/simulate.ts';
import type { Year } from '../../../src/network/year.ts';
import { ventilation } from '../../../src/outcomes/ventilation.ts';
import { bypassShare, preheatRise, thawShare } from '../../../src/physics/heat-recovery.ts';
import { bundledClimate, bundledYear } from '../../weather/bundled-climates.ts';

const { site } = bundledYear('denver');
const denver = bundledClimate('denver');
const modest = EXAMPLES.find(({ id }) => id === 'modest')!.design;

interface Fans {
  readonly extractAch?: number;
  readonly ventilation?: Partial<Design['ventilation']>;
}

function runOf({ extractAch = 0, ventilation: changed = {} }: Fans) {
  const design: Design = {
    ...modest,
    vents: { ...modest.vents, extractAch },
    ventilation: { ...modest.ventilation, ...changed },
  };
  const model = modelOf(design, site, denver.ground);
  const year = simulate(model, denver);
  return { year, model, energy: ventilation(model, denver, year), heatKWh: heatOf(year) };
}

const heatOf = (year: Year) => year.zones[0]!.heatingW.reduce((sum, watt) => sum + watt, 0) / 1000;
const dampHours = (year: Year) => year.zones[0]!.relativeHumidity.filter((value) => value > 0.7).length;
const openingOf = (year: Year, id: string) => year.openings.find((opening) => opening.id === id)!;

const none = runOf({});
const always = runOf({ extractAch: 0.35 });

describe('an extract fan', () => {
  test('runs in the hours of cooking and washing, for six twenty-fourths of the power', () => {
    const { year, energy, heatKWh } = runOf({ extractAch: 0.35, ventilation: { extractRuns: 'hours' } });
    const { flow } = openingOf(year, 'extract fan');
    const running = [...flow.subarray(0, 24).keys()].filter((hour) => flow[hour]! > 0);
    expect(running).toEqual([7, 8, 12, 18, 19, 21]);
    expect(energy.fansKWh / always.energy.fansKWh).toBeCloseTo(0.25, 6);
    expect(heatKWh).toBeGreaterThan(none.heatKWh);
    expect(heatKWh).toBeLessThan(always.heatKWh);
  });

  test('led by humidity runs for damp, only while outdoors is drier, and costs far less than all day long', () => {
    const { year, energy, heatKWh } = runOf({ extractAch: 0.5, ventilation: { extractRuns: 'humidity' } });
    const { flow } = openingOf(year, 'extract fan');
    const { relativeHumidity } = year.zones[0]!;
    const dry = [...flow.keys()].filter((hour) => hour > 2 && maxOf(relativeHumidity, hour - 2, hour) < 0.5);
    expect(dry.length).toBeGreaterThan(1000);
    // its sensor lags by an hour: two hours on, an eighth of a full run may be left
    for (const hour of dry) expect(flow[hour]!).toBeLessThan(0.15 * ((0.5 * 286) / 3600));
    expect(dampHours(year)).toBeLessThan(dampHours(none.year) / 2);
    expect(energy.fansKWh).toBeLessThan(always.energy.fansKWh / 2);
    expect(heatKWh - none.heatKWh).toBeLessThan((always.heatKWh - none.heatKWh) / 4);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
    expect(Math.abs(year.books.waterResidual)).toBeLessThan(1e-9);
  });

  test('by any humidity dries more the lower it is set, and no setting leaps', () => {
    const heats = [0.5, 0.55, 0.6, 0.65, 0.7, 0.75].map(
      (extractHumidity) =>
        runOf({ extractAch: 0.5, ventilation: { extractRuns: 'humidity', extractHumidity } }).heatKWh,
    );
    for (let i = 1; i < heats.length; i++) expect(heats[i]!).toBeLessThanOrEqual(heats[i - 1]! + 2);
  });
});

describe('a unit with heat recovery', () => {
  const unit = runOf({ ventilation: { recoveryAch: 0.35 } });

  test('airs as the extract fan does for a fraction of its heat, and says what came back', () => {
    const floor = openingOf(unit.year, 'ventilation unit').flow[100]!;
    expect((floor * 3600) / 286).toBeCloseTo(0.35, 9);
    expect(unit.heatKWh - none.heatKWh).toBeLessThan((always.heatKWh - none.heatKWh) / 3);
    expect(unit.energy.recoveredKWh).toBeGreaterThan(1000);
    expect(Math.abs(unit.year.books.heatResidual)).toBeLessThan(1e-9);
    for (const residual of unit.year.books.zoneHeatResidual) expect(Math.abs(residual)).toBeLessThan(1e-9);
  });

  test('needs less heat the better its exchanger, step by step', () => {
    const heats = [0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9].map(
      (recoveryEffectiveness) => runOf({ ventilation: { recoveryAch: 0.35, recoveryEffectiveness } }).heatKWh,
    );
    const steps = heats.slice(1).map((heat, i) => heats[i]! - heat);
    const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
    for (const step of steps) {
      expect(step).toBeGreaterThan(0);
      expect(step).toBeLessThan(Math.max(40, 4 * mean));
    }
  });

  test('makes a summer hardly hotter, since its bypass lets the cool of the night in', () => {
    const hot = (year: Year) => year.zones[0]!.operativeC.filter((value) => value > 26).length;
    expect(hot(unit.year)).toBeLessThan(1.15 * hot(none.year));
  });

  test('thaws by turning room air round: less fresh air in frost, no power for a heater', () => {
    const { year, energy } = runOf({ ventilation: { recoveryAch: 0.35, frost: 'recirculate' } });
    const { flow } = openingOf(year, 'ventilation unit');
    const { dryBulbC } = denver.year;
    const full = (0.35 * 286) / 3600;
    for (let hour = 0; hour < flow.length; hour++) {
      if (dryBulbC[hour]! >= -5) expect(flow[hour]!).toBeCloseTo(full, 12);
      else expect(flow[hour]!).toBeLessThan(full);
    }
    expect(energy.frostHeaterKWh).toBe(0);
    expect(energy.fansKWh).toBeCloseTo(unit.energy.fansKWh, 6);
    expect(unit.energy.frostHeaterKWh).toBeGreaterThan(0);
  });
});

test('guards and bypass begin at nothing and end where they are said to', () => {
  expect([preheatRise(-5), preheatRise(10), thawShare(-5), thawShare(20)]).toEqual([0, 0, 0, 0]);
  expect(preheatRise(-15)).toBeCloseTo(10, 12);
  expect([thawShare(-16), thawShare(-27), thawShare(-40)]).toEqual([1 / 6, 1 / 3, 1 / 3]);
  expect([bypassShare(23, 15, 22), bypassShare(26, 15, 22), bypassShare(26, 9, 22)]).toEqual([0.5, 1, 0]);
  expect([bypassShare(26, 30, 22), bypassShare(21, 15, 22)]).toEqual([0, 0]);
  expect(bypassShare(30, 11, 22)).toBe(0.5);
});

function maxOf(values: Float64Array, from: number, until: number): number {
  return values.subarray(from, until + 1).reduce((most, value) => Math.max(most, value), 0);
}
