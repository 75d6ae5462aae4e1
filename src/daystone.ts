// The one door to the engine: a design and a typical year in, the model, the climate it stood in, the hourly year and
// its outcome out. The page, the questions and the command line run every year through here, so none of them can
// forget the hotter year a design asks for or hand out an outcome without its findings.

import type { Design } from './design/design.ts';
import { findingsOf } from './findings/findings.ts';
import type { Units } from './findings/wording.ts';
import { climateOfDesign } from './model/design-climate.ts';
import { modelOf } from './model/from-design.ts';
import type { Model } from './model/model.ts';
import { type SimulateOptions, simulate } from './network/simulate.ts';
import type { Year } from './network/year.ts';
import type { Outcome, OutcomeFigures } from './outcomes/outcome.ts';
import { summarise } from './outcomes/summarise.ts';
import { type PreparedClimate, preparedOnce } from './weather/prepared/prepared-climate.ts';
import type { ReadResult } from './weather/read-result.ts';
import type * as Reader from './weather/reader.ts';
import type { TypicalYear } from './weather/typical-year.ts';

export type { Design } from './design/design.ts';
export { EXAMPLES } from './design/examples.ts';
export type { Model } from './model/model.ts';
export type { Year, ZoneYear } from './network/year.ts';
export { hourlyFile } from './outcomes/hourly-file.ts';
export { ImpossibleYear } from './outcomes/impossible-year.ts';
export type { Finding, Outcome, ZoneOutcome } from './outcomes/outcome.ts';
export { readBundle } from './weather/formats/bundle-form.ts';
export { type PreparedClimate, prepareClimate } from './weather/prepared/prepared-climate.ts';
export type { Fault, ReadResult } from './weather/read-result.ts';
export type { TypicalYear } from './weather/typical-year.ts';

export interface RunYearOptions extends SimulateOptions {
  /** units of the findings' sentences; metric unless said */
  readonly units?: Units;
}

export interface YearRun {
  readonly model: Model;
  /** the climate the design stood in: the site's, made hotter where the design asks for it */
  readonly climate: PreparedClimate;
  /** hour by hour; lent columns (`lend`) hold until the thread's next run */
  readonly year: Year;
  /** the outcome without its findings, for runs that only compare; worked out when first read */
  readonly figures: OutcomeFigures;
  /** the outcome, findings and all; worked out when first read. Throws ImpossibleYear for rooms no house can have */
  readonly outcome: Outcome;
}

/**
 * Run a design through a year.
 *
 * @param design a checked design (src/design/schema.ts checks one)
 * @param typicalYear the site's weather as a reader hands it out, prepared once and remembered; or prepared already
 * @param options steps an hour and days of warm-up for convergence checks, history of elements, units of sentences
 * @returns the run; throws RangeError for a model that is none
 */
export function runYear(
  design: Design,
  typicalYear: TypicalYear | PreparedClimate,
  options: RunYearOptions = {},
): YearRun {
  const { units = 'metric', ...simulation } = options;
  const climate = climateOfDesign(design, 'year' in typicalYear ? typicalYear : preparedOnce(typicalYear));
  const model = modelOf(design, climate.year.site, climate.ground);
  const year = simulate(model, climate, simulation);
  let figures: OutcomeFigures | null = null;
  let outcome: Outcome | null = null;
  return {
    model,
    climate,
    year,
    get figures() {
      figures ??= summarise(design, model, climate, year);
      return figures;
    },
    get outcome() {
      outcome ??= {
        ...this.figures,
        findings: findingsOf({ design, climate, year, outcome: this.figures, units }),
      };
      return outcome;
    },
  };
}

/**
 * Read a weather file of any known form. The reader is loaded when the first file is read: it brings a library for
 * tables that nobody else needs.
 *
 * @param content the file as bytes, gzipped or not, or as text
 * @returns the typical year with notes of what was filled or doubted, or the faults, a line each; never throws on a file
 */
export async function readWeather(...file: Parameters<typeof Reader.readWeather>): Promise<ReadResult> {
  const reader = await import('./weather/reader.ts');
  return reader.readWeather(...file);
}
