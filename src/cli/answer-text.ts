// An answer as text for a terminal: the finding first, then its tables and curves, then what was held fixed.

import { FIGURE_NAMES } from '../questions/figures.ts';
import type { Answer, Chart, Table } from '../questions/question.ts';
import { isAdvised } from '../questions/run-table.ts';
import { wrap } from './outcome-table.ts';
import { type Cell, textTable } from './text-table.ts';

/** The text `ask` prints. */
export function answerText(answer: Answer): string {
  const blocks = [
    answer.title,
    ...(answer.finding === null ? [] : [wrap(answer.finding.text).join('\n')]),
    ...(answer.sure === null ? [] : [wrap(answer.sure.text).join('\n')]),
    ...answer.tables.map(tableText),
    ...(answer.tables.length === 0 ? answer.charts.map(curveText) : []),
    ...answer.charts.filter(({ marks }) => marks.length > 0).map(marksText),
    ...(answer.proposal === null ? [] : [wrap(answer.proposal.text).join('\n')]),
    ...answer.notes.map((note) => wrap(note).join('\n')),
    `${answer.runs.length} runs; limit: ${answer.criterion.name} (${answer.criterion.source}).`,
  ];
  return blocks.join('\n\n');
}

function tableText(table: Table): string {
  const { title, columns, rows, rowDigits } = table;
  const head = columns.map(({ label, unit }) => (unit === '' ? label : `${label} ${unit}`));
  const printed = rows.map((row, r) =>
    row.map((cell, column): Cell => {
      const text =
        typeof cell === 'number' ? cell.toFixed(rowDigits?.[r] ?? columns[column]!.digits) : (cell ?? '–');
      return column === 0 && isAdvised(table, r) ? `${text} (advised)` : text;
    }),
  );
  return `${title}\n${textTable([head, ...printed])}`;
}

/** A curve a block: x, then its figures. For answers whose tables do not hold the same runs already. */
function curveText({ title, x, y, curves }: Chart): string {
  const head = [`${x.label}${x.unit === '' ? '' : ` ${x.unit}`}`, ...y.map((key) => FIGURE_NAMES[key].label)];
  const blocks = curves.map(({ label, points }) => {
    const rows = points.map((point) => [
      point.x.toFixed(2),
      ...y.map((key) => point.figures[key]?.toFixed(FIGURE_NAMES[key].digits) ?? '–'),
    ]);
    return `${label}\n${textTable([head, ...rows])}`;
  });
  return [title, ...blocks].join('\n');
}

/** What the marks on a chart stand for. */
function marksText({ x, marks }: Chart): string {
  const rows = marks.map((mark): Cell[] => [mark.x.toFixed(1), mark.label, mark.source]);
  return textTable([[`${x.label}${x.unit === '' ? '' : ` ${x.unit}`}`, 'mark', 'source'], ...rows]);
}
