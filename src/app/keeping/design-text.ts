// A design as text and back: the JSON of a file, and the packed form of a link. Text that is no design gives the
// reasons and changes nothing. Older versions of the form are opened too (design/open-design.ts).

import { DESIGN_VERSION, type Design } from '../../design/design.ts';
import { newerVersion, openDesign } from '../../design/open-design.ts';
import { describeDesignFault } from '../../design/schema.ts';

export type ReadDesign =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly message: string };

/** Longest link part read; a whole design packs into about a thousand characters. */
export const MOST_LINK_CHARACTERS = 60_000;
const MOST_TEXT_CHARACTERS = 1_000_000;
const MOST_TEXT = '1 MB';

/** A design as the text of a file. */
export function designToText(design: Design): string {
  return `${JSON.stringify(design, null, 2)}\n`;
}

/** A design from the text of a file, or why not. */
export function designFromText(text: string): ReadDesign {
  if (text.length > MOST_TEXT_CHARACTERS) {
    return refused(`This has ${text.length} characters; a design has at most ${MOST_TEXT}.`);
  }
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return refused('This is no design: it is not JSON.');
  }
  return designFromData(data);
}

/** A design from parsed data of this or an older version. */
export function designFromData(data: unknown): ReadDesign {
  const newer = newerVersion(data);
  if (newer !== null) {
    return refused(
      `This design has version ${newer}; this page reads up to ${DESIGN_VERSION}. Reload the page to update it.`,
    );
  }
  const result = openDesign(data);
  if (result.ok) return result;
  const lines = result.faults.slice(0, 3).map(describeDesignFault);
  const more = result.faults.length > 3 ? ` (and ${result.faults.length - 3} more)` : '';
  return refused(`This is no design that can be opened: ${lines.join('; ')}${more}.`);
}

/** Pack a design for a link: deflated JSON in the URL-safe alphabet of RFC 4648, section 5. */
export async function designToLink(design: Design): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(design));
  const packed = await throughStream(bytes, new CompressionStream('deflate-raw'));
  return toBase64Url(packed);
}

/** Unpack a link. */
export async function designFromLink(packed: string): Promise<ReadDesign> {
  const broken = 'The link is broken or cut off; nothing was changed.';
  if (packed.length > MOST_LINK_CHARACTERS) {
    return refused(
      `The link has ${packed.length} characters; allowed: at most ${MOST_LINK_CHARACTERS}. Nothing was changed.`,
    );
  }
  try {
    const bytes = await throughStream(fromBase64Url(packed), new DecompressionStream('deflate-raw'));
    const read = designFromText(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    return read.ok ? read : refused(`The link does not hold a design. ${read.message}`);
  } catch (error) {
    if (!(error instanceof TooLong)) return refused(broken);
    return refused(
      `The link unpacks to more than a design has, which is at most ${MOST_TEXT}; nothing was changed.`,
    );
  }
}

class TooLong extends Error {}

export async function throughStream(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> {
  const writer = stream.writable.getWriter();
  const written = writer.write(bytes).then(() => writer.close());
  const read = readAll(stream.readable);
  const [, out] = await Promise.all([written, read]);
  return out;
}

/** Reads a stream to its end; a short link may unpack to a very long text, which stops here. */
async function readAll(readable: ReadableStream<Uint8Array>): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = readable.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    chunks.push(value);
    length += value.length;
    if (length > MOST_TEXT_CHARACTERS) {
      await reader.cancel();
      throw new TooLong();
    }
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

export function toBase64Url(bytes: Uint8Array): string {
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}

const refused = (message: string): ReadDesign => ({ ok: false, message });
