// Source: table plane-annual.json: annual and monthly light on six planes at two TMY3 stations (Greensboro,
// Albuquerque), Perez 1990 all-sites composite, albedo 0.2, sun at mid-hour by NREL SPA, hours with the mid-hour
// sun below the horizon left out. Computed with an independent library and again from the formulas.
import { describe, expect, test } from 'vitest';
import { planeIrradiance, planeTotal } from '../../src/weather/prepared/plane-irradiance.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { MONTH_START_HOUR, type TypicalYear } from '../../src/weather/typical-year.ts';
import { fileYear } from '../weather/weather-files.ts';
import { check } from './ledger.ts';
import { readJson } from './reference-table.ts';

interface Plane {
  readonly tilt: number;
  readonly azimuth: number;
  readonly beam: number;
  readonly ground: number;
  readonly sky_perez1990: number;
  readonly total_perez1990: number;
  readonly monthly_total_perez1990: readonly number[];
}
interface Table {
  readonly sites: Record<
    string,
    {
      readonly planes: Record<string, Plane>;
      readonly excluded_hours_sun_below_horizon: { readonly hours: number };
    }
  >;
}

const ALLOWED = {
  /** same rule for the low sun (mid-hour): what the sun's 0.012° leaves */
  sameRule: 0.0002,
  /** a month is a shorter sum and its low-sun hours weigh more */
  sameRuleMonth: 0.0005,
  /** our own rule, the middle of the sunlit part: keeps the sunrise and sunset hours the table leaves out */
  ownRule: 0.005,
};

const FILES: Readonly<Record<string, string>> = { greensboro: '723170TYA.CSV', albuquerque: '723650TYA.CSV' };
const SOURCE = 'Light on planes, two TMY3 years, Perez 1990';
const table = readJson<Table>('plane-annual.json');

/** The reference takes 0.2 for the ground whatever the file says. */
const plainGround = (year: TypicalYear): TypicalYear => ({ ...year, albedo: null });

describe.each(Object.keys(FILES))('%s', (site) => {
  const { planes, excluded_hours_sun_below_horizon: excluded } = table.sites[site]!;
  const names = Object.keys(planes);

  test('all six planes are there, east and west among them', () => {
    expect(names.sort()).toEqual(['east90', 'horizontal', 'north30', 'south60', 'south90', 'west90']);
  });

  test('the sun at mid-hour gives the annual and monthly light within 0.02 and 0.05 %', async () => {
    const climate = prepareClimate({ ...plainGround(await fileYear(FILES[site]!)), sunMinute: 30 });
    expect(climate.darkHoursCleared).toBe(excluded.hours);
    for (const name of names) {
      const plane = planes[name]!;
      const sun = planeIrradiance(climate, plane.tilt, plane.azimuth);
      const sum = (...parts: Float64Array[]) =>
        parts.reduce((total, part) => total + part.reduce((a, b) => a + b, 0), 0) / 1000;
      const row = (quantity: string, reference: number, ours: number, allowed = ALLOWED.sameRule) =>
        check({
          source: SOURCE,
          case: `${site} ${name}`,
          quantity,
          reference,
          ours,
          allowed,
          kind: 'rel',
          unit: 'kWh/m²',
          mark: 'computed',
        });
      row('beam', plane.beam, sum(sun.beam));
      row('sky', plane.sky_perez1990, sum(sun.circumsolar, sun.isotropic, sun.horizon));
      if (plane.ground > 0) row('ground', plane.ground, sum(sun.ground));
      row('total', plane.total_perez1990, planeTotal(sun));
      for (const [month, reference] of plane.monthly_total_perez1990.entries()) {
        const ours = planeTotal(sun, MONTH_START_HOUR[month]!, MONTH_START_HOUR[month + 1]!);
        row(`total of month ${month + 1}`, reference, ours, ALLOWED.sameRuleMonth);
      }
    }
  });

  test('the sun in the middle of the sunlit part stays within 0.5 % of it', async () => {
    const climate = prepareClimate(plainGround(await fileYear(FILES[site]!)));
    for (const name of names) {
      const { tilt, azimuth, total_perez1990: reference } = planes[name]!;
      check({
        source: SOURCE,
        case: `${site} ${name}, sunlit part of the hour`,
        quantity: 'total',
        reference,
        ours: planeTotal(planeIrradiance(climate, tilt, azimuth)),
        allowed: ALLOWED.ownRule,
        kind: 'rel',
        unit: 'kWh/m²',
        mark: 'computed',
      });
    }
  });
});
