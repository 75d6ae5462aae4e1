// The compact text form of a typical year: `key: value` lines, then each column as 365 lines of 24 whole numbers,
// a day a line, so that a change shows as a change of one day. climates/README.md describes it for people.
// Values are multiples of the column's step; the step is no coarser than the source's own digits, or for gridded
// data far below its accuracy. n×value stands for a run of equal values of at least three hours.
import { assembleYear, newColumn, newColumns, type RawYear } from '../assembly/assembled-year.ts';
import { type Fault, MOST_FAULTS, type ReadResult, refuse } from '../read-result.ts';
import { linesOf, numberOf } from '../text/text-lines.ts';
import type { TypicalYear } from '../typical-year.ts';

const FIRST_LINE = 'daystone climate 1';
const DAYS = 365;

/** Columns in the order of the file, with the step of one unit in the file. */
const STEPS = {
  dryBulbC: 0.1,
  dewPointC: 0.1,
  pressurePa: 100,
  windSpeed: 0.1,
  windFromDeg: 10,
  globalHorizontal: 1,
  beamNormal: 1,
  diffuseHorizontal: 1,
  skyCover: 0.1,
  skyLongwave: 1,
  albedo: 0.01,
  rainMm: 0.1,
} as const;
type StoredColumn = keyof typeof STEPS;
const STORED = Object.keys(STEPS) as StoredColumn[];

const HEADER_KEYS =
  'id,name,latitude,longitude,elevation,utc offset,source,credit,month years,sun minute'.split(',');

export function looksLikeBundle(text: string): boolean {
  return text
    .slice(0, 200)
    .replace(/^\uFEFF/, '')
    .startsWith(FIRST_LINE);
}

/** A typical year as text; reading it back gives the year with every value rounded to its step. */
export function writeBundle(year: TypicalYear): string {
  const { site } = year;
  const header = [
    FIRST_LINE,
    `id: ${year.id}`,
    `name: ${site.name}`,
    `latitude: ${site.latitudeDeg}`,
    `longitude: ${site.longitudeDeg}`,
    `elevation: ${site.elevationM}`,
    `utc offset: ${site.utcOffsetH}`,
    `source: ${year.source}`,
    `credit: ${year.credit}`,
    `month years: ${year.monthYears.join(' ')}`,
    `sun minute: ${year.sunMinute}`,
    ...year.notes.map((note) => `note: ${note}`),
  ].map((line) => line.replace(/[\r\n]+/g, ' '));
  const blocks = STORED.filter((name) => year[name] !== null).map((name) => {
    const days = Array.from({ length: DAYS }, (_, day) => dayLine(year[name]!, STEPS[name], day));
    return [`column: ${name} ${STEPS[name]}`, ...days].join('\n');
  });
  return `${[...header, ...blocks].join('\n')}\n`;
}

function dayLine(column: Float64Array, step: number, day: number): string {
  const parts: string[] = [];
  for (let hour = day * 24; hour < day * 24 + 24; ) {
    const value = Math.round(column[hour]! / step) + 0;
    let run = 1;
    while ((hour + run) % 24 !== 0 && Math.round(column[hour + run]! / step) + 0 === value) run++;
    if (run >= 3) parts.push(`${run}×${value}`);
    else for (let i = 0; i < run; i++) parts.push(String(value));
    hour += run;
  }
  return parts.join(' ');
}

/** Read the compact form. */
export function readBundle(text: string): ReadResult {
  const lines = linesOf(text);
  if (lines[0] !== FIRST_LINE) return refuse(1, '', lines[0] ?? '', `"${FIRST_LINE}"`);
  const header = new Map<string, string>();
  const notes: string[] = [];
  let at = 1;
  for (; at < lines.length && !lines[at]!.startsWith('column: '); at++) {
    const colon = lines[at]!.indexOf(': ');
    if (colon < 0) return refuse(at + 1, '', lines[at]!, 'a line "key: value" or "column: name step"');
    const key = lines[at]!.slice(0, colon);
    const value = lines[at]!.slice(colon + 2);
    if (key === 'note') notes.push(value);
    else header.set(key, value);
  }
  const faults: Fault[] = HEADER_KEYS.filter((key) => !header.has(key)).map((key) => {
    return { line: null, column: key, value: '', expected: `a line "${key}: …" before the columns` };
  });
  if (faults.length > 0) return { ok: false, faults };
  const found = readColumns(lines, at);
  if (Array.isArray(found)) return { ok: false, faults: found };
  return yearOf(header, found as ReadonlyMap<string, Float64Array>, notes);
}

function readColumns(lines: readonly string[], from: number): Map<string, Float64Array> | Fault[] {
  const found = new Map<string, Float64Array>();
  const faults: Fault[] = [];
  for (let at = from; at < lines.length && lines[at]!.trim() !== ''; at += DAYS + 1) {
    const match = /^column: ([A-Za-z]+) ([\d.]+)$/.exec(lines[at]!);
    const step = numberOf(match?.[2]);
    if (match === null || !(step > 0)) {
      return [{ line: at + 1, column: '', value: lines[at]!, expected: 'a line "column: name step"' }];
    }
    const column = newColumn();
    for (let day = 0; day < DAYS && faults.length < MOST_FAULTS; day++) {
      const line = lines[at + 1 + day];
      const values = dayValues(line ?? '');
      if (values === null) {
        const expected = `24 whole numbers, the hours of day ${day + 1}`;
        faults.push({ line: at + 2 + day, column: match[1]!, value: line ?? '', expected });
      } else
        values.forEach((value, hour) => {
          column[day * 24 + hour] = step < 1 ? value / Math.round(1 / step) : value * step;
        });
    }
    found.set(match[1]!, column);
    if (faults.length > 0) return faults;
  }
  return found;
}

function dayValues(line: string): number[] | null {
  const values: number[] = [];
  for (const part of line.split(' ')) {
    const match = /^(?:(\d{1,2})×)?(-?\d{1,6})$/.exec(part);
    if (match === null) return null;
    for (let i = Number(match[1] ?? 1); i > 0; i--) values.push(Number(match[2]));
  }
  return values.length === 24 ? values : null;
}

function yearOf(
  header: ReadonlyMap<string, string>,
  found: ReadonlyMap<string, Float64Array>,
  notes: readonly string[],
): ReadResult {
  const columns = newColumns();
  const absent = Object.keys(columns).filter((name) => !found.has(name));
  const limits: Record<string, readonly [number, number]> = {
    latitude: [-90, 90],
    longitude: [-180, 180],
    elevation: [-500, 9000],
    'utc offset': [-14, 14],
  };
  const faults: Fault[] = absent.map((column) => ({
    line: null,
    column,
    value: '',
    expected: 'this column',
  }));
  for (const [key, [low, high]] of Object.entries(limits)) {
    const value = numberOf(header.get(key));
    if (value >= low && value <= high) continue;
    faults.push({ line: null, column: key, value: header.get(key)!, expected: `${low} to ${high}` });
  }
  const monthYears = header.get('month years')!.split(' ').map(numberOf);
  if (monthYears.length !== 12 || !monthYears.every((year) => year >= 1900 && year <= 2100)) {
    const value = header.get('month years')!;
    faults.push({ line: null, column: 'month years', value, expected: 'twelve years of 1900 to 2100' });
  }
  const minute = header.get('sun minute')!;
  if (minute !== 'mean' && !(numberOf(minute) >= 0 && numberOf(minute) <= 60)) {
    faults.push({ line: null, column: 'sun minute', value: minute, expected: '"mean" or 0 to 60' });
  }
  if (faults.length > 0) return { ok: false, faults };
  for (const name of Object.keys(columns) as (keyof typeof columns)[]) columns[name].set(found.get(name)!);
  const raw: RawYear = {
    site: {
      name: header.get('name')!,
      latitudeDeg: numberOf(header.get('latitude')),
      longitudeDeg: numberOf(header.get('longitude')),
      elevationM: numberOf(header.get('elevation')),
      utcOffsetH: numberOf(header.get('utc offset')),
    },
    id: header.get('id')!,
    source: header.get('source')!,
    credit: header.get('credit')!,
    monthYears,
    sunMinute: minute === 'mean' ? 'mean' : numberOf(minute),
    columns,
    skyLongwave: found.get('skyLongwave') ?? null,
    albedo: found.get('albedo') ?? null,
    rainMm: found.get('rainMm') ?? null,
    notes,
    lineOfHour: null,
  };
  return assembleYear(raw);
}
