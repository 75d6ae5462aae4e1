// `year DESIGN`: one design through one year. A table for people with the findings that matter in short, all of them at
// length with --all, one JSON object with --json, the hours in a file with --hourly.

import { runYear } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import { hourlyFile } from '../outcomes/hourly-file.ts';
import type { Outcome } from '../outcomes/outcome.ts';
import { fuelCost } from '../quantities/fuel-cost.ts';
import type { PriceList } from '../quantities/prices.ts';
import {
  drawnOf,
  type HowSure,
  howSureOf,
  howSureSentences,
  RANGED,
  rangeOf,
} from '../questions/how-sure.ts';
import { createPlainRunner } from '../questions/runner.ts';
import { unknownsRule } from '../questions/what-nobody-knows.ts';
import { METRIC_WORDS } from '../questions/words.ts';
import { preparedOnce } from '../weather/prepared/prepared-climate.ts';
import { type Command, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { writtenFor } from './files.ts';
import { HOTTER_FLAGS, HOTTER_USAGE, hotterDesign } from './hotter-flags.ts';
import { outcomeTable } from './outcome-table.ts';
import { PLACE_USAGE } from './place-weather.ts';
import { PRICES_USAGE, pricesFrom } from './prices-flag.ts';
import { chooseWeather, WEATHER_FLAGS } from './site-weather.ts';
import { REPEATED_WEATHER_FLAGS, WEATHER_USAGE } from './table-flags.ts';

export const yearCommand: Command = {
  name: 'year',
  usage:
    'year DESIGN [--climate ID | --weather FILE | --place NAME] [--hotter K] [--heat-wave DAYS,K] [--prices FILE.csv] [--hourly OUT.csv] [--all] [--json]',
  line: 'one year of a design: a file, or an example by its id',
  valued: [...WEATHER_FLAGS, ...HOTTER_FLAGS, 'hourly', 'prices'],
  switches: ['json', 'all'],
  repeated: REPEATED_WEATHER_FLAGS,
  details: [PRICES_USAGE, ...HOTTER_USAGE, ...PLACE_USAGE, ...WEATHER_USAGE],
  positionals: [1, 1],
  run: async (args) => {
    const read = await readDesign(args.positionals[0]!);
    if (!read.ok) return read;
    const design = hotterDesign(args, read.design);
    if ('faults' in design) return { ok: false, faults: design.faults };
    const prices = await pricesFrom(args);
    if (!prices.ok) return prices;
    const weather = await chooseWeather(args, design.climate);
    if (!weather.ok) return weather;
    const { outcome, year, climate } = runYear(design, weather.year);
    const file = args.values.get('hourly');
    if (file !== undefined) {
      const fault = await writtenFor('hourly', file, hourlyFile(climate, year));
      if (fault !== null) return refused(fault);
    }
    const sure = await howSureOf(
      design,
      createPlainRunner(preparedOnce(weather.year)),
      weather.year.madeFrom !== undefined,
    );
    const sentences = howSureSentences(sure, METRIC_WORDS);
    const drawn = drawnOf(sure);
    const seed = weather.year.madeFrom?.seed ?? 1;
    const madeYears = drawn.map(({ heatingKWh, tooHotHours, humidHours }, i) => ({
      seed: seed + i,
      heatingKWh,
      tooHotHours,
      humidHours,
    }));
    return {
      ok: true,
      output: args.switches.has('json')
        ? JSON.stringify({
            ...outcome,
            howSure: howSureJson(sure, design),
            ...(args.values.has('prices') && { fuelMoney: fuelMoneyJson(outcome.fuel, prices.list) }),
            ...(drawn.length > 0 && { madeYears }),
          })
        : outcomeTable(outcome, args.switches.has('all'), sentences, prices.list),
    };
  },
};

/** A year's fuel by a person's own price; null where none is told or it has no price. */
function fuelMoneyJson(fuel: Outcome['fuel'], list: PriceList) {
  return { currency: list.currency, cost: fuel === undefined ? null : fuelCost(fuel, list) };
}

/** Least and most of the headline figures, what makes them so, and every run behind them as a design. */
function howSureJson(sure: HowSure, drawn: Design) {
  return {
    rule: unknownsRule(METRIC_WORDS, drawn, drawnOf(sure).length > 0),
    ranges: Object.fromEntries(
      RANGED.map((key) => {
        const { drawn, least, leastBy, most, mostBy } = rangeOf(key, sure);
        return [key, { drawn, least, leastBy: leastBy?.id ?? null, most, mostBy: mostBy?.id ?? null }];
      }),
    ),
    // Other draws are no change of the design; they stand among the made years.
    runs: sure.turned
      .filter(({ unknown }) => unknown.change === undefined)
      .map(({ unknown, design, figures }) => ({
        id: unknown.id,
        words: unknown.when(METRIC_WORDS),
        design,
        figures,
      })),
  };
}
