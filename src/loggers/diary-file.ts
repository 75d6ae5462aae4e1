// A diary of what stood open and of fires, as a table with a line of names: from when, until when, what, and if somebody wrote
// it, how far (share, %) or how much was burnt (amount: kg, logs, kWh, kW). A date may stand once a line, in a column of its
// own or before the first time. Stretches in moments out, or one line a fault; nothing throws.

import Papa from 'papaparse';
import { DAY_MS } from '../weather/moments.ts';
import { describeFault } from '../weather/read-result.ts';
import { type RowClock, rowMoments } from '../weather/real/row-clock.ts';
import { type TableText, tableNumber } from '../weather/table/table-text.ts';
import { wallClocks } from '../weather/table/table-time.ts';
import { withoutByteOrderMark } from '../weather/text/byte-order-mark.ts';
import { amountIn, amountUnder, type HeatAmount } from './heat-amount.ts';

export interface DiaryLine {
  readonly fromMs: number;
  /** after the last */
  readonly untilMs: number;
  /** as written */
  readonly what: string;
  /** how far it stood open, 0…1 */
  readonly share: number;
  /** wood or heat, where some was written down */
  readonly amount?: HeatAmount;
}

export interface Diary {
  readonly lines: readonly DiaryLine[];
  readonly notes: readonly string[];
}

export type DiaryResult =
  | { readonly ok: true; readonly diary: Diary }
  /** one line a fault */
  | { readonly ok: false; readonly faults: readonly string[] };

export interface DiaryChoices {
  /** local standard time minus UTC at the house [h] */
  readonly utcOffsetH: number;
  readonly clock?: RowClock;
}

const COLUMNS = {
  date: /^(date|day|datum|tag)\b/i,
  from: /^(from|start|begin|von)\b/i,
  until: /^(to|until|till|end|shut|closed|bis)\b/i,
  what: /^(what|which|opened|opening|where|was)\b/i,
  share: /^(share|how far|percent)\b/i,
  amount: /^(amount|how much|wood|heat|logs|kg|kwh|kw|menge|holz)\b/i,
} as const;
type Column = keyof typeof COLUMNS;
const SEPARATORS = [',', ';', '\t', '|'] as const;
/** More lines are no diary of some weeks. */
const MOST_LINES = 5000;
const HAS_DATE = /\d[-/.]\d|\d{8}/;

/** Whether the first lines name the columns of a diary. */
export function looksLikeDiary(text: string): boolean {
  return cutDiary(text.slice(0, 4000)) !== null;
}

/** Read it. */
export function readDiary(text: string, { utcOffsetH, clock }: DiaryChoices): DiaryResult {
  const refuse = (line: number | null, column: string, value: string, expected: string): DiaryResult => ({
    ok: false,
    faults: [describeFault({ line, column, value, expected })],
  });
  const cut = cutDiary(text);
  if (cut === null)
    return refuse(1, '', text.trim().slice(0, 60), 'a line of column names with from, until and what');
  const { rows, lines, at, header, headerLine } = cut;
  if (rows.length === 0)
    return refuse(headerLine, '', header.join(', '), 'at least one line below the names');
  if (rows.length > MOST_LINES) return refuse(null, '', `${rows.length} lines`, `at most ${MOST_LINES}`);
  const cell = (row: readonly string[], column: Column) => (row[at[column] ?? -1] ?? '').trim();
  const dated = (row: readonly string[], time: string) =>
    HAS_DATE.test(time) ? time : `${cell(row, 'date') || datePart(cell(row, 'from'))} ${time}`;
  const amounts = rows.map(
    (row) => amountUnder(header[at.amount ?? -1] ?? '', cell(row, 'amount')) ?? amountIn(cell(row, 'what')),
  );
  // A load of wood is put on at a moment; where a line has an amount and no end, that is all that is known.
  const endOf = (row: readonly string[], i: number) =>
    cell(row, 'until') || (amounts[i] ? cell(row, 'from') : '');
  const ends = rows.flatMap((row, i) => [dated(row, cell(row, 'from')), dated(row, endOf(row, i))]);
  const walls = wallClocks(columnOfEnds(ends, cut), [
    { index: 0, header: ENDS, role: 'time', unit: null, reason: '' },
  ]);
  if ('faults' in walls) return { ok: false, faults: walls.faults.map(describeFault) };
  const { clock: settled } = rowMoments(walls, clock, utcOffsetH);
  const read: DiaryLine[] = [];
  for (const [i, row] of rows.entries()) {
    const fromMs = settled.ms[2 * i]!;
    const [what, until, shareText] = [cell(row, 'what'), endOf(row, i), cell(row, 'share')];
    const amount = amounts[i]!;
    let untilMs = settled.ms[2 * i + 1]!;
    // Past midnight, where the date stands once.
    if (!HAS_DATE.test(until) && untilMs < fromMs) untilMs += DAY_MS;
    const isMoment = amount !== null && untilMs === fromMs;
    if (isMoment && amount.unit === 'kW')
      return refuse(lines[i]!, header[at.until!]!, '', 'until when it gave so many kW');
    if (!(untilMs > fromMs) && !isMoment)
      return refuse(lines[i]!, header[at.until!]!, until, 'a moment after the first');
    if (what === '') return refuse(lines[i]!, header[at.what!]!, '', 'what was opened, or the stove');
    const amountText = cell(row, 'amount');
    if (amount === null && amountText !== '')
      return refuse(lines[i]!, header[at.amount!]!, amountText, 'a number with kg, logs, kWh or kW');
    const percent = shareText === '' ? 100 : tableNumber(shareText.replace(/\s*%$/, ''), true);
    if (!(percent >= 0 && percent <= 100))
      return refuse(lines[i]!, header[at.share!]!, shareText, '0 to 100 %');
    read.push({ fromMs, untilMs, what, share: percent / 100, ...(amount && { amount }) });
  }
  return { ok: true, diary: { lines: read, notes: [settled.note] } };
}

const ENDS = 'from, until';

/** Both ends of each line as one column, so that day and month are told apart by all dates together. */
function columnOfEnds(ends: readonly string[], { headerLine, lines }: CutDiary): TableText {
  return {
    separator: ',',
    decimalComma: false,
    header: [ENDS],
    headerLine,
    rows: ends.map((end) => [end]),
    lines: lines.flatMap((line) => [line, line]),
    latitudeDeg: null,
    longitudeDeg: null,
    elevationM: null,
    tooLong: false,
  };
}

const datePart = (text: string) => text.replace(/[T ].*$/, '');

interface CutDiary {
  readonly header: readonly string[];
  readonly headerLine: number;
  readonly at: Readonly<Partial<Record<Column, number>>>;
  readonly rows: readonly (readonly string[])[];
  /** line of each row */
  readonly lines: readonly number[];
}

/** Cells below the line of names; null where no line names from, until and what. */
function cutDiary(text: string): CutDiary | null {
  const plain = withoutByteOrderMark(text);
  for (const delimiter of SEPARATORS) {
    const all = Papa.parse<string[]>(plain, { delimiter, header: false, skipEmptyLines: false }).data;
    const headerAt = all.slice(0, 20).findIndex((cells) => hasAll(columnsIn(cells)));
    if (headerAt < 0) continue;
    const header = all[headerAt]!.map((one) => one.trim());
    const below = all.slice(headerAt + 1).map((cells, i) => ({ cells, line: headerAt + i + 2 }));
    const kept = below.filter(({ cells }) => cells.some((one) => one.trim() !== ''));
    return {
      header,
      headerLine: headerAt + 1,
      at: columnsIn(header),
      rows: kept.map(({ cells }) => cells),
      lines: kept.map(({ line }) => line),
    };
  }
  return null;
}

const hasAll = ({ from, until, what }: CutDiary['at']) =>
  from !== undefined && until !== undefined && what !== undefined;

function columnsIn(cells: readonly string[]): CutDiary['at'] {
  const names = Object.keys(COLUMNS) as Column[];
  return Object.fromEntries(
    names
      .map((name) => [name, cells.findIndex((one) => COLUMNS[name].test(one.trim()))] as const)
      .filter(([, index]) => index >= 0),
  );
}
