// What single changes do to the design on the page, run once for a design and remembered: the reasons of a figure and
// the report both want it.

import type { Design } from '../../design/design.ts';
import { figuresOf } from '../../questions/figures.ts';
import { type Help, whatHelps } from '../../questions/what-helps.ts';
import type { Session } from '../state/session.ts';

const known = new WeakMap<Design, Promise<Help | null>>();

/** Null when a run was given up; it is then run anew when asked for again. */
export function pulledLevers(session: Pick<Session, 'answerOf'>, design: Design): Promise<Help | null> {
  const found = known.get(design);
  if (found) return found;
  const running = whatHelps(design, async (varied) => {
    const answer = await session.answerOf(varied);
    return answer === null ? null : figuresOf(answer.outcome);
  });
  known.set(design, running);
  const forget = () => known.delete(design);
  running.then((help) => help === null && forget(), forget);
  return running;
}
