// The two pieces of the platform the readers need, browsers and Node alike: bytes to text, and gunzip with a cap.
// They are reached through globalThis because this room compiles without browser or Node types.

/** Largest text accepted after unpacking [bytes]. An hourly year is 1–2 MB, a half-hourly one with all columns 10. */
export const MOST_BYTES = 64_000_000;

interface ByteReader {
  read(): Promise<{ done: boolean; value?: Uint8Array }>;
  cancel(): Promise<void>;
}
interface Platform {
  readonly TextDecoder: new (
    label: string,
    options?: { fatal: boolean },
  ) => { decode(bytes: Uint8Array): string };
  readonly Response: new (body: unknown) => { readonly body: { pipeThrough(stream: unknown): ByteStream } };
  readonly DecompressionStream: new (format: 'gzip') => unknown;
}
interface ByteStream {
  getReader(): ByteReader;
}
const platform = globalThis as unknown as Platform;

export function isGzip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}

/**
 * Unpack gzip, giving up as soon as the output passes a limit, so that a small file cannot fill the memory.
 *
 * @returns the bytes, 'too large', or 'damaged'
 */
export async function gunzip(
  bytes: Uint8Array,
  limit = MOST_BYTES,
): Promise<Uint8Array | 'too large' | 'damaged'> {
  const stream = new platform.Response(bytes).body.pipeThrough(new platform.DecompressionStream('gzip'));
  const reader = stream.getReader();
  const pieces: Uint8Array[] = [];
  let size = 0;
  try {
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
      pieces.push(piece.value!);
      size += piece.value!.length;
      if (size > limit) {
        await reader.cancel().catch(() => undefined);
        return 'too large';
      }
    }
  } catch {
    return 'damaged';
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** Bytes of a plain text that are looked at to tell UTF-16 without its mark. */
const LOOKED_AT = 400;

/** Bytes as text: UTF-16 where its mark or its noughts are there, else UTF-8, else (any byte is a letter) Windows-1252. */
export function textOf(bytes: Uint8Array): string {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || isPlainUtf16(bytes))
    return new platform.TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new platform.TextDecoder('utf-16be').decode(bytes);
  try {
    return new platform.TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new platform.TextDecoder('windows-1252').decode(bytes);
  }
}

/** Every second byte is nought, as in plain letters and digits of UTF-16, the low byte first. */
function isPlainUtf16(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, LOOKED_AT);
  const second = head.filter((_, i) => i % 2 === 1);
  const first = head.filter((_, i) => i % 2 === 0);
  return (
    second.length > 8 &&
    second.filter((byte) => byte === 0).length > 0.9 * second.length &&
    !first.includes(0)
  );
}
