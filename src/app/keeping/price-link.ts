// A person's prices as a part of a link, for who asks for it, and back: gzip, which knows when it was cut short. A list in, text
// out; text that is none gives nothing.

import { type PriceList, priceListFrom } from '../../quantities/prices.ts';
import { fromBase64Url, MOST_LINK_CHARACTERS, throughStream, toBase64Url } from './design-text.ts';

/** Null where it would be longer than what is read. */
export async function pricesToLink(list: PriceList): Promise<string | null> {
  const bytes = new TextEncoder().encode(JSON.stringify(list));
  const packed = toBase64Url(await throughStream(bytes, new CompressionStream('gzip')));
  return packed.length > MOST_LINK_CHARACTERS ? null : packed;
}

/** Null where it is cut off, changed or too long. */
export async function pricesFromLink(packed: string): Promise<PriceList | null> {
  if (packed.length > MOST_LINK_CHARACTERS) return null;
  try {
    const bytes = await throughStream(fromBase64Url(packed), new DecompressionStream('gzip'));
    return priceListFrom(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
  } catch {
    return null;
  }
}
