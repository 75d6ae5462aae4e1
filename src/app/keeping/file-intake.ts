// A file that was dropped or chosen: a design, or weather. In: the file. Out: what it is, or one sentence that says
// what is wrong with it. Nothing on the sheet changes here.

import type { SimulationBridge } from '../../../workers/bridge.ts';
import type { Design } from '../../design/design.ts';
import { textOf } from '../../weather/platform-streams.ts';
import { describeFault, type SiteHints } from '../../weather/read-result.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { designFromText } from './design-text.ts';

export type TakenFile =
  | { readonly kind: 'design'; readonly design: Design }
  | { readonly kind: 'climate'; readonly year: TypicalYear }
  /** weather that does not say where it is */
  | { readonly kind: 'place-missing' }
  | { readonly kind: 'refused'; readonly message: string };

const MOST_BYTES = 60_000_000;
const FAULTS_TOLD = 3;
/** how the readers name a place that is missing */
const PLACE_COLUMN = 'latitude and longitude';

/**
 * Find out what a file is and read it.
 *
 * @param hints what the person has said about the place
 */
export async function takeFile(
  file: File,
  bridge: Pick<SimulationBridge, 'readClimate'>,
  hints: SiteHints = {},
): Promise<TakenFile> {
  const refused = (message: string): TakenFile => ({ kind: 'refused', message: `${file.name}: ${message}` });
  if (file.size === 0) return refused('the file is empty.');
  if (file.size > MOST_BYTES) return refused('the file is too large for a design or a year of weather.');
  const content = await file.arrayBuffer().catch(() => null);
  if (content === null) return refused('the file could not be read; was it moved, or is it a folder?');
  const bytes = new Uint8Array(content);
  if (looksLikeDesign(bytes)) {
    const read = designFromText(textOf(bytes));
    return read.ok ? { kind: 'design', design: read.design } : refused(read.message);
  }
  const result = await bridge
    .readClimate(bytes, { ...hints, fileName: file.name })
    .catch((reason) => (reason instanceof Error ? reason.message : 'reading was stopped.'));
  if (typeof result === 'string') return refused(result);
  if (result.ok) return { kind: 'climate', year: result.year };
  if (result.faults.some(({ column }) => column === PLACE_COLUMN)) return { kind: 'place-missing' };
  const told = result.faults.slice(0, FAULTS_TOLD).map(describeFault);
  const more = result.faults.length > FAULTS_TOLD ? ` (and ${result.faults.length - FAULTS_TOLD} more)` : '';
  return refused(`${told.join('; ')}${more}.`);
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
