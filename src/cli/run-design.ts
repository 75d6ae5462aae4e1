// One design in one climate, from model to findings. Shared by every command that runs years.

import type { Design } from '../design/design.ts';
import { completeOutcome } from '../findings/advise.ts';
import { climateOfDesign } from '../model/design-climate.ts';
import { modelOf } from '../model/from-design.ts';
import { type SimulateOptions, simulate } from '../network/simulate.ts';
import type { Year } from '../network/year.ts';
import type { Outcome } from '../outcomes/outcome.ts';
import type { PreparedClimate } from '../weather/prepared-climate.ts';

export interface RunResult {
  readonly outcome: Outcome;
  readonly year: Year;
  /** the climate it ran in: the site's, made hotter where the design asks for it */
  readonly climate: PreparedClimate;
}

/** Run a checked design through a year. */
export function runDesign(
  design: Design,
  siteClimate: PreparedClimate,
  options: Pick<SimulateOptions, 'lend'> = {},
): RunResult {
  const climate = climateOfDesign(design, siteClimate);
  const model = modelOf(design, climate.year.site, climate.ground);
  const year = simulate(model, climate, options);
  return { outcome: completeOutcome(design, model, climate, year), year, climate };
}
