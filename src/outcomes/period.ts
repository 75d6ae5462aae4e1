// The outcome of some days: the columns of a run cut to the hours that were run, and their plain figures. What counts
// hours of a year (too hot, mould, fresh air) has no meaning over a fortnight and is left out.

import type { Books, Year, ZoneYear } from '../network/year.ts';
import { rowOfHour } from '../weather/typical-year.ts';

/** Hourly columns of a zone over the period; one entry an hour. */
export type ZonePeriod = { readonly [K in HourlyKey]: Float64Array } & { readonly id: string };
type HourlyKey = { [K in keyof ZoneYear]: ZoneYear[K] extends Float64Array ? K : never }[keyof ZoneYear];

export interface ZonePeriodOutcome {
  readonly meanAirC: number;
  readonly maxAirC: number;
  readonly minAirC: number;
  readonly meanRelativeHumidity: number;
}

export interface PeriodOutcome {
  readonly hours: number;
  readonly zones: Readonly<Record<string, ZonePeriodOutcome>>;
  readonly heating: { readonly energyKWh: number };
  readonly cooling: { readonly energyKWh: number };
  readonly books: Books;
}

/** A column of the climate's rows, cut to those of a period; rows go on past the year's end. */
function periodOf(column: Float64Array, firstRow: number, hours: number): Float64Array {
  return new Float64Array(hours).map((_, hour) => column[rowOfHour(firstRow, hour)]!);
}

/**
 * Every zone's hourly columns, cut to a period.
 *
 * @param firstRow of the period in the climate's rows, 0…8759
 * @param hours of the period, 1…8760
 */
export function zonesOfPeriod(year: Year, firstRow: number, hours: number): ZonePeriod[] {
  return year.zones.map((zone) => {
    const columns = Object.entries(zone).filter(([, value]) => value instanceof Float64Array);
    const cut = columns.map(([key, column]) => [key, periodOf(column as Float64Array, firstRow, hours)]);
    return { id: zone.id, ...Object.fromEntries(cut) } as ZonePeriod;
  });
}

/**
 * Plain figures of a period: means, highest and lowest of the air [°C], mean relative humidity [0…1], heat and cooling of all
 * zones together [kWh].
 *
 * @param zones at least one
 */
export function summarisePeriod(zones: readonly ZonePeriod[], books: Books): PeriodOutcome {
  const mean = (column: Float64Array) => column.reduce((a, b) => a + b, 0) / column.length;
  const kWh = (key: 'heatingW' | 'coolingW') =>
    zones.reduce((sum, zone) => sum + zone[key].reduce((a, b) => a + b, 0), 0) / 1000;
  return {
    hours: zones[0]!.airC.length,
    zones: Object.fromEntries(
      zones.map(({ id, airC, relativeHumidity }): [string, ZonePeriodOutcome] => [
        id,
        {
          meanAirC: mean(airC),
          maxAirC: airC.reduce((a, b) => Math.max(a, b)),
          minAirC: airC.reduce((a, b) => Math.min(a, b)),
          meanRelativeHumidity: mean(relativeHumidity),
        },
      ]),
    ),
    heating: { energyKWh: kWh('heatingW') },
    cooling: { energyKWh: kWh('coolingW') },
    books,
  };
}
