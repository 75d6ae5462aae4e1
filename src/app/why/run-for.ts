// What is run for a design, as a component wants it: asked for when the design changes, dropped when late.

import { useEffect, useState } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import type { Design } from '../../design/design.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';

export type RunState<T> = T | 'running' | 'failed';

/**
 * Something run for the design of an answer.
 *
 * @param answer null while there is none to ask about
 * @param year the climate it stands in
 * @param run always the same function
 */
export function useRunFor<T extends object>(
  answer: NumberedAnswer | null,
  year: TypicalYear | null,
  run: (design: Design, year: TypicalYear) => Promise<T>,
): RunState<T> {
  const design = answer?.job.design ?? null;
  const [found, setFound] = useState<{ readonly design: Design; readonly result: T | null } | null>(null);
  useEffect(() => {
    if (design === null || year === null) return;
    let current = true;
    const settle = (result: T | null) => {
      if (current) setFound({ design, result });
    };
    run(design, year).then(settle, () => settle(null));
    return () => {
      current = false;
    };
  }, [design, year, run]);
  if (found === null || found.design !== design) return 'running';
  return found.result ?? 'failed';
}
