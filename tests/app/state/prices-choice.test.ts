import { expect, test } from 'vitest';
import { keptPrices } from '../../../src/app/state/prices-choice.ts';

function madeStore(text: string | null = null, refuses = false) {
  let held = text;
  return {
    getItem: () => held,
    setItem: (_: string, value: string) => {
      if (refuses) throw new Error('full');
      held = value;
    },
    held: () => held,
  };
}

const price = (amount: number) => ({ amount, per: 'm³' as const });

test('prices are kept as they are given, and read again', () => {
  const store = madeStore();
  keptPrices(store).change((list) => ({ ...list, currency: 'CHF', wage: 40, prices: { adobe: price(90) } }));
  expect(keptPrices(store).list.value).toEqual({ currency: 'CHF', wage: 40, prices: { adobe: price(90) } });
});

test('two tabs change one list, and neither loses what the other gave', () => {
  const store = madeStore();
  const [one, other] = [keptPrices(store), keptPrices(store)];
  one.change((list) => ({ ...list, prices: { ...list.prices, adobe: price(90) } }));
  other.change((list) => ({ ...list, prices: { ...list.prices, cob: price(30) } }));
  one.readAgain();
  expect(one.list.value.prices).toEqual({ adobe: price(90), cob: price(30) });
});

test('what was damaged is left out, and the rest stands', () => {
  const kept = {
    currency: 7,
    wage: -1,
    prices: { adobe: price(90), cob: { amount: '3', per: 'm³' }, brick: null },
  };
  expect(keptPrices(madeStore(JSON.stringify(kept))).list.value).toEqual({
    currency: '',
    wage: null,
    prices: { adobe: price(90) },
  });
  expect(keptPrices(madeStore('{')).list.value.prices).toEqual({});
});

test('a browser that keeps nothing says so, and the prices hold', () => {
  const prices = keptPrices(madeStore(null, true));
  prices.change((list) => ({ ...list, wage: 12 }));
  prices.change((list) => ({ ...list, currency: '£' }));
  expect(prices.list.value).toMatchObject({ wage: 12, currency: '£' });
  expect(prices.isKept.value).toBe(false);
});
