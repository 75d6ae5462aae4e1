// A file that somebody brings of the days of a house: weather of those days, what loggers wrote, or a diary of what was
// opened. Bytes in; hourly readings or stretches, or one line a fault out.

import { type LoggerFile, type RealHours, readLogger, readRealWeather } from '../daystone.ts';
import { type Diary, looksLikeDiary, readDiary } from '../loggers/diary-file.ts';
import { describeFault } from '../weather/read-result.ts';
import type { PlaneMeter } from '../weather/real/real-table.ts';
import type { RowClock } from '../weather/real/row-clock.ts';
import { guessColumns } from '../weather/table/table-columns.ts';
import type { Role } from '../weather/table/table-roles.ts';
import { tableNumber, tableTextOf } from '../weather/table/table-text.ts';
import { gunzip, isGzip, textOf } from '../weather/text/platform-streams.ts';
import type { Site } from '../weather/typical-year.ts';

export type TakenFile =
  | {
      readonly kind: 'weather';
      readonly real: RealHours;
      readonly notes: readonly string[];
      /** columns that may be of a sun meter on some plane */
      readonly meters: readonly string[];
    }
  | { readonly kind: 'logger'; readonly file: LoggerFile }
  | { readonly kind: 'diary'; readonly diary: Diary }
  | { readonly kind: 'refused'; readonly faults: readonly string[] };

export interface FileChoices {
  readonly name: string;
  /** where the house stands */
  readonly site: Site;
  readonly as: 'auto' | 'weather' | 'logger' | 'diary';
  readonly clock: RowClock;
  /** the column of a weather table that a sun meter on a plane wrote */
  readonly plane?: PlaneMeter | null;
}

/** Of these no logger in a room knows anything. */
const OUTDOORS: readonly Role[] = ['global', 'beam', 'diffuse', 'windSpeed', 'skyCover', 'rain'];
/** Rows that are looked at to tell what a file is. */
const LOOKED_AT = 50;
const SUNS: readonly Role[] = ['global', 'beam', 'diffuse'];

/** Read it as what it is said to be, or looks like. */
export async function takenFile(
  bytes: Uint8Array,
  { name, site, as, clock, plane }: FileChoices,
): Promise<TakenFile> {
  const plain = isGzip(bytes) ? await gunzip(bytes) : bytes;
  if (typeof plain === 'string')
    return { kind: 'refused', faults: [`the packed file is ${plain}; allowed: a whole file of up to 64 MB`] };
  const text = textOf(plain);
  if (as === 'diary' || (as === 'auto' && looksLikeDiary(text))) {
    const read = readDiary(text, { utcOffsetH: site.utcOffsetH, clock });
    return read.ok ? { kind: 'diary', diary: read.diary } : { kind: 'refused', faults: read.faults };
  }
  if (as === 'weather' || (as === 'auto' && looksLikeWeather(text))) {
    const choices = { clock, ...(plane && { plane }) };
    const read = await readRealWeather(text, site, { fileName: name }, choices);
    return read.ok
      ? { kind: 'weather', real: read.real, notes: read.notes, meters: metersOf(text) }
      : { kind: 'refused', faults: read.faults.map(describeFault) };
  }
  const read = await readLogger(text, { utcOffsetH: site.utcOffsetH, clock });
  return read.ok ? { kind: 'logger', file: read.file } : { kind: 'refused', faults: read.faults };
}

function looksLikeWeather(text: string): boolean {
  return firstColumns(text).some(({ role }) => role !== null && OUTDOORS.includes(role));
}

/** Columns of numbers that are nothing else, or some sun. */
function metersOf(text: string): string[] {
  return firstColumns(text)
    .filter(({ role, isNumber }) => isNumber && (role === null || SUNS.includes(role)))
    .map(({ header }) => header);
}

function firstColumns(text: string) {
  const table = tableTextOf(text.split(/\r?\n/, LOOKED_AT).join('\n'), LOOKED_AT);
  if (table === null) return [];
  return guessColumns(table).map(({ header, role, index }) => ({
    header,
    role,
    isNumber: table.rows.some((row) => Number.isFinite(tableNumber(row[index] ?? '', table.decimalComma))),
  }));
}
