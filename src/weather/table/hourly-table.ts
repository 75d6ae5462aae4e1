// Any table of hourly weather (CSV, TSV, semicolons, decimal commas; 10 to 60 minute rows) into a typical year.
// Columns are matched by name and unit, the clock is settled from the sun, what is missing is computed or replaced
// by a named default, and every such step is a note. inspectTable shows the guesses before anything is read.
import { standardPressure } from '../../physics/altitude.ts';
import { assembleYear, newColumn } from '../assembly/assembled-year.ts';
import { dewPointFromHumidity } from '../assembly/humidity.ts';
import { completeComponents } from '../assembly/radiation-components.ts';
import { coordinatesInName, elevationOf, placeOf } from '../assembly/site-hints.ts';
import { type Fault, MOST_FAULTS, type ReadResult, refuse, type SiteHints } from '../read-result.ts';
import { idOf } from '../text/text-lines.ts';
import { HOURS, monthOfHour, type Site, type TypicalYear } from '../typical-year.ts';
import { type ClockChoices, resolveTableClock } from './table-clock.ts';
import { type ColumnChoices, type ColumnGuess, guessColumns } from './table-columns.ts';
import {
  byRole,
  columnNumbers,
  doubledRow,
  hourlyLast,
  hourlyMeans,
  linesOfHours,
  yearsOfMonths,
} from './table-hours.ts';
import { ROLE_WORDS, type Role } from './table-roles.ts';
import { type TableText, tableTextOf } from './table-text.ts';
import { type RowTimes, rowTimes } from './table-time.ts';

/**
 * Wind where a table has none [m/s at 10 m]: 2 m/s at 2 m, the mean of over 2000 weather stations, raised to 10 m.
 * Source: FAO Irrigation and Drainage Paper 56, chapter 3 (missing wind data) and equation 47.
 */
export const DEFAULT_WIND = 2.7;

export type TableChoices = ColumnChoices & ClockChoices;

export interface TableInspection {
  readonly columns: readonly ColumnGuess[];
  /** first rows as text, in the order of the columns */
  readonly preview: readonly (readonly string[])[];
  readonly separator: string;
  readonly decimalComma: boolean;
  readonly rows: number;
  /** what the lines above the header, or the file's name, say of the place */
  readonly latitudeDeg: number | null;
  readonly longitudeDeg: number | null;
  readonly elevationM: number | null;
}

export function looksLikeTable(text: string): boolean {
  return tableTextOf(text.slice(0, 20_000)) !== null;
}

/** The guesses about a table, for a person to confirm or correct; null when it is no table. */
export function inspectTable(
  text: string,
  choices: TableChoices = {},
  fileName = '',
): TableInspection | null {
  const table = tableTextOf(text);
  if (table === null) return null;
  const { separator, decimalComma, rows, latitudeDeg, longitudeDeg, elevationM } = table;
  const named = coordinatesInName(fileName);
  return {
    columns: guessColumns(table, choices),
    preview: rows.slice(0, 5),
    separator,
    decimalComma,
    rows: rows.length,
    latitudeDeg: latitudeDeg ?? named?.latitudeDeg ?? null,
    longitudeDeg: longitudeDeg ?? named?.longitudeDeg ?? null,
    elevationM,
  };
}

/** Read a table of hourly weather. */
export function readHourlyTable(text: string, hints: SiteHints = {}, choices: TableChoices = {}): ReadResult {
  const table = tableTextOf(text);
  if (table === null)
    return refuse(1, '', text.slice(0, 200), 'a line of column names above rows of numbers');
  if (table.tooLong) return refuse(null, '', `more than ${table.rows.length} rows`, 'one year of rows');
  const strange = strangeChoices(table, choices);
  if (strange.length > 0) return { ok: false, faults: strange };
  const guesses = guessColumns(table, choices);
  const columns = byRole(guesses);
  const absent = absentRoles(columns, table);
  if (absent.length > 0) return { ok: false, faults: absent };
  const times = rowTimes(table, [...columns.values()]);
  if ('faults' in times) return { ok: false, faults: times.faults };
  const doubled = doubledRow(table, times);
  if (doubled !== null) return { ok: false, faults: [doubled] };
  const faults: Fault[] = [];
  const numbers = new Map<Role, Float64Array>();
  for (const [role, column] of columns) {
    if (column.unit !== null) numbers.set(role, columnNumbers(table, column, times.stepMin, faults));
  }
  if (faults.length > 0) return { ok: false, faults: faults.slice(0, MOST_FAULTS) };
  const notes: string[] = [columnsNote(guesses)];
  const place = placeOf(table, hints, notes);
  if ('expected' in place) return { ok: false, faults: [place] };
  const site = {
    name: hints.name ?? `Site ${place.latitudeDeg}, ${place.longitudeDeg}`,
    ...place,
    elevationM: elevationOf(table.elevationM, hints, numbers.get('pressure') ?? null, notes),
    utcOffsetH: hints.utcOffsetH ?? Math.round(place.longitudeDeg / 15),
  };
  return yearOfNumbers(numbers, table, times, site, hints, choices, notes);
}

function yearOfNumbers(
  numbers: ReadonlyMap<Role, Float64Array>,
  table: TableText,
  times: RowTimes,
  site: Site,
  hints: SiteHints,
  choices: TableChoices,
  notes: string[],
): ReadResult {
  const monthYears = yearsOfMonths(times, monthOfHour);
  const sunlight = numbers.get('global') ?? numbers.get('beam')!;
  const {
    shiftMin,
    sunMinute,
    notes: clockNotes,
  } = resolveTableClock(sunlight, times, site, monthYears, choices);
  notes.push(...timeNotes(times), ...clockNotes);
  const hourly = (role: Role): Float64Array | null => {
    const values = numbers.get(role);
    if (values === undefined) return null;
    return role === 'windFrom' ? hourlyLast(values, times, shiftMin) : hourlyMeans(values, times, shiftMin);
  };
  const known = { global: hourly('global'), beam: hourly('beam'), diffuse: hourly('diffuse') };
  const { note, ...radiation } = completeComponents(known, { site, monthYears, sunMinute })!;
  if (note !== null) notes.push(note);
  const dryBulbC = hourly('dryBulb')!;
  const air = outdoorAir(hourly, dryBulbC, site.elevationM, notes);
  return assembleYear({
    site,
    id: idOf(hints.name ?? hints.fileName ?? site.name),
    source: `Table${hints.fileName === undefined ? '' : ` ${hints.fileName}`}`,
    credit: 'Data brought by the user',
    monthYears,
    sunMinute,
    columns: { dryBulbC, ...air, ...radiation, skyCover: hourly('skyCover') ?? newColumn() },
    skyLongwave: hourly('skyLongwave'),
    albedo: hourly('albedo'),
    rainMm: hourly('rain'),
    notes,
    lineOfHour: linesOfHours(table, times, shiftMin),
  });
}

function timeNotes(times: RowTimes): string[] {
  const notes: string[] = [];
  if (times.counted) notes.push('No column tells the time; the rows were counted from 1 January on.');
  if (times.stepMin < 60) notes.push(`Rows ${times.stepMin} minutes apart were averaged into hours.`);
  if (times.minutes.some(Number.isNaN)) notes.push('29 February was left out.');
  return notes;
}

/** What every column was taken for, so that a wrong guess can be seen afterwards too. */
function columnsNote(columns: readonly ColumnGuess[]): string {
  const used = columns
    .filter(({ role, unit }) => role !== null && unit !== null)
    .map(
      ({ header, role, unit }) =>
        `"${header}" as ${ROLE_WORDS[role!]}${unit!.name === '' ? '' : ` in ${unit!.name}`}`,
    );
  const unused = columns.filter(({ role }) => role === null).map(({ header }) => `"${header}"`);
  return `Columns read: ${used.join(', ')}.${unused.length === 0 ? '' : ` Not used: ${unused.join(', ')}.`}`;
}

/** Choices about columns the table does not have. */
function strangeChoices({ header }: TableText, { roles = {}, units = {} }: TableChoices): Fault[] {
  return [...new Set([...Object.keys(roles), ...Object.keys(units)])]
    .filter((name) => !header.includes(name))
    .map((value) => ({ line: null, column: 'columns', value, expected: `one of ${header.join(', ')}` }));
}

function absentRoles(columns: ReadonlyMap<Role, ColumnGuess>, table: TableText): Fault[] {
  const names = table.header.join(', ');
  const faults: Fault[] = [];
  const miss = (column: string, expected: string) =>
    faults.push({ line: table.headerLine, column, value: names, expected });
  if (!columns.has('dryBulb')) miss('air temperature', 'a column of the air temperature');
  if (!columns.has('global') && !(columns.has('beam') && columns.has('diffuse'))) {
    miss('radiation', 'a column of the global radiation on the horizontal, or both beam and diffuse');
  }
  return faults;
}

type Air = Pick<TypicalYear, 'dewPointC' | 'pressurePa' | 'windSpeed' | 'windFromDeg'>;

/** Humidity, pressure and wind as the table has them, else by a named default. */
function outdoorAir(
  hourly: (role: Role) => Float64Array | null,
  dryBulbC: Float64Array,
  elevationM: number,
  notes: string[],
): Air {
  const humidity = hourly('humidity');
  let dewPointC = hourly('dewPoint');
  if (dewPointC === null && humidity !== null) {
    dewPointC = dryBulbC.map((dryC, hour) => dewPointFromHumidity(dryC, humidity[hour]!));
  } else if (dewPointC === null) {
    dewPointC = dailyLowest(dryBulbC);
    notes.push(
      'The table has no humidity; the dew point is taken as the lowest air temperature of the day (FAO-56), so moisture and mould figures are rough.',
    );
  }
  const pressurePa =
    hourly('pressure') ??
    new Float64Array(HOURS).fill(standardPressure(Math.min(Math.max(elevationM, -500), 9000)));
  if (hourly('pressure') === null)
    notes.push('The table has no pressure; the standard one of its elevation is used.');
  const windSpeed = hourly('windSpeed') ?? new Float64Array(HOURS).fill(DEFAULT_WIND);
  if (hourly('windSpeed') === null) {
    notes.push(
      `The table has no wind; ${DEFAULT_WIND} m/s is used all year (FAO-56), so leakage and venting by wind are rough.`,
    );
  }
  return { dewPointC, pressurePa, windSpeed, windFromDeg: hourly('windFrom') ?? new Float64Array(HOURS) };
}

/** Source: FAO Irrigation and Drainage Paper 56, equation 48: without humidity data the dew point is near the daily minimum. */
function dailyLowest(dryBulbC: Float64Array): Float64Array {
  return dryBulbC.map((_, hour) => {
    const day = dryBulbC
      .subarray(hour - (hour % 24), hour - (hour % 24) + 24)
      .filter((value) => !Number.isNaN(value));
    return day.length === 0 ? Number.NaN : Math.min(...day);
  });
}
