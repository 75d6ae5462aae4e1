// The desk of the house as it is, kept in the browser's IndexedDB: files as they were brought, where their columns hung, what
// was told of the days. It is there after a reload; nothing of it goes into a design, a link or off this computer.

import { createStore, get, set, type UseStore } from 'idb-keyval';
import type { BroughtFile, ToldDay } from './brought.ts';

export interface KeptDesk {
  readonly files: readonly Omit<BroughtFile, 'id' | 'taken'>[];
  readonly told: readonly (readonly [number, ToldDay])[];
}

const KEY = 'desk';
let store: UseStore | undefined;
const deskStore = () => {
  store ??= createStore('daystone-desk', 'found');
  return store;
};

/** What was kept; null where there is nothing, or the browser keeps nothing. */
export async function keptDesk(): Promise<KeptDesk | null> {
  try {
    return (await get<KeptDesk>(KEY, deskStore())) ?? null;
  } catch {
    return null;
  }
}

/** Keep it; false where the browser keeps nothing. */
export async function keepDesk(desk: KeptDesk): Promise<boolean> {
  try {
    await set(KEY, desk, deskStore());
    return true;
  } catch {
    return false;
  }
}
