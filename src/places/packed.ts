// Texts and columns of whole numbers in one gzipped file. Bytes in, a checked package out. The writer is
// src/cli/bundle-places.ts.
//
// After unpacking: a line of JSON, {"form": "daystone packed 1", "texts": {name: bytes}, "columns": {name: count}}, then
// the texts as UTF-8 and the columns, in that order. A column's numbers are 16 bit, each less the one before it (modulo
// 65536), all low bytes first, then all high bytes: neighbours differ little, so it packs well.

import { gunzip, isGzip, textOf } from '../weather/text/platform-streams.ts';

export const PACKED_FORM = 'daystone packed 1';

export interface Packed {
  readonly texts: Readonly<Record<string, string>>;
  readonly columns: Readonly<Record<string, Int16Array>>;
}

/** Unpack the file; throws a sentence for the person where it is cut off or another file. */
export async function unpacked(bytes: Uint8Array): Promise<Packed> {
  // Some servers unpack what they send.
  const whole = isGzip(bytes) ? await gunzip(bytes) : bytes;
  if (typeof whole === 'string') throw new Error(`The file of places is ${whole}; fetch it again.`);
  const end = whole.indexOf(10);
  const head = headOf(textOf(whole.subarray(0, Math.max(end, 0))));
  const texts: Record<string, string> = {};
  const columns: Record<string, Int16Array> = {};
  let at = end + 1;
  for (const [name, size] of Object.entries(head.texts)) {
    texts[name] = textOf(whole.subarray(at, at + size));
    at += size;
  }
  for (const [name, count] of Object.entries(head.columns)) {
    columns[name] = columnOf(whole.subarray(at, at + 2 * count), count);
    at += 2 * count;
  }
  if (at !== whole.length) throw new Error('The file of places is cut off; fetch it again.');
  return { texts, columns };
}

interface Head {
  readonly texts: Readonly<Record<string, number>>;
  readonly columns: Readonly<Record<string, number>>;
}

function headOf(line: string): Head {
  try {
    const head = JSON.parse(line);
    if (head.form === PACKED_FORM) return head;
  } catch {
    // said below
  }
  throw new Error('The file of places is another file, or of another version; fetch it again.');
}

function columnOf(bytes: Uint8Array, count: number): Int16Array {
  const values = new Int16Array(count);
  let last = 0;
  for (let i = 0; i < count; i++) {
    last = (last + (bytes[i]! | (bytes[count + i]! << 8))) & 0xffff;
    values[i] = last;
  }
  return values;
}
