// `npm run made-years`: the example houses in real typical years and in years made from the monthly normals of the same,
// as a table. What is allowed between the two, and held: tests/published/monthly-normals-houses.test.ts.
import { EXAMPLES, runYear, type TypicalYear } from '../../src/daystone.ts';
import { readBundle } from '../../src/weather/formats/bundle-form.ts';
import { madeFrom, NORMALS_SITES } from './synthetic/made-from-real.ts';
import { climateText, yearOf } from './weather-files.ts';

const row = (...cells: readonly (string | number)[]) => console.log(`| ${cells.join(' | ')} |`);

row(
  'place',
  'house',
  'heating real kWh',
  'heating made kWh',
  'overheated hours real',
  'overheated hours made',
);
row('---', '---', '---', '---', '---', '---');
for (const id of NORMALS_SITES) {
  const real = yearOf(readBundle(climateText(id)));
  const made = madeFrom(real);
  for (const { id: house, design } of EXAMPLES) {
    const figures = (year: TypicalYear) => {
      const { heating, zones } = runYear(design, year, { lend: true }).figures;
      return { heating: Math.round(heating.energyKWh), hot: zones.house.overheatedHours };
    };
    const [is, seems] = [figures(real), figures(made)];
    row(id, house, is.heating, seems.heating, is.hot, seems.hot);
  }
}
