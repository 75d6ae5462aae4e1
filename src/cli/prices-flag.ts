// `--prices FILE`: a person's own prices for a command. Arguments in; a list of prices, none where the flag is absent, or one
// line a fault.

import { type PriceFileResult, readPriceFile } from '../quantities/price-file.ts';
import { NO_PRICES } from '../quantities/prices.ts';
import type { ParsedArguments } from './arguments.ts';
import { textIn } from './files.ts';

export const PRICES_USAGE =
  '--prices FILE.csv: your own prices, as `quantities DESIGN --csv` writes them, with its column `price` filled in';

export async function pricesFrom({ values }: ParsedArguments): Promise<PriceFileResult> {
  const file = values.get('prices');
  if (file === undefined) return { ok: true, list: NO_PRICES };
  const found = await textIn(file, 'a table of prices');
  if (!found.ok) return found;
  const read = readPriceFile(found.text);
  return read.ok ? read : { ok: false, faults: read.faults.map((fault) => `${file}: ${fault}`) };
}
