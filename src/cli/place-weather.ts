// `--place NAME`: a year made from the normals looked up for a place. Flags in, a typical year out, or one line a fault.

import type { FoundPlace } from '../places/looked-up.ts';
import type { ExposureId } from '../places/wind-exposure.ts';
import type { ParsedArguments } from './arguments.ts';
import type { WeatherResult } from './weather-result.ts';

export const PLACE_FLAGS: readonly string[] = ['place', 'exposure'];

/** How they look, for the help of a command. */
export const PLACE_USAGE = [
  '--place NAME: a year made for any place by its name, or by coordinates as "46.2, 7.4"; see `places`',
  '  with --elevation M for its height, --exposure sheltered | open | ridge | coast for how it lies to the wind',
] as const;

/** Longest name repeated in a message [characters]. */
const MOST_CHARACTERS = 60;

const HEIGHT = { min: -450, max: 6000 };

/** The place a flag names, with the height told beside it, and its exposure; or what is wrong. */
export async function placeAsked(
  name: string,
  flag: string,
  { values }: Pick<ParsedArguments, 'values'>,
): Promise<
  | { readonly place: FoundPlace; readonly exposure: ExposureId | null }
  | { readonly faults: readonly string[] }
> {
  const { WIND_EXPOSURES } = await import('../places/wind-exposure.ts');
  const { placesFor } = await import('../places/looked-up.ts');
  const { placeFiles } = await import('./place-data.ts');
  const said = values.get('exposure');
  const exposure = WIND_EXPOSURES.find(({ id }) => id === said)?.id ?? null;
  const faults: string[] = [];
  if (said !== undefined && exposure === null)
    faults.push(`--exposure: ${short(said)}; allowed: ${WIND_EXPOSURES.map(({ id }) => id).join(', ')}`);
  const height = values.get('elevation');
  const elevationM = Number(height);
  if (height !== undefined && !(elevationM >= HEIGHT.min && elevationM <= HEIGHT.max))
    faults.push(`--elevation: ${short(height)}; allowed: ${HEIGHT.min} to ${HEIGHT.max} m`);
  const found = placesFor(name, 1, await placeFiles());
  if (!found.ok) faults.push(`${flag}: ${found.fault}`);
  const place = found.ok ? found.places[0] : undefined;
  if (found.ok && place === undefined)
    faults.push(
      `${flag}: ${short(name)}; allowed: a place that \`places\` finds, or coordinates such as "46.2, 7.4"`,
    );
  if (faults.length > 0 || place === undefined) return { faults };
  const { heightFromKm, ...own } = place;
  return { place: height === undefined ? place : { ...own, elevationM }, exposure };
}

/** The year made for the place. */
export async function placeWeather(
  name: string,
  flag: string,
  args: Pick<ParsedArguments, 'values'>,
): Promise<WeatherResult> {
  const asked = await placeAsked(name, flag, args);
  if ('faults' in asked) return { ok: false, faults: asked.faults };
  const { lookedUp } = await import('../places/looked-up.ts');
  const { placeFiles } = await import('./place-data.ts');
  const { yearFromNormals } = await import('../weather/synthetic/monthly-normals.ts');
  const { describeFault } = await import('../weather/read-result.ts');
  const files = await placeFiles();
  const { normals } = lookedUp(asked.place, asked.exposure, files, files.table);
  const offset = args.values.get('utc-offset');
  const made = yearFromNormals(offset === undefined ? normals : { ...normals, utcOffsetH: Number(offset) });
  if (made.ok) return made;
  return {
    ok: false,
    faults: made.faults.map((fault) => `${flag}: ${normals.name}: ${describeFault(fault)}`),
  };
}

function short(text: string): string {
  return text.length > MOST_CHARACTERS ? `${text.slice(0, MOST_CHARACTERS - 1)}…` : text;
}
