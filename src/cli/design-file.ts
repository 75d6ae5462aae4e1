// A design from the command line: the path of a JSON file, or the id of a bundled example. A checked design out,
// or one line a fault: file, field, value, what is allowed.

import { stat } from 'node:fs/promises';
import type { Design } from '../design/design.ts';
import { openDesign } from '../design/open-design.ts';
import { describeDesignFault } from '../design/schema.ts';
import { ALL_EXAMPLES } from '../design/stove-examples.ts';
import { textIn } from './files.ts';

/** Largest design file read [bytes]; one has about 3000. */
const MOST_BYTES = 1_000_000;

export type DesignFileResult =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly faults: readonly string[] };

/**
 * Read and check a design.
 *
 * @param place path of a file; where no such file is, the id of an example
 */
export async function readDesign(place: string): Promise<DesignFileResult> {
  const size = await stat(place).then(
    (found) => (found.isDirectory() ? 'a folder' : found.size),
    () => null,
  );
  if (size === null) {
    const example = ALL_EXAMPLES.find(({ id }) => id === place);
    if (example !== undefined) return { ok: true, design: example.design };
    const ids = ALL_EXAMPLES.map(({ id }) => id).join(', ');
    return fault(`${place}: no such file; allowed: a design file, or an example: ${ids}`);
  }
  if (size === 'a folder') return fault(`${place}: a folder; allowed: a design file`);
  if (size > MOST_BYTES) return fault(`${place}: ${size} bytes; allowed: at most ${MOST_BYTES}`);
  const read = await textIn(place, 'a design file');
  if (!read.ok) return read;
  const parsed = parseJson(read.text);
  if (!parsed.ok) return fault(`${place}: ${parsed.fault}`);
  return checkDesign(parsed.value, `${place}: `);
}

/** Check data against the design schema; `before` stands at the head of each fault. */
export function checkDesign(data: unknown, before: string): DesignFileResult {
  const result = openDesign(data);
  if (result.ok) return result;
  return { ok: false, faults: result.faults.map((entry) => `${before}${describeDesignFault(entry)}`) };
}

export type JsonResult =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly fault: string };

/** JSON without an exception; the fault names line and column where the platform tells the place. */
export function parseJson(text: string): JsonResult {
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\uFEFF/, '')) };
  } catch (error) {
    const message = (error as SyntaxError).message;
    const position = /position (\d+)/.exec(message);
    // Of short texts the platform tells no place, only whether they end too soon.
    if (position === null && !message.includes('end of JSON input')) {
      return { ok: false, fault: `"${oneLine(text.trim().slice(0, 40))}"; allowed: JSON` };
    }
    const at = position === null ? text.length : Number(position[1]);
    const before = text.slice(0, at).split('\n');
    const place = `line ${before.length}, column ${before[before.length - 1]!.length + 1}`;
    const found = at < text.length ? `"${text.slice(at, at + 20).split('\n')[0]}"` : 'the end of the text';
    return { ok: false, fault: `${place}: ${found}; allowed: JSON` };
  }
}

/** A fault is one line, whatever the text holds. */
function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ');
}

function fault(line: string): DesignFileResult {
  return { ok: false, faults: [line] };
}
