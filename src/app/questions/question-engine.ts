// Everything a question needs that the first picture does not: the registry and the asking.
// Loaded when the panel is first opened, so that the page itself stays small.

import type { Design } from '../../design/design.ts';
import { criterionOf, type TooHotCriterion } from '../../design/too-hot-criterion.ts';
import { criterionInWords } from '../../findings/hot-words.ts';
import { wordingOf } from '../../findings/wording.ts';
import { hasPrices, type PriceList } from '../../quantities/prices.ts';
import { answerAgain, ask, type Progress } from '../../questions/ask.ts';
import { basisOf } from '../../questions/basis.ts';
import type { ChangeOrder } from '../../questions/change-order.ts';
import { designAt, placeOnMap } from '../../questions/glass-and-mass-map.ts';
import type { Answer } from '../../questions/question.ts';
import { QUESTIONS, questionById } from '../../questions/registry.ts';
import type { RunResult } from '../../questions/run-job.ts';
import type { Runner } from '../../questions/runner.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { orderChoice, pricesChoice } from '../state/prices-choice.ts';
import { weightsChoice } from '../state/weights-choice.ts';
import { pageRunner, warmRunner } from './page-runner.ts';

export { criterionOf, designAt, placeOnMap, QUESTIONS, warmRunner };

/** A limit's name in the units on screen. */
export function limitInWords(criterion: TooHotCriterion, system: UnitSystem): string {
  return criterionInWords(criterion, wordingOf(system));
}

export interface Asking {
  readonly questionId: string;
  readonly design: Design;
  readonly climateKey: string;
  readonly year: TypicalYear;
  /** units of the answers on the way */
  readonly system: UnitSystem;
  readonly signal: AbortSignal;
  readonly onProgress: (progress: Progress) => void;
}

/** A whole answer, told in either system of units. */
export type TellAnswer = (system: UnitSystem) => Answer;

/** The answer to a question about a design, by every worker the machine has cores for. */
export async function askOnPage(asking: Asking): Promise<TellAnswer> {
  return askOf(asking, pageRunner(asking.climateKey, asking.year));
}

/** What moves the telling and no run: read in a view, it is told anew when they change. */
interface Telling {
  readonly prices: PriceList;
  readonly order: ChangeOrder;
}

function tellingNow(): Telling {
  const prices = pricesChoice.list.value;
  const order = orderChoice.value;
  return { prices, order: order === 'money' && !hasPrices(prices) ? 'weight' : order };
}

/** The same by any runner. */
async function askOf(asking: Asking, runner: Runner): Promise<TellAnswer> {
  const { questionId, design, year, signal, onProgress } = asking;
  const question = questionById(questionId);
  if (!question) throw new RangeError(`question is '${questionId}'; allowed: one of the list`);
  const weights = weightsChoice.peek();
  const isMade = year.madeFrom !== undefined;
  const basis = (system: UnitSystem, { prices, order }: Telling) =>
    basisOf(design, year.site, { words: wordingOf(system), weights, prices, order, isMade });
  const results = new Map<string, RunResult>();
  const remembering: Runner = {
    run: (jobs, options = {}) =>
      runner.run(jobs, {
        ...options,
        onResult: (result) => {
          results.set(result.id, result);
          options.onResult?.(result);
        },
      }),
  };
  let of = tellingNow();
  const first = await ask(question, basis(asking.system, of), remembering, { signal, onProgress });
  let known = new Map<UnitSystem, Answer>([[asking.system, first]]);
  return (system) => {
    const now = tellingNow();
    if (now.prices !== of.prices || now.order !== of.order) known = new Map();
    of = now;
    const answer = known.get(system) ?? answerAgain(question, basis(system, now), results);
    known.set(system, answer);
    return answer;
  };
}
