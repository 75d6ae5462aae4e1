// Files a command reads and writes: bytes, or one line that says why not. A path and what is allowed in; nothing thrown.

import { readFile, writeFile } from 'node:fs/promises';
import { textOf } from '../weather/text/platform-streams.ts';

type Refusal = { readonly ok: false; readonly faults: readonly string[] };

/**
 * The bytes of a file.
 *
 * @param allowed what may stand there, for the fault
 */
export async function bytesOf(
  path: string,
  allowed: string,
): Promise<{ readonly ok: true; readonly bytes: Uint8Array } | Refusal> {
  try {
    return { ok: true, bytes: await readFile(path) };
  } catch (error) {
    const why = codeOf(error) === 'ENOENT' ? 'no such file' : `cannot be read (${codeOf(error)})`;
    return { ok: false, faults: [`${path}: ${why}; allowed: ${allowed}`] };
  }
}

/** The same as text. */
export async function textIn(
  path: string,
  allowed: string,
): Promise<{ readonly ok: true; readonly text: string } | Refusal> {
  const read = await bytesOf(path, allowed);
  return read.ok ? { ok: true, text: textOf(read.bytes) } : read;
}

/**
 * Write the file that a flag names.
 *
 * @returns what is wrong; null where it is written
 */
export async function writtenFor(flag: string, path: string, text: string): Promise<string | null> {
  try {
    await writeFile(path, text);
    return null;
  } catch (error) {
    return `--${flag}: ${path} cannot be written (${codeOf(error)}); allowed: a file in a folder that exists`;
  }
}

function codeOf(error: unknown): string | undefined {
  return (error as NodeJS.ErrnoException).code;
}
