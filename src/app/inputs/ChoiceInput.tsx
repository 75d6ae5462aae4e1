// A choice of the design: a menu with words. Changing what the glass is counted against keeps the glass itself.

import { useComputed } from '@preact/signals';
import type { GlassBasis } from '../../design/design.ts';
import { valueAt } from '../../design/design-path.ts';
import { rebasedGlass } from '../state/design-basis.ts';
import { useWorkspace } from '../state/session-context.ts';
import { ABSENT, choiceOf } from './choice-list.ts';
import { LabelledMenu } from './LabelledMenu.tsx';

export function ChoiceInput({ path }: { path: string }) {
  const workspace = useWorkspace();
  const { label, options } = choiceOf(path);
  const value = useComputed(() => valueAt(workspace.design.value, path)).value;
  const choose = (text: string) => {
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
    <LabelledMenu
      label={label}
      known={{ 'data-path': path }}
      value={String(value ?? ABSENT)}
      options={options.map((option) => [String(option.value), option.label])}
      choose={choose}
    />
  );
}
