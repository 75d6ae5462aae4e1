// Keeps a copy of the site in the browser, so that it opens with no network. A newer site waits until the person
// agrees; the sheet is saved before the page reloads.

import { registerSW } from 'virtual:pwa-register';

/**
 * Start keeping the copy.
 *
 * @param onNewer a newer site is ready; call what is handed over to change to it
 */
export function keepOfflineCopy(onNewer: (change: () => void) => void): void {
  const update = registerSW({ onNeedRefresh: () => onNewer(() => void update(true)) });
}
