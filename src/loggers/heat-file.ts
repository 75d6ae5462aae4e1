// A table of heat: time, and one column of kW, kWh, kg of wood or logs. Power holds until the next row; wood and kWh were put on
// or given at their row's moment. Lines of a diary out, or one line a fault; nothing throws.

import { HOUR_MS } from '../weather/moments.ts';
import { describeFault } from '../weather/read-result.ts';
import { MOST_DATED_ROWS } from '../weather/real/real-table.ts';
import { rowMoments } from '../weather/real/row-clock.ts';
import { guessColumns } from '../weather/table/table-columns.ts';
import { tableTextOf } from '../weather/table/table-text.ts';
import { wallClocks } from '../weather/table/table-time.ts';
import type { Diary, DiaryChoices, DiaryLine, DiaryResult } from './diary-file.ts';
import { amountUnder, unitOf } from './heat-amount.ts';

/** Power is not taken to last longer than so many usual steps, nor longer than this. */
const STEPS_LASTING = 2.5;
const MOST_LASTING_MS = 6 * HOUR_MS;
const TIMES = ['time', 'date', 'clock', 'year', 'month', 'day', 'hour', 'minute'];
const NOT_HEAT = /temp|°|hum|dew|wind|radiat|global|solar|m2|m²|press/i;

/** The column of heat among names; −1 for none. */
export function heatColumn(header: readonly string[]): number {
  return header.findIndex((name) => unitOf(name) !== null && !NOT_HEAT.test(name));
}

/** Read it. */
export function readHeat(text: string, { utcOffsetH, clock }: DiaryChoices): DiaryResult {
  const refuse = (line: number | null, column: string, value: string, expected: string): DiaryResult => ({
    ok: false,
    faults: [describeFault({ line, column, value, expected })],
  });
  const table = tableTextOf(text, MOST_DATED_ROWS);
  if (table === null)
    return refuse(1, '', text.trim().slice(0, 60), 'a line of names, and rows of times and amounts below it');
  const at = heatColumn(table.header);
  if (at < 0)
    return refuse(
      table.headerLine,
      'heat',
      table.header.join(', '),
      'a column with kW, kWh, kg or logs in its name, as “wood [kg]”',
    );
  const guesses = guessColumns(table).filter(({ role }) => role !== null && TIMES.includes(role));
  const walls = wallClocks(table, guesses);
  if ('faults' in walls) return { ok: false, faults: walls.faults.map(describeFault) };
  const { clock: settled, order, ms, stepMs } = rowMoments(walls, clock, utcOffsetH);
  const header = table.header[at]!;
  const lines: DiaryLine[] = [];
  for (const [i, row] of order.entries()) {
    const cell = (table.rows[row]![at] ?? '').trim();
    if (cell === '') continue;
    const amount = amountUnder(header, cell);
    if (amount === null)
      return refuse(table.lines[row]!, header, cell, 'a number, 0 or more, in kW, kWh, kg or logs');
    const fromMs = ms[i]!;
    const lastingMs = Math.min(ms[i + 1]! - fromMs || stepMs, STEPS_LASTING * stepMs, MOST_LASTING_MS);
    const untilMs = amount.unit === 'kW' ? fromMs + lastingMs : fromMs;
    lines.push({ fromMs, untilMs, what: header, share: 1, amount });
  }
  if (lines.length === 0) return refuse(table.headerLine, header, '', 'a number in at least one row');
  const diary: Diary = { lines, notes: [settled.note] };
  return { ok: true, diary };
}
