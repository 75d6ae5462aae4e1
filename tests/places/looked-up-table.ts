// `npm run looked-up`: normals looked up for ten sites beside those of their typical-year files, as a table.
import { type Difference, differencesAt, TEN_SITES } from './ten-sites.ts';

const row = (...cells: readonly string[]) => console.log(`| ${cells.join(' | ')} |`);
const shown = ({ year, worst }: Difference) => `${year.toFixed(1)} (${worst.toFixed(1)})`;

row('site', 'nearest station km', 'daily high K', 'daily low K', 'humidity points', 'sun %');
row('---', '---', '---', '---', '---', '---');
for (const id of TEN_SITES) {
  const { high, low, humidity, sun, nearestKm } = await differencesAt(id);
  row(id, nearestKm.toFixed(0), shown(high), shown(low), shown(humidity), (100 * sun).toFixed(0));
}
