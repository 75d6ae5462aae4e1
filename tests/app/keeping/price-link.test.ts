import { expect, test } from 'vitest';
import { pricesFromLink, pricesToLink } from '../../../src/app/keeping/price-link.ts';
import type { PriceList } from '../../../src/quantities/prices.ts';

const list: PriceList = {
  currency: 'د.م.',
  wage: 27.5,
  prices: { adobe: { amount: 0, per: 'm³' }, overhang: { amount: 12.25, per: 'ft²' } },
};

test('prices come out of a link as they went in', async () => {
  expect(await pricesFromLink((await pricesToLink(list))!)).toEqual(list);
});

test('a link cut anywhere, changed or endless brings none', async () => {
  const packed = (await pricesToLink(list))!;
  for (let length = 0; length < packed.length - 1; length += 5)
    expect(await pricesFromLink(packed.slice(0, length)), String(length)).toBeNull();
  expect(await pricesFromLink(`${packed.slice(0, 20)}AAAA${packed.slice(24)}`)).toBeNull();
  expect(await pricesFromLink('A'.repeat(60_001))).toBeNull();
});
