// What single changes do to a design, as a component wants it: asked for when the design changes, dropped when late.

import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import type { Help } from '../../questions/what-helps.ts';
import { useSession } from '../state/session-context.ts';
import { pulledLevers } from './pulled-levers.ts';

export type HelpState = Help | 'running' | 'failed';

/** @param design null while there is none to ask about */
export function useHelp(design: Design | null): HelpState {
  const session = useSession();
  const [found, setFound] = useState<{ readonly design: Design; readonly help: Help | null } | null>(null);
  useEffect(() => {
    if (design === null) return;
    let current = true;
    const settle = (help: Help | null) => {
      if (current) setFound({ design, help });
    };
    pulledLevers(session, design).then(settle, () => settle(null));
    return () => {
      current = false;
    };
  }, [design]);
  if (found === null || found.design !== design) return 'running';
  return found.help ?? 'failed';
}
