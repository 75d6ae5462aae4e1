// A file that somebody brings of the days of a house: weather of those days, what loggers wrote, a diary of what was opened
// and burnt, or a table of heat. Bytes in; hourly readings or stretches, or one line a fault out.

import { type LoggerFile, type RealHours, readLogger, readRealWeather } from '../daystone.ts';
import { type Diary, looksLikeDiary, readDiary } from '../loggers/diary-file.ts';
import { heatColumn, readHeat } from '../loggers/heat-file.ts';
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
  readonly as: 'auto' | 'weather' | 'logger' | 'diary' | 'heat';
  readonly clock: RowClock;
  /** the column of a weather table that a sun meter on a plane wrote */
  readonly plane?: PlaneMeter | null;
}

/** Of these no logger in a room knows anything. */
const OUTDOORS: readonly Role[] = ['global', 'beam', 'diffuse', 'windSpeed', 'skyCover', 'rain'];
const ROOM_READING = /temp|°|hum|feucht|%/i;
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
  const other = notText(plain);
  if (other !== null) return { kind: 'refused', faults: [other] };
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
  if (as === 'heat' || (as === 'auto' && looksLikeHeat(text))) {
    const read = readHeat(text, { utcOffsetH: site.utcOffsetH, clock });
    return read.ok ? { kind: 'diary', diary: read.diary } : { kind: 'refused', faults: read.faults };
  }
  const read = await readLogger(text, { utcOffsetH: site.utcOffsetH, clock });
  return read.ok ? { kind: 'logger', file: read.file } : { kind: 'refused', faults: read.faults };
}

/** Why a file that a table program or a printer makes is no table as text; null for one that may be. */
function notText(bytes: Uint8Array): string | null {
  const starts = (...head: readonly number[]) => head.every((byte, i) => bytes[i] === byte);
  if (starts(0x50, 0x4b, 3, 4) || starts(0xd0, 0xcf, 0x11, 0xe0))
    return 'the file is a workbook or an archive; allowed: a table as text. Open it and save the sheet as CSV';
  if (starts(0x25, 0x50, 0x44, 0x46)) return 'the file is a PDF; allowed: a table as text, such as CSV';
  return null;
}

function looksLikeWeather(text: string): boolean {
  return firstColumns(text).some(({ role }) => role !== null && OUTDOORS.includes(role));
}

/** Heat, and nothing that a logger in a room would write. */
function looksLikeHeat(text: string): boolean {
  const headers = firstColumns(text).map(({ header }) => header);
  return heatColumn(headers) >= 0 && !headers.some((header) => ROOM_READING.test(header));
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
