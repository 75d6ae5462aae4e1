// Keeps a copy of the site in the browser, so that it opens with no network. A newer site waits until the person
// agrees; the sheet is saved before the page reloads. Lists of places that only an older site knew are dropped.

import { registerSW } from 'virtual:pwa-register';

/** Where lists are kept once fetched; named in vite.config.ts too. */
const LISTS = 'places';

/**
 * Start keeping the copy.
 *
 * @param lists where this page's lists of places lie
 * @param onNewer a newer site is ready; call what is handed over to change to it
 */
export function keepOfflineCopy(lists: readonly string[], onNewer: (change: () => void) => void): void {
  const update = registerSW({ onNeedRefresh: () => onNewer(() => void update(true)) });
  // a browser that refuses its caches keeps no lists either
  dropOthers(lists).catch(() => {});
}

/** What lies beside these lists and is none of them goes; another site of the same origin, in another folder, keeps its own. */
async function dropOthers(lists: readonly string[]): Promise<void> {
  // a page that is not served safely has no caches
  if (!('caches' in globalThis)) return;
  const current = new Set(lists.map((address) => new URL(address, location.href).href));
  const folders = new Set([...current].map(folderOf));
  const kept = await caches.open(LISTS);
  for (const request of await kept.keys()) {
    if (folders.has(folderOf(request.url)) && !current.has(request.url)) await kept.delete(request);
  }
}

const folderOf = (address: string) => new URL('.', address).href;
