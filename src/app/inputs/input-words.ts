// An input of a design in words: its name and its value as the panel says them. In: a path, a design, the units. Out: two
// texts.

import type { Design } from '../../design/design.ts';
import { valueAt } from '../../design/design-path.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { ABSENT, choiceOf } from './choice-list.ts';
import type { InputEntry } from './input-groups.ts';
import { numberRange } from './number-range.ts';

export function inputWords(
  { path, kind }: Pick<InputEntry, 'path' | 'kind'>,
  design: Design,
  system: UnitSystem,
): { readonly label: string; readonly value: string } {
  if (kind === 'number') {
    const { label, value, quantity, digits } = numberRange(path, design, system);
    return { label, value: quantityText(value, quantity, system, digits) };
  }
  const { label, options } = choiceOf(path);
  const value = valueAt(design, path) ?? ABSENT;
  return { label, value: options.find((option) => option.value === value)?.label ?? String(value) };
}
