// Weather files of the person's own, kept in the browser's IndexedDB so that they are there after a reload and with
// no network. A design names one by the key 'own:', the id of its year and a mark of its hours, so that two files of one
// name do not take each other's place.

import { createStore, entries, get, set, type UseStore } from 'idb-keyval';
import { actualYearOf } from '../../weather/actual-year.ts';
import type { Site, TypicalYear } from '../../weather/typical-year.ts';

const OWN_PREFIX = 'own:';

let store: UseStore | undefined;
const ownStore = () => {
  store ??= createStore('daystone', 'climates');
  return store;
};

export function isOwnClimate(key: string): boolean {
  return key.startsWith(OWN_PREFIX);
}

/** Key of a year that came from a file; the same hours give the same key. design.climate holds 120 characters. */
export function ownKey(year: TypicalYear): string {
  return `${OWN_PREFIX}${year.id.slice(0, 100)}-${markOf(year)}`;
}

/** FNV-1a (32 bit) over the columns a year is told by: tells files apart, guards against nothing. */
function markOf({ dryBulbC, dewPointC, windSpeed, globalHorizontal, beamNormal }: TypicalYear): string {
  let hash = 0x811c9dc5;
  for (const column of [dryBulbC, dewPointC, windSpeed, globalHorizontal, beamNormal]) {
    for (const byte of new Uint8Array(column.buffer, column.byteOffset, column.byteLength)) {
      hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
    }
  }
  return hash.toString(36);
}

export async function keepOwnClimate(key: string, year: TypicalYear): Promise<void> {
  await set(key, year, ownStore());
}

export interface KeptClimate {
  readonly key: string;
  readonly site: Site;
  /** the calendar year it is of; null for a typical or a made one */
  readonly actualYear: number | null;
}

/** The files kept here, by key; none where the browser keeps nothing. */
export async function keptClimates(): Promise<readonly KeptClimate[]> {
  const kept = await entries<string, TypicalYear>(ownStore()).catch(() => []);
  return kept.map(([key, year]) => ({ key, site: year.site, actualYear: actualYearOf(year) }));
}

/** Rejects with a sentence for the person when it is not here. */
export async function ownClimate(key: string): Promise<TypicalYear> {
  let found: TypicalYear | undefined;
  try {
    found = await get<TypicalYear>(key, ownStore());
  } catch {
    // No IndexedDB, or it is denied: as if the file had never been kept.
  }
  if (found) return found;
  throw new Error(
    `The design stands in a weather file of its own (${key.slice(OWN_PREFIX.length)}) that this browser does not have. Drop that file on the page, or choose a place.`,
  );
}
