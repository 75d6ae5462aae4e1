// Numbers that are typed and not yet taken. Whatever takes the design away (a file opened, the page closed) takes them
// first, so that nothing typed is lost; whatever shows figures knows by them that a number is on its way.

import { type ReadonlySignal, signal } from '@preact/signals';

export interface DraftKeeper {
  /** how many wait */
  readonly waiting: ReadonlySignal<number>;
  /** Wait with a draft, to be taken by calling this; replaces what waited under the same owner. */
  hold(owner: object, take: () => void): void;
  /** Nothing waits there any more. */
  release(owner: object): void;
  takeAll(): void;
}

/** A keeper with nothing in it. */
export function createDraftKeeper(): DraftKeeper {
  const held = new Map<object, () => void>();
  const waiting = signal(0);
  const count = () => {
    waiting.value = held.size;
  };
  return {
    waiting,
    hold(owner, take) {
      held.set(owner, take);
      count();
    },
    release(owner) {
      if (held.delete(owner)) count();
    },
    takeAll() {
      for (const take of [...held.values()]) take();
    },
  };
}
