// TMY3 text into a typical year: both editions (2008 with 68 columns, 2015 with 71) and copies re-saved by a
// spreadsheet (dates without leading zeros, 24:00:00, a 72nd column without a name). Radiation is the mean of
// the hour that ends at the label, air is read at the label; labels 1…24 are local standard time.
// Source: NREL/TP-581-43156, Users Manual for TMY3 Data Sets, revised May 2008, tables 1-1 to 1-3.
import { saturationPressure } from '../../physics/moist-air.ts';
import { assembleYear, newColumn, newColumns } from '../assembly/assembled-year.ts';
import { hourOfYear } from '../assembly/calendar-hour.ts';
import { numberedCells, type RowStamp, walkHourlyRows } from '../assembly/hourly-rows.ts';
import { type Fault, type ReadResult, refuse } from '../read-result.ts';
import { cellsOf, idOf, linesOf, numberOf } from '../text/text-lines.ts';
import { HOURS, type Site } from '../typical-year.ts';

/** Code for a value that is not there. */
const MISSING = -9900;

/** Hours in which relative humidity and dew point differ by more than this are counted [percentage points]. */
const HUMIDITY_DISAGREEMENT = 10;

const TMY3_CREDIT = 'NREL, TMY3 data set (National Renewable Energy Laboratory, US Department of Energy)';

const NEEDED = {
  date: 'Date (MM/DD/YYYY)',
  time: 'Time (HH:MM)',
  globalHorizontal: 'GHI (W/m^2)',
  beamNormal: 'DNI (W/m^2)',
  diffuseHorizontal: 'DHI (W/m^2)',
  opaqueTenths: 'OpqCld (tenths)',
  dryBulbC: 'Dry-bulb (C)',
  dewPointC: 'Dew-point (C)',
  humidity: 'RHum (%)',
  pressureMbar: 'Pressure (mbar)',
  windFromDeg: 'Wdir (degrees)',
  windSpeed: 'Wspd (m/s)',
  albedo: 'Alb (unitless)',
  rain: 'Lprecip depth (mm)',
} as const;
type Need = keyof typeof NEEDED;

/** True when the first lines look like TMY3: column names below a line about the site. Without that line it is a table. */
export function looksLikeTmy3(text: string): boolean {
  const head = text.slice(0, 4000);
  const siteLineEnds = head.search(/[\r\n]/);
  return (
    head.indexOf(NEEDED.date) > siteLineEnds && siteLineEnds > 0 && head.includes(NEEDED.globalHorizontal)
  );
}

/** Read a TMY3 file. */
export function readTmy3(text: string): ReadResult {
  const lines = linesOf(text);
  const headerAt = lines.findIndex((line) => line.includes(NEEDED.date));
  if (headerAt < 1)
    return refuse(2, NEEDED.date, lines[1] ?? '', 'a header line with the names of the columns');
  const site = siteOf(lines[0]!);
  if ('expected' in site) return { ok: false, faults: [site] };
  const header = cellsOf(lines[headerAt]!).map((cell) => cell.trim());
  const at = Object.fromEntries(
    Object.entries(NEEDED).map(([key, name]) => [key, header.indexOf(name)]),
  ) as Record<Need, number>;
  const absent = (Object.keys(NEEDED) as Need[]).filter(
    (key) => at[key] < 0 && key !== 'albedo' && key !== 'rain',
  );
  if (absent.length > 0) {
    const faults = absent.map((key) => ({
      line: headerAt + 1,
      column: NEEDED[key],
      value: '',
      expected: 'a column of this name',
    }));
    return { ok: false, faults };
  }
  return readRows(lines, headerAt + 1, at, site);
}

function siteOf(line: string): (Site & { readonly station: string }) | Fault {
  const cells = cellsOf(line).map((cell) => cell.trim());
  const [station = '', name = '', state = ''] = cells;
  const [utcOffsetH, latitudeDeg, longitudeDeg, elevationM] = cells.slice(3, 7).map(numberOf) as number[];
  const fault = (column: string, value: string | undefined, expected: string): Fault => {
    return { line: 1, column, value: value ?? '', expected };
  };
  if (!(Math.abs(utcOffsetH!) <= 14)) return fault('time zone', cells[3], 'hours from UTC, −14 to 14');
  if (!(Math.abs(latitudeDeg!) <= 90)) return fault('latitude', cells[4], 'degrees, −90 to 90');
  if (!(Math.abs(longitudeDeg!) <= 180)) return fault('longitude', cells[5], 'degrees, −180 to 180');
  if (!(elevationM! >= -500 && elevationM! <= 9000))
    return fault('elevation', cells[6], 'metres, −500 to 9000');
  return {
    station,
    name: state === '' ? name : `${name}, ${state}`,
    latitudeDeg: latitudeDeg!,
    longitudeDeg: longitudeDeg!,
    elevationM: elevationM!,
    utcOffsetH: utcOffsetH!,
  };
}

function readRows(
  lines: readonly string[],
  firstRow: number,
  at: Readonly<Record<Need, number>>,
  { station, ...site }: Site & { readonly station: string },
): ReadResult {
  const columns = newColumns();
  const albedo = newColumn();
  const rain = newColumn();
  const humidity = newColumn();
  const stampOf = (cells: readonly string[]) => stampOfLabel(cells[at.date], cells[at.time]);
  const rows = numberedCells(lines, firstRow, cellsOf);
  const walked = walkHourlyRows(rows, 'date and time', '01/31/1999,24:00', stampOf, (cells, hour, miss) => {
    const value = (key: Need): number => {
      const number = numberOf(cells[at[key]]);
      if (Number.isNaN(number)) miss(NEEDED[key], cells[at[key]] ?? '');
      return unlessMissing(number);
    };
    columns.globalHorizontal[hour] = value('globalHorizontal');
    columns.beamNormal[hour] = value('beamNormal');
    columns.diffuseHorizontal[hour] = value('diffuseHorizontal');
    columns.skyCover[hour] = value('opaqueTenths') / 10;
    columns.dryBulbC[hour] = value('dryBulbC');
    columns.dewPointC[hour] = value('dewPointC');
    columns.pressurePa[hour] = value('pressureMbar') * 100;
    columns.windFromDeg[hour] = value('windFromDeg');
    columns.windSpeed[hour] = value('windSpeed');
    humidity[hour] = numberOf(cells[at.humidity]);
    albedo[hour] = numberOf(cells[at.albedo]);
    rain[hour] = unlessMissing(numberOf(cells[at.rain]));
  });
  if (walked.faults.length > 0) return { ok: false, faults: walked.faults };
  return assembleYear({
    site,
    id: idOf(site.name),
    source: `TMY3, station ${station}`,
    credit: TMY3_CREDIT,
    monthYears: walked.monthYears,
    sunMinute: 'mean',
    columns,
    skyLongwave: null,
    albedo: albedoIsUsable(albedo) ? albedo : null,
    rainMm: rainIsWhole(rain) ? rain : null,
    notes: [...humidityNote(columns.dryBulbC, columns.dewPointC, humidity), albedoNote(albedo)],
    lineOfHour: walked.lineOfHour,
  });
}

/** The 2008 edition leaves out most hours: what is left says nothing of the others. */
function rainIsWhole(rain: Float64Array): boolean {
  return rain.every((depth) => depth >= 0);
}

function unlessMissing(value: number): number {
  return value === MISSING ? Number.NaN : value;
}

/** A label such as 1/1/1995 24:00:00: the hour that ends then. */
function stampOfLabel(date = '', time = ''): RowStamp {
  const text = `${date} ${time}`.trim();
  const day = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/.exec(date);
  const clock = /^\s*(\d{1,2}):00(?::00)?\s*$/.exec(time);
  if (day === null || clock === null) return { hour: null, year: 0, text };
  const hour = hourOfYear(Number(day[1]), Number(day[2]), Number(clock[1]) - 1);
  return { hour, year: Number(day[3]), text };
}

/** The 2015 edition writes 0 in the whole column when any month has no value. */
function albedoIsUsable(albedo: Float64Array): boolean {
  return albedo.every((value) => value > 0 && value <= 1);
}

function albedoNote(albedo: Float64Array): string {
  return albedoIsUsable(albedo)
    ? 'Ground reflectance is climatological, without snow.'
    : 'The file has no usable ground reflectance; 0.2 is used.';
}

function humidityNote(dryBulbC: Float64Array, dewPointC: Float64Array, humidity: Float64Array): string[] {
  let hours = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    const dry = dryBulbC[hour]!;
    const dew = dewPointC[hour]!;
    if (!(dry >= -90 && dew >= -90 && dry <= 60 && dew <= 60)) continue;
    const derived = (100 * saturationPressure(Math.min(dew, dry))) / saturationPressure(dry);
    if (Math.abs(derived - humidity[hour]!) > HUMIDITY_DISAGREEMENT) hours++;
  }
  if (hours === 0) return [];
  return [
    `In ${hours} hours the file's relative humidity and dew point differ by more than ${HUMIDITY_DISAGREEMENT} points; the dew point is used.`,
  ];
}
