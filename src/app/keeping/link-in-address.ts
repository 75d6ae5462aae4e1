// A link that is handed out: on the clipboard, or in the address bar for as long as it is the link of what is on the sheet.
// After a change the address would bring back what was there before.

import { effect, type ReadonlySignal } from '@preact/signals';
import type { Design } from '../../design/design.ts';

/**
 * Put a link into the address; it leaves it with the first change of the design.
 *
 * @param address a link of this page
 * @param design on the sheet, of which it is the link
 */
export function putInAddress(address: string, design: ReadonlySignal<Design>): void {
  history.replaceState(null, '', address);
  const { hash } = location;
  const linked = design.peek();
  const stop = effect(() => {
    if (design.value === linked) return;
    stop();
    if (location.hash === hash) history.replaceState(null, '', location.pathname + location.search);
  });
}

/** Copy a link; whether the browser let it. */
export async function copyLink(address: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(address);
    return true;
  } catch {
    // Refused, or, on a page that is not served safely, no clipboard at all.
    return false;
  }
}
