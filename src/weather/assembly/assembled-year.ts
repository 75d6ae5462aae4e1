// The last step of every reader: raw hourly columns (NaN where the file has nothing) into a typical year.
// Values no place on Earth has are refused with their line; holes up to three hours are filled and counted;
// the dew point is held at or below the dry bulb; sky cover, long-wave radiation
// and reflectance with longer holes are left out and the cover derived. Nothing is changed without a note.

import { type Fault, MOST_FAULTS, type ReadResult } from '../read-result.ts';
import {
  HOURS,
  MONTH_START_HOUR,
  monthOfHour,
  rowOfHour,
  type Site,
  type TypicalYear,
} from '../typical-year.ts';
import { coverFromGlobal, coverFromLongwave } from './cloud-cover.ts';
import { fillGaps, gapsOf, LONGEST_GAP_H } from './gap-filling.ts';

export interface RawYear {
  readonly site: Site;
  readonly id: string;
  readonly source: string;
  readonly credit: string;
  readonly monthYears: readonly number[];
  readonly sunMinute: 'mean' | number;
  readonly columns: { readonly [key in HourlyColumn]: Float64Array };
  readonly skyLongwave: Float64Array | null;
  readonly albedo: Float64Array | null;
  /** null or absent where the format has none */
  readonly rainMm?: Float64Array | null;
  readonly notes: readonly string[];
  /** line of the file each hour was read from, for messages */
  readonly lineOfHour: Int32Array | null;
}

export type HourlyColumn =
  | 'dryBulbC'
  | 'dewPointC'
  | 'pressurePa'
  | 'windSpeed'
  | 'windFromDeg'
  | 'globalHorizontal'
  | 'beamNormal'
  | 'diffuseHorizontal'
  | 'skyCover';

/**
 * What is possible on Earth, generously: lowest, highest, unit, and the name in plain words. Air temperature
 * wind and rain by the world's records of the World Meteorological Organization (−89.2…56.7 °C, 113 m/s gust, 305 mm h),
 * pressure from sea level to above the highest town, radiation by the solar constant plus cloud enhancement.
 */
const POSSIBLE: Readonly<
  Record<HourlyColumn | 'skyLongwave' | 'albedo' | 'rainMm', readonly [number, number, string, string]>
> = {
  dryBulbC: [-90, 60, '°C', 'air temperature'],
  dewPointC: [-100, 50, '°C', 'dew point'],
  pressurePa: [40_000, 110_000, 'Pa', 'pressure'],
  windSpeed: [0, 115, 'm/s', 'wind speed'],
  windFromDeg: [0, 360, '°', 'wind direction'],
  globalHorizontal: [0, 1600, 'W/m²', 'global radiation'],
  beamNormal: [0, 1420, 'W/m²', 'beam radiation'],
  diffuseHorizontal: [0, 1200, 'W/m²', 'diffuse radiation'],
  skyCover: [0, 1, '', 'sky cover'],
  skyLongwave: [30, 700, 'W/m²', 'long-wave radiation of the sky'],
  albedo: [0, 1, '', 'ground reflectance'],
  rainMm: [0, 500, 'mm', 'rain'],
};

/** Radiation meters read a little below zero at night; as far as this it is taken as zero [W/m²]. */
const NIGHT_OFFSET = -20;

/** A column of the year in which nothing is known: 8760 NaN. */
export function newColumn(): Float64Array {
  return new Float64Array(HOURS).fill(Number.NaN);
}

/** Every column of a year, nothing known in any. */
export function newColumns(): { [key in HourlyColumn]: Float64Array } {
  return {
    dryBulbC: newColumn(),
    dewPointC: newColumn(),
    pressurePa: newColumn(),
    windSpeed: newColumn(),
    windFromDeg: newColumn(),
    globalHorizontal: newColumn(),
    beamNormal: newColumn(),
    diffuseHorizontal: newColumn(),
    skyCover: newColumn(),
  };
}

/** Check, mend where allowed, and hand over the year; the raw columns are changed in place. */
export function assembleYear(raw: RawYear): ReadResult {
  const notes = [...raw.notes];
  const faults: Fault[] = [];
  const coverIsUsable = isUsable('skyCover', raw.columns.skyCover, notes);
  const skyLongwave = isUsable('skyLongwave', raw.skyLongwave, notes) ? raw.skyLongwave : null;
  const albedo = isUsable('albedo', raw.albedo, notes) ? raw.albedo : null;
  const rainMm = isUsable('rainMm', raw.rainMm ?? null, notes) ? raw.rainMm! : null;
  const all = Object.entries({ ...raw.columns, skyLongwave, albedo, rainMm });
  for (const [key, column] of all) {
    if (column === null || (key === 'skyCover' && !coverIsUsable)) continue;
    const name = key as keyof typeof POSSIBLE;
    faults.push(...impossibleValues(name, column, raw.lineOfHour, MOST_FAULTS - faults.length));
    if (faults.length >= MOST_FAULTS) break;
    faults.push(...mendHoles(name, column, raw.lineOfHour, notes));
  }
  if (faults.length > 0) return { ok: false, faults: faults.slice(0, MOST_FAULTS) };
  clampDewPoint(raw.columns.dryBulbC, raw.columns.dewPointC, notes);
  if (!coverIsUsable) deriveCover(raw, skyLongwave, notes);
  const { site, id, source, credit, monthYears, sunMinute, columns } = raw;
  const year: TypicalYear = {
    site,
    id,
    source,
    credit,
    monthYears,
    sunMinute,
    ...columns,
    skyLongwave,
    albedo,
    rainMm,
    notes,
  };
  return { ok: true, year };
}

/** The columns a year can do without: a long hole in one leaves it out instead of refusing the file. */
function isUsable(name: keyof typeof POSSIBLE, column: Float64Array | null, notes: string[]): boolean {
  if (column === null || column.every(Number.isNaN)) return false;
  const hole = gapsOf(column).find((gap) => gap.hours > LONGEST_GAP_H);
  if (hole === undefined) return true;
  notes.push(
    `The ${POSSIBLE[name][3]} has holes of more than ${LONGEST_GAP_H} hours, the first of ${hole.hours} hours from ${dateOfHour(hole.start)}; it is not used.`,
  );
  return false;
}

function impossibleValues(
  name: keyof typeof POSSIBLE,
  column: Float64Array,
  lineOfHour: Int32Array | null,
  most: number,
): Fault[] {
  const [low, high, unit, words] = POSSIBLE[name];
  const isRadiation = name === 'globalHorizontal' || name === 'beamNormal' || name === 'diffuseHorizontal';
  const faults: Fault[] = [];
  for (let hour = 0; hour < column.length && faults.length < most; hour++) {
    const value = column[hour]!;
    if (Number.isNaN(value) || (value >= low && value <= high)) continue;
    if (isRadiation && value < 0 && value >= NIGHT_OFFSET) column[hour] = 0;
    else {
      const line = lineOfHour?.[hour] ?? null;
      const expected = `${low} to ${high}${unit === '' ? '' : ` ${unit}`} (${dateOfHour(hour)})`;
      faults.push({ line, column: words, value: String(value), expected });
    }
  }
  return faults;
}

function mendHoles(
  name: keyof typeof POSSIBLE,
  column: Float64Array,
  lineOfHour: Int32Array | null,
  notes: string[],
): Fault[] {
  const words = POSSIBLE[name][3];
  if (name === 'windFromDeg') {
    holdLast(column);
    return [];
  }
  const { filled, tooLong } = fillGaps(column);
  if (filled > 0) notes.push(`${filled} missing hours of ${words} were filled along a straight line.`);
  return tooLong.map((gap) => ({
    line: lineOfHour?.[gap.start] || null,
    column: words,
    value: `${gap.hours} hours missing from ${dateOfHour(gap.start)} to ${dateOfHour(gap.start + gap.hours - 1)}`,
    expected: `no more than ${LONGEST_GAP_H} missing hours in a row`,
  }));
}

/** Direction has no straight line between 350° and 10°, and little weight: the last reading stands. */
function holdLast(column: Float64Array): void {
  const firstKnown = column.find((value) => !Number.isNaN(value)) ?? 0;
  let last = firstKnown;
  for (let hour = 0; hour < column.length; hour++) {
    if (Number.isNaN(column[hour]!)) column[hour] = last;
    else last = column[hour]!;
  }
}

/** Only after all else is checked: the formulas refuse what no place on Earth has. */
function deriveCover(raw: RawYear, skyLongwave: Float64Array | null, notes: string[]): void {
  const { dryBulbC, dewPointC, pressurePa, skyCover, globalHorizontal } = raw.columns;
  const { site, monthYears, sunMinute } = raw;
  skyCover.set(
    skyLongwave === null
      ? coverFromGlobal({ site, monthYears, sunMinute, globalHorizontal })
      : coverFromLongwave(skyLongwave, dryBulbC, dewPointC, pressurePa),
  );
  const from = skyLongwave === null ? 'the sun' : 'the long-wave radiation of the sky';
  notes.push(`The file has no sky cover; it was derived from ${from}.`);
}

function clampDewPoint(dryBulbC: Float64Array, dewPointC: Float64Array, notes: string[]): void {
  let clamped = 0;
  for (let hour = 0; hour < HOURS; hour++) {
    if (dewPointC[hour]! <= dryBulbC[hour]!) continue;
    dewPointC[hour] = dryBulbC[hour]!;
    clamped++;
  }
  if (clamped > 0)
    notes.push(`In ${clamped} hours the dew point was above the air temperature and was lowered to it.`);
}

export const MONTH_NAMES: readonly string[] =
  'January,February,March,April,May,June,July,August,September,October,November,December'.split(',');

/** "14 March 05:00", the start of an hour of the year in local standard time; beyond the end wraps. */
export function dateOfHour(hour: number): string {
  const wrapped = rowOfHour(hour, 0);
  const month = monthOfHour(wrapped);
  const into = wrapped - MONTH_START_HOUR[month]!;
  return `${Math.floor(into / 24) + 1} ${MONTH_NAMES[month]} ${String(into % 24).padStart(2, '0')}:00`;
}
