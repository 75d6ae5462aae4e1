// The reference ranges of the fabric cases, edition of 2020 and later: read from tests/data/fabric-tests.json, one row a
// quantity, with the mark the data file gives it: H, M or L = from memory with high, medium or low confidence.
// Ranges marked L are for information; the data file says not to test against them.
import { readJson } from '../reference-table.ts';

export type Quantity = 'heating' | 'cooling' | 'peak heating' | 'peak cooling' | 'highest air' | 'lowest air';
export type Confidence = 'H' | 'M' | 'L';

export interface RangeOf {
  readonly case: string;
  readonly quantity: Quantity;
  readonly unit: 'MWh' | 'kW' | '°C';
  readonly low: number;
  readonly high: number;
  readonly confidence: Confidence;
  /** distance outside the nearer bound that is a note and no more [unit] */
  readonly noteWithin: (ours: number) => number;
}

interface Entry {
  readonly lo: number;
  readonly hi: number;
  readonly origin: string;
}
interface DataFile {
  readonly results_edition_B: {
    readonly annual_and_peak: Readonly<Record<string, Readonly<Record<string, Entry>>>>;
    readonly free_float: Readonly<Record<string, Readonly<Record<string, Entry>>>>;
  };
}

const COLUMNS: Readonly<Record<string, { quantity: Quantity; unit: RangeOf['unit'] }>> = {
  heat_MWh: { quantity: 'heating', unit: 'MWh' },
  cool_MWh: { quantity: 'cooling', unit: 'MWh' },
  peak_heat_kW: { quantity: 'peak heating', unit: 'kW' },
  peak_cool_kW: { quantity: 'peak cooling', unit: 'kW' },
  max_C: { quantity: 'highest air', unit: '°C' },
  min_C: { quantity: 'lowest air', unit: '°C' },
};

/** Outside by no more than this is a note: 5 % of the nearer bound for a year, 10 % for a peak, 1 K. */
const NOTE_SHARE = { MWh: 0.05, kW: 0.1 } as const;
const NOTE_K = 1;

const ORIGIN: Readonly<Record<string, Confidence>> = {
  'memory-high': 'H',
  'memory-medium': 'M',
  'memory-low': 'L',
};

/** All ranges of one case, zeros included. */
export function rangesOf(id: string): readonly RangeOf[] {
  const { annual_and_peak, free_float } = readJson<DataFile>('fabric-tests.json').results_edition_B;
  const entries = Object.entries({ ...annual_and_peak[id], ...free_float[id] });
  return entries.map(([column, { lo, hi, origin }]) => {
    const { quantity, unit } = COLUMNS[column]!;
    const nearer = (ours: number) => (ours < lo ? lo : hi);
    const noteWithin = (ours: number) => (unit === '°C' ? NOTE_K : NOTE_SHARE[unit] * nearer(ours));
    return { case: id, quantity, unit, low: lo, high: hi, confidence: ORIGIN[origin]!, noteWithin };
  });
}

export type Verdict = 'inside' | 'note' | 'investigate';

/** The wording of the fabric cases for ranges recalled from memory. */
export function verdictOf(range: RangeOf, ours: number): Verdict {
  const outside = Math.max(range.low - ours, ours - range.high);
  if (outside <= 0) return 'inside';
  return outside <= range.noteWithin(ours) ? 'note' : 'investigate';
}
