// A file that was dropped or chosen: a design, or weather. In: the file. Out: the design, the bytes of what may be
// weather, or one sentence that says what is wrong. Nothing on the sheet changes here.

import type { Design } from '../../design/design.ts';
import { textOf } from '../../weather/text/platform-streams.ts';
import { designFromText } from './design-text.ts';

export type TakenFile =
  | { readonly kind: 'design'; readonly design: Design }
  /** no design; the readers of weather will say what it is */
  | { readonly kind: 'weather'; readonly bytes: Uint8Array }
  | { readonly kind: 'refused'; readonly message: string };

const MOST_BYTES = 60_000_000;

/** Find out what a file is. */
export async function takeFile(file: File): Promise<TakenFile> {
  const refused = (message: string): TakenFile => ({ kind: 'refused', message: `${file.name}: ${message}` });
  if (file.size === 0) return refused('the file is empty.');
  if (file.size > MOST_BYTES) return refused('the file is too large for a design or a year of weather.');
  const content = await file.arrayBuffer().catch(() => null);
  if (content === null) return refused('the file could not be read; was it moved, or is it a folder?');
  const bytes = new Uint8Array(content);
  if (!looksLikeDesign(bytes)) return { kind: 'weather', bytes };
  const read = designFromText(textOf(bytes));
  return read.ok ? { kind: 'design', design: read.design } : refused(read.message);
}

/** JSON with the blocks of a design; weather may be JSON too. */
function looksLikeDesign(bytes: Uint8Array): boolean {
  const head = textOf(bytes.subarray(0, 4000))
    .replace(/^\uFEFF/, '')
    .trimStart();
  return (
    head.startsWith('{') &&
    /"(house|glass|sunspace|version)"\s*:/.test(head) &&
    !/"(inputs|outputs)"\s*:/.test(head)
  );
}
