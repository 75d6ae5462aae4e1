// What is known of a house before anything has been run in the page: the figures and findings of its year, and what each
// change did to it. Made when the page is built, by the engine that runs in the page. A design and its climate in, plain
// data out.

import { runYear } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { Outcome } from '../outcomes/outcome.ts';
import { helpFor, pullLevers } from '../questions/help-runs.ts';
import { createPlainRunner } from '../questions/runner.ts';
import { type PlainHelp, plainHelp } from '../questions/what-helps.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';

export interface SampleAnswer {
  readonly design: Design;
  /** findings in metric units */
  readonly outcome: Outcome;
  readonly help: PlainHelp;
}

/** The year of a design and what helps it most. */
export async function sampleAnswerOf(design: Design, climate: PreparedClimate): Promise<SampleAnswer> {
  const { outcome } = runYear(design, climate);
  const runner = createPlainRunner(climate);
  const help = await helpFor(design, await pullLevers(design, runner), runner);
  return { design, outcome, help: plainHelp(help) };
}
