// What changes do to the design on the page, run once for a design and climate and remembered: the reasons of a figure
// want each lever alone, the report the steps that help most.

import type { Design } from '../../design/design.ts';
import type { OutcomeFigures } from '../../outcomes/outcome.ts';
import { figuresOf } from '../../questions/figures.ts';
import { type HowSure, howSureOf } from '../../questions/how-sure.ts';
import type { StopSignal } from '../../questions/runner.ts';
import type { Help, PulledLevers } from '../../questions/what-helps.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { pageRunner } from '../questions/page-runner.ts';
import { weightsChoice } from '../state/weights-choice.ts';
import { stoppedGently } from './gentle-runner.ts';

/** The code that runs them is wanted once the first picture stands. */
const loadRuns = () => import('../../questions/help-runs.ts');

const levers = new WeakMap<Design, Promise<PulledLevers>>();
/** Of one choice of weights at a time: steps are chosen by them. */
let helps = new WeakMap<Design, Promise<Help>>();
let helpsWeighed = weightsChoice.peek();
const sures = new WeakMap<Design, Promise<HowSure>>();

/** Each lever alone. */
export function pulledLevers(design: Design, year: TypicalYear): Promise<PulledLevers> {
  return remembered(levers, design, async () => {
    const { pullLevers } = await loadRuns();
    return pullLevers(design, pageRunner(design.climate, year));
  });
}

/**
 * The steps that help most.
 *
 * @param outcome of the design as drawn, where it has been run already
 * @param signal gives up what waits; years under way are run to their end
 */
export function helpOf(
  design: Design,
  year: TypicalYear,
  outcome?: OutcomeFigures,
  signal?: StopSignal,
): Promise<Help> {
  const weights = weightsChoice.peek();
  if (weights !== helpsWeighed) {
    helps = new WeakMap();
    helpsWeighed = weights;
  }
  return remembered(helps, design, async () => {
    const stoppable = stoppedGently(pageRunner(design.climate, year), signal);
    const { helpFor, pullLevers } = await loadRuns();
    const known = levers.get(design);
    const pulled = known ? await known : await pullLevers(design, stoppable, outcome && figuresOf(outcome));
    levers.set(design, Promise.resolve(pulled));
    return helpFor(design, pulled, stoppable, weights);
  });
}

/** How far the headline figures may lie from those told; runs nothing before what helps the design most is in. */
export function sureOf(design: Design, year: TypicalYear, signal?: StopSignal): Promise<HowSure> {
  return remembered(sures, design, async () => {
    await helps.get(design)?.catch(() => {});
    const runner = stoppedGently(pageRunner(design.climate, year), signal);
    return howSureOf(design, runner, year.madeFrom !== undefined, signal);
  });
}

/** What failed is run anew when it is asked for again. */
function remembered<T>(
  known: WeakMap<Design, Promise<T>>,
  design: Design,
  run: () => Promise<T>,
): Promise<T> {
  const found = known.get(design);
  if (found) return found;
  const running = run();
  known.set(design, running);
  running.catch(() => known.delete(design));
  return running;
}
