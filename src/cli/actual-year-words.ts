// An actual year beside the normals of its place, in a sentence; nothing for any other year.

import { actualYearOf } from '../weather/actual-year.ts';
import type { ClimateSummary } from '../weather/prepared/climate-summary.ts';
import type { TypicalYear } from '../weather/typical-year.ts';

/** Half a year by its warmth at the equator's side: April to September in the north. */
const NORTHERN_SUMMER = [3, 4, 5, 6, 7, 8];

export async function actualYearWords(year: TypicalYear, { months }: ClimateSummary): Promise<string[]> {
  const actual = actualYearOf(year);
  if (actual === null) return [];
  const { placeFiles } = await import('./place-data.ts');
  const { lookedUp } = await import('../places/looked-up.ts');
  const files = await placeFiles();
  const place = { ...year.site, region: '', country: '', countryCode: '' };
  const { normals } = lookedUp(place, null, files, files.table);
  const difference = (of: readonly number[]) =>
    of.reduce((sum, month) => {
      const usual = (normals.meanDailyHighC[month]! + normals.meanDailyLowC[month]!) / 2;
      const { meanDailyHighC, meanDailyLowC } = months[month]!;
      return sum + ((meanDailyHighC + meanDailyLowC) / 2 - usual) / of.length;
    }, 0);
  const all = months.map((_, month) => month);
  const north = NORTHERN_SUMMER;
  const summer = year.site.latitudeDeg < 0 ? all.filter((month) => !north.includes(month)) : north;
  const winter = all.filter((month) => !summer.includes(month));
  const words = (kelvin: number) =>
    Math.abs(kelvin) < 0.05
      ? 'as usual'
      : `${Math.abs(kelvin).toFixed(1)} K ${kelvin > 0 ? 'hotter' : 'colder'}`;
  return [
    `All months are of ${actual}: an actual year, or a typical one that was stamped so. Beside the normals looked up for its place (2003 to 2021, 1 to 3 K uncertain) it is ${words(difference(all))}, its summer half ${words(difference(summer))}, its winter half ${words(difference(winter))}.`,
  ];
}
