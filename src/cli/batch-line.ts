// One line of a batch: JSON text in, one line of JSON out: the outcome with the line's id before it, or
// {"id", "error"} when the line is wrong. Climates are prepared once and kept. Nothing a line holds throws.

import { runYear } from '../daystone.ts';
import { ALL_EXAMPLES } from '../design/stove-examples.ts';
import { type PreparedClimate, prepareClimate } from '../weather/prepared/prepared-climate.ts';
import { MOST_LINE_CHARACTERS } from './capped-lines.ts';
import { checkDesign, parseJson } from './design-file.ts';
import { placeWeather } from './place-weather.ts';
import { climateById } from './site-weather.ts';
import type { WeatherResult } from './weather-result.ts';

const kept = new Map<string, Promise<PreparedClimate | string>>();

/**
 * Run one line.
 *
 * @param line JSON text: {"id", "design", "climate"}; design is a design or an example's id, climate may be absent,
 *   "place" may stand for it
 * @param number the line's number, first is 1; it stands for the id where the line has none
 * @returns one line of JSON, without its line feed
 */
export async function answerLine(line: string, number: number): Promise<string> {
  if (line.length > MOST_LINE_CHARACTERS) {
    return errorLine(number, `a line of more than ${MOST_LINE_CHARACTERS} characters; allowed: at most that`);
  }
  const parsed = parseJson(line);
  if (!parsed.ok) return errorLine(number, parsed.fault);
  const entry = parsed.value;
  if (typeof entry !== 'object' || entry === null || Array.isArray(entry)) {
    return errorLine(number, `${shorten(line)}; allowed: an object {"id", "design", "climate"}`);
  }
  const { id: given, design: data, climate: named, place, ...others } = entry as Record<string, unknown>;
  const id = typeof given === 'string' || typeof given === 'number' ? given : number;
  const extra = Object.keys(others);
  if (extra.length > 0)
    return errorLine(id, `${extra.join(', ')}; allowed: the keys id, design, climate, place`);
  const example = ALL_EXAMPLES.find((candidate) => candidate.id === data);
  const checked = checkDesign(example?.design ?? data, '');
  if (!checked.ok) return errorLine(id, checked.faults.join('; '));
  if (named !== undefined && typeof named !== 'string') {
    return errorLine(
      id,
      `climate is ${shorten(JSON.stringify(named))}; allowed: the id of a bundled climate`,
    );
  }
  if (place !== undefined && (typeof place !== 'string' || named !== undefined)) {
    const fault = `place is ${shorten(JSON.stringify(place))}; allowed: the name of a place, and no climate beside it`;
    return errorLine(id, fault);
  }
  const climate = await (place === undefined
    ? climateOf(named ?? checked.design.climate)
    : climateAt(place as string));
  if (typeof climate === 'string') return errorLine(id, climate);
  try {
    return JSON.stringify({ id, ...runYear(checked.design, climate, { lend: true }).outcome });
  } catch (error) {
    return errorLine(id, `the run failed: ${(error as Error).message}`);
  }
}

/** The line that stands for an outcome that could not be had. */
export function errorLine(id: string | number, error: string): string {
  return JSON.stringify({ id, error });
}

function climateOf(id: string): Promise<PreparedClimate | string> {
  return keptUnder(id, () => climateById(id, 'climate'));
}

function climateAt(place: string): Promise<PreparedClimate | string> {
  return keptUnder(`place ${place}`, () => placeWeather(place, 'place', { values: new Map() }));
}

function keptUnder(key: string, load: () => Promise<WeatherResult>): Promise<PreparedClimate | string> {
  let climate = kept.get(key);
  if (climate === undefined) {
    climate = load().then((result) => {
      if (result.ok) return prepareClimate(result.year);
      // A million misspelt names are not worth remembering.
      kept.delete(key);
      return result.faults.join('; ');
    });
    kept.set(key, climate);
  }
  return climate;
}

function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
