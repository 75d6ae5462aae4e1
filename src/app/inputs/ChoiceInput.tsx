// A choice of the design: a menu with words. Changing what the glass is counted against keeps the glass itself.

import { useComputed } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { GlassBasis } from '../../design/design.ts';
import { rebasedGlass } from '../state/design-basis.ts';
import { valueAt } from '../state/design-path.ts';
import { useWorkspace } from '../state/session-context.ts';
import { ABSENT, choiceOf } from './choice-list.ts';

export function ChoiceInput({ path }: { path: string }) {
  const workspace = useWorkspace();
  const { label, options } = choiceOf(path);
  const id = useId();
  const value = useComputed(() => valueAt(workspace.design.value, path)).value;
  const onChange = (text: string) => {
    const chosen = options.find((option) => String(option.value) === text);
    if (!chosen) return;
    if (path === 'glass.basis') {
      const { design, notes } = rebasedGlass(
        workspace.design.value,
        chosen.value as GlassBasis,
        workspace.fitNotes.value,
      );
      workspace.replace(design, notes);
    } else workspace.set(path, chosen.value === ABSENT ? undefined : chosen.value, '');
  };
  return (
    <div class="input input-choice">
      <label class="input-label" for={id}>
        {label}
      </label>
      <select
        id={id}
        data-path={path}
        value={String(value ?? ABSENT)}
        onChange={(event) => onChange(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option key={String(option.value)} value={String(option.value)}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
