// A year made from the monthly normals of a real one, to judge the method by; and the six places it is judged at,
// none of which was used in fitting it.
import { MONTH_DAYS } from '../../../src/weather/assembly/calendar-hour.ts';
import { summariseClimate } from '../../../src/weather/prepared/climate-summary.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { yearFromNormals } from '../../../src/weather/synthetic/monthly-normals.ts';
import type { TypicalYear } from '../../../src/weather/typical-year.ts';
import { yearOf } from '../weather-files.ts';

export const NORMALS_SITES = [
  'denver',
  'burlington',
  'quillayute',
  'tucson',
  'north-italy',
  'southern-chile',
] as const;

export function madeFrom(real: TypicalYear, seed = 1): TypicalYear {
  const { months } = summariseClimate(prepareClimate(real));
  return yearOf(
    yearFromNormals({
      ...real.site,
      meanDailyHighC: months.map((month) => month.meanDailyHighC),
      meanDailyLowC: months.map((month) => month.meanDailyLowC),
      humidityPercent: months.map((month) => 100 * month.meanRelativeHumidity),
      dailyGlobalKWh: months.map((month, m) => month.globalKWh / MONTH_DAYS[m]!),
      windSpeed: months.map((month) => month.meanWind),
      seed,
    }),
  );
}
