// What sets versions apart: the inputs that are not the same in all of them, so that a comparison of figures can be
// read. Runs in, a table out.

import type { Habit } from '../design/design.ts';
import { contextOf, type Run } from '../findings/context.ts';
import { listed } from '../findings/wording.ts';
import type { Block } from './block.ts';
import { habitWords, inputsOf } from './inputs.ts';

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

/** That the people differ too, where they do; null where all versions have the same. */
export function habitsOf(runs: readonly Run[]): Block | null {
  const names = new Map<Habit, string[]>();
  for (const { design } of runs)
    names.set(design.vents.habit, [...(names.get(design.vents.habit) ?? []), `"${design.name}"`]);
  if (names.size < 2) return null;
  const who = [...names].map(([habit, of]) => `${habitWords(habit)} in ${listed(of)}`);
  return {
    kind: 'text',
    text: `The people differ too: ${who.join('; ')}. So part of the difference is theirs and not the houses'. To compare the houses alone, ask for runs with the same people in each.`,
  };
}

/** "Material" and "Place" say nothing away from their heading. */
function fullLabel(title: string, label: string): string {
  return label.includes(' ') ? label : `${title}, ${label.toLowerCase()}`;
}
