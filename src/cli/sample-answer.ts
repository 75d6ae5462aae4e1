// The house the page opens on, run when the page is built.

import { EXAMPLES } from '../design/examples.ts';
import { type SampleAnswer, sampleAnswerOf } from '../report/sample-answer.ts';
import { prepareClimate } from '../weather/prepared/prepared-climate.ts';
import { bundledClimate } from './bundled-climates.ts';

/** The first example in its own climate. */
export async function sampleAnswer(): Promise<SampleAnswer> {
  const { design } = EXAMPLES[0]!;
  const read = await bundledClimate(design.climate);
  if (!read?.ok) throw new Error(`climate '${design.climate}' cannot be read; the sample stands in it`);
  return sampleAnswerOf(design, prepareClimate(read.year));
}
