// The bundled climates, each read and prepared once for all tests of a worker; nobody changes what they get. With the climate
// goes the light on planes that is remembered beside it.
import { readBundle } from '../../src/weather/formats/bundle-form.ts';
import { type PreparedClimate, preparedOnce } from '../../src/weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';
import { climateText, yearOf } from './weather-files.ts';

const years = new Map<string, TypicalYear>();

export function bundledYear(id: string): TypicalYear {
  const year = years.get(id) ?? Object.freeze(yearOf(readBundle(climateText(id))));
  years.set(id, year);
  return year;
}

export function bundledClimate(id: string): PreparedClimate {
  return preparedOnce(bundledYear(id));
}
