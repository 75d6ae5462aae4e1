// `npm run converge`: how far a year is from one of sixty steps an hour that 365 real days have warmed up, for sixteen
// houses and places, with openers and with people's hands; and how far its start alone is from 365 days of warm-up. With
// `-- --write` the table goes to docs/convergence.md.
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Design, EXAMPLES, prepareClimate, readWeather, runYear } from '../../src/daystone.ts';
import type { Habit } from '../../src/design/design.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const CLIMATES = ['madrid', 'denver', 'burlington', 'anchorage'];
const HABITS: readonly Habit[] = ['automatic', 'attentive'];
const JANUARY_H = 744;
/** Errors of heat are shares of the heat, or of this where there is less [kWh]. */
const LEAST_KWH = 1000;

const exampleOf = (id: string): Design => EXAMPLES.find((example) => example.id === id)!.design;

/** The leaning example with an earth lining of 1.2 m, 60 m² of added mass 1.5 m thick and a bare slab of 0.3 m. */
function heavyHouse(): Design {
  const leaning = exampleOf('leaning');
  return {
    ...leaning,
    envelope: { ...leaning.envelope, wallLining: leaning.mass.material, wallLiningM: 1.2 },
    mass: { ...leaning.mass, areaM2: 60, thicknessM: 1.5 },
    floor: { ...leaning.floor, thicknessM: 0.3, cover: 'bare' },
  };
}

interface Measured {
  readonly heatKWh: number;
  readonly hotHours: number;
  readonly humidHours: number;
  readonly airC: Float64Array;
}

function measure(design: Design, climate: PreparedClimate, options = {}): Measured {
  const { figures, year } = runYear(design, climate, { ...options, lend: true });
  return {
    heatKWh: figures.heating.energyKWh,
    hotHours: figures.zones.house.overheatedHours,
    humidHours: figures.zones.house.humidHours,
    airC: year.zones[0]!.airC.slice(),
  };
}

const heatError = (ours: Measured, other: Measured) =>
  (100 * Math.abs(ours.heatKWh - other.heatKWh)) / Math.max(LEAST_KWH, other.heatKWh);
const january = ({ airC }: Measured) =>
  airC.subarray(0, JANUARY_H).reduce((sum, value) => sum + value, 0) / JANUARY_H;
const rms = (ours: Measured, other: Measured) =>
  Math.sqrt(ours.airC.reduce((sum, value, h) => sum + (value - other.airC[h]!) ** 2, 0) / ours.airC.length);

const HEAD =
  '| house, place | heat kWh | of 60 steps | off % | hot h off | humid h off | air rms K | start: % | January K | hot h |';

const lines: string[] = [
  '# How far a year is from a finer one',
  '',
  'Made by `npm run converge -- --write`. Against sixty steps an hour after 365 real days of warm-up; the last three columns hold the start alone against 365 days of warm-up. Heat is off by a share of itself, or of 1000 kWh where there is less. The heavy house is the leaning example with an earth lining of 1.2 m, 60 m² of added mass 1.5 m thick and a bare slab of 0.3 m.',
];
for (const habit of HABITS) {
  lines.push('', `## Vents: ${habit}`, '', HEAD, `| --- |${' ---: |'.repeat(9)}`);
  const errors: number[] = [];
  for (const id of CLIMATES) {
    const read = await readWeather(readFileSync(join(ROOT, 'climates', `${id}.txt`)));
    if (!read.ok) throw new Error(`climates/${id}.txt does not read`);
    const climate = prepareClimate(read.year);
    for (const [name, drawn] of [
      ['heavy', heavyHouse()],
      ...['leaning', 'closed', 'modest'].map((example) => [example, exampleOf(example)] as const),
    ] as const) {
      const design = { ...drawn, vents: { ...drawn.vents, habit } };
      const fine = measure(design, climate, { stepsPerHour: 60, warmUpDays: 365 });
      const warm = measure(design, climate, { warmUpDays: 365 });
      const ours = measure(design, climate);
      errors.push(heatError(ours, fine));
      const cells = [
        `${name}, ${id}`,
        ours.heatKWh.toFixed(0),
        fine.heatKWh.toFixed(0),
        heatError(ours, fine).toFixed(2),
        ours.hotHours - fine.hotHours,
        ours.humidHours - fine.humidHours,
        rms(ours, fine).toFixed(3),
        heatError(ours, warm).toFixed(2),
        Math.abs(january(ours) - january(warm)).toFixed(3),
        ours.hotHours - warm.hotHours,
      ];
      lines.push(`| ${cells.join(' | ')} |`);
      console.error(cells.join('  '));
    }
  }
  lines.push(
    '',
    `Heat off by ${(errors.reduce((a, b) => a + b, 0) / errors.length).toFixed(2)} % in the mean.`,
  );
}
const page = `${lines.join('\n')}\n`;
if (process.argv.includes('--write')) writeFileSync(join(ROOT, 'docs/convergence.md'), page);
else console.log(page);
