// `years DESIGN FILE FILE …`: a design in several actual years of its place, a line a year, and in how many of them it stays
// within what it counts as too hot.

import { basename } from 'node:path';
import { runYear } from '../daystone.ts';
import { actualYearsInWords, yearsWithin } from '../questions/actual-years.ts';
import { figuresOf } from '../questions/figures.ts';
import { METRIC_WORDS } from '../questions/words.ts';
import { actualYearOf } from '../weather/actual-year.ts';
import { type Command, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { HOTTER_FLAGS, HOTTER_USAGE, hotterDesign } from './hotter-flags.ts';
import { WEATHER_FLAGS, weatherFile } from './site-weather.ts';
import { REPEATED_WEATHER_FLAGS, WEATHER_USAGE } from './table-flags.ts';
import { textTable } from './text-table.ts';

const MOST_FILES = 60;
const NO_FILE = ['climate', 'weather', 'place', 'exposure'];

interface YearLine {
  /** the calendar year, or the file's name where its months are of several */
  readonly year: string;
  readonly file: string;
  readonly site: string;
  readonly heatingKWh: number;
  readonly tooHotHours: number;
  readonly allowedHours: number;
  readonly humidHours: number;
}

export const yearsCommand: Command = {
  name: 'years',
  usage: 'years DESIGN FILE FILE … [--hotter K] [--json]',
  line: 'a design in several actual years of its place, and in how many of them it stays within what is too hot',
  valued: [...WEATHER_FLAGS.filter((flag) => !NO_FILE.includes(flag)), ...HOTTER_FLAGS],
  switches: ['json'],
  repeated: REPEATED_WEATHER_FLAGS,
  details: [...HOTTER_USAGE, ...WEATHER_USAGE],
  positionals: [3, MOST_FILES + 1],
  run: async (args) => {
    const [id, ...files] = args.positionals;
    const read = await readDesign(id!);
    if (!read.ok) return read;
    const design = hotterDesign(args, read.design);
    if ('faults' in design) return { ok: false, faults: design.faults };
    const lines: YearLine[] = [];
    const faults: string[] = [];
    for (const file of files) {
      const weather = await weatherFile(file, args);
      if (!weather.ok) {
        faults.push(...weather.faults);
        continue;
      }
      const { heatingKWh, tooHotHours, tooHotLimitHours, humidHours } = figuresOf(
        runYear(design, weather.year, { lend: true }).figures,
      );
      const actual = actualYearOf(weather.year);
      lines.push({
        year: actual === null ? basename(file) : String(actual),
        file,
        site: weather.year.site.name,
        heatingKWh,
        tooHotHours,
        allowedHours: tooHotLimitHours,
        humidHours,
      });
    }
    if (faults.length > 0) return refused(...faults);
    const years = lines.map(({ year, allowedHours, ...figures }) => ({
      year,
      figures: { ...figures, tooHotLimitHours: allowedHours },
    }));
    const within = yearsWithin(years);
    if (args.switches.has('json')) return { ok: true, output: JSON.stringify({ years: lines, within }) };
    const table = textTable([
      ['year', 'back-up heat kWh', 'hours too hot', 'allowed', 'humid hours'],
      ...lines.map((line) => [
        line.year,
        Math.round(line.heatingKWh),
        line.tooHotHours,
        Math.round(line.allowedHours),
        line.humidHours,
      ]),
    ]);
    const closing = actualYearsInWords(years, METRIC_WORDS);
    return { ok: true, output: `${design.name}\n\n${table}\n\n${closing}` };
  },
};
