// `--prices FILE`: a person's own prices for a command. Arguments in; a list of prices, none where the flag is absent, or one
// line a fault.

import { readFile } from 'node:fs/promises';
import { type PriceFileResult, readPriceFile } from '../quantities/price-file.ts';
import { NO_PRICES } from '../quantities/prices.ts';
import { textOf } from '../weather/text/platform-streams.ts';
import type { ParsedArguments } from './arguments.ts';

export const PRICES_USAGE =
  '--prices FILE.csv: your own prices, as `quantities DESIGN --csv` writes them, with its column `price` filled in';

export async function pricesFrom({ values }: ParsedArguments): Promise<PriceFileResult> {
  const file = values.get('prices');
  if (file === undefined) return { ok: true, list: NO_PRICES };
  let text: string;
  try {
    text = textOf(await readFile(file));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const why = code === 'ENOENT' ? 'no such file' : `cannot be read (${code})`;
    return { ok: false, faults: [`${file}: ${why}; allowed: a table of prices`] };
  }
  const read = readPriceFile(text);
  return read.ok ? read : { ok: false, faults: read.faults.map((fault) => `${file}: ${fault}`) };
}
