// What weighs how much on this page, as its person moved it: the usual until then. Kept in the browser, for every house, since
// it says what its people care for and nothing of a house.

import { effect, type Signal, signal } from '@preact/signals';
import { parseWeights, USUAL_WEIGHTS, WEIGHT_KEYS, type Weights } from '../../questions/weights.ts';
import { browserStore, type Store } from '../keeping/browser-store.ts';

const KEY = 'daystone-weights';

/**
 * The weights as they were left, and kept from now on.
 *
 * @param store the browser's local storage; one that refuses loses nothing but the keeping
 */
export function keptWeights(store: Store): Signal<Weights> {
  const read = parseWeights(store.getItem(KEY) ?? '');
  const weights = signal<Weights>(typeof read === 'string' ? USUAL_WEIGHTS : read);
  effect(() => {
    const text = WEIGHT_KEYS.map((key) => `${key}=${weights.value[key]}`).join(',');
    try {
      store.setItem(KEY, text);
    } catch {
      // They hold as long as the page is open.
    }
  });
  return weights;
}

export const weightsChoice = keptWeights(browserStore(() => localStorage));
