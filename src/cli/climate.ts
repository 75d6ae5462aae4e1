// `climate FILE | ID`: what a weather file holds: site, source, monthly means, degree-days, sun on the horizontal
// and on equator-facing planes, and what was filled or doubted while reading.

import { existsSync } from 'node:fs';
import { MONTH_NAMES } from '../outcomes/calendar.ts';
import {
  type ClimateSummary,
  HUMID_LIMIT,
  type Spell,
  summariseClimate,
} from '../weather/prepared/climate-summary.ts';
import { DOUBT_WORDS, doubtsAbout } from '../weather/prepared/doubts.ts';
import { type PreparedClimate, prepareClimate } from '../weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../weather/typical-year.ts';
import { actualYearWords } from './actual-year-words.ts';
import { bundledClimates } from './bundled-climates.ts';
import { type Command, type CommandResult, refused } from './command.ts';
import { PLACE_USAGE } from './place-weather.ts';
import { chooseWeather, climateById, WEATHER_FLAGS, weatherFile } from './site-weather.ts';
import { REPEATED_WEATHER_FLAGS, tableFlagsWithoutFile, WEATHER_USAGE } from './table-flags.ts';
import { type Cell, textTable } from './text-table.ts';

export const climateCommand: Command = {
  name: 'climate',
  usage: 'climate FILE | ID | --place NAME [--json]',
  line: 'what a weather file, a bundled climate or the year made for a place holds',
  valued: WEATHER_FLAGS.filter((flag) => flag !== 'climate' && flag !== 'weather'),
  switches: ['json'],
  repeated: REPEATED_WEATHER_FLAGS,
  details: [...PLACE_USAGE, ...WEATHER_USAGE],
  positionals: [0, 1],
  run: async (args) => {
    const ids = (await bundledClimates()).map(({ id }) => id);
    const [place] = args.positionals;
    const name = args.values.get('place');
    if ((place === undefined) === (name === undefined)) {
      const given = name === undefined ? 'nothing' : `${place} and --place ${name}`;
      return refused(`climate: ${given} given; allowed: ${climateCommand.usage}`);
    }
    if (place === undefined) {
      const made = await chooseWeather(args, '');
      return made.ok ? await shown(made.year, args.switches.has('json')) : made;
    }
    if (args.values.has('exposure')) return refused('--exposure: given without --place; allowed: beside it');
    if (!ids.includes(place) && !existsSync(place)) {
      return refused(
        `${place}: no such file; allowed: a weather file, or a bundled climate: ${ids.join(', ')}`,
      );
    }
    const idle = ids.includes(place) ? tableFlagsWithoutFile(args) : [];
    if (idle.length > 0) return refused(...idle);
    const weather = ids.includes(place)
      ? await climateById(place, 'climate')
      : await weatherFile(place, args);
    if (!weather.ok) return weather;
    return await shown(weather.year, args.switches.has('json'));
  },
};

async function shown(year: TypicalYear, asJson: boolean): Promise<CommandResult> {
  const climate = prepareClimate(year);
  const summary = summariseClimate(climate);
  const actual = await actualYearWords(year, summary);
  return { ok: true, output: asJson ? jsonOf(climate, summary, actual) : tableOf(climate, summary, actual) };
}

function jsonOf(climate: PreparedClimate, summary: ClimateSummary, actual: readonly string[]): string {
  const { year } = climate;
  const { id, site, source, credit, monthYears, sunMinute, notes } = year;
  return JSON.stringify({
    id,
    site,
    source,
    credit,
    monthYears,
    sunMinute,
    ...summary,
    notes,
    doubts: doubtsAbout(climate),
    ...(actual.length === 0 ? {} : { actualYear: actual[0] }),
  });
}

function tableOf(climate: PreparedClimate, summary: ClimateSummary, actual: readonly string[]): string {
  const { year } = climate;
  const { site } = year;
  const head: Cell[] = [
    '',
    'mean °C',
    'high',
    'low',
    'degree-days',
    'sun kWh/m²',
    'upright',
    'at 60°',
    'humidity %',
    'humid h',
    'wind m/s',
  ];
  const rows = summary.months.map((spell, month) => rowOf(MONTH_NAMES[month]!, spell));
  const lines = [
    `${site.name}: latitude ${degrees(site.latitudeDeg)}, longitude ${degrees(site.longitudeDeg)}, ${site.elevationM} m, UTC ${signed(site.utcOffsetH)} h`,
    `${year.source}; ${year.credit}`,
    '',
    textTable([head, ...rows, rowOf('Year', summary.year)]),
    '',
    `Lowest ${summary.year.lowestC.toFixed(1)} °C, highest ${summary.year.highestC.toFixed(1)} °C, cloudiest month ${MONTH_NAMES[summary.cloudiestMonth]}.`,
    'Upright and at 60°: sun on an equator-facing plane, ground reflection included.',
    `Degree-days: below 18 °C, from daily means. Humid: hours at ${Math.round(100 * HUMID_LIMIT)} % and more.`,
    ...actual,
    ...year.notes.map((note) => `Note: ${note}`),
    ...doubtsAbout(climate).map(({ weight, text, effect }) => `${DOUBT_WORDS[weight]}: ${text} ${effect}`),
  ];
  return lines.join('\n');
}

function rowOf(name: string, spell: Spell): readonly Cell[] {
  return [
    name,
    spell.meanC,
    spell.meanDailyHighC,
    spell.meanDailyLowC,
    Math.round(spell.heatingDegreeDays),
    Math.round(spell.globalKWh),
    Math.round(spell.upright90KWh),
    Math.round(spell.leaning60KWh),
    Math.round(100 * spell.meanRelativeHumidity),
    spell.humidHours,
    spell.meanWind,
  ];
}

function signed(value: number): string {
  return value < 0 ? `−${-value}` : `+${value}`;
}

/** To a thousandth; files of the oldest kind give minutes of arc. */
function degrees(value: number): string {
  return `${Number(value.toFixed(3))}°`;
}
