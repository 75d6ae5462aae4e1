// What is run for a design, as a component wants it: asked for when the design changes, dropped when late.

import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import type { Session } from '../state/session.ts';
import { useSession } from '../state/session-context.ts';

export type RunState<T> = T | 'running' | 'failed';

/**
 * Something run for a design.
 *
 * @param design null while there is none to ask about
 * @param run always the same function
 */
export function useRunFor<T extends object>(
  design: Design | null,
  run: (session: Session, design: Design) => Promise<T | null>,
): RunState<T> {
  const session = useSession();
  const [found, setFound] = useState<{ readonly design: Design; readonly result: T | null } | null>(null);
  useEffect(() => {
    if (design === null) return;
    let current = true;
    const settle = (result: T | null) => {
      if (current) setFound({ design, result });
    };
    run(session, design).then(settle, () => settle(null));
    return () => {
      current = false;
    };
  }, [design, run]);
  if (found === null || found.design !== design) return 'running';
  return found.result ?? 'failed';
}
