// Everything a question needs that the first picture does not: the registry and the asking.
// Loaded when the panel is first opened, so that the page itself stays small.

import type { Design } from '../../design/design.ts';
import { ask, type Progress } from '../../questions/ask.ts';
import { basisOf } from '../../questions/basis.ts';
import { CRITERIA } from '../../questions/criterion.ts';
import { designAt } from '../../questions/glass-and-mass-map.ts';
import type { Answer } from '../../questions/question.ts';
import { QUESTIONS, questionById } from '../../questions/registry.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { pageRunner } from './page-runner.ts';

export { CRITERIA, designAt, QUESTIONS };

export interface Asking {
  readonly questionId: string;
  readonly criterionId: string;
  readonly design: Design;
  readonly climateKey: string;
  readonly year: TypicalYear;
  readonly signal: AbortSignal;
  readonly onProgress: (progress: Progress) => void;
}

/** The answer to a question about a design, by every worker the machine has cores for. */
export async function askOnPage(asking: Asking): Promise<Answer> {
  const { questionId, criterionId, design, climateKey, year, signal, onProgress } = asking;
  const question = questionById(questionId);
  if (!question) throw new RangeError(`question is '${questionId}'; allowed: one of the list`);
  const criterion = CRITERIA.find(({ id }) => id === criterionId) ?? CRITERIA[0]!;
  return ask(question, basisOf(design, year.site, { criterion }), pageRunner(climateKey, year), {
    signal,
    onProgress,
  });
}
