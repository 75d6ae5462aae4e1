// A table of dated weather, of any length up to a year and any step from 1 minute to 1 hour, into hourly readings of real
// days. Columns are matched as for typical years; nothing but the air temperature must be there; gaps stay gaps. Every
// guess and every step is a note.

import { dewPointFromHumidity } from '../assembly/humidity.ts';
import { elevationOf } from '../assembly/site-hints.ts';
import { HOUR_MS } from '../moments.ts';
import { type Fault, MOST_FAULTS, type SiteHints } from '../read-result.ts';
import { type ColumnChoices, type ColumnGuess, guessColumns } from '../table/table-columns.ts';
import { byRole, columnNumbers } from '../table/table-hours.ts';
import { ROLE_WORDS, type Role } from '../table/table-roles.ts';
import { tableTextOf } from '../table/table-text.ts';
import { wallClocks } from '../table/table-time.ts';
import { HOURS, type Site } from '../typical-year.ts';
import { gridOver, hourlyFromIntervals, hourlyFromMoments } from './hourly-means.ts';
import { type RowClock, rowMoments } from './row-clock.ts';
import { minutesLate } from './sun-clock.ts';
import type { RealHours } from './weather-record.ts';

/** A year of 1-minute rows is longer, and of no use here: fewer are asked for. */
export const MOST_DATED_ROWS = 400_000;

export interface RealTableChoices extends ColumnChoices {
  readonly clock?: RowClock;
  /** what a stamp stands for; told from the sun where there is any, else the moment of its reading */
  readonly stamp?: 'start' | 'end' | 'instant';
  /** a column that a sun meter on some plane wrote [W/m²] */
  readonly plane?: PlaneMeter;
}

/** A column of a table that a sun meter wrote, and how it stood; tilt 0 faces up, azimuth clockwise from north. */
export interface PlaneMeter {
  readonly header: string;
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
}

export type RealTableResult =
  | { readonly ok: true; readonly real: RealHours; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Hours by which sun and clock may differ before something is wrong. */
const TOLERANCE_MIN = 20;

/**
 * Read it.
 *
 * @param near the site of the place's typical year, for what neither file nor hints say
 */
export function readRealWeather(
  text: string,
  near: Site,
  hints: SiteHints = {},
  choices: RealTableChoices = {},
): RealTableResult {
  const table = tableTextOf(text, MOST_DATED_ROWS);
  const refuse = (line: number | null, column: string, value: string, expected: string): RealTableResult => ({
    ok: false,
    faults: [{ line, column, value, expected }],
  });
  if (table === null) return refuse(1, '', text.slice(0, 60), 'a line of column names above rows of numbers');
  if (table.tooLong) return refuse(null, '', `more than ${MOST_DATED_ROWS} rows`, 'at most that many');
  const { plane: meter } = choices;
  // What a meter on a plane wrote is no sun on the horizontal, whatever its name says.
  const guesses = guessColumns(
    table,
    meter === undefined ? choices : { ...choices, roles: { ...choices.roles, [meter.header]: null } },
  );
  const columns = byRole(guesses);
  if (!columns.has('dryBulb'))
    return refuse(
      table.headerLine,
      'air temperature',
      table.header.join(', '),
      'a column of the air temperature',
    );
  const walls = wallClocks(table, [...columns.values()]);
  if ('faults' in walls) return { ok: false, faults: walls.faults };
  const notes: string[] = [];
  const latitudeDeg = table.latitudeDeg ?? hints.latitudeDeg ?? near.latitudeDeg;
  const longitudeDeg = table.longitudeDeg ?? hints.longitudeDeg ?? near.longitudeDeg;
  const site: Site = {
    name: hints.name ?? near.name,
    latitudeDeg,
    longitudeDeg,
    elevationM: elevationOf(table.elevationM, { elevationM: near.elevationM, ...hints }, null, notes),
    utcOffsetH: hints.utcOffsetH ?? near.utcOffsetH,
  };
  const { clock, order, ms, stepMs } = rowMoments(walls, choices.clock, site.utcOffsetH);
  if (!(stepMs >= 60_000 && stepMs <= HOUR_MS))
    return refuse(
      table.lines[1] ?? null,
      'time',
      `rows ${stepMs / 60_000} minutes apart`,
      'rows 1 to 60 minutes apart',
    );
  const faults: Fault[] = [];
  const read = (column: ColumnGuess | undefined): Float64Array | null => {
    if (column === undefined || column.unit === null) return null;
    const values = columnNumbers(table, column, stepMs / 60_000, faults);
    return Float64Array.from(order, (row) => values[row]!);
  };
  const rows = new Map<Role, Float64Array>();
  for (const [role, column] of columns) {
    const values = read(column);
    if (values !== null) rows.set(role, values);
  }
  const planeAt = meter === undefined ? -1 : table.header.indexOf(meter.header);
  if (meter !== undefined && planeAt < 0)
    return refuse(table.headerLine, 'sun on a plane', meter.header, `one of ${table.header.join(', ')}`);
  const watt = { name: 'W/m²', written: /^$/, factor: 1, offset: 0 };
  const plane =
    planeAt < 0 ? null : read({ index: planeAt, header: meter!.header, role: null, unit: watt, reason: '' });
  if (faults.length > 0) return { ok: false, faults: faults.slice(0, MOST_FAULTS) };
  const impossible = refuseImpossible(rows, columns);
  if (impossible.length > 0) return { ok: false, faults: impossible };

  const light = rows.get('global') ?? rows.get('beam') ?? null;
  const late = light === null ? Number.NaN : minutesLate(ms, light, site);
  const meaning =
    choices.stamp === undefined ? meaningFrom(late, stepMs) : { stamp: choices.stamp, clockH: 0 };
  const moved = clock.isGuess && choices.clock === undefined ? meaning.clockH : 0;
  notes.push(columnsNote(guesses, meter?.header), clock.note);
  if (moved !== 0)
    notes.push(
      `The sun of the table is ${Math.abs(moved)} h ${moved > 0 ? 'late' : 'early'} by that clock; the stamps were moved, so it fits.`,
    );
  else if (Math.abs(late - middleOf(meaning.stamp, stepMs)) > TOLERANCE_MIN)
    notes.push(
      `The sun of the table is some ${Math.round(Math.abs(late))} minutes ${late > 0 ? 'late' : 'early'} by that clock: check the clock and the place.`,
    );
  if (light === null && clock.isGuess) notes.push('Without sun in the table the clock cannot be checked.');
  const at = moved === 0 ? ms : ms.map((moment) => moment - moved * HOUR_MS);
  const [before, after] =
    meaning.stamp === 'instant' ? [0, 0] : meaning.stamp === 'start' ? [0, stepMs] : [stepMs, 0];
  const grid = gridOver(Float64Array.of(at[0]! - before, at.at(-1)! + after), site.utcOffsetH);
  if (grid.hours > HOURS)
    return refuse(
      null,
      'time',
      `${Math.round(grid.hours / 24)} days from first row to last`,
      'at most 365 days; cut the file',
    );
  const hourly = (values: Float64Array | null | undefined): Float64Array | null => {
    if (!values) return null;
    if (meaning.stamp === 'instant') return hourlyFromMoments(at, values, stepMs, grid);
    return hourlyFromIntervals(at, values, ((meaning.stamp === 'start' ? 1 : -1) * stepMs) / 2, grid);
  };
  const dryBulbC = hourly(rows.get('dryBulb'))!;
  const humidity = hourly(rows.get('humidity'));
  const dewPointC =
    hourly(rows.get('dewPoint')) ??
    humidity?.map((value, hour) =>
      Number.isNaN(value + dryBulbC[hour]!) ? Number.NaN : dewPointFromHumidity(dryBulbC[hour]!, value),
    ) ??
    null;
  const known = dryBulbC.filter((value) => !Number.isNaN(value)).length;
  if (known === 0) return refuse(null, 'air temperature', 'no value in any hour', 'at least a day of values');
  const light0 = (values: Float64Array | null) => values?.map((value) => Math.max(value, 0)) ?? null;
  return {
    ok: true,
    notes,
    real: {
      site,
      ...grid,
      dryBulbC,
      dewPointC,
      pressurePa: hourly(rows.get('pressure')),
      windSpeed: hourly(rows.get('windSpeed')),
      globalHorizontal: light0(hourly(rows.get('global'))),
      beamNormal: light0(hourly(rows.get('beam'))),
      diffuseHorizontal: light0(hourly(rows.get('diffuse'))),
      skyCover: hourly(rows.get('skyCover')),
      rainMm: hourly(rows.get('rain')),
      planeSun: plane === null ? null : { ...meter!, values: hourly(plane)! },
    },
  };
}

/** By how much the middle of what a stamp stands for is before it [min]. */
function middleOf(stamp: 'start' | 'end' | 'instant', stepMs: number): number {
  return stamp === 'instant' ? 0 : ((stamp === 'end' ? 1 : -1) * stepMs) / 120_000;
}

/** What stamps stand for, and whole hours by which the clock is off, that best explain how late the sun is. */
function meaningFrom(late: number, stepMs: number): { stamp: 'start' | 'end' | 'instant'; clockH: number } {
  if (Number.isNaN(late)) return { stamp: 'instant', clockH: 0 };
  let best = { stamp: 'instant' as 'start' | 'end' | 'instant', clockH: 0, off: Infinity };
  for (const clockH of [0, 1, -1, 2, -2]) {
    for (const stamp of ['instant', 'end', 'start'] as const) {
      const off = Math.abs(late - 60 * clockH - middleOf(stamp, stepMs)) + (clockH === 0 ? 0 : TOLERANCE_MIN);
      if (off < best.off - 1) best = { stamp, clockH, off };
    }
  }
  return best;
}

/** Generous limits of what is possible, by role. */
const POSSIBLE: Readonly<Partial<Record<Role, readonly [number, number, string]>>> = {
  dryBulb: [-90, 60, '°C'],
  dewPoint: [-100, 50, '°C'],
  humidity: [0, 110, '%'],
  windSpeed: [0, 115, 'm/s'],
  pressure: [40_000, 110_000, 'Pa'],
  global: [-50, 1600, 'W/m²'],
  beam: [-50, 1420, 'W/m²'],
  diffuse: [-50, 1200, 'W/m²'],
  skyCover: [0, 1, ''],
};

function refuseImpossible(
  rows: ReadonlyMap<Role, Float64Array>,
  columns: ReadonlyMap<Role, ColumnGuess>,
): Fault[] {
  const faults: Fault[] = [];
  for (const [role, values] of rows) {
    const limits = POSSIBLE[role];
    if (limits === undefined) continue;
    const [low, high, unit] = limits;
    const strange = values.find((value) => value < low || value > high);
    if (strange === undefined) continue;
    const { header } = columns.get(role)!;
    faults.push({
      line: null,
      column: header,
      value: String(strange),
      expected: `${low} to ${high} ${unit}`.trim(),
    });
  }
  return faults;
}

function columnsNote(columns: readonly ColumnGuess[], plane: string | undefined): string {
  const used = columns
    .filter(({ role, unit }) => role !== null && unit !== null)
    .map(
      ({ header, role, unit }) =>
        `"${header}" as ${ROLE_WORDS[role!]}${unit!.name === '' ? '' : ` in ${unit!.name}`}`,
    );
  if (plane !== undefined) used.push(`"${plane}" as sun on a plane in W/m²`);
  return `Columns read: ${used.join(', ')}.`;
}
