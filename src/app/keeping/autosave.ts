// What outlives a reload: the design on the sheet with the steps before it, the named versions, the units. Kept in the
// browser's local storage a moment after each change and once more when the page is left. A kept text that no longer
// reads is set aside under another key, never deleted, and the page says so. Tabs share the versions; each keeps a
// sheet of its own, and the sheet of a tab that is gone becomes a version.

import { effect } from '@preact/signals';
import type { Design } from '../../design/design.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import type { Store } from './browser-store.ts';
import { type KeptVersion, recordOf, type TabSheet } from './kept-record.ts';
import { mergedVersions } from './merged-versions.ts';
import { randomName, type TabMark } from './tab-mark.ts';

export interface Kept {
  readonly design: Design | null;
  /** designs before it, the latest last */
  readonly earlier: readonly Design[];
  readonly versions: readonly KeptVersion[];
  readonly units: UnitSystem | null;
  /** what could not be read back, one sentence each */
  readonly troubles: readonly string[];
  /** names of the versions that sheets of other tabs became */
  readonly fromOtherTabs: readonly string[];
  /** false when writing would destroy what could neither be read nor set aside */
  readonly mayWrite: boolean;
}

/** The sheet as it is now; reads the signals to be kept. */
export interface Sheet {
  readonly design: Design;
  readonly earlier: readonly Design[];
  readonly versions: readonly KeptVersion[];
  readonly units: UnitSystem;
}

export const SHEET_KEY = 'daystone.sheet';
const ASIDE = 'daystone.sheet.unread';
const MOST_ASIDE = 20;
const DELAY_MS = 250;

/**
 * Read back what was kept.
 *
 * @param tab a tab that knows its mark finds its own sheet; a new one takes the sheet written last
 */
export function readKept(store: Store, tab: Pick<TabMark, 'mark' | 'isKnown'>): Kept {
  const text = quietly(() => store.getItem(SHEET_KEY), null);
  if (text === null) {
    const nothing = { earlier: [], versions: [], troubles: [], fromOtherTabs: [] };
    return { ...nothing, design: null, units: null, mayWrite: true };
  }
  const record = recordOf(text);
  const troubles = [...record.troubles];
  const mayWrite = troubles.length === 0 || setAside(store, text);
  if (!mayWrite) {
    troubles.push(
      'There is no room to set it aside, so this visit is not kept over it. Save your design as a file.',
    );
  }
  const own = tab.isKnown ? record.others.findLast((sheet) => sheet.tab === tab.mark) : undefined;
  const design = own?.design ?? record.design;
  const versions = [...record.versions];
  const fromOtherTabs: string[] = [];
  if (!tab.isKnown) {
    for (const { design: left } of record.others) {
      const held = [design, ...record.earlier, ...versions.map((version) => version.design)];
      if (held.some((one) => same(one, left))) continue;
      const highest = versions.reduce((most, { id }) => Math.max(most, Number(id) || 0), 0);
      const name = `${left.name}, from another tab`;
      versions.push({ id: String(highest + 1), name, design: left });
      fromOtherTabs.push(name);
    }
  }
  const earlier = own?.earlier ?? record.earlier;
  return { design, earlier, versions, units: record.units, troubles, fromOtherTabs, mayWrite };
}

export interface KeepOptions {
  readonly store: Store;
  readonly tab: TabMark;
  readonly current: () => Sheet;
  /** another tab changed the versions: the list of both */
  readonly take: (versions: readonly KeptVersion[]) => void;
  /** told when the browser refuses to keep anything, once until it keeps again */
  readonly onFault: () => void;
}

export interface Keeper {
  /** Write at once, for when the page is left. */
  writeNow(): void;
  /** Another tab wrote. */
  heed(): void;
}

/** Keep the sheet from now on. */
export function keepSheet({ store, tab, current, take, onFault }: KeepOptions): Keeper {
  let { mark, renew } = tab;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let told = false;
  let lastText = quietly(() => store.getItem(SHEET_KEY), null);
  const before = lastText === null ? null : recordOf(lastText);
  let stamp = before?.stamp ?? '';
  let agreed = before?.versions ?? [];
  let synced: string | null = null;

  /** Take in what another tab wrote since we last looked; the sheets of all other tabs. */
  const others = (): readonly TabSheet[] => {
    const text = quietly(() => store.getItem(SHEET_KEY), null);
    if (text === null) return [];
    const record = recordOf(text);
    if (text !== lastText) {
      if (record.tab === mark && record.stamp !== stamp) ({ mark, renew } = renew());
      const ours = current().versions;
      const merged = mergedVersions(agreed, ours, record.versions);
      agreed = record.versions;
      lastText = text;
      if (JSON.stringify(merged) !== JSON.stringify(ours)) take(merged);
    }
    const { tab: whose, design, earlier } = record;
    const sheets = design ? [...record.others, { tab: whose, design, earlier }] : record.others;
    return sheets.filter(
      ({ tab }, i) => tab !== mark && sheets.findLastIndex((sheet) => sheet.tab === tab) === i,
    );
  };
  /** A tab that wrote last did not know of this one's sheet; put it among the others, without going before theirs. */
  const deposit = () => {
    const text = quietly(() => store.getItem(SHEET_KEY), null);
    if (text === null) return;
    const record = recordOf(text);
    if (record.troubles.length > 0) return;
    if (record.tab === mark || record.others.some((sheet) => sheet.tab === mark)) return;
    const { design, earlier } = current();
    const others = [...record.others, { tab: mark, design, earlier }];
    lastText = JSON.stringify({ ...JSON.parse(text), others });
    store.setItem(SHEET_KEY, lastText);
  };
  const writeNow = () => {
    clearTimeout(timer);
    if (JSON.stringify(current()) === synced) return quietly(deposit, undefined);
    try {
      const left = others();
      const sheet = current();
      const nextStamp = randomName();
      const kept = {
        ...sheet,
        tab: mark,
        stamp: nextStamp,
        others: left.filter(({ design }) => !same(design, sheet.design)),
      };
      const text = JSON.stringify(kept);
      store.setItem(SHEET_KEY, text);
      lastText = text;
      stamp = nextStamp;
      agreed = sheet.versions;
      synced = JSON.stringify(sheet);
      told = false;
    } catch {
      if (!told) onFault();
      told = true;
    }
  };
  effect(() => {
    void current();
    clearTimeout(timer);
    timer = setTimeout(writeNow, DELAY_MS);
  });
  return {
    writeNow,
    heed() {
      const isSynced = JSON.stringify(current()) === synced;
      others();
      // What came from the other tab is kept already; writing it again would make this tab the last one at work.
      if (isSynced) synced = JSON.stringify(current());
      quietly(deposit, undefined);
    },
  };
}

/** Keep an unread text under a key of its own; false when there is no room. */
function setAside(store: Store, text: string): boolean {
  for (let n = 1; n <= MOST_ASIDE; n++) {
    const key = n === 1 ? ASIDE : `${ASIDE}.${n}`;
    const there = quietly(() => store.getItem(key), null);
    if (there === text) return true;
    if (there !== null) continue;
    return quietly(() => {
      store.setItem(key, text);
      return true;
    }, false);
  }
  return false;
}

function same(one: Design | null, other: Design): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function quietly<T>(attempt: () => T, otherwise: T): T {
  try {
    return attempt();
  } catch {
    return otherwise;
  }
}
