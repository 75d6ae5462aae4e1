// The pool as the page uses it: as many simulation workers as the machine has cores, let go when nothing is asked for
// a while. The page says how a worker is started, since the one-file build carries it inside.

import { RunPool } from './run-pool.ts';
import { serviceThreadOf } from './worker-thread.ts';

/** Workers stay this long without work [ms]: a person looks at the house, reads an answer, and makes the next change. */
const IDLE_MS = 600_000;

/**
 * A pool of simulation workers.
 *
 * @param startWorker a fresh worker that runs simulation.worker.ts
 */
export function createPagePool(startWorker: () => Worker): RunPool {
  return new RunPool({
    threads: Math.max(1, navigator.hardwareConcurrency),
    idleMs: IDLE_MS,
    startThread: () => serviceThreadOf(startWorker()),
  });
}
