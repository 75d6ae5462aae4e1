// A mark by which a tab finds its own sheet among those of other tabs after a reload. It lives in the session store,
// which is a tab's own; a tab that was doubled carries its parent's mark until it takes a new one.

import type { Store } from './browser-store.ts';

const KEY = 'daystone.tab';

export interface TabMark {
  /** this tab's mark */
  readonly mark: string;
  /** the tab had it before this load */
  readonly isKnown: boolean;
  /** Take another mark, when a second tab turns out to have this one. */
  renew(): TabMark;
}

/** The mark of this tab. */
export function tabMark(session: Store): TabMark {
  const known = session.getItem(KEY);
  return known === null ? fresh(session) : { mark: known, isKnown: true, renew: () => fresh(session) };
}

function fresh(session: Store): TabMark {
  const mark = randomName();
  try {
    session.setItem(KEY, mark);
  } catch {
    // Without a session store the mark holds until the reload, and the sheet last written is opened then.
  }
  return { mark, isKnown: false, renew: () => fresh(session) };
}

/** A name nothing else has, for practical purposes. */
export function randomName(): string {
  return Math.random().toString(36).slice(2, 12);
}
