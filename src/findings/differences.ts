// What sets versions apart: the inputs that are not the same in all of them, so that a comparison of figures can be
// read. Runs in, a table out.

import { contextOf, type Run } from './context.ts';
import { inputsOf } from './inputs.ts';
import type { Block } from './report.ts';

const NOT_THERE = '–';

/**
 * Rows that differ, in the order of the inputs.
 *
 * @param runs two or more, in the same units
 */
export function differencesOf(runs: readonly Run[]): Block {
  const contexts = runs.map(contextOf);
  const inputs = contexts.map(
    ({ design, words }) =>
      new Map(
        inputsOf(design, words).flatMap(({ title, rows }) =>
          rows.map(
            ([label, value]) => [`${title}: ${label}`, { label: fullLabel(title, label), value }] as const,
          ),
        ),
      ),
  );
  const keys = [...new Set(inputs.flatMap((map) => [...map.keys()]))];
  const rows = keys
    .map((key) => [
      inputs.find((map) => map.has(key))!.get(key)!.label,
      ...inputs.map((map) => map.get(key)?.value ?? NOT_THERE),
    ])
    .filter(([, ...values]) => values.some((value) => value !== values[0]));
  return { kind: 'table', head: ['What differs', ...contexts.map(({ design }) => design.name)], rows };
}

/** "Material" and "Place" say nothing away from their heading. */
function fullLabel(title: string, label: string): string {
  return label.includes(' ') ? label : `${title}, ${label.toLowerCase()}`;
}
