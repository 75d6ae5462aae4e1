// The one design a person works on, with undo and redo. One immutable value in one signal; a change replaces it.
// Changes of the same gesture (one drag, one field being typed in) make one step back, not fifty.

import { type ReadonlySignal, signal } from '@preact/signals';
import type { Design } from '../../design/design.ts';

const MOST_STEPS = 200;

export interface DesignHistory {
  readonly design: ReadonlySignal<Design>;
  /** the design before the last step, to show what changed */
  readonly before: ReadonlySignal<Design | null>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** @param gesture changes in a row with the same gesture count as one step; '' never merges */
  change(next: Design, gesture: string): void;
  /** Take back what the gesture under way has changed, as if it had not begun; nothing if another step came since. */
  cancel(gesture: string): void;
  undo(): void;
  redo(): void;
  /** the designs undo goes back to, the latest last */
  steps(most: number): readonly Design[];
}

/**
 * A history that starts with one design.
 *
 * @param earlier designs that undo goes back to, the latest last
 */
export function createDesignHistory(initial: Design, earlier: readonly Design[] = []): DesignHistory {
  const design = signal(initial);
  const before = signal<Design | null>(earlier.at(-1) ?? null);
  const canUndo = signal(earlier.length > 0);
  const canRedo = signal(false);
  const past: Design[] = [...earlier];
  const future: Design[] = [];
  let lastGesture = '';

  const settle = (next: Design) => {
    before.value = past.at(-1) ?? null;
    canUndo.value = past.length > 0;
    canRedo.value = future.length > 0;
    design.value = next;
  };

  return {
    design,
    before,
    canUndo,
    canRedo,
    change(next, gesture) {
      if (next === design.value) return;
      if (gesture === '' || gesture !== lastGesture) past.push(design.value);
      if (past.length > MOST_STEPS) past.shift();
      lastGesture = gesture;
      future.length = 0;
      settle(next);
    },
    cancel(gesture) {
      if (gesture === '' || gesture !== lastGesture) return;
      const start = past.pop();
      lastGesture = '';
      if (start !== undefined) settle(start);
    },
    undo() {
      const previous = past.pop();
      if (previous === undefined) return;
      future.push(design.value);
      lastGesture = '';
      settle(previous);
    },
    redo() {
      const next = future.pop();
      if (next === undefined) return;
      past.push(design.value);
      lastGesture = '';
      settle(next);
    },
    steps(most) {
      return past.slice(-most);
    },
  };
}
