// Any source of heat in any of the examples: heat and water balance, and every number is a number.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Design } from '../../../src/design/design.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { parseDesign } from '../../../src/design/schema.ts';
import { modelOf } from '../../../src/model/from-design.ts';
import { simulate } from '../../../src/network/simulate.ts';
import { anySource } from '../../model/any-source.ts';
import { bundledClimate } from '../../weather/bundled-climates.ts';

const climate = bundledClimate('anchorage');
const ROUND_OFF = 1e-9;
const RUNS = 14;
/** A fortnight of winter, a week lived before it. */
const PERIOD = { period: { firstRow: 300, hours: 336 }, warmUpDays: 7, lend: true } as const;

test('heat and water balance to 1e-9 whatever gives the heat', () => {
  let runs = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...EXAMPLES),
      anySource,
      fc.double({ min: 0.5, max: 40, noNaN: true }),
      fc.constantFrom({}, { awayWeekends: true as const }),
      ({ design }, from, kW, weekends) => {
        const people = { ...design.people, ...weekends };
        const heated: Design = {
          ...design,
          people,
          heating: { ...design.heating, capacityKW: kW, source: from },
        };
        expect(parseDesign(heated).ok).toBe(true);
        const year = simulate(modelOf(heated, climate.year.site, climate.ground), climate, PERIOD);
        runs++;
        expect(Math.abs(year.books.heatResidual)).toBeLessThan(ROUND_OFF);
        expect(Math.abs(year.books.waterResidual)).toBeLessThan(ROUND_OFF);
        for (const residual of year.books.zoneHeatResidual)
          expect(Math.abs(residual)).toBeLessThan(ROUND_OFF);
        for (const { airC } of year.zones) expect(airC.every(Number.isFinite)).toBe(true);
      },
    ),
    { numRuns: RUNS, seed: 20_264 },
  );
  expect(runs).toBe(RUNS);
});

test('a room held as it was measured is held beside a stove, and left to the stove where nothing is known', () => {
  const design: Design = {
    ...EXAMPLES[2]!.design,
    heating: {
      ...EXAMPLES[2]!.design.heating,
      source: {
        kind: 'stove',
        stove: 'steel',
        lit: 'usual',
        litBy: 'need',
        wood: 'oak',
        moisture: 0.2,
        air: 'own',
      },
    },
  };
  const values = new Float64Array(8760).fill(Number.NaN);
  values.fill(14, 300, 324);
  const { zones } = simulate(modelOf(design, climate.year.site, climate.ground), climate, {
    ...PERIOD,
    series: [{ kind: 'held', zone: 'house', values }],
  });
  const { airC, coolingW } = zones[0]!;
  expect(airC[320]).toBeCloseTo(14, 3);
  expect(Math.max(...coolingW.slice(326, 636))).toBe(0);
  expect(Math.max(...airC.slice(326, 636))).toBeGreaterThan(17);
});
