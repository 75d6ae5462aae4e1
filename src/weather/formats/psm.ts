// NSRDB PSM typical-year tables (v3 and v4, with or without the two lines of metadata) into a typical year.
// Radiation is an instant at the stamp, HH:30 as a rule; stamps are UTC or local standard time as the metadata say.
// Ground reflectance is hourly and knows snow. Source: NREL developer pages for the NSRDB typical-year downloads.
import { assembleYear, newColumn, newColumns } from '../assembly/assembled-year.ts';
import { hourOfYear } from '../assembly/calendar-hour.ts';
import { numberedCells, type RowStamp, type WalkedRows, walkHourlyRows } from '../assembly/hourly-rows.ts';
import { dewPointFromHumidity } from '../assembly/humidity.ts';
import { elevationOf, placeOf } from '../assembly/site-hints.ts';
import { shiftedFromUtc, utcShiftNote } from '../assembly/utc-shift.ts';
import type { ReadResult, SiteHints } from '../read-result.ts';
import { cellsOf, idOf, linesOf, numberOf } from '../text/text-lines.ts';

const PSM_CREDIT = 'National Solar Radiation Database (NSRDB), NREL';

const STAMP = ['Year', 'Month', 'Day', 'Hour', 'Minute'] as const;
const NEEDED = ['Temperature', 'GHI', 'DNI', 'DHI', 'Pressure', 'Wind Speed', 'Wind Direction'] as const;

/**
 * Opaque cover of a PSM cloud type: 0 clear, 1 probably clear, 7 cirrus, the rest clouds. Cirrus hides a third of
 * the sky's cold: common practice, no source.
 */
const COVER_OF_TYPE: Readonly<Record<number, number>> = {
  0: 0,
  1: 0,
  2: 1,
  3: 1,
  4: 1,
  5: 1,
  6: 1,
  7: 0.3,
  8: 1,
  9: 1,
};

interface Head {
  readonly latitudeDeg: number | null;
  readonly longitudeDeg: number | null;
  readonly elevationM: number | null;
  /** zone of the stamps and of the site, minus UTC [h] */
  readonly stampOffsetH: number | null;
  readonly localOffsetH: number | null;
  readonly version: string | null;
}

function isHeader(line: string): boolean {
  return /(^|,)"?Year"?,"?Month"?,"?Day"?,"?Hour"?,"?Minute"?,/.test(line);
}

export function looksLikePsm(text: string): boolean {
  return linesOf(text.slice(0, 6000))
    .slice(0, 3)
    .some((line) => isHeader(line) && /(^|,)GHI(,|$)/.test(line.trim()));
}

/**
 * Read a PSM table.
 *
 * @param hints the site, for tables without metadata: latitude, longitude, offset from UTC
 */
export function readPsm(text: string, hints: SiteHints = {}): ReadResult {
  const lines = linesOf(text);
  const headerAt = lines.findIndex(isHeader);
  const header = cellsOf(lines[headerAt]!).map((cell) => cell.trim());
  const humidity = header.includes('Dew Point') ? 'Dew Point' : 'Relative Humidity';
  const absent = [...NEEDED, humidity].filter((name) => !header.includes(name));
  if (absent.length > 0) {
    const faults = absent.map((column) => {
      return {
        line: headerAt + 1,
        column,
        value: '',
        expected: 'a column of this name; ask for it when downloading',
      };
    });
    return { ok: false, faults };
  }
  const head = headOf(lines, headerAt);
  const notes: string[] = [];
  const place = placeOf(head, hints, notes);
  if ('expected' in place) return { ok: false, faults: [place] };
  const localH = Math.round(
    hints.utcOffsetH ?? head.localOffsetH ?? head.stampOffsetH ?? place.longitudeDeg / 15,
  );
  const rows = readRows(lines, headerAt + 1, header, humidity);
  if (rows.faults.length > 0) return { ok: false, faults: rows.faults };
  const shift = head.stampOffsetH === null ? 0 : localH - head.stampOffsetH;
  if (shift !== 0) notes.push(utcShiftNote(shift));
  const columns = newColumns();
  for (const name of Object.keys(columns) as (keyof typeof columns)[])
    columns[name] = shiftedFromUtc(rows.columns[name], shift);
  const site = {
    name: hints.name ?? `Grid cell ${place.latitudeDeg}, ${place.longitudeDeg}`,
    ...place,
    elevationM: elevationOf(head.elevationM, hints, columns.pressurePa, notes),
    utcOffsetH: localH,
  };
  return assembleYear({
    site,
    id: idOf(hints.name ?? hints.fileName ?? site.name),
    source: `NSRDB PSM typical year${head.version === null ? '' : `, version ${head.version}`}`,
    credit: PSM_CREDIT,
    monthYears: rows.monthYears,
    sunMinute: rows.minute,
    columns,
    skyLongwave: null,
    albedo: rows.albedo === null ? null : shiftedFromUtc(rows.albedo, shift),
    notes,
    lineOfHour: Int32Array.from(shiftedFromUtc(Float64Array.from(rows.lineOfHour), shift)),
  });
}

function headOf(lines: readonly string[], headerAt: number): Head {
  const names = headerAt >= 2 ? cellsOf(lines[headerAt - 2]!).map((cell) => cell.trim()) : [];
  const values = headerAt >= 2 ? cellsOf(lines[headerAt - 1]!) : [];
  const number = (name: string): number | null => {
    const value = numberOf(values[names.indexOf(name)]);
    return Number.isNaN(value) ? null : value;
  };
  return {
    latitudeDeg: number('Latitude'),
    longitudeDeg: number('Longitude'),
    elevationM: number('Elevation'),
    stampOffsetH: number('Time Zone'),
    localOffsetH: number('Local Time Zone'),
    version: values[names.indexOf('Version')]?.trim() || null,
  };
}

interface Rows extends WalkedRows {
  readonly columns: ReturnType<typeof newColumns>;
  readonly albedo: Float64Array | null;
  /** the same in all rows [min] */
  readonly minute: number;
}

function readRows(lines: readonly string[], from: number, header: readonly string[], humidity: string): Rows {
  const at = (name: string) => header.indexOf(name);
  const columns = newColumns();
  const albedo = at('Surface Albedo') < 0 ? null : newColumn();
  let minute = Number.NaN;
  const stampOf = (cells: readonly string[]): RowStamp => {
    const parts = STAMP.map((name) => numberOf(cells[at(name)]));
    const [year, month, day, clock, min] = parts as [number, number, number, number, number];
    if (Number.isNaN(minute)) minute = min;
    const hour = min === minute && min >= 0 && min < 60 ? hourOfYear(month, day, clock) : null;
    return { hour, year, text: `${year}-${month}-${day} ${clock}:${min}` };
  };
  const rows = numberedCells(lines, from, cellsOf);
  const walked = walkHourlyRows(rows, 'date and time', '2015,1,31,23,30', stampOf, (cells, hour, miss) => {
    const value = (name: string): number => {
      const number = numberOf(cells[at(name)]);
      if (Number.isNaN(number)) miss(name, cells[at(name)] ?? '');
      return number;
    };
    const dryC = value('Temperature');
    const damp = value(humidity);
    columns.dryBulbC[hour] = dryC;
    columns.dewPointC[hour] = humidity === 'Dew Point' ? damp : dewPointFromHumidity(dryC, damp);
    columns.globalHorizontal[hour] = value('GHI');
    columns.beamNormal[hour] = value('DNI');
    columns.diffuseHorizontal[hour] = value('DHI');
    columns.pressurePa[hour] = value('Pressure') * 100;
    columns.windSpeed[hour] = value('Wind Speed');
    columns.windFromDeg[hour] = value('Wind Direction');
    columns.skyCover[hour] = COVER_OF_TYPE[numberOf(cells[at('Cloud Type')])] ?? Number.NaN;
    if (albedo !== null) albedo[hour] = value('Surface Albedo');
  });
  return { ...walked, columns, albedo, minute };
}
