// `npx tsx tests/published/fabric/main.ts`: runs the fabric cases and prints, as the table of docs/published-cases.md,
// every quantity with its recalled range, ours and the verdict; then what has no recalled range: mean and sun-zone
// temperatures, incident and transmitted sun, where the sun ends up. `npm run published` prints the ranges too.
// With the word `variants` it prints instead what else was tried and what each choice is worth.
import { CASES } from './cases.ts';
import { type RangeOf, rangesOf, verdictOf } from './ranges.ts';
import { type CaseOutcome, fabricClimate, runAll } from './runs.ts';
import { sunShares } from './sun-shares.ts';
import { runVariant, VARIANTS } from './variants.ts';

await (process.argv.includes('variants') ? variants() : main());

async function main(): Promise<void> {
  const climate = await fabricClimate();
  const outcomes = runAll(climate);
  line('case', 'quantity', 'range', 'mark', 'ours', 'verdict');
  line('---', '---', '---', '---', '---', '---');
  const counts = new Map<string, [number, number]>();
  for (const { of, values } of outcomes) {
    for (const range of rangesOf(of.id)) {
      const ours = values[range.quantity];
      printRange(range, ours);
      if (range.high === 0) continue;
      const [inside, all] = counts.get(range.confidence) ?? [0, 0];
      counts.set(range.confidence, [inside + (verdictOf(range, ours) === 'inside' ? 1 : 0), all + 1]);
    }
  }
  for (const [mark, [inside, all]] of counts) console.log(`\nmarked ${mark}: ${inside} of ${all} inside`);
  printTemperatures(outcomes);
  printSun(outcomes);
  console.log('\nWhere the sun that enters ends up, shares of a year:\n');
  for (const id of ['600', '620', '960']) {
    const shares = [...sunShares(CASES.find((of) => of.id === id)!, climate)];
    console.log(`${id}: ${shares.map(([surface, share]) => `${surface} ${share.toFixed(3)}`).join(', ')}`);
  }
}

async function variants(): Promise<void> {
  const climate = await fabricClimate();
  line('choice', 'source', 'M inside', 'L inside', '600 heating, cooling', '900', '960', 'outside, marked M');
  line('---', '---', '---', '---', '---', '---', '---', '---');
  for (const variant of VARIANTS) {
    const outcomes = await runVariant(variant, climate);
    const rows = outcomes.flatMap(({ of, values }) =>
      rangesOf(of.id)
        .filter(({ high }) => high !== 0)
        .map((range) => ({ range, inside: verdictOf(range, values[range.quantity]) === 'inside' })),
    );
    const marked = (mark: string) => rows.filter(({ range }) => range.confidence === mark);
    const count = (mark: string) => {
      const all = marked(mark);
      return `${all.filter(({ inside }) => inside).length} of ${all.length}`;
    };
    const loads = (id: string) => {
      const { heating, cooling } = outcomes.find(({ of }) => of.id === id)!.values;
      return `${heating.toFixed(2)}, ${cooling.toFixed(2)}`;
    };
    const outside = marked('M').filter(({ inside }) => !inside);
    const names = outside.map(({ range }) => `${range.case} ${range.quantity}`);
    const listed = names.length > 6 ? `${names.length} quantities` : names.join(', ');
    const { name, source } = variant;
    line(name, source, count('M'), count('L'), loads('600'), loads('900'), loads('960'), listed);
  }
}

function printRange(range: RangeOf, ours: number): void {
  const digits = range.unit === '°C' ? 1 : 3;
  line(
    range.case,
    range.quantity,
    `${range.low.toFixed(digits)} to ${range.high.toFixed(digits)} ${range.unit}`,
    range.confidence,
    ours.toFixed(digits),
    verdictOf(range, ours),
  );
}

function printTemperatures(outcomes: readonly CaseOutcome[]): void {
  console.log('\nAir temperatures without a recalled range, °C:\n');
  line('case', 'zone', 'highest', 'lowest', 'mean');
  line('---', '---', '---', '---', '---');
  for (const { of, year } of outcomes) {
    if (of.control !== 'free' && of.control !== 'night-vent-free' && !of.sunZone) continue;
    for (const { id, airC } of year.zones) {
      const mean = airC.reduce((sum, value) => sum + value, 0) / airC.length;
      line(of.id, id, ...[Math.max(...airC), Math.min(...airC), mean].map((value) => value.toFixed(1)));
    }
  }
}

function printSun(outcomes: readonly CaseOutcome[]): void {
  console.log('\nSun on the glass and passed as light, kWh a year per m² of glass:\n');
  line('case', 'incident', 'transmitted');
  line('---', '---', '---');
  for (const id of ['600', '610', '620', '630', '660', '670']) {
    const { panes } = outcomes.find(({ of }) => of.id === id)!.year;
    const area = panes.reduce((sum, { areaM2 }) => sum + areaM2, 0);
    const perM2 = (of: (pane: (typeof panes)[number]) => Float64Array) =>
      panes.reduce((sum, pane) => sum + of(pane).reduce((a, b) => a + b, 0), 0) / area / 1000;
    line(id, perM2((pane) => pane.incidentW).toFixed(0), perM2((pane) => pane.transmittedW).toFixed(0));
  }
}

function line(...cells: readonly string[]): void {
  console.log(`| ${cells.join(' | ')} |`);
}
