// What an outside check is and how it is judged: a row in, its deviation and verdict out. Shared by the ledger,
// which runs inside the tests, and by the command that prints the table, which does not.

/** Where the reference number comes from. */
export type Mark =
  /** printed in the named document */
  | 'document'
  /** recalled from the named standard or handbook, which was not open */
  | 'memory'
  /** computed independently from the published formula, by hand or with a library */
  | 'computed'
  /** measured in a house of the kind, as its owner, a log or a field study tells it */
  | 'measured'
  /** common practice, no source */
  | 'practice';

interface RowBase {
  /** standard, handbook table or reference table, e.g. "ISO 6946:2017" */
  readonly source: string;
  /** which row, wall, hour, test case */
  readonly case: string;
  /** what is compared, e.g. "U-value" */
  readonly quantity: string;
  readonly ours: number;
  readonly unit: string;
  readonly mark: Mark;
  /** `ours` is worked by code that no run reaches */
  readonly use?: 'reference only';
  /** the reference is our own code too, run another way: told beside the outside checks and not counted among them */
  readonly own?: true;
}

/** A single reference number; allowed is absolute in `unit` ('abs', the default) or a fraction of it ('rel'). */
export interface ValueRow extends RowBase {
  readonly kind?: 'abs' | 'rel';
  readonly reference: number;
  readonly allowed: number;
  /** for houses as measured that ours is known to miss: up to this far off, in the measure of `allowed`, the verdict is "note"
   * and nothing fails; the row's case says why */
  readonly noteAllowed?: number;
}

/** A published range; `allowed` [unit] widens it on both sides and is usually 0. */
export interface RangeRow extends RowBase {
  readonly kind: 'range';
  /** what ours spans while things that nobody noted of a measured house span what they may be; `ours` is its middle. It passes
   * where the two overlap */
  readonly band?: readonly [low: number, high: number];
  /** what the range stands for, in words that end in the unit, where its source has but one side of it */
  readonly told?: string;
  readonly referenceMin: number;
  readonly referenceMax: number;
  readonly allowed: number;
  /** for ranges recalled from memory, and for houses as measured that ours is known to miss: up to this far outside [unit]
   * the verdict is "note" and nothing fails */
  readonly noteAllowed?: number;
}

export type Row = ValueRow | RangeRow;

export interface Verdict {
  readonly verdict: 'pass' | 'note' | 'FAIL';
  /** how far from the reference, or outside the range, in the measure of `limit` */
  readonly deviation: number;
  /** what is allowed, absolute or relative as the row says */
  readonly limit: number;
}

/** What ours is held against, as it is printed, with the unit; of what was measured also what is allowed either way. */
export function referenceOf(row: Row, short: (value: number) => string): string {
  const unit = row.unit === '' ? '' : ` ${row.unit}`;
  if (row.kind !== 'range') return `${short(row.reference)}${unit}`;
  if (row.told !== undefined) return row.told;
  const [low, high] = [short(row.referenceMin), short(row.referenceMax)];
  const allowed = row.mark === 'measured' && row.allowed > 0 ? ` ± ${short(row.allowed)}` : '';
  return `${low === high ? low : `${low} to ${high}`}${allowed}${unit}`;
}

/** What ours is, as it is printed: a figure, or its band from low to high, without the unit. */
export function oursOf(row: Row, short: (value: number) => string): string {
  if (row.kind !== 'range' || row.band === undefined) return short(row.ours);
  const [low, high] = row.band.map(short);
  return low === high ? low! : `${low} to ${high}`;
}

/** Judge one row. NaN and infinities fail. */
export function judge(row: Row): Verdict {
  if (row.kind === 'range') {
    const [low, high] = row.band ?? [row.ours, row.ours];
    const outside = Math.max(row.referenceMin - high, low - row.referenceMax);
    const deviation = Math.max(outside, 0);
    if (outside <= row.allowed) return { verdict: 'pass', deviation, limit: row.allowed };
    if (row.noteAllowed !== undefined && outside <= row.noteAllowed) {
      return { verdict: 'note', deviation, limit: row.allowed };
    }
    return { verdict: 'FAIL', deviation: Number.isNaN(outside) ? Number.NaN : deviation, limit: row.allowed };
  }
  const scale = row.kind === 'rel' ? Math.abs(row.reference) : 1;
  const deviation = Math.abs(row.ours - row.reference) / scale;
  const beyond = row.noteAllowed !== undefined && deviation <= row.noteAllowed ? 'note' : 'FAIL';
  return { verdict: deviation <= row.allowed ? 'pass' : beyond, deviation, limit: row.allowed };
}
