// The pool of simulation threads for questions on the command line: as many as there are cores, unless told.

import { availableParallelism } from 'node:os';
import { RunPool } from '../../workers/run-pool.ts';
import type { KeptRuns } from '../../workers/run-service.ts';
import { startThread } from './threads.ts';
import type { WholeNumber } from './whole-number.ts';

const IDLE_MS = 10_000;
/** How many threads a command may be told to use, and how many it does. */
export const WORKERS: WholeNumber = { min: 1, max: 64, usual: availableParallelism() };

/** A thread that runs years. */
export function startSimulation() {
  return startThread<KeptRuns>(new URL('./simulation-thread.ts', import.meta.url));
}

/** A pool of worker threads; close it when done, or the process waits for its rest. */
export function createThreadPool(threads: number = WORKERS.usual): RunPool {
  return new RunPool({
    startThread: startSimulation,
    threads,
    idleMs: IDLE_MS,
  });
}
