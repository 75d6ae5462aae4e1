// `npm run made-years`: the example houses in real typical years and in years made from the monthly normals of the same,
// as a table: of the made ones the median of several draws and the least and most of them in brackets; `-- 15` for so many
// draws. What is allowed between the two, and held: tests/published/monthly-normals-houses.test.ts.
import { EXAMPLES, runYear, type TypicalYear } from '../../src/daystone.ts';
import { readBundle } from '../../src/weather/formats/bundle-form.ts';
import { OTHER_DRAWS } from '../../src/weather/synthetic/other-draws.ts';
import { madeFrom, NORMALS_SITES } from './synthetic/made-from-real.ts';
import { climateText, yearOf } from './weather-files.ts';

const DRAWS = Number(process.argv[2] ?? OTHER_DRAWS + 1);
if (!(Number.isInteger(DRAWS) && DRAWS >= 1 && DRAWS <= 100)) {
  throw new RangeError(`draws ${process.argv[2]}; allowed: 1 to 100`);
}
const QUANTITIES = ['heating kWh', 'overheated hours', 'humid hours'] as const;

const row = (...cells: readonly (string | number)[]) => console.log(`| ${cells.join(' | ')} |`);

function figuresOf(design: (typeof EXAMPLES)[number]['design'], year: TypicalYear): readonly number[] {
  const { heating, zones } = runYear(design, year, { lend: true }).figures;
  return [Math.round(heating.energyKWh), zones.house.overheatedHours, zones.house.humidHours];
}

/** Median, least and most. */
function spread(values: readonly number[]): string {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
  return `${Math.round(middle)} (${sorted[0]} to ${sorted.at(-1)})`;
}

row('place', 'house', ...QUANTITIES.flatMap((quantity) => [`${quantity}, real`, 'made']));
row(...['---', '---', ...QUANTITIES.flatMap(() => ['---', '---'])]);
for (const id of NORMALS_SITES) {
  const real = yearOf(readBundle(climateText(id)));
  const draws = Array.from({ length: DRAWS }, (_, draw) => madeFrom(real, draw + 1));
  for (const { id: house, design } of EXAMPLES) {
    const is = figuresOf(design, real);
    const seem = draws.map((year) => figuresOf(design, year));
    row(id, house, ...is.flatMap((value, i) => [value, spread(seem.map((figures) => figures[i]!))]));
  }
}
