// A link for a client: the design and every version of it, in one packed text that knows when it was cut short (gzip, RFC
// 1952, ends with a check sum and a length). Designs in, text out, and back; text that is none gives the reason.

import type { Design } from '../../design/design.ts';
import {
  designFromData,
  fromBase64Url,
  MOST_LINK_CHARACTERS,
  throughStream,
  toBase64Url,
} from './design-text.ts';

export interface NamedDesign {
  readonly name: string;
  readonly design: Design;
}

export interface SharedDesigns {
  readonly design: Design;
  readonly versions: readonly NamedDesign[];
}

export type ReadShared =
  | { readonly ok: true; readonly shared: SharedDesigns }
  | { readonly ok: false; readonly message: string };

const FORM = 1;
const MOST_NAME = 60;
const MOST_VERSIONS = 60;

/** Null where it would be longer than what is read. */
export async function sharedToLink({ design, versions }: SharedDesigns): Promise<string | null> {
  const plain = {
    form: FORM,
    design,
    versions: versions.map((version) => ({ name: version.name, design: version.design })),
  };
  const bytes = new TextEncoder().encode(JSON.stringify(plain));
  const packed = toBase64Url(await throughStream(bytes, new CompressionStream('gzip')));
  return packed.length > MOST_LINK_CHARACTERS ? null : packed;
}

export async function sharedFromLink(packed: string): Promise<ReadShared> {
  const refused = (message: string): ReadShared => ({
    ok: false,
    message: `${message} Nothing was changed.`,
  });
  if (packed.length > MOST_LINK_CHARACTERS)
    return refused(`The link has ${packed.length} characters; allowed: at most ${MOST_LINK_CHARACTERS}.`);
  let data: { form?: unknown; design?: unknown; versions?: unknown } | null;
  try {
    const bytes = await throughStream(fromBase64Url(packed), new DecompressionStream('gzip'));
    data = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return refused('The link is broken or cut off: ask for it again, or for the file.');
  }
  if (data?.form !== FORM)
    return refused(
      `The link has form ${String(data?.form)}; this page reads ${FORM}. Reload the page to update it.`,
    );
  const design = designFromData(data.design);
  if (!design.ok) return refused(design.message);
  const listed = Array.isArray(data.versions) ? data.versions.slice(0, MOST_VERSIONS) : [];
  const versions: NamedDesign[] = [];
  for (const [i, entry] of listed.entries()) {
    const { name, design: held } = (entry ?? {}) as { name?: unknown; design?: unknown };
    const read = designFromData(held);
    if (!read.ok) return refused(`Version ${i + 1} of the link: ${read.message}`);
    versions.push({ name: String(name ?? '').slice(0, MOST_NAME), design: read.design });
  }
  return { ok: true, shared: { design: design.design, versions } };
}
