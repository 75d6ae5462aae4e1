import { describe, expect, it } from 'vitest';
import { contextOf } from '../../src/findings/context.ts';
import { whyOf } from '../../src/findings/why.ts';
import { hourly, madeOpening } from '../outcomes/made-year.ts';
import { madeRun } from './made-run.ts';

describe('the trace of a figure', () => {
  it('finds the hours behind it, by month and time of day', () => {
    // hot from noon to six in July
    const isHot = (hour: number) => hour >= 4344 && hour < 5088 && hour % 24 >= 12 && hour % 24 < 18;
    const context = contextOf(madeRun({ house: { airC: (hour) => (isHot(hour) ? 30 : 20), solarW: 2000 } }));
    const trace = whyOf(context, 'overheatedHours');
    expect(trace.hours).toHaveLength(31 * 6);
    expect(trace.hours.length).toBe(context.house.tooHot.hours);
    expect(trace.byMonth[6]).toBe(31 * 6);
    expect(trace.byHourOfDay.slice(12, 18)).toEqual(Array(6).fill(31));
    expect(trace.text).toContain('mostly in July, in the afternoon');
  });

  it('weighs the flows in those hours alone', () => {
    const context = contextOf(
      madeRun({
        house: {
          airC: (hour) => (hour < 100 ? 30 : 20),
          solarW: (hour) => (hour < 100 ? 3000 : 9000),
          ventAch: 1,
        },
        climate: { dryBulbC: 10 },
      }),
    );
    const { flows, text } = whyOf(context, 'overheatedHours');
    expect(flows.map(({ cause }) => cause)).toEqual(['the sun', 'outdoor air', 'all else']);
    expect(flows[0]?.watts).toBeCloseTo(3000, 9);
    // 110 m² · 2.6 m changed once an hour by air 20 K cooler, 1206 J/(m³·K)
    expect(flows[1]?.watts).toBeCloseTo((-286 * 1206 * 20) / 3600, 6);
    // What is left closes the sum: air alone holds next to no heat.
    expect(flows.reduce((sum, { watts }) => sum + watts, 0)).toBeCloseTo(0, 6);
    expect(text).toContain('The rest, 1.1 kW, goes into the mass');
  });

  it('says plainly when nothing stands behind a figure', () => {
    const context = contextOf(madeRun({ house: { cornerC: 20 } }));
    for (const figure of [
      'overheatedHours',
      'humidHours',
      'mouldIndex',
      'heatingKWh',
      'ventMoves',
    ] as const) {
      const trace = whyOf(context, figure);
      expect(trace.hours, figure).toEqual([]);
      expect(trace.text).toBe('No hour of the year stands behind this figure.');
    }
  });

  it('takes the hours within a degree of the coldest as the coldest', () => {
    const context = contextOf(madeRun({ house: { airC: (hour) => (hour < 10 ? 12 + hour * 0.5 : 20) } }));
    // 12, 12.5 and 13 °C
    expect(whyOf(context, 'coldestHour').hours).toEqual([0, 1, 2]);
  });

  it('finds the hours in which the coldest corner is damp enough for mould', () => {
    // 40 % at 20 °C is a vapour pressure of 935 Pa; against 9 °C (1148 Pa) that is 81 %, against 10 °C (1228 Pa) 76 %.
    const context = contextOf(madeRun({ house: { cornerC: (hour) => (hour < 5 ? 9 : 10) } }));
    expect(whyOf(context, 'mouldIndex').hours).toEqual([0, 1, 2, 3, 4]);
  });

  it('names the water of damp hours by its causes, of their months alone', () => {
    const july = (kg: number) => Array.from({ length: 12 }, (_, month) => (month === 6 ? kg : 1000));
    const context = contextOf(
      madeRun({
        house: {
          relativeHumidity: (hour) => (hour >= 4344 && hour < 5088 ? 0.9 : 0.4),
          moistureByCause: [
            { cause: 'people', monthKg: july(31) },
            { cause: 'plants', monthKg: july(93) },
          ],
        },
      }),
    );
    const { water, text } = whyOf(context, 'humidHours');
    expect(water.map(({ cause }) => cause)).toEqual(['plants', 'people']);
    // 93 kg in the 31 days of July
    expect(water[0]!.kgPerDay).toBeCloseTo(3, 9);
    expect(text).toContain('4.0 litres of water a day go into this air, 75 % of it from plants');
  });

  it('counts the plants of an open sunspace among the water of the rooms, and those of a closed one not', () => {
    const wet = (kg: number, cause: string) => [{ cause, monthKg: Array<number>(12).fill(kg) }];
    const causes = (join: 'open' | 'closed') =>
      whyOf(
        contextOf(
          madeRun({
            design: { sunspace: { join } },
            house: { relativeHumidity: 0.9, moistureByCause: wet(90, 'people') },
            sunspace: { moistureByCause: wet(900, 'plants') },
          }),
        ),
        'humidHours',
      ).water.map(({ cause }) => cause);
    expect(causes('open')).toEqual(['plants', 'people']);
    expect(causes('closed')).toEqual(['people']);
  });

  it('counts the hours with a vent open, and the moves', () => {
    const vent = { ...madeOpening('vents', (day) => (day < 10 ? 2 : 0)), kind: 'vent' };
    const open = hourly((hour) => (hour < 240 && hour % 24 === 12 ? 1 : 0));
    const context = contextOf(madeRun({ year: { openings: [{ ...vent, open }] } }));
    const { hours, text } = whyOf(context, 'ventMoves');
    expect(hours).toHaveLength(10);
    expect(text).toContain('moved 20 times');
  });

  it('traces the sunspace where there is one', () => {
    const made = { design: { sunspace: { join: 'closed' as const } }, sunspace: { airC: 35, solarW: 5000 } };
    const trace = whyOf(contextOf(madeRun(made)), 'overheatedHours', 'sunspace');
    expect(trace.hours).toHaveLength(8760);
    expect(trace.text).toContain('all hours of the day');
    expect(() => whyOf(contextOf(madeRun()), 'overheatedHours', 'sunspace')).toThrow(RangeError);
  });
});
