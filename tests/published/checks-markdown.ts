// docs/checks.md, made from the same files as the page "How far to trust it", so that the two cannot drift apart.
import {
  type ChecksBySource,
  checksInShort,
  type ErrorTable,
  type ListedChecks,
  NOT_MODELLED,
  OWN_SAYS,
  type SourceCount,
} from '../../src/report/trust.ts';

const line = (...cells: readonly (string | number)[]) =>
  `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`;
const head = (...cells: readonly string[]) => [line(...cells), line(...cells.map(() => '---'))];

/** The page. */
export function checksMarkdown(checks: ChecksBySource, listed: ListedChecks, errors: ErrorTable): string {
  const { total, sources } = checks;
  const sum = (of: (row: SourceCount) => number) => sources.reduce((all, row) => all + of(row), 0);
  return [
    '# What was checked against what',
    '',
    'Made by `npm run published -- --write`; `npm run published` prints every row itself, with reference, ours and what was allowed. A note is a figure outside a range that was recalled from memory, by less than the margin such a range is worth, or one that is known to miss a measured house, by no more than its row says. Where ours is a span, what nobody noted of a measured house was run at both ends of what it may be, and it passes where the span and what was measured, with what is allowed, overlap. Marks: document = printed in the source; memory = recalled from a standard that was not open; computed = worked independently from the published formula, by hand or with a library; practice = common practice, no source. Used by a run: the code that was checked is code a run goes through; reference only: no run does.',
    '',
    checksInShort(checks),
    '',
    ...head('source', 'checks', 'pass', 'note', 'fail', 'numbers from', 'used by'),
    ...sources.map((row) => line(row.source, row.checks, row.pass, row.note, row.fail, row.marks, row.use)),
    line(
      'all',
      total,
      sum((row) => row.pass),
      sum((row) => row.note),
      sum((row) => row.fail),
      '',
      '',
    ),
    '',
    '## Notes and failures',
    '',
    ...(listed.odd.length === 0
      ? ['None.']
      : [
          ...head('source', 'case', 'quantity', 'reference', 'ours', 'verdict'),
          ...listed.odd.map(({ source, line: [which, quantity, reference, ours, verdict] }) =>
            line(source, which, quantity, reference, ours, verdict),
          ),
        ]),
    '',
    '## Our own code against itself',
    '',
    OWN_SAYS,
    '',
    ...head('what', 'case', 'quantity', 'one way', 'the other', 'verdict'),
    ...listed.own.map(({ source, line: [which, quantity, reference, ours, verdict] }) =>
      line(source, which, quantity, reference, ours, verdict),
    ),
    '',
    '## What is not in the model',
    '',
    ...NOT_MODELLED.map((what) => `- ${what}`),
    '',
    '## What an error does to the answer',
    '',
    errors.says,
    '',
    ...errors.houses.flatMap(({ name, rows }) => [
      `### ${name}`,
      '',
      ...head('if', ...errors.figures),
      ...rows.map(({ what, values }) => line(what, ...values)),
      '',
    ]),
    '## Check by check',
    '',
    'Where a source has many rows of one quantity, the row that comes nearest to what was allowed stands for all; the last column says for how many.',
    '',
    ...listed.sources.flatMap(({ source, lines }) => [
      `### ${source}`,
      '',
      ...head('case', 'quantity', 'reference', 'ours', 'verdict', 'rows'),
      ...lines.map((cells) => line(...cells)),
      '',
    ]),
  ].join('\n');
}
