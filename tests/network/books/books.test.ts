// The books of a run: heat and water in, out and stored, of random houses in three climates, each over a season of its own.
// A residual above round-off means that heat or water was made or lost somewhere. `npm run soak -- houses` closes whole years
// of thousands more.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { requireModel } from '../../../src/model/check-model.ts';
import { simulate } from '../../../src/network/simulate.ts';
import type { Year } from '../../../src/network/year.ts';
import { HOURS } from '../../../src/weather/typical-year.ts';
import { bundledClimate } from '../../weather/bundled-climates.ts';
import { randomModel } from '../random-model.ts';

const RUNS = 24;
const SEED = 20261;
/** From any hour of the year on; what runs past its end goes on in January. */
const season = fc.nat(HOURS - 1).map((firstRow) => ({ firstRow, hours: 90 * 24 }));
const ROUND_OFF = 1e-9;
/** Columns are added up in another order than the books. */
const ORDER = 1e-9;
const climates = ['denver', 'quillayute', 'southern-chile'].map((id) => bundledClimate(id));

test('heat and water of random houses balance to 1e-9, and every number is a number', () => {
  let runs = 0;
  fc.assert(
    fc.property(
      randomModel,
      fc.nat(2),
      season,
      fc.constantFrom(1, 1, 1, 2, 4),
      (model, climate, period, stepsPerHour) => {
        requireModel(model);
        const year = simulate(model, climates[climate]!, { stepsPerHour, period, warmUpDays: 2 });
        runs++;
        for (const residual of year.books.zoneHeatResidual)
          expect(Math.abs(residual)).toBeLessThan(ROUND_OFF);
        expect(Math.abs(year.books.heatResidual)).toBeLessThan(ROUND_OFF);
        expect(Math.abs(year.books.waterResidual)).toBeLessThan(ROUND_OFF);
        expect(firstBadNumber(year)).toBe(null);
        for (const { relativeHumidity, moistureG, moistureByCause } of year.zones) {
          expect(relativeHumidity.every((value) => value >= 0 && value <= 1 + 1e-12)).toBe(true);
          const released = sumOf(moistureG) / 1000;
          const byCause = moistureByCause.reduce((sum, { monthKg }) => sum + sumOf(monthKg), 0);
          expect(Math.abs(released - byCause)).toBeLessThan(1e-9 * Math.max(1, released));
        }
        const { brought, scale } = airHeatOf(year);
        const booked = sumOf(year.zones.map(({ id }) => byAirJ(year, id)));
        expect(Math.abs(sumOf(brought) - booked)).toBeLessThan(ORDER * scale);
        for (const { airWaterG, moistureG, drainedKg, waterGainKg } of year.zones) {
          const net = (sumOf(airWaterG) + sumOf(moistureG)) / 1000 - drainedKg;
          const passed = sumOf(airWaterG.map(Math.abs)) / 1000 + drainedKg;
          expect(Math.abs(net - waterGainKg)).toBeLessThan(ORDER * Math.max(1e-3, passed));
        }
      },
    ),
    { numRuns: RUNS, seed: SEED, endOnFailure: true },
  );
  expect(runs).toBe(RUNS);
});

test('where zones share nothing but air, what the hourly air brings each of them is booked as air and other zones', () => {
  let shared = 0;
  fc.assert(
    fc.property(randomModel, fc.nat(2), season, (model, climate, period) => {
      const apart = {
        ...model,
        elements: model.elements.filter(({ a }) => a.kind !== 'zone'),
        panes: model.panes.filter(({ from }) => from === 'outdoors'),
        openings: model.openings.map((opening) =>
          opening.kind === 'door' ? { ...opening, seeThrough: false } : opening,
        ),
      };
      const year = simulate(apart, climates[climate]!, { period, warmUpDays: 2 });
      const { brought, scale } = airHeatOf(year);
      year.zones.forEach(({ id }, z) => {
        const others = bookedJ(year, id, 'other zones');
        if (others !== 0) shared++;
        expect(Math.abs(brought[z]! - byAirJ(year, id) - others)).toBeLessThan(ORDER * scale);
      });
    }),
    { numRuns: 12, seed: SEED, endOnFailure: true },
  );
  expect(shared).toBeGreaterThan(5);
});

/** Heat that the hourly air brought by zone, and what it brought and took in all [J]. */
function airHeatOf({ zones }: Year): { brought: number[]; scale: number } {
  return {
    brought: zones.map(({ airHeatW }) => 3600 * sumOf(airHeatW)),
    scale: 3600 * Math.max(1, sumOf(zones.map(({ airHeatW }) => sumOf(airHeatW.map(Math.abs))))),
  };
}

/** Booked for air from outdoors, and for what exchangers give it. */
const byAirJ = (year: Year, zone: string) =>
  bookedJ(year, zone, 'air') + bookedJ(year, zone, 'heat recovered');

function bookedJ({ heat }: Year, zone: string, cause: string): number {
  return sumOf(heat.find((row) => row.zone === zone && row.cause === cause)?.monthJ ?? []);
}

function sumOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum;
}

/** Where the year holds a NaN or an infinity, or null. */
function firstBadNumber(year: Year): string | null {
  for (const group of [...year.zones, ...year.panes, ...year.openings]) {
    for (const [name, values] of Object.entries(group)) {
      if (!(values instanceof Float64Array)) continue;
      const at = values.findIndex((value) => !Number.isFinite(value));
      if (at >= 0) return `${group.id} ${name} at hour ${at}`;
    }
  }
  return null;
}
