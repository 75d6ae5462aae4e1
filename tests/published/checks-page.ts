// The checks by source: what the page "How far to trust it", the report and docs/checks.md are made from. Ledger rows
// in; counts, every row that is no plain pass, and the list of checks out. A quantity with many rows of one source is
// listed by the row that comes nearest to what was allowed.
import type { CheckLine, ListedChecks, SourceCount } from '../../src/report/trust.ts';
import { judge, oursOf, type Row, referenceOf } from './verdict.ts';

export interface Checks {
  readonly total: number;
  readonly sources: readonly SourceCount[];
  readonly listed: ListedChecks;
}

/** More rows of one quantity and source than this are listed by one. */
const MOST_LISTED = 8;

/** Parts of one source that the ledger enters under several names are told as one: the words before the comma. */
function familyOf(source: string): string {
  return source.split(',')[0]!;
}

/** The checks by source, in alphabetical order; comparisons of our own apart. */
export function checksOf(all: readonly Row[]): Checks {
  const rows = all.filter((row) => !row.own);
  const families = new Map<string, Row[]>();
  for (const row of rows)
    families.set(familyOf(row.source), [...(families.get(familyOf(row.source)) ?? []), row]);
  const sources = [...families]
    .sort(([one], [other]) => one.localeCompare(other))
    .map(([source, group]): SourceCount => {
      const count = (verdict: string) => group.filter((row) => judge(row).verdict === verdict).length;
      return {
        source,
        checks: group.length,
        pass: count('pass'),
        note: count('note'),
        fail: count('FAIL'),
        marks: marksOf(group).join(', '),
        use: group.every((row) => row.use === 'reference only') ? 'reference only' : 'a run',
      };
    });
  return {
    total: rows.length,
    sources,
    listed: {
      odd: rows
        .filter((row) => judge(row).verdict !== 'pass')
        .map((row) => ({ source: familyOf(row.source), line: lineOf(row, 1) })),
      sources: sources.map(({ source }) => ({ source, lines: linesOf(families.get(source)!) })),
      own: all
        .filter((row) => row.own)
        .map((row) => ({ source: familyOf(row.source), line: lineOf(row, 1) })),
    },
  };
}

function linesOf(rows: readonly Row[]): readonly CheckLine[] {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = `${row.source} ${row.quantity}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].flatMap((group) =>
    group.length <= MOST_LISTED
      ? group.map((row) => lineOf(row, 1))
      : [
          lineOf(
            group.reduce((worst, row) => (strain(row) > strain(worst) ? row : worst)),
            group.length,
          ),
        ],
  );
}

/** How much of what was allowed a row takes up; a miss goes before all. */
function strain(row: Row): number {
  const { verdict, deviation, limit } = judge(row);
  if (verdict !== 'pass') return Number.POSITIVE_INFINITY;
  return limit > 0 ? deviation / limit : 0;
}

function marksOf(rows: readonly Row[]): string[] {
  const counts = new Map<string, number>();
  for (const { mark } of rows) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1]).map(([mark]) => mark);
}

function lineOf(row: Row, of: number): CheckLine {
  // Sources are told by their family; the rest of the name goes to the case.
  const part = row.source.split(',').slice(1).join(',').trim();
  return [
    part === '' ? row.case : `${part}: ${row.case}`,
    row.quantity,
    referenceOf(row, short),
    `${oursOf(row, short)} ${row.unit}`.trim(),
    judge(row).verdict,
    of,
  ];
}

function short(value: number): string {
  return Number.isFinite(value) ? Number(value.toPrecision(4)).toString() : String(value);
}
