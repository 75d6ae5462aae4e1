// What outlives a reload: the design on the sheet, the named versions, the units. Kept in the browser's local storage
// a moment after each change and once more when the page is left. A kept text that no longer reads is set aside
// under another key, never deleted, and the page says so.

import { effect } from '@preact/signals';
import type { Design } from '../../design/design.ts';
import type { UnitSystem } from '../units/display-unit.ts';
import { designFromData } from './design-text.ts';

/** The part of Storage that is used; a test brings its own. */
export type Store = Pick<Storage, 'getItem' | 'setItem'>;

export interface KeptVersion {
  readonly id: string;
  readonly name: string;
  readonly design: Design;
}

export interface Kept {
  readonly design: Design | null;
  readonly versions: readonly KeptVersion[];
  readonly units: UnitSystem | null;
  /** what could not be read back, one sentence each */
  readonly troubles: readonly string[];
}

const KEY = 'daystone.sheet';
const ASIDE = 'daystone.sheet.unread';
const DELAY_MS = 250;

/** Read back what was kept. */
export function readKept(store: Store): Kept {
  const nothing: Kept = { design: null, versions: [], units: null, troubles: [] };
  const text = quietly(() => store.getItem(KEY), null);
  if (text === null) return nothing;
  let data: { design?: unknown; versions?: unknown; units?: unknown };
  try {
    data = JSON.parse(text);
  } catch {
    quietly(() => store.setItem(ASIDE, text), undefined);
    return { ...nothing, troubles: ['What was kept in this browser could not be read; it is set aside.'] };
  }
  const troubles: string[] = [];
  const design = designFromData(data?.design);
  if (!design.ok) troubles.push(`The kept design could not be opened and is set aside. ${design.message}`);
  const versions: KeptVersion[] = [];
  for (const entry of Array.isArray(data?.versions) ? data.versions : []) {
    const read = designFromData(entry?.design);
    const name = typeof entry?.name === 'string' ? entry.name : 'unnamed';
    if (read.ok) versions.push({ id: String(entry.id), name, design: read.design });
    else troubles.push(`The kept version "${name}" could not be opened and is set aside.`);
  }
  if (troubles.length > 0) quietly(() => store.setItem(ASIDE, text), undefined);
  const units = data?.units === 'us' || data?.units === 'metric' ? data.units : null;
  return { design: design.ok ? design.design : null, versions, units, troubles };
}

/**
 * Keep the sheet from now on.
 *
 * @param current reads the signals to be kept
 * @param onFault told once when the browser refuses to keep anything
 * @returns writes at once, for when the page is left
 */
export function keepSheet(
  store: Store,
  current: () => {
    readonly design: Design;
    readonly versions: readonly KeptVersion[];
    readonly units: UnitSystem;
  },
  onFault: () => void,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let told = false;
  const write = () => {
    clearTimeout(timer);
    try {
      store.setItem(KEY, JSON.stringify(current()));
    } catch {
      if (!told) onFault();
      told = true;
    }
  };
  effect(() => {
    void current();
    clearTimeout(timer);
    timer = setTimeout(write, DELAY_MS);
  });
  return write;
}

function quietly<T>(attempt: () => T, otherwise: T): T {
  try {
    return attempt();
  } catch {
    return otherwise;
  }
}
