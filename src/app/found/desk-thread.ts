// The thread with the desk at which houses are held against their records: one for the page, started when the first file
// comes, and anew after it died.

import type { Remote } from 'comlink';
import type { MatchDesk } from '../../../workers/match-desk.ts';
import { startSimulationThread } from '../../../workers/simulation-thread.ts';
import { serviceThreadOf } from '../../../workers/worker-thread.ts';

interface Opened {
  readonly desk: Promise<Remote<MatchDesk>>;
  readonly died: Promise<never>;
}

let opened: Opened | null = null;

function open(): Opened {
  const { service, died } = serviceThreadOf(startSimulationThread());
  died.catch(() => {
    opened = null;
  });
  return { desk: service.matchDesk() as unknown as Promise<Remote<MatchDesk>>, died };
}

/** Something done at the desk; rejects when its thread dies. */
export async function atDesk<T>(work: (desk: Remote<MatchDesk>) => Promise<T>): Promise<T> {
  opened ??= open();
  const { desk, died } = opened;
  return Promise.race([desk.then(work), died]);
}
