// Ties a text field to a draft of a number: what it shows, and what its keys do.

import { useEffect, useRef } from 'preact/hooks';
import { createNumberDraft, type DraftRules, type NumberDraft } from './number-draft.ts';
import { useWorkspace } from './session-context.ts';

export interface DraftField {
  readonly draft: NumberDraft;
  /** as typed; null where the value in force is to be shown */
  readonly text: string | null;
  /** the draft has rested, or was left, and cannot be taken */
  readonly refused: boolean;
  /** for the field itself */
  readonly on: {
    onFocus(): void;
    onInput(event: { readonly currentTarget: HTMLInputElement }): void;
    onBlur(): void;
    onKeyDown(event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void;
  };
}

/**
 * A field of its own draft.
 *
 * @param rules what is taken back by Escape is a step of the design's history, unless said
 * @param step what an arrow key does, by how many steps up, in which step of undo
 */
export function useNumberDraft<T>(
  name: string,
  rules: Pick<DraftRules<T>, 'read' | 'take'> & Partial<Pick<DraftRules<T>, 'cancel'>>,
  step?: (by: number, gesture: string) => void,
): DraftField {
  const workspace = useWorkspace();
  const latest = useRef(rules);
  latest.current = rules;
  const made = useRef<NumberDraft | null>(null);
  made.current ??= createNumberDraft<T>(name, workspace.drafts, () => ({
    read: (text) => latest.current.read(text),
    take: (value, gesture) => latest.current.take(value, gesture),
    cancel: (gesture) => (latest.current.cancel ?? workspace.history.cancel)(gesture),
  }));
  const draft = made.current;
  useEffect(() => () => draft.leave(), [draft]);
  const text = draft.text.value;
  return {
    draft,
    text,
    refused: draft.refused.value,
    on: {
      onFocus: () => draft.enter(),
      onInput: (event) => draft.type(event.currentTarget.value),
      onBlur: () => draft.leave(),
      onKeyDown(event) {
        const { key, currentTarget: field } = event;
        const by = step ? stepsOf(event) : 0;
        if (key === 'Enter') {
          if (draft.confirm()) selectAll(field);
        } else if (key === 'Escape') {
          draft.restore();
          selectAll(field);
        } else if (step && by !== 0 && (text === null || latest.current.read(text) !== null)) {
          if (text !== null) draft.confirm();
          step(by, draft.gesture());
          selectAll(field);
        } else return;
        event.preventDefault();
      },
    },
  };
}

/** Steps a key asks for: arrows one, Shift or Page ten, Alt a tenth. */
function stepsOf({ key, shiftKey, altKey, ctrlKey, metaKey }: KeyboardEvent): number {
  if (ctrlKey || metaKey) return 0;
  const up = key === 'ArrowUp' || key === 'PageUp';
  if (!up && key !== 'ArrowDown' && key !== 'PageDown') return 0;
  const size = shiftKey || key.startsWith('Page') ? 10 : altKey ? 0.1 : 1;
  return up ? size : -size;
}

/** Once the new number stands in the field. */
function selectAll(field: HTMLInputElement): void {
  requestAnimationFrame(() => {
    if (document.activeElement === field) field.select();
  });
}
