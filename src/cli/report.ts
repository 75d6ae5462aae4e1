// `report DESIGN …`: the report a client takes home, as Markdown: the first design, beside up to three others, with
// the answers to questions asked of it.

import { runYear } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { Run } from '../findings/context.ts';
import { type Units, wordingOf } from '../findings/wording.ts';
import type { PriceList } from '../quantities/prices.ts';
import { ask } from '../questions/ask.ts';
import { basisOf } from '../questions/basis.ts';
import { helpFor, pullLevers } from '../questions/help-runs.ts';
import { howSureOf } from '../questions/how-sure.ts';
import type { Question } from '../questions/question.ts';
import { QUESTIONS, questionById } from '../questions/registry.ts';
import { createPlainRunner } from '../questions/runner.ts';
import type { Help } from '../questions/what-helps.ts';
import { reportOf, toldAnswer } from '../report/report.ts';
import { type PreparedClimate, prepareClimate } from '../weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../weather/typical-year.ts';
import { type Command, type Console, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { HOTTER_FLAGS, HOTTER_USAGE, hotterDesign } from './hotter-flags.ts';
import { PLACE_USAGE } from './place-weather.ts';
import { PRICES_USAGE, pricesFrom } from './prices-flag.ts';
import { reportMarkdown } from './report-text.ts';
import { createThreadPool } from './run-pool.ts';
import { chooseWeather, WEATHER_FLAGS } from './site-weather.ts';
import { REPEATED_WEATHER_FLAGS, WEATHER_USAGE } from './table-flags.ts';

/** The older name of the flag whose place's weather is looked up. */
const PLACE = 'weather-place';
/** Beside one of these --place is what stands on the paper, as it was before it named a place to look up. */
const OTHER_WEATHER = ['climate', 'weather', PLACE];

export const reportCommand: Command = {
  name: 'report',
  usage:
    'report DESIGN [OTHER …] [--climate ID | --weather FILE | --place NAME] [--for WHO] [--where WORDS] [--ask QUESTION,…] [--prices FILE.csv] [--units us | us-therms]',
  line: 'the report for a client, as Markdown; up to three other designs beside it',
  valued: [
    ...WEATHER_FLAGS,
    ...HOTTER_FLAGS,
    PLACE,
    'where',
    'for',
    'adviser',
    'question',
    'units',
    'date',
    'ask',
    'prices',
  ],
  switches: [],
  repeated: REPEATED_WEATHER_FLAGS,
  details: [
    PRICES_USAGE,
    ...HOTTER_USAGE,
    ...PLACE_USAGE,
    '--where WORDS: what stands on the paper as the place, if not the NAME; --place does the same beside --climate or --weather',
    `--${PLACE} NAME: the older name of --place`,
    ...WEATHER_USAGE,
  ],
  positionals: [1, 4],
  run: async (args, console) => {
    const system = args.values.get('units') ?? 'metric';
    const allowed = ['metric', 'us', 'us-therms'] as const;
    const units = allowed.find((one) => one === system);
    if (units === undefined) return refused(`--units: ${system}; allowed: ${allowed.join(', ')}`);
    const asked = questionsAsked(args.values.get('ask') ?? '');
    if (typeof asked === 'string') return refused(asked);
    const prices = await pricesFrom(args);
    if (!prices.ok) return prices;
    const reads = await Promise.all(args.positionals.map(readDesign));
    const faults = reads.flatMap((read) => (read.ok ? [] : read.faults));
    if (faults.length > 0) return refused(...faults);
    const designs: Design[] = [];
    for (const read of reads) {
      if (!read.ok) continue;
      const design = hotterDesign(args, read.design);
      if ('faults' in design) return { ok: false, faults: design.faults };
      designs.push(design);
    }
    // All versions stand in the weather of the first, or the comparison would be one of climates.
    const isWords = OTHER_WEATHER.some((flag) => args.values.has(flag));
    const weather = await chooseWeather(args, designs[0]!.climate, isWords ? PLACE : 'place');
    if (!weather.ok) return weather;
    const climate = prepareClimate(weather.year);
    const [run, ...others] = designs.map((design): Run => runFor(design, climate, units));
    const text = (flag: string) => args.values.get(flag) ?? '';
    const design = designs[0]!;
    const report = reportOf({
      client: text('for'),
      place: text('where') || text('place'),
      adviser: text('adviser'),
      question: text('question'),
      date: args.values.get('date') ?? new Date().toISOString().slice(0, 10),
      run: run!,
      others,
      prices: prices.list,
      help: await helpIn(design, climate),
      sure: await howSureOf(design, createPlainRunner(climate), weather.year.madeFrom !== undefined),
      answers: await answersTo(asked, design, weather.year, { units, prices: prices.list }, console),
    });
    return { ok: true, output: reportMarkdown(report) };
  },
};

function runFor(design: Design, siteClimate: PreparedClimate, units: Units): Run {
  const { climate, year, outcome } = runYear(design, siteClimate, { units });
  return { design, units, climate, year, outcome };
}

/** What changes do to a design in a climate. */
async function helpIn(design: Design, climate: PreparedClimate): Promise<Help> {
  const runner = createPlainRunner(climate);
  return helpFor(design, await pullLevers(design, runner), runner);
}

/** Questions by their ids, or what is wrong. */
function questionsAsked(list: string): readonly Question[] | string {
  const ids = list.split(',').filter((id) => id !== '');
  const unknown = ids.find((id) => questionById(id) === undefined);
  if (unknown !== undefined) return `--ask: ${unknown}; allowed: ${QUESTIONS.map(({ id }) => id).join(', ')}`;
  return QUESTIONS.filter(({ id }) => ids.includes(id));
}

/** The closing sentence of each answer. */
async function answersTo(
  questions: readonly Question[],
  design: Design,
  year: TypicalYear,
  { units, prices }: { readonly units: Units; readonly prices: PriceList },
  console: Console,
): Promise<readonly string[]> {
  if (questions.length === 0) return [];
  const pool = createThreadPool();
  pool.keepClimate('site', year);
  const basis = basisOf(design, year.site, {
    words: wordingOf(units),
    prices,
    isMade: year.madeFrom !== undefined,
  });
  const sentences: string[] = [];
  try {
    for (const question of questions) {
      const { finding, sure, title } = await ask(question, basis, pool.runner('site'), {
        onProgress: ({ done, wanted }) => console.progress(done, wanted),
      });
      if (finding !== null) sentences.push(toldAnswer(title, finding, sure));
    }
  } finally {
    pool.close();
  }
  return sentences;
}
