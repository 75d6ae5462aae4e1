// Makes the files of climates/places/ from source data: npm run places -- FOLDER. In the folder (climates/places/README.md says where each is from):
// cities500.txt, admin1.json, land-110m.json, stations.csv.gz, insolation-1deg.txt.gz, us-wind.csv.gz.

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { foldedName, isLatin } from '../places/folded-name.ts';
import { PACKED_FORM, type Packed } from '../places/packed.ts';
import { cellsOf } from '../weather/text/text-lines.ts';

const TARGET = join(import.meta.dirname, '../../climates/places');

/** Fewest inhabitants of a place that is no seat of anything. */
const FEWEST = 500;
/** Latin spellings kept of a place with at least so many inhabitants, and the same for other scripts. */
const SPELLINGS = [
  { inhabitants: 100_000, latin: 30, other: 40 },
  { inhabitants: 15_000, latin: 10, other: 10 },
  { inhabitants: 5_000, latin: 4, other: 3 },
  { inhabitants: 0, latin: 2, other: 2 },
];

interface Row {
  readonly name: string;
  readonly others: readonly string[];
  readonly latitude: number;
  readonly longitude: number;
  readonly kind: string;
  readonly country: string;
  readonly region: string;
  readonly inhabitants: number;
  readonly elevation: number;
}

/** Columns of a row of the gazetteer, as its description names them. */
function rowOf(line: string): Row {
  const cells = line.split('\t');
  const number = (column: number) => Number(cells[column]);
  return {
    name: cells[1]!,
    others: [cells[2]!, ...cells[3]!.split(',')],
    latitude: number(4),
    longitude: number(5),
    kind: cells[7]!,
    country: cells[8]!,
    region: cells[10]!,
    inhabitants: number(14),
    elevation: elevationOf(cells[15] === '' ? number(16) : number(15)),
  };
}

/** The height model has no value where it sees the sea: a place there lies on its shore. */
function elevationOf(metres: number): number {
  return metres > -500 ? metres : 5;
}

function isKept({ kind, inhabitants }: Row): boolean {
  return inhabitants >= FEWEST || kind === 'PPLC' || kind === 'PPLA' || kind === 'PPLA2';
}

/** Spellings worth keeping, folded: no codes, no addresses, none twice, no list's own transliteration in small letters. */
function spellingsOf({ name, others, inhabitants }: Row): { latin: string[]; other: string[] } {
  const most = SPELLINGS.find((row) => inhabitants >= row.inhabitants)!;
  const seen = new Set([foldedName(name)]);
  const kept = { latin: [] as string[], other: [] as string[] };
  for (const spelling of others) {
    const script = isLatin(spelling) ? 'latin' : 'other';
    if (/\d|https?:|\t|\n/.test(spelling) || /^[A-Z]{2,5}$/.test(spelling)) continue;
    if (script === 'latin' && spelling === spelling.toLowerCase()) continue;
    const folded = foldedName(spelling);
    if (folded === '' || folded.length > 60 || seen.has(folded) || kept[script].length >= most[script])
      continue;
    seen.add(folded);
    kept[script].push(folded);
  }
  return kept;
}

function gazetteer(folder: string): { places: Packed; scripts: Packed } {
  const regionNames = new Map<string, string>(
    (JSON.parse(readFileSync(join(folder, 'admin1.json'), 'utf8')) as { code: string; name: string }[]).map(
      ({ code, name }) => [code, name],
    ),
  );
  const key = (row: Row) => `${row.country}.${row.region}`;
  const rows = readFileSync(join(folder, 'cities500.txt'), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map(rowOf)
    .filter(isKept)
    .sort((a, b) => (key(a) === key(b) ? order(a.name, b.name) : order(key(a), key(b))));
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(key(row), (counts.get(key(row)) ?? 0) + 1);
  const regions = [...counts].map(([code, count]) => {
    const [country, region] = code.split('.');
    return [country, region, regionNames.get(code) ?? '', count].join('\t');
  });
  const spellings = rows.map(spellingsOf);
  const column = (of: (row: Row) => number) => Int16Array.from(rows, (row) => Math.round(of(row)));
  return {
    places: {
      texts: {
        regions: regions.join('\n'),
        names: rows.map(({ name }) => name).join('\n'),
        spellings: spellings.map(({ latin }) => latin.join('\t')).join('\n'),
      },
      columns: {
        latitude: column((row) => 100 * row.latitude),
        longitude: column((row) => 100 * row.longitude),
        elevation: column((row) => row.elevation),
        // steps of a seventh of e tell a village from a town
        inhabitants: column((row) => 14 * Math.round(7 * Math.log(Math.max(row.inhabitants, 300)))),
      },
    },
    scripts: { texts: { spellings: spellings.map(({ other }) => other.join('\t')).join('\n') }, columns: {} },
  };
}

/** By code unit, so that every machine sorts alike. */
function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const MONTHS = 12;

/** Stations, radiation and wind; columns of twelve go month by month, January of every row first. */
function normals(folder: string): Packed {
  const table = (file: string) =>
    gunzipSync(readFileSync(join(folder, file)))
      .toString('utf8')
      .trim()
      .split('\n');
  const stations = table('stations.csv.gz')
    .slice(1)
    .map((line) => cellsOf(line))
    .sort((a, b) => Number(a[3]) - Number(b[3]));
  const winds = table('us-wind.csv.gz')
    .slice(1)
    .map((line) => cellsOf(line))
    .sort((a, b) => Number(a[1]) - Number(b[1]));
  const sun = table('insolation-1deg.txt.gz').flatMap((line) => {
    const cells = line.split(/\s+/).map(Number);
    return cells.length === 15 && cells.every(Number.isFinite) ? [cells] : [];
  });
  if (sun.length !== 180 * 360) throw new Error(`radiation of ${sun.length} cells, not ${180 * 360}`);
  const one = (rows: readonly (readonly unknown[])[], cell: number, times: number) =>
    Int16Array.from(rows, (row) => Math.round(times * Number(row[cell])));
  const twelve = (rows: readonly (readonly unknown[])[], first: number, times: number) => {
    const count = rows.length;
    const values = new Int16Array(MONTHS * count);
    for (let month = 0; month < MONTHS; month++) values.set(one(rows, first + month, times), month * count);
    return values;
  };
  return {
    texts: { stations: stations.map((row) => `${row[1]}\t${row[2]}`).join('\n') },
    columns: {
      latitude: one(stations, 3, 100),
      longitude: one(stations, 4, 100),
      elevation: one(stations, 5, 1),
      high: twelve(stations, 6, 10),
      low: twelve(stations, 18, 10),
      humidity: twelve(stations, 30, 1),
      windLatitude: one(winds, 1, 100),
      windLongitude: one(winds, 2, 100),
      windElevation: one(winds, 3, 1),
      wind: twelve(winds, 4, 10),
      // in steps of 0.05 kWh/m² a day, row by row from the south, each from 180° west
      sun: twelve(sun, 2, 20),
    },
  };
}

/** How far the outline of land may lie from the source's, and its step [°]. */
const OUTLINE_DEG = 0.2;
const OUTLINE_STEP = 0.1;

interface Topology {
  readonly transform: { readonly scale: readonly number[]; readonly translate: readonly number[] };
  readonly arcs: readonly (readonly (readonly number[])[])[];
  readonly objects: {
    readonly land: { readonly geometries: readonly { readonly arcs: readonly (readonly number[][])[] }[] };
  };
}

type Point = readonly [number, number];

/** Rings of land, a line each: longitude and latitude of the first point, then steps, all in tenths of a degree. */
function outline(folder: string): string {
  const { transform, arcs, objects } = JSON.parse(
    readFileSync(join(folder, 'land-110m.json'), 'utf8'),
  ) as Topology;
  const [scale, translate] = [transform.scale, transform.translate];
  const lines = arcs.map((arc) => {
    let [x, y] = [0, 0];
    return arc.map((step): Point => {
      x += step[0]!;
      y += step[1]!;
      return [x * scale[0]! + translate[0]!, y * scale[1]! + translate[1]!];
    });
  });
  const line = (index: number) => (index >= 0 ? lines[index]! : [...lines[~index]!].reverse());
  const rings = objects.land.geometries.flatMap(({ arcs: polygons }) => polygons.flat());
  return (
    rings
      .map((ring) => simplified(ring.flatMap((index, i) => (i === 0 ? line(index) : line(index).slice(1)))))
      // Antarctica is left out: nobody builds there, and on a flat map it is mostly edge.
      .filter((ring) => ring.length > 3 && ring.some(([, latitude]) => latitude > -60))
      .map((ring) => {
        const steps = ring.map((point) => point.map((value) => Math.round(value / OUTLINE_STEP)));
        return steps
          .map((point, i) => point.map((value, axis) => value - (steps[i - 1]?.[axis] ?? 0)).join(' '))
          .join(' ');
      })
      .join('\n')
  );
}

/** The line with fewest points within the distance; Douglas and Peucker 1973. */
function simplified(points: readonly Point[]): readonly Point[] {
  if (points.length < 3) return points;
  const [first, last] = [points[0]!, points.at(-1)!];
  const [dx, dy] = [last[0] - first[0], last[1] - first[1]];
  const length = Math.hypot(dx, dy);
  const off = points.map(([x, y]) =>
    length < 1e-9
      ? Math.hypot(x - first[0], y - first[1])
      : Math.abs(dx * (y - first[1]) - dy * (x - first[0])) / length,
  );
  const worst = off.indexOf(Math.max(...off));
  if (off[worst]! < OUTLINE_DEG) return [first, last];
  return [...simplified(points.slice(0, worst + 1)), ...simplified(points.slice(worst)).slice(1)];
}

function write(name: string, packed: Packed): void {
  const texts = Object.entries(packed.texts).map(([key, text]) => [key, Buffer.from(text)] as const);
  const columns = Object.entries(packed.columns);
  const head = {
    form: PACKED_FORM,
    texts: Object.fromEntries(texts.map(([key, bytes]) => [key, bytes.length])),
    columns: Object.fromEntries(columns.map(([key, values]) => [key, values.length])),
  };
  const bytes = gzipSync(
    Buffer.concat([
      Buffer.from(`${JSON.stringify(head)}\n`),
      ...texts.map(([, text]) => text),
      ...columns.map(([, values]) => planesOf(values)),
    ]),
    { level: 9 },
  );
  writeFileSync(join(TARGET, name), bytes);
  process.stdout.write(`${name.padEnd(14)} ${(bytes.length / 1000).toFixed(0).padStart(5)} kB\n`);
}

/** Each number less the one before, low bytes before high bytes. */
function planesOf(values: Int16Array): Buffer {
  const bytes = Buffer.alloc(2 * values.length);
  let last = 0;
  for (const [i, value] of values.entries()) {
    const step = (value - last) & 0xffff;
    bytes[i] = step & 0xff;
    bytes[values.length + i] = step >> 8;
    last = value;
  }
  return bytes;
}

const folder = process.argv[2];
if (folder === undefined) {
  process.stderr.write('Give the folder with the source files: npm run places -- FOLDER\n');
  process.exitCode = 2;
} else {
  const { places, scripts } = gazetteer(folder);
  write('places.bin', places);
  write('scripts.bin', scripts);
  write('normals.bin', normals(folder));
  const land = `${outline(folder)}\n`;
  writeFileSync(join(TARGET, 'land.txt'), land);
  process.stdout.write(`land.txt       ${(land.length / 1000).toFixed(0).padStart(5)} kB\n`);
}
