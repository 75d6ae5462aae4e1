// The clock of a dated table: what the clock on the wall showed into moments. Said by the person, or by the stamps
// themselves; else told by the file: a clock that springs forward and back shows it by an hour that is missing or comes
// twice on a Sunday night. What remains is local standard time, and a note that it was taken so.

import { HOUR_MS } from '../moments.ts';

/** How a table's clock goes: as the file shows, UTC, local standard time, an hour ahead of it, or by a zone of the IANA list. */
export type RowClock = 'auto' | 'utc' | 'standard' | 'summer' | { readonly zone: string };

export interface SettledClock {
  /** moment of each row [ms since 1970 UTC] */
  readonly ms: Float64Array;
  readonly note: string;
  /** nothing in the file or said by the person settles it */
  readonly isGuess: boolean;
}

/** Rows of a table in order of time. */
export interface RowMoments {
  readonly clock: SettledClock;
  /** row of the file, by time; of two at one moment the first */
  readonly order: Int32Array;
  /** moment of each of those [ms since 1970 UTC] */
  readonly ms: Float64Array;
  /** from most rows to the next [ms] */
  readonly stepMs: number;
}

/**
 * Settle the clock of a table and put its rows in order of time.
 *
 * @param walls what the clock on the wall showed at each row, and how far ahead of UTC the stamps say it was, if they do
 * @param choice auto unless said
 * @param utcOffsetH local standard time minus UTC [h]
 */
export function rowMoments(
  { wallMs, aheadMin }: { readonly wallMs: Float64Array; readonly aheadMin: number | null },
  choice: RowClock | undefined,
  utcOffsetH: number,
): RowMoments {
  const clock = settleClock(wallMs, aheadMin, choice ?? 'auto', utcOffsetH);
  const order = inOrder(clock.ms);
  const ms = Float64Array.from(order, (row) => clock.ms[row]!);
  return { clock, order, ms, stepMs: usualStep(ms) };
}

/** Settle the clock of rows in the order of the file. */
function settleClock(
  wallMs: Float64Array,
  aheadMin: number | null,
  choice: RowClock,
  utcOffsetH: number,
): SettledClock {
  const ahead = (hours: number, note: string, isGuess = false): SettledClock => ({
    ms: wallMs.map((wall) => wall - hours * HOUR_MS),
    note,
    isGuess,
  });
  if (choice === 'utc') return ahead(0, 'The clock is taken as UTC, as said.');
  if (choice === 'standard') return ahead(utcOffsetH, 'The clock is taken as local standard time, as said.');
  if (choice === 'summer')
    return ahead(
      utcOffsetH + 1,
      'The clock is taken as an hour ahead of local standard time throughout, as said.',
    );
  if (choice !== 'auto')
    return {
      ms: wallMs.map((wall) => momentInZone(wall, choice.zone)),
      note: `The clock is that of ${choice.zone}, summer time and all, as said.`,
      isGuess: false,
    };
  if (aheadMin !== null)
    return ahead(aheadMin / 60, `The stamps say how far they are from UTC: ${signed(aheadMin)} minutes.`);
  const change = changeOver(wallMs);
  if (change === null)
    return ahead(
      utcOffsetH,
      'Nothing says how the clock goes; it is taken as local standard time, without summer time.',
      true,
    );
  const { row, kind } = change;
  const day = new Date(wallMs[row]!).toISOString().slice(0, 10);
  return {
    ms: wallMs.map((wall, i) => {
      const isSummer = kind === 'spring' ? i >= row : i < row;
      return wall - (utcOffsetH + (isSummer ? 1 : 0)) * HOUR_MS;
    }),
    note:
      kind === 'spring'
        ? `An hour is missing on Sunday ${day}: the clock went over to summer time, and the rows after it were put back an hour.`
        : `An hour comes twice on Sunday ${day}: the clock went back from summer time, and the rows before it were put back an hour.`,
    isGuess: false,
  };
}

/** The row from which the clock goes otherwise; null where no Sunday night skips or repeats an hour. */
function changeOver(wallMs: Float64Array): { row: number; kind: 'spring' | 'autumn' } | null {
  const usual = usualStep(wallMs);
  for (let row = 1; row < wallMs.length; row++) {
    const step = wallMs[row]! - wallMs[row - 1]!;
    const at = new Date(wallMs[row]!);
    const isNight = at.getUTCDay() === 0 && at.getUTCHours() <= 4;
    if (!isNight || usual > HOUR_MS) continue;
    const month = at.getUTCMonth();
    if (step === usual + HOUR_MS && (month <= 3 || month >= 8)) return { row, kind: 'spring' };
    if (step === usual - HOUR_MS) return { row, kind: 'autumn' };
  }
  return null;
}

/** The commonest step between rows [ms]. */
function usualStep(ms: Float64Array): number {
  const counts = new Map<number, number>();
  for (let row = 1; row < ms.length; row++) {
    const step = ms[row]! - ms[row - 1]!;
    if (step > 0) counts.set(step, (counts.get(step) ?? 0) + 1);
  }
  return [...counts].reduce((a, b) => (b[1] > a[1] ? b : a), [HOUR_MS, 0])[0];
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Moment at which a zone's clock shows so much; the first of two. */
function momentInZone(wallMs: number, zone: string): number {
  const format =
    formats.get(zone) ??
    new Intl.DateTimeFormat('en-GB', {
      timeZone: zone,
      dateStyle: 'short',
      timeStyle: 'medium',
      hourCycle: 'h23',
    });
  formats.set(zone, format);
  const shown = (ms: number): number => {
    const parts = Object.fromEntries(
      format.formatToParts(ms).map(({ type, value }) => [type, Number(value)]),
    );
    return Date.UTC(parts.year!, parts.month! - 1, parts.day, parts.hour, parts.minute, parts.second);
  };
  const first = wallMs - (shown(wallMs) - wallMs);
  return first - (shown(first) - wallMs);
}

const signed = (value: number) => (value < 0 ? `−${-value}` : `+${value}`);

/** Rows in order of time; of two at one moment the first stays. */
function inOrder(ms: Float64Array): Int32Array {
  const order = Int32Array.from(ms.keys()).sort((a, b) => ms[a]! - ms[b]! || a - b);
  return order.filter((row, i) => i === 0 || ms[row]! > ms[order[i - 1]!]!);
}
