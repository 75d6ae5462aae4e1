// Ctrl-Z and its like, outside of fields with text under way, where the browser's own undo belongs to the text.

import type { DesignHistory } from '../state/design-history.ts';

export function listenForUndo(target: Window, history: DesignHistory): void {
  target.addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const field = event.target as HTMLElement | null;
    if (field instanceof HTMLInputElement && field.type === 'text') {
      // A number field at rest holds the design's number, not a text of its own.
      if (field.dataset.path === undefined || field.dataset.draft !== undefined) return;
    }
    const key = event.key.toLowerCase();
    const redo = key === 'y' || (key === 'z' && event.shiftKey);
    if (key !== 'z' && !redo) return;
    event.preventDefault();
    if (redo) history.redo();
    else history.undo();
  });
}
