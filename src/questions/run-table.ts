// Tables whose rows are runs: a label and chosen figures of each. Used by questions that compare a few designs.

import { FIGURE_NAMES, type FigureKey } from './figures.ts';
import type { Column, Run, Runs, Table } from './question.ts';

/** Columns of figures, with their units. */
function figureColumns(keys: readonly FigureKey[]): Column[] {
  return keys.map((key) => FIGURE_NAMES[key]);
}

/** A table with one row a run, in the order of the plan. */
export function runTable(
  id: string,
  title: string,
  first: string,
  keys: readonly FigureKey[],
  runs: readonly Run[],
): Table {
  return {
    id,
    title,
    columns: [{ label: first, unit: '', digits: 0 }, ...figureColumns(keys)],
    rowRuns: runs.map(({ job }) => job.id),
    rows: runs.map(({ job, figures }) => [job.label, ...keys.map((key) => figures[key])]),
  };
}

/** The same with the row marked that the closing sentence advises; null before there is one. */
export function advisedTable(advised: string | null, ...table: Parameters<typeof runTable>): Table {
  return { ...runTable(...table), ...(advised !== null && { advised }) };
}

/** Whether the closing sentence advises what a row tells of. */
export function isAdvised({ advised, rowRuns }: Table, row: number): boolean {
  return advised !== undefined && rowRuns?.[row] === advised;
}

/** The run at a place of the plan; throws when it is not in, which only a bug can cause. */
export function runAt(runs: Runs, id: string): Run {
  const run = runs.get(id);
  if (run === undefined) throw new RangeError(`run '${id}' is not in; allowed: one that was planned`);
  return run;
}
