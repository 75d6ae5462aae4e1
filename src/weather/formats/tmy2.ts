// TMY2 text (fixed width, 142 characters) into a typical year. Radiation is the mean of the hour that ends at the
// label, air is read at the label, labels 1…24 are local standard time; snow depth becomes ground reflectance.
// Source: NREL, User's Manual for TMY2s, 1995, tables 3-1 and 3-2; positions below count from 1 as printed there.
import { assembleYear, newColumn, newColumns } from '../assembly/assembled-year.ts';
import { hourOfYear } from '../assembly/calendar-hour.ts';
import { numberedLines, type RowStamp, walkHourlyRows } from '../assembly/hourly-rows.ts';
import type { Fault, ReadResult } from '../read-result.ts';
import { idOf, linesOf, numberOf } from '../text/text-lines.ts';
import type { Site } from '../typical-year.ts';
import { snowAlbedo } from './snow-albedo.ts';

const TMY2_CREDIT = 'NREL, TMY2 data set (National Renewable Energy Laboratory, US Department of Energy)';

const HEADER =
  /^ (\d{5}) (.{22}) (..) +(-?\d{1,2}) +([NS]) *(\d{1,2}) +(\d{1,2}) +([EW]) *(\d{1,3}) +(\d{1,2}) +(-?\d{1,4})\s*$/;
const ROW = /^ \d{8}\d{8}/;

/** Value fields: first and last position, factor to our unit, the value that means missing, name for messages. */
const FIELDS = {
  globalHorizontal: [18, 21, 1, 9999, 'global radiation'],
  beamNormal: [24, 27, 1, 9999, 'beam radiation'],
  diffuseHorizontal: [30, 33, 1, 9999, 'diffuse radiation'],
  skyCover: [64, 65, 0.1, 99, 'opaque sky cover'],
  dryBulbC: [68, 71, 0.1, 9999, 'dry bulb'],
  dewPointC: [74, 77, 0.1, 9999, 'dew point'],
  pressurePa: [85, 88, 100, 9999, 'pressure'],
  windFromDeg: [91, 93, 1, 999, 'wind direction'],
  windSpeed: [96, 98, 0.1, 999, 'wind speed'],
} as const;
type Field = keyof typeof FIELDS;

const SNOW_DEPTH = [134, 136, 999] as const;
const SNOW_AGE = [139, 140, 99] as const;

export function looksLikeTmy2(text: string): boolean {
  const [first = '', second = ''] = linesOf(text.slice(0, 400));
  return HEADER.test(first) || (ROW.test(second) && second.length >= 142);
}

/** Read a TMY2 file. */
export function readTmy2(text: string): ReadResult {
  const lines = linesOf(text);
  const place = siteOf(lines[0]!);
  if ('expected' in place) return { ok: false, faults: [place] };
  const { station, ...site } = place;
  const columns = newColumns();
  const albedo = newColumn();
  const rows = numberedLines(lines, 1);
  const walked = walkHourlyRows(rows, 'date and time', '86013124', stampOf, (line, hour, miss) => {
    for (const field of Object.keys(FIELDS) as Field[]) {
      const [from, to, factor, missing, name] = FIELDS[field];
      const printed = line.slice(from - 1, to);
      const value = numberOf(printed);
      columns[field][hour] = value === missing ? Number.NaN : value * factor;
      if (Number.isNaN(value)) miss(name, printed, `a number at positions ${from} to ${to}`);
    }
    albedo[hour] = snowAlbedo(unlessMissing(line, SNOW_DEPTH), unlessMissing(line, SNOW_AGE));
  });
  if (walked.faults.length > 0) return { ok: false, faults: walked.faults };
  return assembleYear({
    site,
    id: idOf(site.name),
    source: `TMY2, station ${station}`,
    credit: TMY2_CREDIT,
    monthYears: walked.monthYears,
    sunMinute: 'mean',
    columns,
    skyLongwave: null,
    albedo,
    notes: ['Ground reflectance was made from the depth and age of snow in the file, 0.2 without snow.'],
    lineOfHour: walked.lineOfHour,
  });
}

/** Two digits each: year of the twentieth century, month, day, hour 1…24. */
function stampOf(line: string): RowStamp {
  const parts = [1, 3, 5, 7].map((from) => numberOf(line.slice(from, from + 2)));
  const [year, month, day, hour] = parts as [number, number, number, number];
  return { hour: hourOfYear(month, day, hour - 1), year: 1900 + year, text: line.slice(0, 9) };
}

function unlessMissing(line: string, [from, to, missing]: readonly [number, number, number]): number {
  const value = numberOf(line.slice(from - 1, to));
  return value === missing ? Number.NaN : value;
}

function siteOf(line: string): (Site & { readonly station: string }) | Fault {
  const match = HEADER.exec(line);
  if (match === null) {
    const expected = 'station, city, state, time zone, latitude, longitude, elevation as in TMY2';
    return { line: 1, column: '', value: line, expected };
  }
  const [
    ,
    station = '',
    city = '',
    state = '',
    zone = '',
    ns = '',
    latD = '',
    latM = '',
    ew = '',
    lonD = '',
    lonM = '',
    elevation = '',
  ] = match;
  const latitude = Number(latD) + Number(latM) / 60;
  const longitude = Number(lonD) + Number(lonM) / 60;
  if (latitude > 90 || longitude > 180 || Math.abs(Number(zone)) > 14) {
    return {
      line: 1,
      column: 'place',
      value: line,
      expected: 'latitude to 90°, longitude to 180°, zone to 14 h',
    };
  }
  return {
    station,
    name: `${city.trim()}, ${state}`,
    latitudeDeg: ns === 'S' ? -latitude : latitude,
    longitudeDeg: ew === 'W' ? -longitude : longitude,
    elevationM: Number(elevation),
    utcOffsetH: Number(zone),
  };
}
