// The person's own prices, kept in the browser for every house: they are the person's and no house's, so no file of a
// design holds them, and no link unless it is asked to. Several tabs share one list: each change is made to the list as it is kept, not to this tab's copy.

import { type ReadonlySignal, signal } from '@preact/signals';
import { NO_PRICES, type PriceList, priceListFrom } from '../../quantities/prices.ts';
import type { ChangeOrder } from '../../questions/change-order.ts';
import { browserStore, type Store } from '../keeping/browser-store.ts';

const KEY = 'daystone-prices';

export interface KeptPrices {
  readonly list: ReadonlySignal<PriceList>;
  /** false where the browser refused to keep the newest */
  readonly isKept: ReadonlySignal<boolean>;
  change(to: (list: PriceList) => PriceList): void;
  /** Another tab has changed the list. */
  readAgain(): void;
}

/**
 * The prices as they were left, and kept from now on.
 *
 * @param store the browser's local storage; one that refuses loses nothing but the keeping
 */
export function keptPrices(store: Store): KeptPrices {
  const list = signal<PriceList>(read(store) ?? NO_PRICES);
  const isKept = signal(true);
  return {
    list,
    isKept,
    change(to) {
      // What the browser did not keep stands here alone.
      const next = to((isKept.value ? read(store) : null) ?? list.value);
      list.value = next;
      try {
        store.setItem(KEY, JSON.stringify(next));
        isKept.value = true;
      } catch {
        isKept.value = false;
      }
    },
    readAgain() {
      if (isKept.value) list.value = read(store) ?? list.value;
    },
  };
}

function read(store: Store): PriceList | null {
  try {
    const text = store.getItem(KEY);
    return text === null ? null : priceListFrom(JSON.parse(text));
  } catch {
    return null;
  }
}

export const pricesChoice = keptPrices(browserStore(() => localStorage));
globalThis.addEventListener?.('storage', ({ key }) => {
  if (key === KEY) pricesChoice.readAgain();
});

/** The order in which changes are told, for as long as the page is open. */
export const orderChoice = signal<ChangeOrder>('weight');
