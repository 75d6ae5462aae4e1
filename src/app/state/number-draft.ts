// The text of a number field while it is edited. Nothing is applied while it is half typed: a sound draft is taken on
// Enter, on leaving, or after a rest; Escape brings back what stood there; a draft that cannot be taken stays, with what
// is wrong beside it, until it is mended or given up.

import { type ReadonlySignal, signal } from '@preact/signals';
import type { DraftKeeper } from './draft-keeper.ts';

/** Longer than the pause between two keys, short enough to feel live [ms]. */
export const REST_MS = 700;

export interface DraftRules<T> {
  /** The value a text stands for; null when it cannot be taken. */
  read(text: string): T | null;
  /** the same gesture is one step of undo */
  take(value: T, gesture: string): void;
  /** Take back what the gesture has done. */
  cancel(gesture: string): void;
}

export interface NumberDraft {
  /** as typed; null at rest */
  readonly text: ReadonlySignal<string | null>;
  /** the text has rested or the field was left, and it cannot be taken */
  readonly refused: ReadonlySignal<boolean>;
  /** The field is entered: what is done from here on is one step of undo. */
  enter(): void;
  type(text: string): void;
  /** Enter was pressed: take the draft now; false if it cannot be taken. */
  confirm(): boolean;
  /** The field is left: a sound draft is taken, an empty one given up, another stays. */
  leave(): void;
  /** Escape: what stood at entering, or at the last Enter, stands again. */
  restore(): void;
  /** Give up a draft that cannot be taken. */
  giveUp(): void;
  /** It is sound and waits to be taken. */
  readonly waits: ReadonlySignal<boolean>;
  /** Name of the step of undo that goes on. */
  gesture(): string;
}

let entered = 0;

/**
 * A draft at rest.
 *
 * @param rules asked anew each time, since limits follow the design
 */
export function createNumberDraft<T>(
  name: string,
  keeper: DraftKeeper,
  rules: () => DraftRules<T>,
): NumberDraft {
  const text = signal<string | null>(null);
  const refused = signal(false);
  const owner = {};
  let step = `field ${name} ${++entered}`;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const waits = signal(false);

  const read = () => (text.value === null ? null : rules().read(text.value));
  const stopWaiting = () => {
    clearTimeout(timer);
    waits.value = false;
    keeper.release(owner);
  };
  /** Take what waits; the text stays as typed. */
  const take = () => {
    const value = read();
    refused.value = text.value !== null && value === null;
    const had = waits.value;
    stopWaiting();
    if (had && value !== null) rules().take(value, step);
  };
  const toRest = () => {
    stopWaiting();
    text.value = null;
    refused.value = false;
  };
  const nextStep = () => {
    step = `field ${name} ${++entered}`;
  };

  return {
    text,
    refused,
    waits,
    enter: nextStep,
    type(typed) {
      text.value = typed;
      refused.value = false;
      clearTimeout(timer);
      timer = setTimeout(take, REST_MS);
      waits.value = read() !== null;
      if (waits.value) keeper.hold(owner, take);
      else keeper.release(owner);
    },
    confirm() {
      take();
      if (refused.value) return false;
      toRest();
      nextStep();
      return true;
    },
    leave() {
      take();
      if (!refused.value || text.value?.trim() === '') toRest();
    },
    restore() {
      toRest();
      rules().cancel(step);
      nextStep();
    },
    giveUp() {
      if (text.value !== null && !waits.value && read() === null) toRest();
    },
    gesture: () => step,
  };
}
