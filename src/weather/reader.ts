// Any weather file in, a typical year or the reasons against it out. The format is recognised by content, never by
// name; gzip is unpacked on the way. Nothing a file holds makes this throw.
import { looksLikeBundle, readBundle } from './formats/bundle-form.ts';
import { looksLikePsm, readPsm } from './formats/psm.ts';
import { looksLikePvgisCsv, looksLikePvgisJson, readPvgis } from './formats/pvgis.ts';
import { looksLikeTmy2, readTmy2 } from './formats/tmy2.ts';
import { looksLikeTmy3, readTmy3 } from './formats/tmy3.ts';
import { type ReadResult, refuse, type SiteHints } from './read-result.ts';
import { looksLikeNormals, readNormals } from './synthetic/normals-file.ts';
import {
  inspectTable,
  looksLikeTable,
  readHourlyTable,
  type TableChoices,
  type TableInspection,
} from './table/hourly-table.ts';
import { gunzip, isGzip, MOST_BYTES, textOf } from './text/platform-streams.ts';

const MEGABYTE = 1_000_000;
/** Longest name, source, credit or note kept [characters]. */
const MOST_TEXT = 400;
const TABLE = 'table';

interface Format {
  readonly name: string;
  readonly looksRight: (text: string) => boolean;
  readonly read: (text: string, hints: SiteHints, choices: TableChoices) => ReadResult;
}

/** Tried in this order; the first that looks right reads the file. */
const FORMATS: readonly Format[] = [
  { name: 'Daystone climate', looksRight: looksLikeBundle, read: readBundle },
  { name: 'TMY3', looksRight: looksLikeTmy3, read: readTmy3 },
  { name: 'TMY2', looksRight: looksLikeTmy2, read: readTmy2 },
  { name: 'PVGIS JSON', looksRight: looksLikePvgisJson, read: readPvgis },
  { name: 'PVGIS CSV', looksRight: looksLikePvgisCsv, read: readPvgis },
  { name: 'NSRDB PSM', looksRight: looksLikePsm, read: readPsm },
  { name: 'monthly normals', looksRight: looksLikeNormals, read: readNormals },
  { name: TABLE, looksRight: looksLikeTable, read: readHourlyTable },
];

/** What a reader is at, for a person who waits: words, and how much of the way is behind [0…1]. */
export interface ReadStep {
  readonly words: string;
  readonly share: number;
}

/** What a file is before it is read. */
export interface WeatherLook {
  /** name of its format; null for what is no weather file */
  readonly format: string | null;
  /** the guesses about a table of unknown origin, to be confirmed; null for every other format */
  readonly table: TableInspection | null;
}

/** Name of the format a text is in, or null. */
export function formatOf(text: string): string | null {
  return FORMATS.find((format) => format.looksRight(text))?.name ?? null;
}

/**
 * Read a weather file.
 *
 * @param content the file's bytes, gzipped or not, or its text
 * @param hints what the person knows and the file may not say
 * @param choices what the person says about the columns and the clock of a table
 */
export async function readWeather(
  content: Uint8Array | string,
  hints: SiteHints = {},
  choices: TableChoices = {},
  onStep: (step: ReadStep) => void = () => {},
): Promise<ReadResult> {
  const opened = await openedText(content, onStep);
  return typeof opened === 'string' ? readWeatherText(opened, hints, choices, onStep) : opened;
}

/**
 * What a file is: its format, and for a table of unknown origin what its columns are taken for.
 *
 * @param content the file's bytes, gzipped or not, or its text
 */
export async function lookAtWeather(
  content: Uint8Array | string,
  choices: TableChoices = {},
  fileName = '',
): Promise<WeatherLook> {
  const text = await openedText(content, () => {});
  if (typeof text !== 'string') return { format: null, table: null };
  const format = formatOf(text);
  return { format, table: format === TABLE ? inspectTable(text, choices, fileName) : null };
}

/** The text of a file, or why there is none. */
async function openedText(
  content: Uint8Array | string,
  onStep: (step: ReadStep) => void,
): Promise<string | ReadResult> {
  if (typeof content === 'string') return content;
  let bytes = content;
  if (isGzip(bytes)) {
    onStep({ words: 'Unpacking', share: 0.05 });
    const unpacked = await gunzip(bytes);
    if (unpacked === 'too large') return tooLarge('more when unpacked');
    if (unpacked === 'damaged')
      return refuse(null, '', 'a damaged or cut-off gzip file', 'a complete gzip file');
    bytes = unpacked;
  }
  if (bytes.length > MOST_BYTES) return tooLarge(`${Math.round(bytes.length / MEGABYTE)} MB`);
  const kind = binaryKind(bytes);
  if (kind !== null) return refuse(null, '', kind, 'a text file: CSV, TMY2, JSON, or one of these in gzip');
  return textOf(bytes);
}

/** The same for a text already in memory. */
export function readWeatherText(
  text: string,
  hints: SiteHints = {},
  choices: TableChoices = {},
  onStep: (step: ReadStep) => void = () => {},
): ReadResult {
  if (text.length > MOST_BYTES) return tooLarge(`${Math.round(text.length / MEGABYTE)} MB`);
  if (text.trim() === '') return refuse(null, '', 'an empty file', 'a year of hourly weather');
  const format = FORMATS.find((candidate) => candidate.looksRight(text));
  if (format === undefined) {
    const expected =
      'a weather file: TMY2, TMY3, PVGIS, NSRDB PSM, monthly normals as JSON, or a table of hours with a line of column names';
    return refuse(1, '', text.slice(0, 200), expected);
  }
  if (format.name !== TABLE && Object.keys(choices).length > 0) {
    return refuse(null, 'columns', format.name, 'a table of hours; only its columns and clock can be chosen');
  }
  onStep({ words: `Reading ${format.name === TABLE ? 'the table' : format.name}`, share: 0.2 });
  const result = format.read(text, hints, choices);
  onStep({ words: 'Handing over', share: 0.95 });
  return withShortTexts(result);
}

/** A head may hold any text; what stands on the page and in every report keeps to a line or two. */
function withShortTexts(result: ReadResult): ReadResult {
  if (!result.ok) return result;
  const short = (text: string) => (text.length > MOST_TEXT ? `${text.slice(0, MOST_TEXT - 1)}…` : text);
  const { year } = result;
  const site = { ...year.site, name: short(year.site.name) };
  return {
    ok: true,
    year: {
      ...year,
      site,
      id: year.id.slice(0, MOST_TEXT),
      source: short(year.source),
      credit: short(year.credit),
      notes: year.notes.map(short),
    },
  };
}

function tooLarge(found: string): ReadResult {
  return refuse(null, '', found, `at most ${MOST_BYTES / MEGABYTE} MB; an hourly year has 1 to 2 MB`);
}

/** What kind of binary file this is, or null for text. UTF-16 text with its mark is text. */
function binaryKind(bytes: Uint8Array): string | null {
  const [a, b] = bytes;
  if (a === 0x50 && b === 0x4b) return 'a zip archive or spreadsheet (unpack it, or save the sheet as CSV)';
  if (a === 0x25 && b === 0x50) return 'a PDF document';
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) return null;
  const head = bytes.subarray(0, 4096);
  const control = head.reduce((count, byte) => count + (byte < 9 || (byte > 13 && byte < 32) ? 1 : 0), 0);
  return control > head.length / 100 ? 'binary data' : null;
}
