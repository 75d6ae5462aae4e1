// The printed table of outside checks: ledger rows in, lines of text out. Sources with many rows of one quantity
// are folded into one line that shows the worst row and the count.
import { judge, oursOf, type Row, referenceOf } from './verdict.ts';

/** More rows than this of one source and quantity become one line. */
const FOLD_ABOVE = 12;

const HEADINGS = ['source', 'case', 'quantity', 'reference', 'ours', 'allowed', 'mark', 'used by', 'verdict'];

/** Aligned lines, headings first. */
export function tableOf(rows: readonly Row[]): readonly string[] {
  const lines = [...groups(rows)].flatMap((group) =>
    group.length > FOLD_ABOVE ? [folded(group)] : group.map((row) => cells(row, row.case)),
  );
  const all = [HEADINGS, ...lines];
  const widths = HEADINGS.map((_, column) => Math.max(...all.map((line) => line[column]!.length)));
  return all.map((line) =>
    line
      .map((cell, column) => cell.padEnd(widths[column]!))
      .join('  ')
      .trimEnd(),
  );
}

/** Rows by source in alphabetical order, and within it by quantity and unit in order of first appearance. */
function groups(rows: readonly Row[]): Iterable<readonly Row[]> {
  const found = new Map<string, Row[]>();
  for (const row of [...rows].sort((a, b) => a.source.localeCompare(b.source))) {
    const key = [row.source, row.quantity, row.unit].join('\n');
    const group = found.get(key);
    if (group === undefined) found.set(key, [row]);
    else group.push(row);
  }
  return found.values();
}

/** The row that uses up most of its allowance stands for all. */
function folded(group: readonly Row[]): readonly string[] {
  const worst = group.reduce((a, b) => (strain(b) > strain(a) ? b : a));
  return cells(worst, `worst of ${group.length}: ${worst.case}`);
}

function strain(row: Row): number {
  const { verdict, deviation, limit } = judge(row);
  if (verdict === 'FAIL') return Number.isNaN(deviation) ? Number.POSITIVE_INFINITY : 1e9 + deviation;
  return limit === 0 ? deviation : deviation / limit;
}

function cells(row: Row, caseName: string): readonly string[] {
  const { verdict } = judge(row);
  const allowed = row.kind === 'rel' ? `${short(row.allowed * 100)} %` : `${short(row.allowed)} ${row.unit}`;
  return [
    row.source,
    caseName,
    row.quantity,
    referenceOf(row, short),
    `${oursOf(row, short)} ${row.unit}`.trim(),
    allowed.trim(),
    row.mark,
    row.own ? 'our own comparison' : (row.use ?? 'a run'),
    verdict,
  ];
}

function short(value: number): string {
  return Number.isFinite(value) ? Number(value.toPrecision(7)).toString() : String(value);
}
