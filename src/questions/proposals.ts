// The changed houses of an answer: every run whose house somebody can draw, save and run again. Runs in a climate that no
// design can ask for (brighter ground, another year's warmth in the ground) are no house to draw and are left out.

import { countedBy } from './criterion.ts';
import type { Basis, ProposedHouse, Runs } from './question.ts';

/** In the order of the plan; the house as drawn is no proposal. */
export function proposalsOf({ design, criterion }: Basis, runs: Runs): readonly ProposedHouse[] {
  const drawn = JSON.stringify(countedBy(design, criterion));
  return [...runs.values()]
    .filter(({ job }) => job.change === undefined && JSON.stringify(job.design) !== drawn)
    .map(({ job, figures }) => ({ id: job.id, words: job.label, design: job.design, figures }));
}
