// Which weather a command runs in: --climate ID, --weather FILE, --place NAME, or the climate the design names. A typical
// year out, or one line a fault. What a file does not say about its site can be given beside it by flags.

import { basename } from 'node:path';
import { describeFault, type ReadResult, type SiteHints } from '../weather/read-result.ts';
import type { ParsedArguments } from './arguments.ts';
import { bundledClimate, bundledClimates } from './bundled-climates.ts';
import { bytesOf } from './files.ts';
import { PLACE_FLAGS, placeWeather } from './place-weather.ts';
import { TABLE_FLAGS, tableChoices, tableFlagsWithoutFile } from './table-flags.ts';
import type { WeatherResult } from './weather-result.ts';

/** Flags that say what a weather file may leave out, with their limits. */
const HINTS = [
  { flag: 'latitude', key: 'latitudeDeg', min: -90, max: 90, unit: 'degrees' },
  { flag: 'longitude', key: 'longitudeDeg', min: -180, max: 180, unit: 'degrees' },
  { flag: 'elevation', key: 'elevationM', min: -450, max: 6000, unit: 'm' },
  { flag: 'utc-offset', key: 'utcOffsetH', min: -12, max: 14, unit: 'h' },
] as const;

export const WEATHER_FLAGS: readonly string[] = [
  'climate',
  'weather',
  ...PLACE_FLAGS,
  'site-name',
  ...TABLE_FLAGS,
  ...HINTS.map(({ flag }) => flag),
];

/**
 * The weather that flags or a design ask for.
 *
 * @param args the command's flags
 * @param climateOfDesign id of a bundled climate, taken when no flag says otherwise
 * @param placeFlag the flag that names a place; of another name where --place means something else
 */
export async function chooseWeather(
  args: ParsedArguments,
  climateOfDesign: string,
  placeFlag = 'place',
): Promise<WeatherResult> {
  const given = ['climate', 'weather', placeFlag].filter((flag) => args.values.has(flag));
  if (given.length > 1) {
    const both = given.map((flag) => `--${flag} ${args.values.get(flag)}`).join(' and ');
    return faults(`${both} are ${given.length === 2 ? 'both' : 'all'} given; allowed: one of them`);
  }
  const file = args.values.get('weather');
  const id = args.values.get('climate');
  const place = args.values.get(placeFlag);
  if (place === undefined && args.values.has('exposure'))
    return faults(`--exposure: given without --${placeFlag}; allowed: beside it`);
  if (file !== undefined) return weatherFile(file, args);
  const idle = tableFlagsWithoutFile(args);
  if (idle.length > 0) return { ok: false, faults: idle };
  if (place !== undefined) {
    return placeWeather(place, `--${placeFlag}`, args);
  }
  return climateById(id ?? climateOfDesign, id === undefined ? 'climate of the design' : '--climate');
}

/** A bundled climate by id; `from` says in a fault where the id stands. */
export async function climateById(id: string, from: string): Promise<WeatherResult> {
  const result = await bundledClimate(id);
  if (result === null) {
    const ids = (await bundledClimates()).map((climate) => climate.id).join(', ');
    return faults(`${from}: ${id.length > 60 ? `${id.slice(0, 57)}…` : id}; allowed: ${ids}`);
  }
  return named(result, `climate ${id}`);
}

/** A weather file, of any format the reader knows. */
export async function weatherFile(path: string, args: ParsedArguments): Promise<WeatherResult> {
  const hints = siteHints(args, path);
  const choices = tableChoices(args);
  const wrong = [hints, choices].flatMap((result) => (result.ok ? [] : result.faults));
  if (!hints.ok || !choices.ok) return { ok: false, faults: wrong };
  const read = await bytesOf(path, 'a weather file');
  if (!read.ok) return read;
  // Loaded only for a file: what the loader of TypeScript does with the reader's table library makes every later access to
  // an array of numbers slower in this thread (DEVELOPERS.md), and thousands of runs in bundled climates need no reader.
  const { readWeather } = await import('../weather/reader.ts');
  return named(await readWeather(read.bytes, hints.hints, choices.choices), path);
}

function siteHints(
  { values }: ParsedArguments,
  path: string,
): { ok: true; hints: SiteHints } | { ok: false; faults: readonly string[] } {
  const wrong: string[] = [];
  const numbers: Record<string, number> = {};
  for (const { flag, key, min, max, unit } of HINTS) {
    const text = values.get(flag);
    if (text === undefined) continue;
    const value = Number(text);
    if (value >= min && value <= max) numbers[key] = value;
    else wrong.push(`--${flag}: ${text}; allowed: ${min} to ${max} ${unit}`);
  }
  if (wrong.length > 0) return { ok: false, faults: wrong };
  const name = values.get('site-name');
  return {
    ok: true,
    hints: { fileName: basename(path), ...(name === undefined ? {} : { name }), ...numbers },
  };
}

function named(result: ReadResult, place: string): WeatherResult {
  if (result.ok) return result;
  return { ok: false, faults: result.faults.map((fault) => `${place}: ${describeFault(fault)}`) };
}

function faults(line: string): WeatherResult {
  return { ok: false, faults: [line] };
}
