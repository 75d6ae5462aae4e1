// Whatever a person may type and whatever a year may bring, the advice is whole: no rule throws, no number is
// missing, every sentence ends.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contextOf } from '../../src/findings/context.ts';
import { findingsOf } from '../../src/findings/findings.ts';
import { TRACED, whyOf } from '../../src/findings/why.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { reportOf } from '../../src/report/report.ts';
import { anyDesign } from '../model/any-design.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { MADE_MODEL } from '../outcomes/made-model.ts';
import { madeOpening, madePane, madeYear, madeZone } from '../outcomes/made-year.ts';

const CLIMATES = [
  madeClimate({
    latitudeDeg: 40,
    dryBulbC: (hour) => 10 - 15 * Math.cos((hour * 2 * Math.PI) / 8760),
    dewPointC: -6,
  }),
  madeClimate({ latitudeDeg: -38, longitudeDeg: -72, dryBulbC: 30 }),
  madeClimate({ latitudeDeg: 69, longitudeDeg: 19, dryBulbC: -12, dewPointC: -15 }),
];

const anyYear = fc.record({
  airC: fc.double({ min: -20, max: 45, noNaN: true }),
  swingK: fc.double({ min: 0, max: 25, noNaN: true }),
  humidity: fc.double({ min: 0.02, max: 1, noNaN: true }),
  heatingW: fc.constantFrom(0, 500, 20_000),
  waterKg: fc.double({ min: 0, max: 500, noNaN: true }),
  moves: fc.nat(20),
  neglected: fc.nat(8760),
  wetHours: fc.nat(8760),
});

describe('advice on any run', () => {
  it('is whole, in both unit systems', () => {
    fc.assert(
      fc.property(
        anyDesign,
        anyYear,
        fc.nat(CLIMATES.length - 1),
        fc.boolean(),
        (design, any, place, inUs) => {
          const climate = CLIMATES[place]!;
          const air = (hour: number) => any.airC + any.swingK * Math.sin((hour * Math.PI) / 12);
          const zone = (id: string) =>
            madeZone(id, {
              airC: air,
              relativeHumidity: any.humidity,
              heatingW: any.heatingW,
              cornerC: any.airC - 3,
              moistureByCause: [{ cause: 'plants', monthKg: Array<number>(12).fill(any.waterKg) }],
            });
          const year = madeYear({
            zones: design.sunspace.join === 'none' ? [zone('house')] : [zone('house'), zone('sunspace')],
            panes: [madePane('front', { wetHours: any.wetHours })],
            openings: [madeOpening('vents', () => any.moves, any.neglected)],
          });
          const outcome = summarise(design, MADE_MODEL, climate, year);
          const run = { design, climate, year, outcome, units: inUs ? ('us' as const) : ('metric' as const) };
          const findings = findingsOf(run);
          for (const { text, figures } of findings) {
            expect(text).not.toMatch(/undefined|NaN|null|Infinity|\s\s/);
            expect(text).toMatch(/^[A-Z0-9].*\.$/);
            for (const value of Object.values(figures)) {
              if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
            }
          }
          for (const figure of TRACED)
            expect(whyOf(contextOf(run), figure).text).not.toMatch(/undefined|NaN|\s\s/);
          const order = {
            client: '',
            place: '',
            adviser: '',
            question: '',
            date: '',
            help: null,
            others: [run],
            answers: [],
          };
          expect(JSON.stringify(reportOf({ ...order, run }))).not.toMatch(/undefined|NaN|Infinity/);
        },
      ),
      { numRuns: 60 },
    );
  });
});
