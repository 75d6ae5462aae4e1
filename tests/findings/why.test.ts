import { describe, expect, it } from 'vitest';
import { contextOf } from '../../src/findings/context.ts';
import { TRACED, whyOf } from '../../src/findings/why.ts';
import { madeRun } from './made-run.ts';

describe('the trace of a figure', () => {
  it('finds the hours behind it, by month and time of day', () => {
    // hot from noon to six in July
    const isHot = (hour: number) => hour >= 4344 && hour < 5088 && hour % 24 >= 12 && hour % 24 < 18;
    const context = contextOf(madeRun({ house: { airC: (hour) => (isHot(hour) ? 30 : 20), solarW: 2000 } }));
    const trace = whyOf(context, 'overheatedHours');
    expect(trace.hours).toHaveLength(31 * 6);
    expect(trace.hours.length).toBe(context.house.overheatedHours);
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
    const { flows } = whyOf(context, 'overheatedHours');
    expect(flows.map(({ cause }) => cause)).toEqual(['sun', 'outdoor air']);
    expect(flows[0]?.watts).toBeCloseTo(3000, 9);
    // 110 m² · 2.6 m changed once an hour by air 20 K cooler, 1206 J/(m³·K)
    expect(flows[1]?.watts).toBeCloseTo((-286 * 1206 * 20) / 3600, 6);
  });

  it('says plainly when nothing stands behind a figure', () => {
    const context = contextOf(madeRun());
    for (const figure of TRACED) {
      const trace = whyOf(context, figure);
      expect(trace.hours).toEqual([]);
      expect(trace.text).toBe('No hour of the year stands behind this figure.');
    }
  });

  it('names one change where the findings know one', () => {
    const context = contextOf(
      madeRun({
        design: { sunspace: { join: 'open' } },
        house: { airC: (hour) => (hour < 1000 ? 30 : 20) },
      }),
    );
    expect(whyOf(context, 'overheatedHours').change).toContain('shut the sunspace off');
  });
});
