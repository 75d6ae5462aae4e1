// Looked-up normals beside those of real typical-year files of ten sites: yearly mean differences and the worst month, for
// the tests and for the table of docs/places.md (npm run looked-up).
import { placeFiles } from '../../src/cli/place-data.ts';
import { lookedUp } from '../../src/places/looked-up.ts';
import { MONTH_DAYS } from '../../src/weather/assembly/calendar-hour.ts';
import { summariseClimate } from '../../src/weather/prepared/climate-summary.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';

export const TEN_SITES = [
  'denver',
  'alamosa',
  'santa-fe',
  'tucson',
  'helena',
  'burlington',
  'quillayute',
  'anchorage',
  'north-italy',
  'madrid',
] as const;

export interface Difference {
  /** looked up less file, mean of the year */
  readonly year: number;
  /** largest of the months, without sign */
  readonly worst: number;
}

export interface SiteDifferences {
  readonly high: Difference;
  readonly low: Difference;
  readonly humidity: Difference;
  /** of the year's radiation, looked up over file less 1 [share] */
  readonly sun: number;
  readonly nearestKm: number;
}

export async function differencesAt(id: string): Promise<SiteDifferences> {
  const files = await placeFiles();
  const real = bundledYear(id);
  const { months } = summariseClimate(bundledClimate(id));
  const place = { ...real.site, region: '', country: '', countryCode: '' };
  const { normals, stations } = lookedUp(place, null, files, files.table);
  const difference = (
    seems: readonly number[],
    is: (month: (typeof months)[number]) => number,
  ): Difference => {
    const off = seems.map((value, month) => value - is(months[month]!));
    return { year: mean(off), worst: Math.max(...off.map(Math.abs)) };
  };
  const sun = mean(months.map(({ globalKWh }, month) => globalKWh / MONTH_DAYS[month]!));
  return {
    high: difference(normals.meanDailyHighC, (month) => month.meanDailyHighC),
    low: difference(normals.meanDailyLowC, (month) => month.meanDailyLowC),
    humidity: difference(normals.humidityPercent, (month) => 100 * month.meanRelativeHumidity),
    sun: mean(normals.dailyGlobalKWh!) / sun - 1,
    nearestKm: Math.min(...stations.map(({ distanceKm }) => distanceKm)),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
