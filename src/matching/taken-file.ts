// A file that somebody brings of the days of a house: weather of those days, or what loggers wrote. Bytes in; hourly
// readings, or one line a fault out.

import { type LoggerFile, type RealHours, readLogger, readRealWeather } from '../daystone.ts';
import { describeFault } from '../weather/read-result.ts';
import type { RowClock } from '../weather/real/row-clock.ts';
import { guessColumns } from '../weather/table/table-columns.ts';
import type { Role } from '../weather/table/table-roles.ts';
import { tableTextOf } from '../weather/table/table-text.ts';
import { gunzip, isGzip, textOf } from '../weather/text/platform-streams.ts';
import type { Site } from '../weather/typical-year.ts';

export type TakenFile =
  | { readonly kind: 'weather'; readonly real: RealHours; readonly notes: readonly string[] }
  | { readonly kind: 'logger'; readonly file: LoggerFile }
  | { readonly kind: 'refused'; readonly faults: readonly string[] };

export interface FileChoices {
  readonly name: string;
  /** where the house stands */
  readonly site: Site;
  readonly as: 'auto' | 'weather' | 'logger';
  readonly clock: RowClock;
}

/** Of these no logger in a room knows anything. */
const OUTDOORS: readonly Role[] = ['global', 'beam', 'diffuse', 'windSpeed', 'skyCover', 'rain'];
/** Rows that are looked at to tell what a file is. */
const LOOKED_AT = 50;

/** Read it as what it is said to be, or looks like. */
export async function takenFile(
  bytes: Uint8Array,
  { name, site, as, clock }: FileChoices,
): Promise<TakenFile> {
  const plain = isGzip(bytes) ? await gunzip(bytes) : bytes;
  if (typeof plain === 'string')
    return { kind: 'refused', faults: [`the packed file is ${plain}; allowed: a whole file of up to 64 MB`] };
  const text = textOf(plain);
  if (as === 'weather' || (as === 'auto' && looksLikeWeather(text))) {
    const read = await readRealWeather(text, site, { fileName: name }, { clock });
    return read.ok
      ? { kind: 'weather', real: read.real, notes: read.notes }
      : { kind: 'refused', faults: read.faults.map(describeFault) };
  }
  const read = await readLogger(text, { utcOffsetH: site.utcOffsetH, clock });
  return read.ok ? { kind: 'logger', file: read.file } : { kind: 'refused', faults: read.faults };
}

function looksLikeWeather(text: string): boolean {
  const table = tableTextOf(text.split(/\r?\n/, LOOKED_AT).join('\n'), LOOKED_AT);
  return table !== null && guessColumns(table).some(({ role }) => role !== null && OUTDOORS.includes(role));
}
