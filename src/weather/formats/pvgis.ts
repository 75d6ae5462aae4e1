// PVGIS typical year (CSV, JSON, bare or re-saved table) into a typical year: UTC shiftedFromUtc to local standard time,
// relative humidity to dew point, and the one thing the format leaves open settled from the data: at which minute
// the radiation is valid. Satellite files hold instants some minutes after the hour; files outside the satellites'
// view hold means over the hour that starts at the label, with the beam split by the sun at its start.
// Source: European Commission, Joint Research Centre, PVGIS user manual; the rest measured on real files.
import { sunlitMinute } from '../../physics/sunlit-hour.ts';
import { assembleYear, newColumn } from '../assembly/assembled-year.ts';
import { dewPointFromHumidity } from '../assembly/humidity.ts';
import { clearDayMinute, closureMinute, cosZenithAt } from '../assembly/radiation-timing.ts';
import { elevationOf, placeOf } from '../assembly/site-hints.ts';
import { shiftedFromUtc, utcShiftNote } from '../assembly/utc-shift.ts';
import type { ReadResult, SiteHints } from '../read-result.ts';
import { idOf } from '../text/text-lines.ts';
import { instantOfHour, type TypicalYear } from '../typical-year.ts';
import {
  type PvgisColumn,
  type PvgisTable,
  pvgisTableFromCsv,
  pvgisTableFromJson,
  TIME,
} from './pvgis-table.ts';

/** Minute of the hour in satellite files that do not state it; Belfast and Madrid show 10 to 11. */
const USUAL_SATELLITE_MINUTE = 10.5;

/** A closure no worse than this trusts the minute found [W/m² rms]. */
const GOOD_CLOSURE = 3;

export function looksLikePvgisCsv(text: string): boolean {
  return text.slice(0, 4000).includes(TIME) && text.slice(0, 4000).includes('T2m');
}

export function looksLikePvgisJson(text: string): boolean {
  return /^\uFEFF?\s*\{/.test(text.slice(0, 100)) && text.slice(0, 100_000).includes('"tmy_hourly"');
}

/**
 * Read a PVGIS typical year.
 *
 * @param text CSV, JSON or the table alone
 * @param hints the site, for tables without a header
 */
export function readPvgis(text: string, hints: SiteHints = {}): ReadResult {
  const table = looksLikePvgisJson(text) ? pvgisTableFromJson(text) : pvgisTableFromCsv(text);
  if ('faults' in table) return { ok: false, faults: table.faults };
  const notes: string[] = [];
  const place = placeOf(table, hints, notes);
  if ('expected' in place) return { ok: false, faults: [place] };
  const utcOffsetH = Math.round(hints.utcOffsetH ?? place.longitudeDeg / 15);
  const roll = (name: PvgisColumn): Float64Array => shiftedFromUtc(table.columns[name]!, utcOffsetH);
  if (utcOffsetH !== 0) notes.push(utcShiftNote(utcOffsetH));
  const dryBulbC = roll('T2m');
  const humidity = roll('RH');
  const pressurePa = roll('SP');
  const site = {
    name: hints.name ?? `Grid point ${place.latitudeDeg}, ${place.longitudeDeg}`,
    ...place,
    elevationM: elevationOf(table.elevationM, hints, pressurePa, notes),
    utcOffsetH,
  };
  const radiation = settleClock(
    {
      site,
      monthYears: table.monthYears,
      globalHorizontal: roll('G(h)'),
      beamNormal: roll('Gb(n)'),
      diffuseHorizontal: roll('Gd(h)'),
    },
    table,
    notes,
  );
  const dewPointC = dryBulbC.map((dryC, hour) => dewPointFromHumidity(dryC, humidity[hour]!));
  const skyLongwave = table.columns['IR(h)'] === null ? null : roll('IR(h)');
  const { sunMinute, ...components } = radiation;
  const columns = {
    dryBulbC,
    dewPointC,
    pressurePa,
    windSpeed: roll('WS10m'),
    windFromDeg: roll('WD10m'),
    ...components,
    skyCover: newColumn(),
  };
  const lineOfHour = Int32Array.from(shiftedFromUtc(Float64Array.from(table.lineOfHour), utcOffsetH));
  return assembleYear({
    site,
    id: idOf(hints.name ?? hints.fileName ?? site.name),
    source: `PVGIS typical year${table.radiationDatabase === null ? '' : `, ${table.radiationDatabase}`}`,
    credit: table.copyright?.replace('(c)', '©') ?? 'PVGIS © European Union',
    monthYears: table.monthYears,
    sunMinute,
    columns,
    skyLongwave,
    albedo: null,
    notes,
    lineOfHour,
  });
}

type Radiation = Pick<TypicalYear, 'globalHorizontal' | 'beamNormal' | 'diffuseHorizontal' | 'sunMinute'>;
type Unclocked = Omit<Radiation, 'sunMinute'> & Pick<TypicalYear, 'site' | 'monthYears'>;

/** Find the minute the radiation is valid at; recompute the beam where it was split with the wrong sun. */
function settleClock(year: Unclocked, table: PvgisTable, notes: string[]): Radiation {
  const { globalHorizontal, beamNormal, diffuseHorizontal } = year;
  const stated = table.offsetH === null ? null : table.offsetH * 60;
  const closure = closureMinute(year);
  const clear = clearDayMinute(year);
  const startsAtLabel = stated === null || Math.abs(stated) < 1;
  const splitAtStart = closure !== null && Math.abs(closure.minute) < 4;
  if (startsAtLabel && splitAtStart && clear !== null && Math.abs(clear - 30) < 12) {
    const recomputed = recomputeBeam(year);
    notes.push(recomputedNote(beamNormal, recomputed));
    return { globalHorizontal, beamNormal: recomputed, diffuseHorizontal, sunMinute: 'mean' };
  }
  let minute = stated ?? USUAL_SATELLITE_MINUTE;
  const found = closure !== null && closure.rms < GOOD_CLOSURE ? Math.round(closure.minute * 2) / 2 : null;
  if (stated === null) {
    minute = found ?? minute;
    notes.push(
      `The file does not say at which minute its radiation is valid; minute ${minute} ${found === null ? 'is usual for satellite data' : 'fits its beam and diffuse radiation best'} and is used.`,
    );
  } else if (found !== null && Math.abs(found - stated) > 4) {
    notes.push(
      `The header puts the radiation at minute ${stated.toFixed(1)}, but its components fit minute ${found}.`,
    );
  }
  if (minute >= 0 && minute < 60) {
    return { globalHorizontal, beamNormal, diffuseHorizontal, sunMinute: minute };
  }
  const hours = Math.floor(minute / 60);
  return {
    globalHorizontal: shiftedFromUtc(globalHorizontal, hours),
    beamNormal: shiftedFromUtc(beamNormal, hours),
    diffuseHorizontal: shiftedFromUtc(diffuseHorizontal, hours),
    sunMinute: minute - 60 * hours,
  };
}

/** Under this sine of the mean elevation the beam is not told from the diffuse light (about 1°). */
const LOWEST_SINE = 0.0175;

/** Most of the radiation above the air that ever arrives as beam; keeps the quotient sane at sunrise [W/m²]. */
const HIGHEST_BEAM = 1150;

/** Beam from global and diffuse with the sun in the middle of the sunlit part of each hour [W/m²]. */
function recomputeBeam(year: Unclocked): Float64Array {
  const { latitudeDeg, longitudeDeg } = year.site;
  return year.globalHorizontal.map((global, hour) => {
    const horizontal = global - year.diffuseHorizontal[hour]!;
    if (!(horizontal > 0)) return 0;
    const minute = sunlitMinute(instantOfHour(year, hour, 0), latitudeDeg, longitudeDeg);
    const sine = minute === null ? 0 : cosZenithAt(year, hour, minute);
    return sine < LOWEST_SINE ? 0 : Math.min(horizontal / sine, HIGHEST_BEAM);
  });
}

function recomputedNote(before: Float64Array, after: Float64Array): string {
  const sum = (column: Float64Array) => column.reduce((total, value) => total + value, 0);
  const change = (100 * (sum(after) / sum(before) - 1)).toFixed(1).replace('-', '−');
  const [high, low] = [Math.round(Math.max(...before)), Math.round(Math.max(...after))];
  return `The radiation is a mean over the hour, but its beam was split with the sun at the hour's start; the beam was recomputed from global and diffuse (year ${change} %, highest value ${high} → ${low} W/m²).`;
}
