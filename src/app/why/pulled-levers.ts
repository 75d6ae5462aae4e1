// What changes do to the design on the page, run once for a design and remembered: the reasons of a figure want each
// lever alone, the report the steps that help most.

import type { Design } from '../../design/design.ts';
import { figuresOf } from '../../questions/figures.ts';
import {
  type FiguresRunner,
  type Help,
  helpFor,
  type PulledLevers,
  pullLevers,
} from '../../questions/what-helps.ts';
import type { Session } from '../state/session.ts';

type Runs = Pick<Session, 'answerOf'>;

const levers = new WeakMap<Design, Promise<PulledLevers | null>>();
const helps = new WeakMap<Design, Promise<Help | null>>();

/** Each lever alone. Null when a run was given up; it is then run anew when asked for again. */
export function pulledLevers(session: Runs, design: Design): Promise<PulledLevers | null> {
  return remembered(levers, design, () => pullLevers(design, runnerOf(session)));
}

/** The steps that help most. */
export function helpOf(session: Runs, design: Design): Promise<Help | null> {
  return remembered(helps, design, async () => {
    const pulled = await pulledLevers(session, design);
    return pulled === null ? null : helpFor(design, pulled, runnerOf(session));
  });
}

function runnerOf(session: Runs): FiguresRunner {
  return async (design) => {
    const answer = await session.answerOf(design);
    return answer === null ? null : figuresOf(answer.outcome);
  };
}

function remembered<T>(
  known: WeakMap<Design, Promise<T | null>>,
  design: Design,
  run: () => Promise<T | null>,
): Promise<T | null> {
  const found = known.get(design);
  if (found) return found;
  const running = run();
  known.set(design, running);
  const forget = () => known.delete(design);
  running.then((result) => result === null && forget(), forget);
  return running;
}
