// Keeps half-typed monthly normals in the browser, so that a reload loses none of sixty numbers. What does not read is
// taken for nothing kept.

import { UNIT_SYSTEMS } from '../parts/display-unit.ts';
import { emptyDraft, type NormalsDraft } from './normals-draft.ts';

type Store = Pick<Storage, 'getItem' | 'setItem'>;

const KEY = 'daystone.normals';

export function keepDraft(store: Store, draft: NormalsDraft): void {
  try {
    store.setItem(KEY, JSON.stringify(draft));
  } catch {
    // A browser that keeps nothing says so elsewhere, for the design.
  }
}

/** The draft kept before, or null. */
export function keptDraft(store: Store): NormalsDraft | null {
  try {
    const data = JSON.parse(store.getItem(KEY) ?? 'null') as NormalsDraft | null;
    const empty = emptyDraft('metric');
    const texts = (value: unknown, count: number) =>
      Array.isArray(value) && value.length === count && value.every((text) => typeof text === 'string');
    const isSound =
      data !== null &&
      UNIT_SYSTEMS.includes(data.system) &&
      (data.sunAs === 'sunshineHours' || data.sunAs === 'dailyGlobalKWh') &&
      (data.from === undefined ||
        (typeof data.from?.source === 'string' &&
          typeof data.from.credit === 'string' &&
          Array.isArray(data.from.notes) &&
          data.from.notes.every((note) => typeof note === 'string'))) &&
      Object.keys(empty.cells).every((key) => texts(data.cells[key as keyof typeof data.cells], 12)) &&
      Object.keys(empty.site).every((key) => typeof data.site[key as keyof typeof data.site] === 'string');
    return isSound ? data : null;
  } catch {
    return null;
  }
}
