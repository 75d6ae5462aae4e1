// The whole outcome of a run: figures and findings together.

import type { Design } from '../design/design.ts';
import type { Model } from '../model/model.ts';
import type { Year } from '../network/year.ts';
import type { Finding, Outcome } from '../outcomes/outcome.ts';
import { summarise } from '../outcomes/summarise.ts';
import type { PreparedClimate } from '../weather/prepared-climate.ts';
import { findingsOf } from './findings.ts';

/** The findings that an outcome deserves. */
export function advise(
  design: Design,
  climate: PreparedClimate,
  year: Year,
  outcome: Outcome,
): readonly Finding[] {
  return findingsOf({ design, climate, year, outcome });
}

/** Outcome of a year with its findings filled in. */
export function completeOutcome(design: Design, model: Model, climate: PreparedClimate, year: Year): Outcome {
  const outcome = summarise(design, model, climate, year);
  return { ...outcome, findings: advise(design, climate, year, outcome) };
}
