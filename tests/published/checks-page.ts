// The checks in short, by source: what the trust page of the report and docs/checks.md are made from. Ledger rows
// in; a row a source, and every row that is no plain pass, out.
import { judge, type Row } from './verdict.ts';

export interface SourceChecks {
  readonly source: string;
  readonly checks: number;
  readonly pass: number;
  readonly note: number;
  readonly fail: number;
  /** where the numbers come from, most common first */
  readonly marks: string;
}

export interface OddCheck {
  readonly source: string;
  readonly case: string;
  readonly quantity: string;
  readonly reference: string;
  readonly ours: string;
  readonly verdict: string;
}

export interface Checks {
  readonly total: number;
  readonly sources: readonly SourceChecks[];
  /** notes and failures, one by one */
  readonly odd: readonly OddCheck[];
}

/** Parts of one source that the ledger enters under several names are told as one: the words before the comma. */
function familyOf(source: string): string {
  return source.split(',')[0]!;
}

/** The checks by source, in alphabetical order. */
export function checksOf(rows: readonly Row[]): Checks {
  const families = new Map<string, Row[]>();
  for (const row of rows)
    families.set(familyOf(row.source), [...(families.get(familyOf(row.source)) ?? []), row]);
  const sources = [...families]
    .sort(([one], [other]) => one.localeCompare(other))
    .map(([source, group]) => {
      const count = (verdict: string) => group.filter((row) => judge(row).verdict === verdict).length;
      return {
        source,
        checks: group.length,
        pass: count('pass'),
        note: count('note'),
        fail: count('FAIL'),
        marks: marksOf(group).join(', '),
      };
    });
  const odd = rows.filter((row) => judge(row).verdict !== 'pass').map(oddOf);
  return { total: rows.length, sources, odd };
}

function marksOf(rows: readonly Row[]): string[] {
  const counts = new Map<string, number>();
  for (const { mark } of rows) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1]).map(([mark]) => mark);
}

function oddOf(row: Row): OddCheck {
  const reference =
    row.kind === 'range' ? `${short(row.referenceMin)} to ${short(row.referenceMax)}` : short(row.reference);
  return {
    source: row.source,
    case: row.case,
    quantity: row.quantity,
    reference: `${reference} ${row.unit}`.trim(),
    ours: `${short(row.ours)} ${row.unit}`.trim(),
    verdict: judge(row).verdict,
  };
}

function short(value: number): string {
  return Number.isFinite(value) ? Number(value.toPrecision(4)).toString() : String(value);
}

/** docs/checks.md. */
export function checksMarkdown({ total, sources, odd }: Checks): string {
  const line = (...cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;
  const sum = (of: (row: SourceChecks) => number) => sources.reduce((all, row) => all + of(row), 0);
  return [
    '# What was checked against what',
    '',
    'Made by `npm run published -- --write`; `npm run published` prints the rows themselves, with reference, ours and what was allowed. A note is a figure outside a range that was recalled from memory, by less than the margin such a range is worth. Marks: document = read in the source or a table that cites its method; memory = recalled from a standard that was not open; computed = worked independently from the published formula; practice = common practice, no source.',
    '',
    line('source', 'checks', 'pass', 'note', 'fail', 'numbers from'),
    line('---', '---', '---', '---', '---', '---'),
    ...sources.map((row) => line(row.source, row.checks, row.pass, row.note, row.fail, row.marks)),
    line(
      'all',
      total,
      sum((row) => row.pass),
      sum((row) => row.note),
      sum((row) => row.fail),
      '',
    ),
    '',
    '## Notes and failures',
    '',
    ...(odd.length === 0
      ? ['None.']
      : [
          line('source', 'case', 'quantity', 'reference', 'ours', 'verdict'),
          line('---', '---', '---', '---', '---', '---'),
          ...odd.map((row) => line(row.source, row.case, row.quantity, row.reference, row.ours, row.verdict)),
        ]),
    '',
  ].join('\n');
}
