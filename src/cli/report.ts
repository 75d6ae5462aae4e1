// `report DESIGN …`: the report a client takes home, as Markdown: the first design, beside up to three others.

import type { Run } from '../findings/context.ts';
import { reportOf } from '../findings/report.ts';
import { prepareClimate } from '../weather/prepared-climate.ts';
import { type Command, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { reportMarkdown } from './report-text.ts';
import { runDesign } from './run-design.ts';
import { chooseWeather, WEATHER_FLAGS } from './site-weather.ts';

export const reportCommand: Command = {
  name: 'report',
  usage: 'report DESIGN [OTHER …] [--climate ID | --weather FILE] [--for WHO] [--place WHERE] [--units us]',
  line: 'the report for a client, as Markdown; up to three other designs beside it',
  valued: [...WEATHER_FLAGS, 'for', 'place', 'adviser', 'question', 'units', 'date'],
  switches: [],
  positionals: [1, 4],
  run: async (args) => {
    const units = args.values.get('units') ?? 'metric';
    if (units !== 'metric' && units !== 'us') return refused(`--units: ${units}; allowed: metric, us`);
    const reads = await Promise.all(args.positionals.map(readDesign));
    const faults = reads.flatMap((read) => (read.ok ? [] : read.faults));
    if (faults.length > 0) return refused(...faults);
    const designs = reads.flatMap((read) => (read.ok ? [read.design] : []));
    // All versions stand in the weather of the first, or the comparison would be one of climates.
    const weather = await chooseWeather(args, designs[0]!.climate);
    if (!weather.ok) return weather;
    const climate = prepareClimate(weather.year);
    const [run, ...others] = designs.map(
      (design): Run => ({ design, climate, units, ...runDesign(design, climate) }),
    );
    const text = (flag: string) => args.values.get(flag) ?? '';
    const report = reportOf({
      client: text('for'),
      place: text('place'),
      adviser: text('adviser'),
      question: text('question'),
      date: args.values.get('date') ?? new Date().toISOString().slice(0, 10),
      run: run!,
      others,
      answers: [],
    });
    return { ok: true, output: reportMarkdown(report) };
  },
};
