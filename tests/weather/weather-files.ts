// Real typical-year files for the tests, by name: tests/data/weather/<name>.gz as bytes, or as plain text.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { describeFault, type ReadResult, type SiteHints } from '../../src/weather/read-result.ts';
import { readWeather } from '../../src/weather/reader.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';

const DATA = join(import.meta.dirname, '../data/weather');
const CLIMATES = join(import.meta.dirname, '../../climates');

export const N_ITALY = { latitudeDeg: 45, longitudeDeg: 8, elevationM: 250 };
export const NW_COLORADO = { latitudeDeg: 40.53, longitudeDeg: -108.54, elevationM: 2168, utcOffsetH: -7 };

/** The site of the two kinds of table that do not carry it. */
const SITES: Readonly<Record<string, SiteHints>> = {
  'pvgis_tmy_test.csv': N_ITALY,
  'test_psm3_tmy-2017.csv': NW_COLORADO,
  'test_psm4_tmy-2023.csv': NW_COLORADO,
};

export function fileBytes(name: string): Uint8Array {
  return readFileSync(join(DATA, `${name}.gz`));
}

export function fileText(name: string): string {
  return gunzipSync(fileBytes(name)).toString('utf8');
}

export function climateText(id: string): string {
  return readFileSync(join(CLIMATES, `${id}.txt`), 'utf8');
}

/** Read a test file through the front door. */
export async function fileYear(name: string): Promise<TypicalYear> {
  return yearOf(await readWeather(fileBytes(name), { fileName: name, ...SITES[name] }));
}

/** The year, or an error with the faults in words. */
export function yearOf(result: ReadResult): TypicalYear {
  if (!result.ok) throw new Error(result.faults.map(describeFault).join('\n'));
  return result.year;
}
