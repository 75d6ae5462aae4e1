// Weather of real days as the engine runs it: hourly readings with their dates in, a ring of 8760 rows out, of which those
// of the record stand in their place in the calendar and the rest is the typical year, moved to meet the record at its
// ends. Holes up to three hours are filled along a straight line; longer ones stay holes: their hours are run on the
// typical year moved to the readings beside them, and said not to be known.

import { standardPressure } from '../../physics/altitude.ts';
import { clamp01 } from '../../physics/clamp.ts';
import { exp, power } from '../../physics/elementary.ts';
import { extraterrestrialNormal } from '../../physics/extraterrestrial.ts';
import { globalFromPlane } from '../../physics/global-from-plane.ts';
import { cosIncidence, planeNormal } from '../../physics/incidence.ts';
import { sunPosition, sunVector } from '../../physics/sun-position.ts';
import { sunlitMinute } from '../../physics/sunlit-hour.ts';
import { coverFromGlobal } from '../assembly/cloud-cover.ts';
import { fillGaps, LONGEST_GAP_H } from '../assembly/gap-filling.ts';
import { completeComponents } from '../assembly/radiation-components.ts';
import { HOUR_MS } from '../moments.ts';
import { DEFAULT_ALBEDO } from '../prepared/prepared-climate.ts';
import { HOURS, MONTH_START_HOUR, rowOfHour, type Site, type TypicalYear } from '../typical-year.ts';

/**
 * Hourly readings of real days; every column as long as `hours`, NaN where nothing was read; in the units of TypicalYear: [°C],
 * [Pa], [m/s] at 10 m, [W/m²], [mm].
 */
export interface RealHours {
  readonly site: Site;
  /** moment at which the first hour starts [ms since 1970 UTC]; on a full hour of local standard time */
  readonly startMs: number;
  readonly hours: number;
  readonly dryBulbC: Float64Array;
  readonly dewPointC?: Float64Array | null;
  readonly pressurePa?: Float64Array | null;
  readonly windSpeed?: Float64Array | null;
  readonly globalHorizontal?: Float64Array | null;
  readonly diffuseHorizontal?: Float64Array | null;
  readonly beamNormal?: Float64Array | null;
  /** a meter on any plane, where there is none on the horizontal */
  readonly planeSun?: {
    readonly tiltDeg: number;
    readonly azimuthDeg: number;
    readonly values: Float64Array;
  } | null;
  /** 0…1 */
  readonly skyCover?: Float64Array | null;
  readonly skyLongwave?: Float64Array | null;
  readonly rainMm?: Float64Array | null;
  /** minute of the hour at which radiation is read, or 'mean', as in a typical year; 'mean' unless said */
  readonly sunMinute?: 'mean' | number;
}

/** Where the sun of a record is from, best first. */
export type SunSource = 'horizontal' | 'plane' | 'cloud' | 'typical';

export interface WeatherRecord {
  /** 8760 rows that end with the record's last hour */
  readonly year: TypicalYear;
  /** row of the record's first hour, and how many hours it has; rows go on past the year's end */
  readonly firstRow: number;
  readonly hours: number;
  /** moment at which the record starts [ms since 1970 UTC] */
  readonly startMs: number;
  /** by row, 1 where air temperature, and sun if there is a meter, were read or filled over a short hole */
  readonly known: Uint8Array;
  readonly sun: SunSource;
  /** wind and humidity were measured */
  readonly hasWind: boolean;
  readonly hasHumidity: boolean;
  /** one plain sentence each */
  readonly notes: readonly string[];
}

/** How fast the typical year before a record goes back to itself, backwards from the first day [h]; own choice. */
const FADES_H = 30 * 24;
/** Readings so near a hole move the typical year in it [h]. */
const BESIDE_H = 48;

/**
 * A record in the ring of a year.
 *
 * @param typical the place's typical year, for what was not measured and for the time before
 * @throws RangeError for a record without an hour, or of more than a year
 */
export function recordOf(real: RealHours, typical: TypicalYear): WeatherRecord {
  const { hours, startMs } = real;
  if (!(hours >= 1 && hours <= HOURS))
    throw new RangeError(`the record has ${hours} hours; allowed: 1 to ${HOURS}, a year`);
  const site = real.site;
  const firstRow = rowOfMoment(startMs, site.utcOffsetH);
  const rowOf = (hour: number) => rowOfHour(firstRow, hour);
  const rowStart = new Float64Array(HOURS);
  for (let back = 0; back < HOURS; back++)
    rowStart[rowOf(hours - 1 - back)] = startMs + (hours - 1 - back) * HOUR_MS;
  const notes: string[] = [];
  const typicalRow = placesInTypicalYear(rowStart, site.utcOffsetH);
  const ringOf = (column: Float64Array) => typicalRow.map((row) => column[row]!);
  const inRing = (values: Float64Array | null | undefined): Float64Array | null => {
    if (!values || values.every(Number.isNaN)) return null;
    const ring = new Float64Array(HOURS).fill(Number.NaN);
    for (let hour = 0; hour < hours; hour++) ring[rowOf(hour)] = values[hour]!;
    return ring;
  };
  /** readings, with short holes inside the record filled */
  const read = (values: Float64Array | null | undefined): Float64Array | null => {
    if (!values) return null;
    const copy = Float64Array.from(values);
    fillInside(copy);
    return inRing(copy);
  };
  const order = Int32Array.from({ length: HOURS }, (_, i) => rowOf(hours + i));

  const dry = read(real.dryBulbC);
  if (dry === null)
    throw new RangeError('the record has no air temperature in any hour; allowed: at least one');
  const known = Uint8Array.from(dry, (value) => (Number.isNaN(value) ? 0 : 1));
  const dryBulbC = moved(dry, ringOf(typical.dryBulbC), order);
  const dew = read(real.dewPointC);
  const rawDew =
    dew === null
      ? followDepression(dryBulbC, typical, typicalRow)
      : moved(dew, ringOf(typical.dewPointC), order);
  const dewPointC = rawDew.map((value, row) => Math.min(value, dryBulbC[row]!));
  if (dew === null)
    notes.push('The record has no humidity; the typical year’s distance from dew point to air is used.');
  const windSpeed = filledWith(read(real.windSpeed), ringOf(typical.windSpeed));
  const hasWind = Boolean(real.windSpeed?.some((value) => !Number.isNaN(value)));
  if (!hasWind) notes.push('The record has no wind; the typical year’s wind is used, so draughts are rough.');
  const pressurePa = filledWith(
    read(real.pressurePa),
    new Float64Array(HOURS).fill(standardPressure(Math.min(Math.max(site.elevationM, -500), 9000))),
  );

  const frame = {
    site,
    monthYears: typical.monthYears,
    startMs: rowStart,
    sunMinute: real.sunMinute ?? ('mean' as const),
  };
  const { light, sun } = sunOf(real, frame, inRing, read, notes);
  const typicalLight = {
    globalHorizontal: ringOf(typical.globalHorizontal),
    beamNormal: ringOf(typical.beamNormal),
    diffuseHorizontal: ringOf(typical.diffuseHorizontal),
  };
  if (light !== null && sun !== 'cloud') {
    for (let row = 0; row < HOURS; row++) if (Number.isNaN(light.globalHorizontal[row]!)) known[row] = 0;
  }
  const globalHorizontal = filledWith(light?.globalHorizontal ?? null, typicalLight.globalHorizontal);
  const beamNormal = filledWith(light?.beamNormal ?? null, typicalLight.beamNormal);
  const diffuseHorizontal = filledWith(light?.diffuseHorizontal ?? null, typicalLight.diffuseHorizontal);
  const cover = read(real.skyCover);
  const derived = light === null ? null : coverFromGlobal({ ...frame, globalHorizontal });
  const skyCover = filledWith(
    cover ?? derived?.map((value, row) => (known[row] === 1 ? value : Number.NaN)) ?? null,
    ringOf(typical.skyCover),
  );
  const longHoles = holesIn(known, rowOf, hours);
  if (longHoles > 0)
    notes.push(
      `The weather has ${longHoles} hours in holes of more than ${LONGEST_GAP_H}; they are run on typical days moved to those beside them, and not used to judge.`,
    );
  return {
    year: {
      ...typical,
      site,
      id: `${typical.id}-real-days`,
      source: 'Weather of real days',
      credit: `Data brought by the user; where none were, ${typical.credit}`,
      monthYears: typical.monthYears,
      sunMinute: frame.sunMinute,
      startMs: rowStart,
      dryBulbC,
      dewPointC,
      pressurePa,
      windSpeed,
      windFromDeg: ringOf(typical.windFromDeg),
      globalHorizontal,
      beamNormal,
      diffuseHorizontal,
      skyCover,
      skyLongwave: null,
      albedo: typical.albedo === null ? null : ringOf(typical.albedo),
      rainMm: read(real.rainMm)?.map((value) => value || 0) ?? null,
      notes: [...typical.notes, ...notes],
    },
    firstRow,
    hours,
    startMs,
    known,
    sun,
    hasWind,
    hasHumidity: dew !== null,
    notes,
  };
}

/** Row of a moment in a year that begins on its own 1 January, local standard time. */
function rowOfMoment(ms: number, utcOffsetH: number): number {
  const local = ms + utcOffsetH * HOUR_MS;
  const newYear = Date.UTC(new Date(local).getUTCFullYear(), 0, 1);
  return Math.floor((local - newYear) / HOUR_MS) % HOURS;
}

/** Of each row, the row of the typical year with the same month, day and hour; 29 February is the 28th again. */
function placesInTypicalYear(startMs: Float64Array, utcOffsetH: number): Float64Array {
  return startMs.map((ms) => {
    const local = new Date(ms + utcOffsetH * HOUR_MS);
    const month = local.getUTCMonth();
    const day = month === 1 ? Math.min(28, local.getUTCDate()) : local.getUTCDate();
    return MONTH_START_HOUR[month]! + (day - 1) * 24 + local.getUTCHours();
  });
}

/** Short holes between readings; those at the ends stay. */
function fillInside(values: Float64Array): void {
  const first = values.findIndex((value) => !Number.isNaN(value));
  const last = values.findLastIndex((value) => !Number.isNaN(value));
  if (first >= 0) fillGaps(values.subarray(first, last + 1));
}

function filledWith(read: Float64Array | null, rest: Float64Array): Float64Array {
  return read === null ? rest : read.map((value, row) => (Number.isNaN(value) ? rest[row]! : value));
}

/**
 * Readings, and where there are none the typical year moved by what the readings beside the hole differ from it: along a
 * straight line from one side to the other, and before the record fading.
 *
 * @param order rows from the first of the year before to the record's last
 */
function moved(read: Float64Array, typical: Float64Array, order: Int32Array): Float64Array {
  const made = Float64Array.from(read);
  const differs = (from: number, step: number): number => {
    let sum = 0;
    let count = 0;
    for (let i = 0; i < BESIDE_H; i++) {
      const row = order[from + step * i];
      if (row === undefined || Number.isNaN(read[row]!)) continue;
      sum += read[row]! - typical[row]!;
      count++;
    }
    return count === 0 ? 0 : sum / count;
  };
  for (let i = 0; i < HOURS; i++) {
    if (!Number.isNaN(read[order[i]!]!)) continue;
    let end = i;
    while (end < HOURS && Number.isNaN(read[order[end]!]!)) end++;
    const before = i === 0 ? null : differs(i - 1, -1);
    const after = end === HOURS ? before! : differs(end, 1);
    for (let k = i; k < end; k++) {
      const share = (k - i + 1) / (end - i + 1);
      const shift = before === null ? after * exp(-(end - k) / FADES_H) : before + share * (after - before);
      made[order[k]!] = typical[order[k]!]! + shift;
    }
    i = end - 1;
  }
  return made;
}

/** A dew point as far below the air as the typical year's at the same date and hour. */
function followDepression(dryBulbC: Float64Array, typical: TypicalYear, rows: Float64Array): Float64Array {
  return dryBulbC.map((dryC, row) => dryC - (typical.dryBulbC[rows[row]!]! - typical.dewPointC[rows[row]!]!));
}

type Light = Pick<TypicalYear, 'globalHorizontal' | 'beamNormal' | 'diffuseHorizontal'>;
type Frame = Pick<TypicalYear, 'site' | 'monthYears' | 'sunMinute'> & { readonly startMs: Float64Array };

/** The sun of the record by the best that was measured; null for none. */
function sunOf(
  real: RealHours,
  frame: Frame,
  inRing: (values: Float64Array | null | undefined) => Float64Array | null,
  read: (values: Float64Array | null | undefined) => Float64Array | null,
  notes: string[],
): { light: Light | null; sun: SunSource } {
  const global = read(real.globalHorizontal);
  const beam = read(real.beamNormal);
  const diffuse = read(real.diffuseHorizontal);
  if (global !== null || (beam !== null && diffuse !== null)) {
    const { note, ...light } = completeComponents({ global, beam, diffuse }, frame)!;
    if (note !== null) notes.push(note);
    if (real.planeSun)
      notes.push('Sun was measured on the horizontal too, which goes before that on a plane.');
    return { light: outsideIsHole(light, inRing(real.dryBulbC.map(() => 1))!), sun: 'horizontal' };
  }
  const inside = inRing(real.dryBulbC.map(() => 1))!;
  if (real.planeSun) {
    const { tiltDeg, azimuthDeg } = real.planeSun;
    notes.push(
      `The sun was measured on a plane tilted ${tiltDeg}° towards ${azimuthDeg}°; the global on the horizontal was worked back from it, so single hours may be off by 100 W/m².`,
    );
    const onPlane = read(real.planeSun.values)!;
    const made = completeComponents(
      { global: fromPlane(onPlane, tiltDeg, azimuthDeg, frame), beam: null, diffuse: null },
      frame,
    )!;
    return { light: outsideIsHole(made, inside), sun: 'plane' };
  }
  const cover = read(real.skyCover);
  if (cover !== null) {
    notes.push(
      'There is no sun meter; the sun was made from the cloud cover, good to some 20 % of a day’s sun.',
    );
    const made = completeComponents({ global: fromCover(cover, frame), beam: null, diffuse: null }, frame)!;
    return { light: outsideIsHole(made, inside), sun: 'cloud' };
  }
  notes.push(
    'There is neither a sun meter nor cloud cover; the sun is that of the typical year, so only nights can tell anything, and neither sun let in, mass nor gains can be told.',
  );
  return { light: null, sun: 'typical' };
}

/** Rows outside the record are holes by night too. */
function outsideIsHole(light: Light, inside: Float64Array): Light {
  const keep = (column: Float64Array) =>
    column.map((value, row) => (Number.isNaN(inside[row]!) ? Number.NaN : value));
  return {
    globalHorizontal: keep(light.globalHorizontal),
    beamNormal: keep(light.beamNormal),
    diffuseHorizontal: keep(light.diffuseHorizontal),
  };
}

function sunAt({ site, startMs, sunMinute }: Frame, row: number) {
  const { latitudeDeg, longitudeDeg } = site;
  const start = startMs[row]!;
  const lit = sunMinute === 'mean' ? sunlitMinute(start, latitudeDeg, longitudeDeg) : sunMinute;
  const sun = sunPosition(start + (lit ?? 30) * 60_000, latitudeDeg, longitudeDeg);
  return lit === null || sun.elevationDeg <= 0 ? null : sunVector(sun.elevationDeg, sun.azimuthDeg);
}

function fromPlane(onPlane: Float64Array, tiltDeg: number, azimuthDeg: number, frame: Frame): Float64Array {
  const normal = planeNormal(tiltDeg, azimuthDeg);
  return onPlane.map((reading, row) => {
    if (Number.isNaN(reading)) return Number.NaN;
    const sun = sunAt(frame, row);
    if (sun === null) return 0;
    return globalFromPlane(Math.max(0, reading), {
      cosIncidence: cosIncidence(normal, sun.east, sun.north, sun.up),
      cosZenith: sun.up,
      extraNormal: extraterrestrialNormal(Math.floor(row / 24) + 1),
      tiltDeg,
      albedo: DEFAULT_ALBEDO,
    });
  });
}

/** Kasten and Czeplak 1980 as in assembly/cloud-cover.ts: G = (910 sin h − 30)(1 − 0.75 n^3.4). */
function fromCover(cover: Float64Array, frame: Frame): Float64Array {
  return cover.map((n, row) => {
    if (Number.isNaN(n)) return Number.NaN;
    const sun = sunAt(frame, row);
    return sun === null ? 0 : Math.max(0, 910 * sun.up - 30) * (1 - 0.75 * power(clamp01(n), 3.4));
  });
}

function holesIn(known: Uint8Array, rowOf: (hour: number) => number, hours: number): number {
  let holes = 0;
  for (let hour = 0; hour < hours; hour++) if (known[rowOf(hour)] === 0) holes++;
  return holes;
}
