import { expect, test } from 'vitest';
import { keptWeights } from '../../../src/app/state/weights-choice.ts';
import { USUAL_WEIGHTS } from '../../../src/questions/weights.ts';

function storeWith(text: string | null) {
  let kept = text;
  return {
    getItem: () => kept,
    setItem: (_: string, value: string) => {
      kept = value;
    },
    read: () => kept,
  };
}

test('weights are kept as moved, and what cannot be read is the usual', () => {
  const store = storeWith(null);
  const weights = keptWeights(store);
  expect(weights.value).toEqual(USUAL_WEIGHTS);
  weights.value = { ...weights.value, heat: 2, labour: 0 };
  expect(keptWeights(storeWith(store.read())).value).toEqual({ ...USUAL_WEIGHTS, heat: 2, labour: 0 });
  expect(keptWeights(storeWith('heat=lots')).value).toEqual(USUAL_WEIGHTS);
});

test('a browser that keeps nothing still weighs', () => {
  const refusing = {
    getItem: () => null,
    setItem: () => {
      throw new Error('denied');
    },
  };
  const weights = keptWeights(refusing);
  weights.value = { ...USUAL_WEIGHTS, hot: 4 };
  expect(weights.value.hot).toBe(4);
});
