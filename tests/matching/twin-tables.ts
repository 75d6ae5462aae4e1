// Draws of twins as a table, a line a case: misfits, intervals that held, errors of what was learnt, what was said.

import { UNKNOWN_WORDS } from '../../src/findings/found-words.ts';
import { TWIN_CASES } from './twin-cases.ts';
import type { TwinDraw } from './twin-draw.ts';
import { errorOf } from './twin-records.ts';

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
export const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
export const row = (cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;
export const table = (head: readonly string[], rows: readonly string[]) =>
  [row(head), row(head.map(() => '---')), ...rows, ''].join('\n');

/** Whether an interval holds its truth. */
export const isHeld = ({ low, high, truth }: { low: number; high: number; truth: number }) =>
  truth >= low && truth <= high;

/** A line for each case that has draws. */
export function casesTable(draws: readonly TwinDraw[]): string {
  const lines = Object.keys(TWIN_CASES).flatMap((name) => {
    const own = draws.filter((one) => one.name === name);
    return own.length === 0 ? [] : [caseRow(name, own)];
  });
  return table(
    [
      'case',
      'draws',
      'misfit fitted / unseen / as drawn / yesterday [K]',
      '90 % intervals that held',
      'heat loss: error, held',
      'draughts: error, held',
      'error where learnt (draws)',
      'said',
    ],
    lines,
  );
}

function caseRow(name: string, draws: readonly TwinDraw[]): string {
  const told = draws.flatMap(({ unknowns }) => unknowns);
  const misfits = [0, 1, 2, 3].map((i) => mean(draws.map(({ misfitsK }) => misfitsK[i]!)).toFixed(2));
  const lossOf = (part: 'heatLoss' | 'draughts') => {
    const losses = draws.flatMap((draw) => draw[part] ?? []);
    const error = rms(losses.map(({ value, truth }) => Math.log(value / truth)));
    return `${error.toFixed(2)}, ${losses.filter(isHeld).length} of ${losses.length}`;
  };
  const learnt = [...new Set(told.map(({ id }) => id))].flatMap((id) => {
    const errors = told
      .filter((one) => one.id === id && one.learnt)
      .map(({ value, truth }) => errorOf(id, value, truth));
    return errors.length === 0 ? [] : [`${UNKNOWN_WORDS[id]} ${rms(errors).toFixed(2)} (${errors.length})`];
  });
  const counts = new Map<string, number>();
  for (const said of draws.flatMap(saidOf)) counts.set(said, (counts.get(said) ?? 0) + 1);
  return row([
    name,
    draws.length,
    misfits.join(' / '),
    `${Math.round((100 * told.filter(isHeld).length) / told.length)} % of ${told.length}`,
    lossOf('heatLoss'),
    lossOf('draughts'),
    learnt.join(', '),
    [...counts].map(([said, count]) => `${said} ${count}`).join(', '),
  ]);
}

function saidOf({ verdict, clockOffH, patterns, habit }: TwinDraw): string[] {
  return [
    verdict,
    ...(habit === null ? [] : [`habit ${habit}`]),
    ...(clockOffH === 0 ? [] : [`clock ${clockOffH} h`]),
    ...patterns.slice(0, 1).map((one) => `pattern of ${one}`),
  ];
}
