// PVGIS typical-year text (CSV with or without header, copies re-saved with more columns, or JSON) into one table
// of numbers with the site the file names. Times stay UTC here. Fields as in the European Commission's PVGIS user
// manual: T2m °C, RH %, G(h), Gb(n), Gd(h), IR(h) W/m², WS10m m/s, WD10m °, SP Pa.
import * as v from 'valibot';
import { hourOfYear } from '../assembly/calendar-hour.ts';
import { type RowStamp, walkHourlyRows } from '../assembly/hourly-rows.ts';
import type { Fault } from '../read-result.ts';
import { jsonOf } from '../text/json-text.ts';
import { cellsOf, linesOf, numberOf } from '../text/text-lines.ts';
import { HOURS } from '../typical-year.ts';

export const TIME = 'time(UTC)';
const PVGIS_COLUMNS = ['T2m', 'RH', 'G(h)', 'Gb(n)', 'Gd(h)', 'IR(h)', 'WS10m', 'WD10m', 'SP'] as const;
export type PvgisColumn = (typeof PVGIS_COLUMNS)[number];

/** Long-wave radiation is the one column a table may lack. */
const OPTIONAL: readonly string[] = ['IR(h)'];

export interface PvgisTable {
  readonly latitudeDeg: number | null;
  readonly longitudeDeg: number | null;
  readonly elevationM: number | null;
  /** "Irradiance Time Offset" of newer files [h], null where the file does not say */
  readonly offsetH: number | null;
  /** radiation database named in JSON files, e.g. PVGIS-ERA5 */
  readonly radiationDatabase: string | null;
  /** credit line at the end of CSV files */
  readonly copyright: string | null;
  readonly monthYears: readonly number[];
  /** 8760 values each, row i = UTC hour i of the year; NaN where missing; null where the column is absent */
  readonly columns: Readonly<Record<PvgisColumn, Float64Array | null>>;
  readonly lineOfHour: Int32Array;
}

export type TableResult = PvgisTable | { readonly faults: readonly Fault[] };

/** One row before it is checked: its line, its stamp and its cells by column. */
interface Row {
  readonly line: number;
  readonly stamp: string;
  readonly value: (column: PvgisColumn) => string | number | null | undefined;
}

/** Read the CSV forms. */
export function pvgisTableFromCsv(text: string): TableResult {
  const lines = linesOf(text);
  const headerAt = lines.findIndex((line) => line.includes(TIME));
  const header = cellsOf(lines[headerAt] ?? '').map((cell) => cell.trim());
  const timeAt = header.indexOf(TIME);
  const absent = absentColumns((name) => header.includes(name), headerAt + 1);
  if (absent.length > 0) return { faults: absent };
  const at = Object.fromEntries(PVGIS_COLUMNS.map((name) => [name, header.indexOf(name)]));
  const rows: Row[] = [];
  let end = headerAt + 1;
  for (; end < lines.length && lines[end]!.trim() !== ''; end++) {
    const cells = cellsOf(lines[end]!);
    const value = (column: PvgisColumn) => (at[column]! < 0 ? null : (cells[at[column]!] ?? ''));
    rows.push({ line: end + 1, stamp: cells[timeAt] ?? '', value });
  }
  const head = lines.slice(0, headerAt);
  const stated = (words: RegExp): number | null => {
    const line = head.find((candidate) => words.test(candidate));
    const number = numberOf(line?.slice(line.indexOf(':') + 1));
    return Number.isNaN(number) ? null : number;
  };
  const copyright = lines.slice(end).find((line) => line.includes('(c)'));
  return checkedTable(rows, (name) => header.includes(name), {
    latitudeDeg: stated(/^"?latitude/i),
    longitudeDeg: stated(/^"?longitude/i),
    elevationM: stated(/^"?elevation/i),
    offsetH: stated(/^"?irradiance time offset/i),
    radiationDatabase: null,
    copyright: copyright?.trim() ?? null,
  });
}

const PvgisJson = v.object({
  inputs: v.object({
    location: v.object({
      latitude: v.number(),
      longitude: v.number(),
      elevation: v.optional(v.nullable(v.number())),
      irradiance_time_offset: v.optional(v.nullable(v.number())),
    }),
    meteo_data: v.optional(v.object({ radiation_db: v.optional(v.string()) })),
  }),
  outputs: v.object({
    tmy_hourly: v.array(v.record(v.string(), v.union([v.string(), v.number(), v.null()]))),
  }),
});

/** Read the JSON form. */
export function pvgisTableFromJson(text: string): TableResult {
  const json = jsonOf(text);
  if ('faults' in json) return json;
  const parsed = v.safeParse(PvgisJson, json.content, { abortEarly: true });
  if (!parsed.success) {
    const issue = parsed.issues[0];
    const column = v.getDotPath(issue) ?? '';
    return {
      faults: [{ line: null, column, value: issue.received, expected: issue.expected ?? 'PVGIS JSON' }],
    };
  }
  const { location, meteo_data } = parsed.output.inputs;
  const hourly = parsed.output.outputs.tmy_hourly;
  const first = hourly[0] ?? {};
  const absent = absentColumns((name) => name in first, null);
  if (absent.length > 0) return { faults: absent };
  const rows = hourly.map((row, i) => ({
    line: i + 1,
    stamp: String(row[TIME] ?? ''),
    value: (column: PvgisColumn) => row[column],
  }));
  return checkedTable(rows, (name) => name in first, {
    latitudeDeg: location.latitude,
    longitudeDeg: location.longitude,
    elevationM: location.elevation ?? null,
    offsetH: location.irradiance_time_offset ?? null,
    radiationDatabase: meteo_data?.radiation_db ?? null,
    copyright: null,
  });
}

function absentColumns(has: (name: string) => boolean, line: number | null): Fault[] {
  return [TIME, ...PVGIS_COLUMNS]
    .filter((name) => !OPTIONAL.includes(name) && !has(name))
    .map((column) => ({ line, column, value: '', expected: 'a column of this name' }));
}

function checkedTable(
  rows: readonly Row[],
  has: (name: string) => boolean,
  head: Omit<PvgisTable, 'monthYears' | 'columns' | 'lineOfHour'>,
): TableResult {
  const present = PVGIS_COLUMNS.filter(has);
  const columns = Object.fromEntries(
    PVGIS_COLUMNS.map((name) => [name, has(name) ? new Float64Array(HOURS) : null]),
  ) as Record<PvgisColumn, Float64Array | null>;
  const walked = walkHourlyRows(
    rows.map((row) => ({ line: row.line, row })),
    TIME,
    '20180131:2300 UTC',
    (row) => stampOf(row.stamp),
    (row, hour, miss) => {
      for (const name of present) {
        const cell = row.value(name);
        const value = typeof cell === 'number' ? cell + 0 : numberOf(cell ?? '');
        columns[name]![hour] = value;
        if (Number.isNaN(value) && cell !== null) miss(name, String(cell ?? ''));
      }
    },
  );
  const { faults, monthYears, lineOfHour } = walked;
  return faults.length > 0 ? { faults } : { ...head, monthYears, columns, lineOfHour };
}

/** A stamp such as 20180131:2300; minutes are always 00 in this format. */
function stampOf(text: string): RowStamp {
  const match = /^(\d{4})(\d\d)(\d\d):(\d\d)\d\d$/.exec(text.trim());
  if (match === null) return { hour: null, year: 0, text };
  const [year = 0, month = 0, day = 0, hour = 0] = match.slice(1).map(Number);
  return { hour: hourOfYear(month, day, hour), year, text };
}
